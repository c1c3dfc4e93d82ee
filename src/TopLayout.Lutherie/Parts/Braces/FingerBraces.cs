using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Finger braces: short bars from the lower part of each leg of the X out to the rim, the same on both sides.</summary>
public static class FingerBraces
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("finger_braces", "short bars from the legs of the X out to the rim");

    /// <summary>What they are made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (5, 6.5), 6, usualHeight: (6, 10), 8);

    /// <summary>How many on each side.</summary>
    public static readonly Parameter<int> Count = Parameter.Count(
        Section, "per_side", "number on each side", possible: (1, 3), usual: (1, 2), fallback: 2);

    /// <summary>The first, along the leg.</summary>
    public static readonly Parameter<double> First = Parameter.Length(
        Section, "from_crossing", "from the X's crossing along the leg to where the first one's axis meets the leg's", possible: (15, 350), usual: (50, 120), fallback: 80);

    /// <summary>From one to the next.</summary>
    public static readonly Parameter<double> Spacing = Parameter.Length(
        Section, "spacing", "from one to the next along the leg", possible: (8, 150), usual: (35, 75), fallback: 52);

    /// <summary>Angle to the leg.</summary>
    public static readonly Parameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle between the brace and the leg's part towards the tail", possible: (30, 150), usual: (55, 95), fallback: 70);

    /// <summary>How the outer ends end.</summary>
    public static readonly Parameter<BarEnds> Ends = BarEnd.Choice(Section, BarEnds.Floating);

    /// <summary>Short of the lining.</summary>
    public static readonly Parameter<double> StopShort = Parameter.Length(
        Section, "stop_short", "from a floating end to the lining, along the brace", possible: (1, 100), usual: (2, 15), fallback: 5);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Count, First, Spacing, Angle, Ends, StopShort];

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (bench.Find(XBrace.BassLeg) is not { } bassLeg || bench.Find(XBrace.TrebleLeg) is not { } trebleLeg)
        {
            bench.LeaveOut("finger braces", "finger braces hang on the legs of the X, and the design has no X", "add the section [x_brace], or leave [finger_braces] out", section.Place);
            return;
        }

        for (var i = 0; i < section[Count].Value; i++)
        {
            var (along, name) = (section[First].Value + (i * section[Spacing].Value), NamedBar.Numbered("finger brace", i + 1, section[Count].Value));
            Build(bench, room, section, bassLeg, -1, $"{name}, bass", along);
            Build(bench, room, section, trebleLeg, 1, $"{name}, treble", along);
        }
    }

    private static void Build(Bench bench, BarRoom room, DesignSection section, Member leg, int side, string name, double fromCrossing)
    {
        var design = bench.Design;
        var legWay = XBrace.Direction(design, side);

        // Outward and towards the neck: to the left of the treble leg's way down, to the right of the bass leg's.
        var outward = legWay.Left * side;
        var along = (legWay * Trig.Cos(section[Angle].Value)) + (outward * Trig.Sin(section[Angle].Value));
        var head = XBrace.Crossing(design, room.Hole) + (legWay * fromCrossing);
        var isFloating = section.Get(Ends).Value == BarEnds.Floating;
        var stopShort = isFloating ? section[StopShort].Value : 0;
        if (room.LiningFrom(head, along) is not { } rim || rim.DistanceTo(head) <= stopShort + design[XBrace.Width].Value + section[Stock.Width].Value)
        {
            bench.LeaveOut(
                name,
                $"{Say.TheLast(name)}, {Say.Mm(fromCrossing)} from the crossing, finds no room between the leg and the lining",
                "move it along the leg towards the crossing, set the braces closer, or turn them",
                section[First].Place,
                section[Spacing].Place,
                section[Angle].Place);
            return;
        }

        var tail = rim - (along * stopShort);
        new Bar
        {
            Name = name,
            Through = head.MidpointTo(tail),
            Along = along,
            Start = BarEnd.Against(leg, "neck side", "head"),
            End = isFloating ? BarEnd.Free(tail, along, "tail") : BarEnd.InLining("tail"),
            Places = [section[First].Place, section[Angle].Place, section[StopShort].Place],
        }.Add(bench, room, section, Stock);
    }
}
