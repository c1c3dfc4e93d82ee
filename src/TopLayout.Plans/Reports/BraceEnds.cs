using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>The end of a brace that is let into the linings.</summary>
/// <param name="Bar">The brace.</param>
/// <param name="Side">Which half of the rim: "bass" or "treble".</param>
/// <param name="RoundMm">Along the outer face of the sides from the tail seam to the brace's middle, mm: what a tape reads.</param>
/// <param name="WidthMm">The brace's width, mm.</param>
/// <param name="HeightMm">How high its end is left, and how deep the pocket is, mm.</param>
internal sealed record BraceEnd(Member Bar, string Side, double RoundMm, double WidthMm, double HeightMm);

/// <summary>
/// Brace ends and their pockets in the linings. An end is carved down to a height that the pocket repeats: deeper, and the brace hangs in the
/// air; shallower, and it holds the top off the lining.
/// </summary>
internal static class BraceEnds
{
    // Midway between what is usually left: 2.3 to 3.2 on guitars, 1.5 to 2.2 on a ukulele. Common practice, no source.
    private const double EndMm = 2.8;
    private const double UkuleleEndMm = 1.8;

    /// <summary>All of them, brace by brace, the end nearer to the neck first.</summary>
    public static IReadOnlyList<BraceEnd> Of(Layout layout)
    {
        var design = layout.Design;
        var left = design.Find(Body.Type)?.Value == BodyType.TenorUkulele ? UkuleleEndMm : EndMm;
        var inLining = design[Rim.SideThickness].Value + (design[Rim.LiningWidth].Value / 2);
        return
        [
            .. layout.Members.Where(m => m.Kind == MemberKind.Bar && m.JoinedWith.Any(n => layout.Find(n)?.Kind == MemberKind.Lining))
                .SelectMany(bar => Axis(bar) is var (upper, lower, width)
                    ? ((Point2[])[upper, lower]).Where(p => layout.Outline.DistanceTo(p) <= inLining)
                        .Select(p => new BraceEnd(bar, p.X < 0 ? "bass" : "treble", RoundTheRim(layout, p), width, Math.Min(left, bar.ThicknessMm)))
                    : []),
        ];
    }

    /// <summary>The table; without rows when no brace reaches the linings.</summary>
    public static NumberTable Table(Layout layout) => new(
        "brace_ends",
        "Brace ends and their pockets in the linings",
        [
            new("name", "brace"), new("side", "rim"), new("round_the_rim", "round the rim, from the tail seam"), new("width", "width"), new("height", "end's height, pocket's depth"),
        ],
        Of(layout).Select(e => (IReadOnlyList<Cell>)[e.Bar.Name, e.Side, e.RoundMm, e.WidthMm, e.HeightMm]));

    /// <summary>The ends of a brace's axis, the one nearer to the neck first, and its width, mm.</summary>
    public static (Point2 Upper, Point2 Lower, double WidthMm) Axis(Member bar)
    {
        var sides = Sides(bar);
        var (first, second) = (sides[0].Start.MidpointTo(sides[1].End), sides[0].End.MidpointTo(sides[1].Start));
        var isInOrder = first.Y > second.Y || (first.Y == second.Y && first.X < second.X);
        var width = Math.Abs((sides[1].Start - sides[0].Start).Cross(sides[0].TangentAt(0)));
        return isInOrder ? (first, second, width) : (second, first, width);
    }

    /// <summary>The long sides of a brace.</summary>
    public static Segment[] Sides(Member bar) => [.. bar.Footprint.Edges.Where(e => e.Label is "neck side" or "tail side" or "bass side" or "treble side")];

    private static double RoundTheRim(Layout layout, Point2 end)
    {
        var half = Contour.Chain(BodyWidths.Half(layout.Outline, end.X < 0 ? -1 : 1), isClosed: false);
        return half.Length - half.LengthTo(half.ClosestTo(new Point2(Math.Abs(end.X), end.Y)));
    }
}
