using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The fretboard where it lies on the top: from the neck edge to its end past the last fret.</summary>
public static class Fretboard
{
    /// <summary>The member's name.</summary>
    public const string Name = "fretboard extension";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("fretboard", "the fretboard over the top");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "rosewood_indian", Sawing.Unknown);

    /// <summary>Width at the nut.</summary>
    public static readonly Parameter<double> NutWidth = Parameter.Length(
        Section, "nut_width", "width at the nut", possible: (20, 80), usual: (30, 53), fallback: 44,
        byBody: BodyValues.Of(classical: 52, tenorUkulele: 36, octaveMandolin: 34));

    /// <summary>Width at the join.</summary>
    public static readonly Parameter<double> JoinWidth = Parameter.Length(
        Section, "join_width", "width at the neck edge", possible: (25, 90), usual: (40, 64), fallback: 56,
        byBody: BodyValues.Of(classical: 62, tenorUkulele: 46, octaveMandolin: 46));

    /// <summary>Board past the last fret.</summary>
    public static readonly Parameter<double> PastLastFret = Parameter.Length(
        Section, "past_last_fret", "board left past the last fret", possible: (0, 40), usual: (3, 8), fallback: 5);

    /// <summary>Thickness over the top.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness over the top", possible: (2, 12), usual: (4, 7), fallback: 6);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, NutWidth, JoinWidth, PastLastFret, Thickness];

    /// <summary>Neck edge to the fretboard's end, mm.</summary>
    public static double EndFromNeckEdge(Design design) =>
        Scale.Frets(design).FromNeckEdge(design[Scale.LastFret].Value) + design[PastLastFret].Value;

    /// <summary>Half the board's width at a distance from the neck edge, mm: it widens evenly from the nut.</summary>
    public static double HalfWidthAt(Design design, double fromNeckEdge)
    {
        var (nut, join) = (design[NutWidth].Value, design[JoinWidth].Value);
        return (join + ((join - nut) * fromNeckEdge / Scale.Frets(design).NeckEdgeFromNut)) / 2;
    }

    internal static void Build(Bench bench, Contour outline)
    {
        var design = bench.Design;
        var end = EndFromNeckEdge(design);
        if (end <= Tolerances.ShortestMm)
        {
            bench.LeaveOut(
                Name,
                "the last fret lies on the neck, so no board lies on the top",
                "raise `last_fret` above `join_fret`",
                design[Scale.LastFret].Place,
                design[Scale.JoinFret].Place);
            return;
        }

        Point2 At(double side, double y) => new(side * HalfWidthAt(design, y), -y);
        Segment Side(double side, string label) => new(At(side, -end), At(side, 2 * end), 0, label);
        var strip = new BarStrip(Side(1, "treble edge"), Side(-1, "bass edge"));
        var whole = strip.Between(null, BarStrip.Line(new Point2(0, -end), Vec2.UnitX, "end"))!;
        var top = Region.Inside(outline.Labelled(BarStrip.RimEdge));
        if (strip.Within(whole, top, new Point2(0, -end / 2), _ => "neck edge") is not { } footprint)
        {
            bench.LeaveOut(Name, "the fretboard ends where there is no top", "check the scale length and the frets against the body", design[Scale.LastFret].Place, design[Scale.Length].Place);
            return;
        }

        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Fretboard,
            Face = TopFace.Outside,
            Footprint = footprint,
            ThicknessMm = design[Thickness].Value,
            Material = Stock.Read(design.In(Section)),
            Grain = Angle.Zero,
            UngluedEdges = ["neck edge"],
            Places = [design[JoinWidth].Place, design[Scale.LastFret].Place, design[PastLastFret].Place],
        });
    }
}
