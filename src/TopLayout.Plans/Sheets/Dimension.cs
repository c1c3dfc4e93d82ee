using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>One size between two places: extension lines from them, a line with arrows across, and its words over it, in the middle where that is free, else a quarter of the way along.</summary>
internal static class Dimension
{
    private const double OffMm = 2;
    private const double PastMm = 1.5;
    private const double ArrowMm = 3;
    private const double ArrowHalfMm = 0.6;
    private const double WordsMm = 1;
    private const double ClearMm = 0.4;
    private const double BesideMm = 2;

    /// <summary>Draws a width at a height, mm.</summary>
    public static void Across(SheetBoard board, string part, Point2 from, Point2 to, double height, string words)
    {
        var (a, b) = (new Point2(from.X, height), new Point2(to.X, height));
        Extension(board, part, from, a);
        Extension(board, part, to, b);
        Line(board, part, a, b);
        var box = Lettering.Measure(words, SheetBoard.TextMm);
        if (box.Width + (2 * WordsMm) > Math.Abs(b.X - a.X))
        {
            // Too wide to stand between the arrows.
            board.Write(part, words, new Point2(Math.Max(a.X, b.X) + BesideMm, height - (SheetBoard.TextMm / 2)), role: Role.Dimension);
            return;
        }

        bool IsFree(double x) => board.IsFree(new Box2(new Point2(x - (box.Width / 2) - ClearMm, height + ClearMm), new Point2(x + (box.Width / 2) + ClearMm, height + WordsMm + box.Height + ClearMm)));
        var middle = (a.X + b.X) / 2;
        var x = ((double[])[middle, a.X + ((b.X - a.X) / 4), b.X - ((b.X - a.X) / 4)]).Where(IsFree).DefaultIfEmpty(middle).First();
        board.Write(part, words, new Point2(x, height + WordsMm), alignment: Alignment.Centre, role: Role.Dimension);
    }

    /// <summary>Draws a height at a place across, mm; its words stand level beside it, outward.</summary>
    public static void Upright(SheetBoard board, string part, Point2 from, Point2 to, double across, string words)
    {
        var (a, b) = (new Point2(across, from.Y), new Point2(across, to.Y));
        Extension(board, part, from, a);
        Extension(board, part, to, b);
        Line(board, part, a, b);
        board.Write(part, words, new Point2(across + BesideMm, a.MidpointTo(b).Y - (SheetBoard.TextMm / 2)), role: Role.Dimension);
    }

    // None where the line lies on the places themselves.
    private static void Extension(SheetBoard board, string part, Point2 from, Point2 to)
    {
        if (from.DistanceTo(to) <= OffMm)
        {
            return;
        }

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
