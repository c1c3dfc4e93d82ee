using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The closing bars: two bars behind the bridge that form an open V across the tails of the fan struts.</summary>
public static class ClosingBars
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("closing_bars", "two bars behind the bridge, an open V across the tails of the fan");

    /// <summary>What they are made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (4, 7), 5, usualHeight: (3, 6), 4.5);

    /// <summary>Where their axes meet.</summary>
    public static readonly Parameter<double> BehindBridge = Parameter.Length(
        Section, "behind_bridge", "from the bridge's rear edge to where the bars' axes meet on the centre line", possible: (10, 250), usual: (60, 120), fallback: 100);

    /// <summary>Angle to the centre line.</summary>
    public static readonly Parameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle of each bar to the centre line; less than 90 rises outward towards the bridge", possible: (30, 90), usual: (55, 80), fallback: 66);

    /// <summary>Inner ends from the centre line.</summary>
    public static readonly Parameter<double> InnerGap = Parameter.Length(
        Section, "inner_gap", "from the centre line to each bar's inner end, on its axis", possible: (1, 100), usual: (5, 30), fallback: 10);

    /// <summary>How the outer ends end.</summary>
    public static readonly Parameter<BarEnds> Ends = BarEnd.Choice(Section, BarEnds.Floating);

    /// <summary>Short of the lining.</summary>
    public static readonly Parameter<double> StopShort = Parameter.Length(
        Section, "stop_short", "from a floating outer end to the lining, along the bar", possible: (1, 150), usual: (5, 40), fallback: 12);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, BehindBridge, Angle, InnerGap, Ends, StopShort];

    /// <summary>The members' names, bass first.</summary>
    public static IReadOnlyList<string> Names { get; } = ["closing bar, bass", "closing bar, treble"];

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        var meeting = new Point2(0, -(Bridge.RearFromNeckEdge(design) + section[BehindBridge].Value));
        var (sine, cosine) = (Trig.Sin(section[Angle].Value), Trig.Cos(section[Angle].Value));
        foreach (var (side, name) in (ReadOnlySpan<(int, string)>)[(-1, Names[0]), (1, Names[1])])
        {
            var along = new Vec2(side * sine, cosine);
            var inner = meeting + (along * (section[InnerGap].Value / sine));
            var isFloating = section.Get(Ends).Value == BarEnds.Floating;
            var stopShort = isFloating ? section[StopShort].Value : 0;
            if (room.LiningFrom(inner, along) is not { } rim || rim.DistanceTo(inner) <= stopShort + section[Stock.Width].Value)
            {
                bench.LeaveOut(
                    name,
                    $"{Say.The(name)} finds no room between the centre line and the lining",
                    "move it towards the bridge, or bring its inner end nearer to the centre line",
                    section[BehindBridge].Place,
                    section[InnerGap].Place);
                return;
            }

            var outer = rim - (along * stopShort);
            new Bar
            {
                Name = name,
                Through = inner.MidpointTo(outer),
                Along = along,
                Start = BarEnd.Free(inner, along, "inner end"),
                End = isFloating ? BarEnd.Free(outer, along, "outer end") : BarEnd.InLining("outer end"),
                Places = [section[BehindBridge].Place, section[Angle].Place, section[StopShort].Place],
            }.Add(bench, room, section, Stock);
        }
    }
}
