using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>One size between two places: extension lines from them, a line with arrows across, and its words over it, a quarter of the way along.</summary>
internal static class Dimension
{
    private const double OffMm = 2;
    private const double PastMm = 1.5;
    private const double ArrowMm = 3;
    private const double ArrowHalfMm = 0.6;
    private const double WordsMm = 1;

    /// <summary>Draws a width at a height, mm.</summary>
    public static void Across(SheetBoard board, string part, Point2 from, Point2 to, double height, string words)
    {
        var (a, b) = (new Point2(from.X, height), new Point2(to.X, height));
        Extension(board, part, from, a);
        Extension(board, part, to, b);
        Line(board, part, a, b);
        board.Write(part, words, new Point2(a.X + ((b.X - a.X) / 4), height + WordsMm), alignment: Alignment.Centre, role: Role.Dimension);
    }

    private static void Extension(SheetBoard board, string part, Point2 from, Point2 to)
    {
        var u = (to - from).Unit;
        board.Line(part, Role.Dimension, from + (u * OffMm), to + (u * PastMm));
    }

    private static void Line(SheetBoard board, string part, Point2 from, Point2 to)
    {
        board.Line(part, Role.Dimension, from, to);
        var u = (to - from).Unit;
        foreach (var (tip, back) in (ReadOnlySpan<(Point2, Vec2)>)[(from, u), (to, -u)])
        {
            board.Draw(part, Role.Dimension, Contour.Polygon(tip, tip + (back * ArrowMm) + (back.Left * ArrowHalfMm), tip + (back * ArrowMm) - (back.Left * ArrowHalfMm)));
        }
    }
}
