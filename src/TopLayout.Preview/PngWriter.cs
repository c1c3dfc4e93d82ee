using TopLayout.Drawing;

namespace TopLayout.Preview;

/// <summary>Writes a sheet as a picture (PNG) on white paper: to look at, not to work from.</summary>
public static class PngWriter
{
    internal const double MmPerInch = 25.4;

    /// <summary>Writes the sheet; the stream stays open.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="output">Where to.</param>
    /// <param name="dotsPerInch">Pixels to an inch of the sheet, &gt; 0; each side of the picture is the page's, made up to whole pixels.</param>
    public static void Write(Sheet sheet, Stream output, double dotsPerInch)
    {
        var perMm = dotsPerInch / MmPerInch;
        Picture.Write(output, sheet.Page.Width * perMm, sheet.Page.Height * perMm, canvas =>
        {
            canvas.Scale((float)perMm);
            new SheetPainter(canvas, sheet.Page, leastLineMm: 0).Draw(sheet.Shapes);
        });
    }

    /// <summary>Memory that the picture of a sheet takes while it is painted, bytes.</summary>
    public static long Bytes(Sheet sheet, double dotsPerInch)
    {
        var perMm = dotsPerInch / MmPerInch;
        return Picture.Bytes(sheet.Page.Width * perMm, sheet.Page.Height * perMm);
    }
}
