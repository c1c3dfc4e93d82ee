using SkiaSharp;

namespace TopLayout.Preview;

/// <summary>White paper that is drawn on and written as PNG.</summary>
internal static class Picture
{
    // Sides that are whole but for rounding are not made up to one more.
    private const double Slack = 1e-6;

    // Lines on white paper: no filter of rows makes them smaller, and looking for one takes longer than the rest.
    private static readonly SKPngEncoderOptions Plain = new(SKPngEncoderFilterFlags.None, zLibLevel: 6);

    /// <summary>Makes up both sides to whole pixels, draws, and writes; the stream stays open.</summary>
    /// <exception cref="InvalidOperationException">There is no memory for a picture so large.</exception>
    public static void Write(Stream output, double width, double height, Action<SKCanvas> draw)
    {
        var info = new SKImageInfo(Pixels(width), Pixels(height), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info) ?? throw new InvalidOperationException($"no picture of {info.Width} x {info.Height} pixels can be made");
        surface.Canvas.Clear(SKColors.White);
        draw(surface.Canvas);
        using var pixels = surface.PeekPixels();
        using var png = pixels?.Encode(Plain) ?? throw new InvalidOperationException($"a picture of {info.Width} x {info.Height} pixels cannot be written");
        png.SaveTo(output);
    }

    /// <summary>Memory that a picture takes, bytes: four to a pixel.</summary>
    public static long Bytes(double width, double height) => 4L * Pixels(width) * Pixels(height);

    private static int Pixels(double side) => Math.Max(1, (int)Math.Ceiling(side - Slack));
}
