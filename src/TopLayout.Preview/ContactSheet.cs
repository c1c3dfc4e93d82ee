using SkiaSharp;
using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Preview;

/// <summary>All sheets small on one picture, those of a kind together under their heading, row by row, each with its name under it.</summary>
public static class ContactSheet
{
    private const double GapMm = 6;
    private const double NameMm = 8;
    private const double TextMm = 3.6;
    private const double HeadingMm = 5;
    private const double LeastLineMm = 0.1;

    // The highest and widest a sheet is drawn.
    private static readonly Vec2 CellMm = new(62, 76);

    /// <summary>Writes it as PNG; the stream stays open.</summary>
    /// <param name="kinds">The heading of every kind and its sheets, at least one, in order.</param>
    /// <param name="output">Where to.</param>
    /// <param name="columns">Sheets in a row, &gt; 0.</param>
    /// <param name="dotsPerInch">Pixels to an inch of the picture, &gt; 0.</param>
    /// <exception cref="ArgumentException">There is no sheet, or a kind without any.</exception>
    public static void Write(IEnumerable<(string Heading, IReadOnlyList<Sheet> Sheets)> kinds, Stream output, int columns = 5, double dotsPerInch = 150)
    {
        var list = kinds.ToList();
        if (list.Count == 0 || list.Exists(k => k.Sheets.Count == 0))
        {
            throw new ArgumentException("a contact sheet shows at least one sheet of every kind", nameof(kinds));
        }

        var rows = list.SelectMany(k => k.Sheets.Chunk(columns).Select((sheets, i) => new Row(i == 0 ? k.Heading : "", sheets))).ToList();
        var perMm = dotsPerInch / PngWriter.MmPerInch;
        var (width, height) = (GapMm + (Math.Min(columns, rows.Max(r => r.Sheets.Length)) * (CellMm.X + GapMm)), GapMm + rows.Sum(r => r.HeightMm + GapMm));
        Picture.Write(output, width * perMm, height * perMm, canvas =>
        {
            canvas.Scale((float)perMm);
            canvas.Translate((float)GapMm, (float)GapMm);
            foreach (var row in rows)
            {
                Draw(canvas, row);
                canvas.Translate(0, (float)(row.HeightMm + GapMm));
            }
        });
    }

    private static void Draw(SKCanvas canvas, Row row)
    {
        canvas.Save();
        if (row.Heading.Length > 0)
        {
            Words(canvas, row.Heading, new Point2(0, -HeadingMm), HeadingMm, Alignment.Left);
            canvas.Translate(0, (float)Row.HeadMm);
        }

        foreach (var sheet in row.Sheets)
        {
            Cell(canvas, sheet, row.PaperMm);
            canvas.Translate((float)(CellMm.X + GapMm), 0);
        }

        canvas.Restore();
    }

    // The paper in a thin frame, on the foot of its row, and its name.
    private static void Cell(SKCanvas canvas, Sheet sheet, double paperMm)
    {
        var scale = Scale(sheet);
        canvas.Save();
        canvas.Translate((float)((CellMm.X - (sheet.Page.Width * scale)) / 2), (float)(paperMm - (sheet.Page.Height * scale)));
        canvas.Scale((float)scale);
        var painter = new SheetPainter(canvas, sheet.Page, LeastLineMm / scale);
        painter.Draw([new ContourShape("paper", Role.Text, Contour.Rectangle(sheet.Page), Emphasis.Faint)]);
        painter.Draw(sheet.Shapes);
        canvas.Restore();

        // A long name smaller, so that it stays under its sheet.
        var text = Math.Min(TextMm, TextMm * CellMm.X / Lettering.Measure(sheet.Name, TextMm).Width);
        Words(canvas, sheet.Name, new Point2(CellMm.X / 2, -(paperMm + 5.5)), text, Alignment.Centre);
    }

    private static void Words(SKCanvas canvas, string text, Point2 at, double heightMm, Alignment alignment) =>
        new SheetPainter(canvas, new Box2(new Point2(0, -(CellMm.Y + NameMm)), new Point2(CellMm.X, 0)), leastLineMm: 0)
            .Draw([new LabelShape("names", Role.Text, text, at, heightMm, alignment)]);

    private static double Scale(Sheet sheet) => Math.Min(CellMm.X / sheet.Page.Width, CellMm.Y / sheet.Page.Height);

    // A row is as high as its highest sheet, with the names below and the heading above.
    private sealed record Row(string Heading, Sheet[] Sheets)
    {
        public const double HeadMm = HeadingMm + 5;

        public double PaperMm => Sheets.Max(s => s.Page.Height * Scale(s));

        public double HeightMm => (Heading.Length > 0 ? HeadMm : 0) + PaperMm + NameMm;
    }
}
