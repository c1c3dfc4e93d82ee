using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
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

/// <summary>The reinforcement round the hole on the inside: a ring, or straight strips, their grain along them; cut along the linings where it reaches them.</summary>
public static class HoleReinforcement
{
    /// <summary>The ring's name, and how the names of strips begin.</summary>
    public const string Name = "hole reinforcement";

    // In the order in which a count of strips takes them.
    private static readonly (string Name, Vec2 Outward)[] StripSides = [("bass", -Vec2.UnitX), ("treble", Vec2.UnitX), ("tail side", -Vec2.UnitY), ("neck side", Vec2.UnitY)];

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

    /// <summary>The edge by which <see cref="Inset"/> is measured.</summary>
    public const string HoleSide = "hole side";

    /// <summary>True for the ring and for every strip.</summary>
    public static bool IsPartOf(Member member) => member.Name.StartsWith(Name, StringComparison.Ordinal);

    /// <summary>The length of a strip, mm, as written or as the hole's size gives it.</summary>
    internal static double StripLength(Design design, Hole hole) =>
        design.In(Section).Find(Length)?.Value ?? 2 * Math.Max(hole.HalfWidth, hole.HalfLength);

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (section.Get(Style).Value == HoleReinforcementStyle.Ring)
        {
            var (inset, width) = (section[Inset].Value, section[Width].Value);
            var ring = Region.Between(room.Hole.LineOutside(inset + width, "outer edge"), room.Hole.LineOutside(inset, HoleSide));
            Add(bench, room, section, Name, ring, Stock.Lying(section.Get(Grain).Value).Grain);
            return;
        }

        foreach (var side in StripSides[..section[Count].Value])
        {
            Add(bench, room, section, $"{Name}, {side.Name}", Strip(section, room.Hole, side.Outward, StripLength(design, room.Hole)), GrainOf.Direction(side.Outward.Left));
        }
    }

    /// <summary>A strip as long as told, not cut to anything; by its member's name.</summary>
    internal static Region Strip(Design design, Hole hole, string name, double length) =>
        Strip(design.In(Section), hole, StripSides.First(s => name.EndsWith(s.Name, StringComparison.Ordinal)).Outward, length);

    private static Region Strip(DesignSection section, Hole hole, Vec2 outward, double length)
    {
        var middle = hole.Center + (outward.Y == 0 ? Vec2.UnitY * section[Shift].Value : default);
        var near = middle + (outward * ((outward.Y == 0 ? hole.HalfWidth : hole.HalfLength) + section[Inset].Value));
        var far = near + (outward * section[Width].Value);
        var along = outward.Left * (length / 2);
        var (first, last) = outward.Y == 0
            ? outward.X > 0 ? ("tail end", "neck end") : ("neck end", "tail end")
            : outward.Y > 0 ? ("treble end", "bass end") : ("bass end", "treble end");
        return Region.Inside(Contour.Chain(
            [
                new Segment(far - along, far + along, 0, "outer side"),
                new Segment(far + along, near + along, 0, last),
                new Segment(near + along, near - along, 0, HoleSide),
                new Segment(near - along, far - along, 0, first),
            ],
            isClosed: true));
    }

    // Of several pieces that the linings leave, the largest is kept.
    private static void Add(Bench bench, BarRoom room, DesignSection section, string name, Region whole, Angle grain)
    {
        var inside = Region.Inside(room.LiningLine.Labelled("lining side"));
        if (whole.Intersect(inside).Parts.MaxBy(p => p.Area) is not { } footprint)
        {
            bench.LeaveOut(
                name, $"{Say.The(name)} lies wholly outside the linings", "bring it nearer to the hole, or leave it out", section[Inset].Place, section.Get(Style).Place);
            return;
        }

        SayCut(bench, room, section, name, whole.Subtract(inside));
        bench.Add(new Member
        {
            Name = name,
            Kind = MemberKind.Plate,
            Face = TopFace.Inside,
            Footprint = footprint,
            ThicknessMm = section[Thickness].Value,
            Material = Stock.Read(section),
            Grain = grain,
            // A strip is moved off a grain line, a ring made wider or narrower.
            Places = name == Name ? [section[Width].Place, section[Inset].Place, section.Get(Style).Place] : [section[Inset].Place, section[Width].Place, section.Get(Style).Place],
        });
    }

    private static void SayCut(Bench bench, BarRoom room, DesignSection section, string name, Region off)
    {
        var past = off.Edges.SelectMany(e => new[] { e.Start, e.PointAt(0.5) }).Select(room.LiningLine.DistanceTo).DefaultIfEmpty(0).Max();
        if (past <= Tolerances.ShortestMm)
        {
            return;
        }

        var longest = off.Edges.MaxBy(e => e.ChordLength);
        bench.Fault(
            Rules.DrawnOtherwise,
            Severity.Remark,
            name,
            $"{Say.The(name)} reaches {Say.Mm(past)} into the linings and is cut along them",
            section.Get(Style).Value == HoleReinforcementStyle.Strips
                ? "shorten or narrow the strips, or move them with `shift`, where they are to stay whole"
                : "narrow the ring where it is to stay whole, or take strips (`style = \"strips\"`)",
            new Measurement(past, "mm", 0),
            (longest.Start, longest.End),
            section[Width].Place,
            section.PlaceOf(Length),
            section[Shift].Place);
    }
}
