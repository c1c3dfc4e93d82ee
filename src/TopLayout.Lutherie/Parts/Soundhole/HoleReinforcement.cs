using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>How the hole is reinforced.</summary>
public enum HoleReinforcementStyle
{
    /// <summary>One plate all round.</summary>
    Ring,

    /// <summary>Straight strips beside it.</summary>
    Strips,
}

/// <summary>The reinforcement round the hole on the inside: a ring, or straight strips, their grain along them.</summary>
public static class HoleReinforcement
{
    /// <summary>The ring's name, and how the names of strips begin.</summary>
    public const string Name = "hole reinforcement";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("hole_reinforcement", "a thin ring or strips round the hole, inside");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Ring or strips.</summary>
    public static readonly Parameter<HoleReinforcementStyle> Style = Parameter.Choice(
        Section, "style", "a ring all round, or straight strips", HoleReinforcementStyle.Ring, ("ring", HoleReinforcementStyle.Ring), ("strips", HoleReinforcementStyle.Strips));

    /// <summary>Hole edge to reinforcement.</summary>
    public static readonly Parameter<double> Inset = Parameter.Length(
        Section, "inset", "from the hole's edge to the reinforcement", possible: (0, 40), usual: (0, 4), fallback: 1);

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width of the ring or of a strip", possible: (2, 60), usual: (5, 20), fallback: 12);

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (0.5, 8), usual: (1, 2.5), fallback: 2);

    /// <summary>How the ring's grain lies.</summary>
    public static readonly Parameter<GrainChoice> Grain = Parameter.Choice(
        Section, "grain", "long grain of the ring against the top's: along or across", GrainChoice.Along, ("along", GrainChoice.Along), ("across", GrainChoice.Across));

    /// <summary>How many strips.</summary>
    public static readonly Parameter<int> Count = Parameter.Count(
        Section, "strips", "number of strips: 2 beside the hole, 3 also towards the tail, 4 also towards the neck", possible: (2, 4), usual: (2, 3), fallback: 2);

    /// <summary>Length of a strip.</summary>
    public static readonly OptionalParameter<double> Length = Parameter.Length(
        Section, "length", "length of a strip; the hole's diameter, or the longer of its sides, when left out", possible: (10, 300), usual: (60, 130)).Optional();

    /// <summary>The strips beside the hole, moved.</summary>
    public static readonly Parameter<double> Shift = Parameter.Length(
        Section, "shift", "middle of the strips beside the hole, from the hole's centre towards the neck", possible: (-150, 150), usual: (-30, 30), fallback: 0);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Style, Inset, Width, Thickness, Grain, Count, Length, Shift];

    /// <summary>True for the ring and for every strip.</summary>
    public static bool IsPartOf(Member member) => member.Name.StartsWith(Name, StringComparison.Ordinal);

    internal static void Build(Bench bench, Hole hole)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (section.Get(Style).Value == HoleReinforcementStyle.Strips)
        {
            BuildStrips(bench, section, hole);
        }
        else
        {
            BuildRing(bench, section, hole);
        }
    }

    private static void BuildRing(Bench bench, DesignSection section, Hole hole)
    {
        var (inset, width) = (section[Inset].Value, section[Width].Value);
        var ring = Region.Between(hole.LineOutside(inset + width, "outer edge"), hole.LineOutside(inset, "hole side"));
        Add(bench, section, Name, ring, Stock.Lying(section.Get(Grain).Value).Grain);
    }

    private static void BuildStrips(Bench bench, DesignSection section, Hole hole)
    {
        ReadOnlySpan<(string, Vec2)> all = [("bass", -Vec2.UnitX), ("treble", Vec2.UnitX), ("tail side", -Vec2.UnitY), ("neck side", Vec2.UnitY)];
        var half = section.Find(Length)?.Value / 2 ?? Math.Max(hole.HalfWidth, hole.HalfLength);
        foreach (var (where, outward) in all[..section[Count].Value])
        {
            var middle = hole.Center + (outward.Y == 0 ? Vec2.UnitY * section[Shift].Value : default);
            var near = middle + (outward * ((outward.Y == 0 ? hole.HalfWidth : hole.HalfLength) + section[Inset].Value));
            var far = near + (outward * section[Width].Value);
            var along = outward.Left * half;
            var (first, last) = outward.Y == 0
                ? outward.X > 0 ? ("tail end", "neck end") : ("neck end", "tail end")
                : outward.Y > 0 ? ("treble end", "bass end") : ("bass end", "treble end");
            var strip = Region.Inside(Contour.Chain(
                [
                    new Segment(far - along, far + along, 0, "outer side"),
                    new Segment(far + along, near + along, 0, last),
                    new Segment(near + along, near - along, 0, "hole side"),
                    new Segment(near - along, far - along, 0, first),
                ],
                isClosed: true));
            Add(bench, section, $"{Name}, {where}", strip, GrainOf.Direction(along));
        }
    }

    private static void Add(Bench bench, DesignSection section, string name, Region footprint, Angle grain) => bench.Add(new Member
    {
        Name = name,
        Kind = MemberKind.Plate,
        Face = TopFace.Inside,
        Footprint = footprint,
        ThicknessMm = section[Thickness].Value,
        Material = Stock.Read(section),
        Grain = grain,
        Places = [section[Width].Place, section[Inset].Place, section.Get(Style).Place],
    });
}
