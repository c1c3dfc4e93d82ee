using SkiaSharp;
using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Preview;

/// <summary>All sheets small on one picture, row by row, each with its name under it.</summary>
public static class ContactSheet
{
    private const double GapMm = 6;
    private const double NameMm = 8;
    private const double TextMm = 2.6;
    private const double LeastLineMm = 0.1;

    private static readonly Vec2 CellMm = new(62, 76);

    /// <summary>Writes it as PNG; the stream stays open.</summary>
    /// <param name="sheets">The sheets, at least one, in order.</param>
    /// <param name="output">Where to.</param>
    /// <param name="columns">Sheets in a row, &gt; 0.</param>
    /// <param name="dotsPerInch">Pixels to an inch of the picture, &gt; 0.</param>
    /// <exception cref="ArgumentException">There is no sheet.</exception>
    public static void Write(IEnumerable<Sheet> sheets, Stream output, int columns = 5, double dotsPerInch = 150)
    {
        var list = sheets.ToList();
        if (list.Count == 0)
        {
            throw new ArgumentException("a contact sheet shows at least one sheet", nameof(sheets));
        }

        var perMm = dotsPerInch / PngWriter.MmPerInch;
        var (across, down) = (Math.Min(columns, list.Count), (list.Count + columns - 1) / columns);
        var (width, height) = (GapMm + (across * (CellMm.X + GapMm)), GapMm + (down * (CellMm.Y + NameMm + GapMm)));
        Picture.Write(output, width * perMm, height * perMm, canvas =>
        {
            canvas.Scale((float)perMm);
            foreach (var (i, sheet) in list.Index())
            {
                var corner = new Vec2(GapMm + (i % columns * (CellMm.X + GapMm)), GapMm + (i / columns * (CellMm.Y + NameMm + GapMm)));
                canvas.Save();
                canvas.Translate((float)corner.X, (float)corner.Y);
                Cell(canvas, sheet);
                canvas.Restore();
            }
        });
    }

    // The paper in a thin frame, and its name.
    private static void Cell(SKCanvas canvas, Sheet sheet)
    {
        var scale = Math.Min(CellMm.X / sheet.Page.Width, CellMm.Y / sheet.Page.Height);
        canvas.Save();
        canvas.Translate((float)((CellMm.X - (sheet.Page.Width * scale)) / 2), (float)(CellMm.Y - (sheet.Page.Height * scale)));
        canvas.Scale((float)scale);
        var painter = new SheetPainter(canvas, sheet.Page, LeastLineMm / scale);
        painter.Draw([new ContourShape("paper", Role.Text, Contour.Rectangle(sheet.Page), Emphasis.Faint)]);
        painter.Draw(sheet.Shapes);
        canvas.Restore();
        var under = new Box2(new Point2(0, -(CellMm.Y + NameMm)), new Point2(CellMm.X, 0));
        new SheetPainter(canvas, under, leastLineMm: 0)
            .Draw([new LabelShape("names", Role.Text, sheet.Name, new Point2(CellMm.X / 2, -(CellMm.Y + 5)), TextMm, Alignment.Centre)]);
    }
}
