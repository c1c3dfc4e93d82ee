using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// The proof of a print's scale: a bar along the bottom and one along the left edge, as long as the paper allows in tens of mm or in whole inches.
/// A ruler reads to a quarter of a mm, so a long bar shows an error that a short one hides.
/// </summary>
internal static class ScaleBars
{
    /// <summary>The part they are drawn under.</summary>
    public const string Part = "scale bars";

    private const double TileFromEdgeMm = 7;
    private const double TickMm = 2;
    private const double TextMm = 2.2;
    private const double MmPerInch = 25.4;

    // The words of the bar along the bottom keep off the other one's foot.
    private const double WordsFromStartMm = 6;

    /// <summary>Length of the bar along a side of the paper, mm.</summary>
    public static double LengthOn(double sideMm, Ruler ruler = Ruler.Millimetres) => Math.Floor((sideMm - 30) / WholeMm(ruler)) * WholeMm(ruler);

    /// <summary>A length as the ruler says it, with its unit.</summary>
    public static string Said(double mm, Ruler ruler) => ruler == Ruler.Inches ? $"{NumberFormat.Trimmed(mm / MmPerInch, 3)} in" : $"{NumberFormat.Trimmed(mm, 1)} mm";

    /// <summary>Both bars on paper of a size, in mm from its lower left corner.</summary>
    public static IEnumerable<Shape> Of(double widthMm, double heightMm, Ruler ruler, double fromEdgeMm = TileFromEdgeMm)
    {
        var (across, along) = (LengthOn(widthMm, ruler), LengthOn(heightMm, ruler));
        return
        [
            .. Bar(across, ruler, new Placement(new Vec2((widthMm - across) / 2, fromEdgeMm), Angle.Zero, false), "x"),
            .. Bar(along, ruler, new Placement(new Vec2(fromEdgeMm, (heightMm - along) / 2), Angle.FromDegrees(-90), true), "y"),
        ];
    }

    /// <summary>
    /// Three crosses in the margins that stand 150, 200 and 250 mm apart, or 6, 8 and 10 inches, a right triangle: what is square on paper is
    /// square on the print. None where the paper is too small.
    /// </summary>
    public static IEnumerable<Shape> Triangle(double widthMm, double heightMm, double fromEdgeMm, Ruler ruler)
    {
        var unit = ruler == Ruler.Inches ? 2 * MmPerInch : 50;
        var (across, along) = widthMm >= heightMm ? (4 * unit, 3 * unit) : (3 * unit, 4 * unit);
        if (widthMm < across + (4 * fromEdgeMm) || heightMm < along + (4 * fromEdgeMm))
        {
            yield break;
        }

        var corner = new Point2(fromEdgeMm, fromEdgeMm);
        foreach (var (at, name) in ((Point2, string)[])[(corner, "P"), (corner + new Vec2(across, 0), "Q"), (corner + new Vec2(0, along), "R")])
        {
            yield return Line(default, at - new Vec2(TickMm, 0), at + new Vec2(TickMm, 0));
            yield return Line(default, at - new Vec2(0, TickMm), at + new Vec2(0, TickMm));
            yield return new LabelShape(Part, Role.Dimension, name, at + new Vec2(0.8, 0.8), TextMm);
        }

        string Side(double mm) => Said(mm, ruler) + (ruler == Ruler.Inches ? $" ({Said(mm, Ruler.Millimetres)})" : "");
        var text = $"P to Q {Side(across)}, P to R {Side(along)}, Q to R {Side(5 * unit)}; print at actual size, 100 %";
        yield return new LabelShape(Part, Role.Dimension, text, corner + new Vec2(6, -1), TextMm);
    }

    private static double WholeMm(Ruler ruler) => ruler == Ruler.Inches ? MmPerInch : 10;

    // Along x from the origin with its ticks upward, then placed; mirrored and turned it runs along y with its ticks to the right.
    private static IEnumerable<Shape> Bar(double length, Ruler ruler, Placement placement, string axis)
    {
        yield return Line(placement, new Point2(0, 0), new Point2(length, 0));
        var ticks = (int)Math.Round(length / WholeMm(ruler));
        for (var i = 0; i <= ticks; i++)
        {
            var at = length * i / ticks;
            yield return Line(placement, new Point2(at, 0), new Point2(at, i == 0 || i == ticks ? TickMm : TickMm / 2));
        }

        var text = $"{axis}: {Said(length, ruler)} = {Said(length, ruler == Ruler.Inches ? Ruler.Millimetres : Ruler.Inches)}";
        var upright = placement.Mirrored;

        // The upright bar's words keep off its middle too.
        var anchor = placement.Apply(new Point2(upright ? length / 4 : WordsFromStartMm, TickMm + 0.6)) + (upright ? new Vec2(TextMm, 0) : default);
        yield return new LabelShape(Part, Role.Dimension, text, anchor, TextMm, Alignment.Left, upright ? Angle.FromDegrees(90) : Angle.Zero);
    }

    private static ContourShape Line(Placement placement, Point2 from, Point2 to) =>
        new(Part, Role.Dimension, new Contour([new Vertex(placement.Apply(from)), new Vertex(placement.Apply(to))], isClosed: false));
}
