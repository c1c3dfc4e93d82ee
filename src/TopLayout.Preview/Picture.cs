using SkiaSharp;

namespace TopLayout.Preview;

/// <summary>White paper that is drawn on and written as PNG.</summary>
internal static class Picture
{
    // Sides that are whole but for rounding are not made up to one more.
    private const double Slack = 1e-6;

    /// <summary>Makes up both sides to whole pixels, draws, and writes; the stream stays open.</summary>
    /// <exception cref="InvalidOperationException">There is no memory for a picture so large.</exception>
    public static void Write(Stream output, double width, double height, Action<SKCanvas> draw)
    {
        var info = new SKImageInfo(Pixels(width), Pixels(height), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info) ?? throw new InvalidOperationException($"no picture of {info.Width} x {info.Height} pixels can be made");
        surface.Canvas.Clear(SKColors.White);
        draw(surface.Canvas);
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        png.SaveTo(output);
    }

    private static int Pixels(double side) => Math.Max(1, (int)Math.Ceiling(side - Slack));
}
