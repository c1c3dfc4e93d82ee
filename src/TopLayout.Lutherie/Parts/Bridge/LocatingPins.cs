using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// Thin pins that hold top, fretboard and bridge in place while the glue is wet, all of them hidden afterwards: under the fretboard, at the
/// tail, under the bridge. The middle of the hole, where the cutter of the rosette turns, is drilled with the same bit. Common practice, no source.
/// </summary>
public static class LocatingPins
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("locating_pins", "thin pins that keep top, fretboard and bridge from sliding in wet glue");

    /// <summary>Diameter.</summary>
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Section, "diameter", "diameter of the pins", possible: (0.5, 8), usual: (1.5, 4), fallback: 3);

    /// <summary>The pin under the fretboard.</summary>
    public static readonly Parameter<double> UnderFretboard = Parameter.Length(
        Section, "under_fretboard", "from the neck edge to the pin through the top into the neck block, on the centre line", possible: (3, 200), usual: (10, 60), fallback: 25);

    /// <summary>The pin at the tail.</summary>
    public static readonly Parameter<double> AtTail = Parameter.Length(
        Section, "at_tail", "from the tail edge to the pin into the tail block, on the centre line", possible: (2, 100), usual: (5, 20), fallback: 8);

    /// <summary>The pins under the bridge.</summary>
    public static readonly Parameter<double> BridgeAcross = Parameter.Length(
        Section, "bridge_across", "from the centre line to each of two pins under the bridge, midway between its edges", possible: (5, 140), usual: (30, 80), fallback: 60,
        byBody: BodyValues.Of(classical: (75, 50, 85), tenorUkulele: (34, 25, 42), octaveMandolin: 45));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Diameter, UnderFretboard, AtTail, BridgeAcross];

    /// <summary>What each pin must be hidden by: the name of a pin, and of the member that covers it or takes it.</summary>
    public static IReadOnlyList<(string Pin, string Member)> Covers { get; } =
    [
        ("locating pin, neck", Fretboard.Name), ("locating pin, neck", Block.Neck.Name), ("locating pin, tail", Block.Tail.Name),
        ("locating pin, bridge bass", Bridge.Name), ("locating pin, bridge treble", Bridge.Name),
    ];

    /// <summary>Whether a hole is that of a pin under the bridge.</summary>
    public static bool IsUnderBridge(DrillPoint point) => Covers.Any(c => c.Pin == point.Name && c.Member == Bridge.Name);

    internal static void Build(Bench bench, Contour outline, Hole hole)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        var (diameter, across) = (section[Diameter].Value, section[BridgeAcross]);
        void Drill(string name, Point2 at, Findings.SourcePlace place) => bench.Drill(new DrillPoint(name, at, diameter, place));
        Drill(Covers[0].Pin, new Point2(0, -section[UnderFretboard].Value), section[UnderFretboard].Place);
        Drill("soundhole centre", hole.Center, section[Diameter].Place);
        Drill(Covers[2].Pin, new Point2(0, outline.Bounds.Min.Y + section[AtTail].Value), section[AtTail].Place);
        if (bench.Find(Bridge.Name) is { } bridge)
        {
            Drill(Covers[3].Pin, new Point2(-across.Value, bridge.Footprint.Bounds.Center.Y), across.Place);
            Drill(Covers[4].Pin, new Point2(across.Value, bridge.Footprint.Bounds.Center.Y), across.Place);
        }
    }
}
