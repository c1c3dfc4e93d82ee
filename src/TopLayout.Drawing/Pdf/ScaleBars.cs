using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// The proof of a print's scale: a bar along the bottom and one along the left edge, as long as the paper allows in tens of mm. A ruler reads to
/// a quarter of a mm, so a long bar shows an error that a short one hides.
/// </summary>
internal static class ScaleBars
{
    /// <summary>The part they are drawn under.</summary>
    public const string Part = "scale bars";

    private const double TileFromEdgeMm = 7;
    private const double TickMm = 2;
    private const double TextMm = 2.2;
    private const double MmPerInch = 25.4;

    /// <summary>Length of the bar along a side of the paper, mm.</summary>
    public static double LengthOn(double sideMm) => Math.Floor((sideMm - 30) / 10) * 10;

    /// <summary>Both bars on paper of a size, in mm from its lower left corner.</summary>
    public static IEnumerable<Shape> Of(double widthMm, double heightMm, double fromEdgeMm = TileFromEdgeMm) =>
        [.. Bar(widthMm, new Placement(new Vec2((widthMm - LengthOn(widthMm)) / 2, fromEdgeMm), Angle.Zero, false), "x"),
         .. Bar(heightMm, new Placement(new Vec2(fromEdgeMm, (heightMm - LengthOn(heightMm)) / 2), Angle.FromDegrees(-90), true), "y")];

    /// <summary>
    /// Three crosses in the margins that stand 150, 200 and 250 mm apart, a right triangle: what is square on paper is square on the print. None
    /// where the paper is too small.
    /// </summary>
    public static IEnumerable<Shape> Triangle(double widthMm, double heightMm, double fromEdgeMm)
    {
        var lies = widthMm >= heightMm;
        var (across, along) = lies ? (200.0, 150.0) : (150.0, 200.0);
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

        var text = $"P to Q {NumberFormat.Trimmed(across, 0)} mm, P to R {NumberFormat.Trimmed(along, 0)} mm, Q to R 250 mm; print at actual size, 100 %";
        yield return new LabelShape(Part, Role.Dimension, text, corner + new Vec2(6, -1), TextMm);
    }

    // Along x from the origin with its ticks upward, then placed; mirrored and turned it runs along y with its ticks to the right.
    private static IEnumerable<Shape> Bar(double sideMm, Placement placement, string axis)
    {
        var length = LengthOn(sideMm);
        yield return Line(placement, new Point2(0, 0), new Point2(length, 0));
        for (var at = 0.0; at <= length; at += 10)
        {
            yield return Line(placement, new Point2(at, 0), new Point2(at, at == 0 || at == length ? TickMm : TickMm / 2));
        }

        var text = $"{axis}: {NumberFormat.Trimmed(length, 0)} mm = {NumberFormat.Trimmed(length / MmPerInch, 3)} in";
        var upright = placement.Mirrored;

        // The upright bar's words keep off the corner, where the other's begin, and off its middle.
        var anchor = placement.Apply(new Point2(upright ? length / 4 : 0, TickMm + 0.6)) + (upright ? new Vec2(TextMm, 0) : default);
        yield return new LabelShape(Part, Role.Dimension, text, anchor, TextMm, Alignment.Left, upright ? Angle.FromDegrees(90) : Angle.Zero);
    }

    private static ContourShape Line(Placement placement, Point2 from, Point2 to) =>
        new(Part, Role.Dimension, new Contour([new Vertex(placement.Apply(from)), new Vertex(placement.Apply(to))], isClosed: false));
}
