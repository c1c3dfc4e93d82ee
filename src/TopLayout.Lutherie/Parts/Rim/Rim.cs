using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>Sides and linings: the lines inside the outline.</summary>
public static class Rim
{
    /// <summary>Sides.</summary>
    public static readonly Section Sides = Section.Always("sides", "the sides");

    /// <summary>Linings.</summary>
    public static readonly Section Lining = Section.Always("lining", "the linings on the top's edge of the sides");

    /// <summary>Thickness of the sides.</summary>
    public static readonly Parameter<double> SideThickness = Parameter.Length(
        Sides, "thickness", "thickness of the sides", possible: (1, 6), usual: (1.5, 2.5), fallback: 2.1,
        byBody: BodyValues.Of(steel: (2.1, 1.8, 2.5), classical: (2, 1.8, 2.5), tenorUkulele: (1.8, 1.5, 2)));

    /// <summary>Width of the lining.</summary>
    public static readonly Parameter<double> LiningWidth = Parameter.Length(
        Lining, "width", "width of the lining on the glued edge", possible: (1.5, 15), usual: (2, 8), fallback: 6.5,
        byBody: BodyValues.Of(steel: (6.5, 5, 8), classical: (6, 5, 8), tenorUkulele: (5, 2, 6)));

    /// <summary>Height of the lining.</summary>
    public static readonly Parameter<double> LiningHeight = Parameter.Length(
        Lining, "height", "height of the lining down the side", possible: (4, 30), usual: (8, 19), fallback: 16,
        byBody: BodyValues.Of(steel: (16, 12, 19), classical: (16, 12, 19), tenorUkulele: (10, 8, 12)));

    /// <summary>Wood and sawing of the lining.</summary>
    public static readonly Stock LiningStock = new(Lining, "american_basswood", Sawing.Unknown);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [SideThickness, LiningWidth, LiningHeight, .. LiningStock.All];

    /// <summary>Inside of the sides and inner line of the linings, counter-clockwise; null, with the misfit said, when an arc is too tight.</summary>
    internal static (Contour InsideOfSides, Contour LiningLine)? Lines(Bench bench, Contour outline)
    {
        var design = bench.Design;
        var (side, lining) = (design[SideThickness], design[LiningWidth]);
        var inside = outline.Parallel(side.Value);
        var line = inside?.Parallel(lining.Value);
        if (line is null)
        {
            var corner = outline.Segments.Where(s => s.Bulge > 0).MinBy(s => s.Radius);
            bench.Misfit(
                "lining",
                $"the {corner.Label}'s radius of {Say.Mm(corner.Radius)} is too small for sides and lining {Say.Mm(side.Value + lining.Value)} thick",
                "use a rounder corner, or thinner sides and linings",
                lining.Place,
                design[Outline.NeckCorner].Place,
                design[Outline.TailCorner].Place);
            return null;
        }

        return (inside!, line);
    }

    /// <summary>The two linings, from block to block.</summary>
    internal static void BuildLinings(Bench bench, Contour insideOfSides, Contour liningLine)
    {
        foreach (var (side, name) in (ReadOnlySpan<(int, string)>)[(-1, "bass lining"), (1, "treble lining")])
        {
            var footprint = LiningFootprint(bench.Design, insideOfSides, liningLine, side);
            bench.AddOrMisfit(footprint, name, bench.Design[LiningWidth].Place, region => Member(bench.Design, name, region));
        }
    }

    private static Member Member(Design design, string name, Region footprint) => new()
    {
        Name = name,
        Kind = MemberKind.Lining,
        Face = TopFace.Inside,
        Footprint = footprint,
        ThicknessMm = design[LiningHeight].Value,
        Material = LiningStock.Read(design.In(Lining)),
        Grain = Angle.Zero,
        UngluedEdges = ["outside", "block end"],
        JoinedWith = [Block.Neck.Name, Block.Tail.Name],
        ActingHalfWidthMm = design[LiningWidth].Value / 2,
        Places = [design[LiningWidth].Place],
    };

    // Between the inside of the sides and the lining's line, from the neck block's side to the tail block's.
    private static Region? LiningFootprint(Design design, Contour inside, Contour line, int side)
    {
        var neck = Cut(side * design[Block.Neck.Width].Value / 2);
        var tail = Cut(side * design[Block.Tail.Width].Value / 2);
        var corners = (Outer: (Neck: Place(inside, neck, true), Tail: Place(inside, tail, false)), Inner: (Neck: Place(line, neck, true), Tail: Place(line, tail, false)));
        if (corners.Outer.Neck is not { } on || corners.Outer.Tail is not { } ot || corners.Inner.Neck is not { } @in || corners.Inner.Tail is not { } it)
        {
            return null;
        }

        // Counter-clockwise lines: on the bass side they run from the neck to the tail, on the treble side from the tail to the neck.
        IReadOnlyList<Segment> Way(Contour c, Location atNeck, Location atTail) =>
            side < 0 ? c.Between(atNeck, atTail) : [.. c.Between(atTail, atNeck).Reverse().Select(s => s.Reversed())];
        return Region.Inside(Contour.Chain(
            [
                .. Way(inside, on, ot).Select(s => s with { Label = "outside" }),
                new Segment(ot.Point, it.Point, 0, "block end"),
                .. Way(line, @in, it).Reverse().Select(s => s.Reversed() with { Label = "inner edge" }),
                new Segment(@in.Point, on.Point, 0, "block end"),
            ],
            isClosed: true));
    }

    private static Segment Cut(double x) => BarStrip.Line(new Point2(x, 0), Vec2.UnitY, "");

    private static Location? Place(Contour contour, Segment cut, bool atNeck)
    {
        var crossings = contour.Crossings(cut);
        return crossings.Count < 2 ? null : atNeck ? crossings[^1] : crossings[0];
    }
}
