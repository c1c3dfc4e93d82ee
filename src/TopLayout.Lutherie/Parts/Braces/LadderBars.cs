using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Ladder bars: straight across the grain anywhere on the body, such as the lower transverse brace of a fan-braced top.</summary>
public static class LadderBars
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable("ladder_bar", "a bar straight across the grain");

    /// <summary>What it is made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (5, 13), 6, usualHeight: (9, 20), 15);

    /// <summary>Centre line below the hole.</summary>
    public static readonly OptionalParameter<double> BelowHole = Parameter.Length(
        Section, "below_hole", "from the hole's edge towards the tail to the bar's centre line", possible: (2, 500), usual: (10, 300)).Optional();

    /// <summary>Centre line above the hole.</summary>
    public static readonly OptionalParameter<double> AboveHole = Parameter.Length(
        Section, "above_hole", "from the hole's edge towards the neck to the bar's centre line", possible: (2, 200), usual: (10, 60)).Optional();

    /// <summary>Centre line from the neck edge.</summary>
    public static readonly OptionalParameter<double> FromNeckEdge = Parameter.Length(
        Section, "from_neck_edge", "from the neck edge to the bar's centre line", possible: (10, 680), usual: (40, 480)).Optional();

    /// <summary>How it ends.</summary>
    public static readonly Parameter<BarEnds> Ends = BarEnd.Choice(Section, BarEnds.Lining);

    /// <summary>Half the length of a floating bar.</summary>
    public static readonly OptionalParameter<double> HalfLength = Parameter.Length(
        Section, "half_length", "from the centre line to either end of a floating bar", possible: (10, 300), usual: (40, 180)).Optional();

    /// <summary>The ways to place it.</summary>
    public static readonly ExactlyOneOf Position = ExactlyOneOf.Required(BelowHole, AboveHole, FromNeckEdge);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, BelowHole, AboveHole, FromNeckEdge, Ends, HalfLength];

    /// <summary>The ladder bar that lies next below the hole; null when there is none.</summary>
    internal static Member? NextBelowHole(Bench bench, Hole hole) => bench.Members
        .Where(m => m.Name.StartsWith("ladder bar", StringComparison.Ordinal) && m.Footprint.Bounds.Center.Y < hole.Center.Y)
        .MaxBy(m => m.Footprint.Bounds.Center.Y);

    internal static void Build(Bench bench, BarRoom room)
    {
        foreach (var section in bench.Design.Each(Section))
        {
            Build(bench, section, room);
        }
    }

    private static void Build(Bench bench, DesignSection section, BarRoom room)
    {
        var name = NamedBar.Numbered("ladder bar", section.Number, bench.Design.Each(Section).Length);
        var (at, place) = At(section, room.Hole);
        var isFloating = section.Get(Ends).Value == BarEnds.Floating;
        var half = section.Find(HalfLength);
        if (isFloating != half.HasValue)
        {
            bench.LeaveOut(
                name,
                isFloating ? $"{Say.The(name)} floats, and nothing says how far it reaches" : $"{Say.The(name)} is let into the linings, and has a half-length besides",
                isFloating ? "add `half_length`, or let its ends into the linings with `ends = \"lining\"`" : "leave `half_length` out, or say `ends = \"floating\"`",
                half?.Place ?? section.Get(Ends).Place,
                section.Get(Ends).Place);
            return;
        }

        BarEnd End(int side, string label) => half is { } length
            ? BarEnd.Free(new Point2(side * length.Value, -at), Vec2.UnitX, label)
            : BarEnd.InLining(label);
        new Bar
        {
            Name = name,
            Through = new Point2(0, -at),
            Along = Vec2.UnitX,
            Start = End(-1, "bass end"),
            End = End(1, "treble end"),
            Places = half is { } h ? [place, h.Place] : [place],
        }.Add(bench, room, section, Stock);
    }

    private static (double FromNeckEdge, SourcePlace Place) At(DesignSection section, Hole hole) =>
        section.Find(BelowHole) is { } below ? (hole.FarEdge + below.Value, below.Place)
        : section.Find(AboveHole) is { } above ? (hole.NearEdge - above.Value, above.Place)
        : (section.Find(FromNeckEdge)!.Value.Value, section.Find(FromNeckEdge)!.Value.Place);
}
