using SkiaSharp;

namespace TopLayout.Preview;

/// <summary>The library that paints is not managed code: a machine may lack it, or be of a kind it was not built for.</summary>
public static class NativePart
{
    /// <summary>Whether it loads; asked before anything is painted.</summary>
    public static bool Loads { get; } = Try();

    private static bool Try()
    {
        try
        {
            using var path = new SKPathBuilder();
            return true;
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException or BadImageFormatException or EntryPointNotFoundException or InvalidOperationException)
        {
            return false;
        }
    }
}
