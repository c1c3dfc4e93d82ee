using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The fan: struts whose heads stand evenly on one line across the top and whose angles part evenly about the centre line; an odd number
/// has one on it. They butt against closing bars where they meet them, else stop short of the lining, and are notched over the bridge plate.
/// </summary>
public static class Fan
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("fan", "struts that fan out from below the hole to the tail");

    /// <summary>What they are made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (4, 6), 5, usualHeight: (3, 5.5), 4.5);

    /// <summary>How many.</summary>
    public static readonly Parameter<int> Count = Parameter.Count(
        Section, "count", "number of struts", possible: (1, 9), usual: (3, 9), fallback: 7);

    /// <summary>Angle of the outermost.</summary>
    public static readonly Parameter<Angle> Spread = Parameter.Angle(
        Section, "spread", "angle of the outermost strut to the centre line, + outward towards the tail", possible: (-15, 40), usual: (5, 15), fallback: 10);

    /// <summary>Spacing at the heads.</summary>
    public static readonly Parameter<double> HeadSpacing = Parameter.Length(
        Section, "head_spacing", "from axis to axis on the line of the heads", possible: (3, 80), usual: (15, 35), fallback: 24);

    /// <summary>Heads below the hole.</summary>
    public static readonly OptionalParameter<double> HeadBelowHole = Parameter.Length(
        Section, "head_below_hole", "from the hole's edge to the line of the heads", possible: (1, 200), usual: (15, 60)).Optional();

    /// <summary>Heads from the neck edge.</summary>
    public static readonly OptionalParameter<double> HeadFromNeckEdge = Parameter.Length(
        Section, "head_from_neck_edge", "from the neck edge to the line of the heads", possible: (60, 500), usual: (120, 280)).Optional();

    /// <summary>Heads behind the bar below the hole.</summary>
    public static readonly OptionalParameter<double> HeadBehindBar = Parameter.Length(
        Section, "head_behind_bar", "from the ladder bar next below the hole to the line of the heads; 0 butts them against it", possible: (0, 150), usual: (0, 20)).Optional();

    /// <summary>The ways to place the heads.</summary>
    public static readonly ExactlyOneOf HeadLine = ExactlyOneOf.Defaulted(HeadBelowHole, 28, HeadFromNeckEdge, HeadBehindBar);

    /// <summary>Short of the lining.</summary>
    public static readonly Parameter<double> StopShort = Parameter.Length(
        Section, "stop_short", "from a strut's tail to the lining or the tail block, along the strut, where no closing bar stops it", possible: (1, 200), usual: (10, 40), fallback: 20);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Count, Spread, HeadSpacing, HeadBelowHole, HeadFromNeckEdge, HeadBehindBar, StopShort];

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        if (Heads(bench, section, room.Hole) is not { } heads)
        {
            return;
        }

        var count = section[Count].Value;
        for (var i = 0; i < count; i++)
        {
            // From −1 for the outermost on the bass side to +1 for the outermost on the treble side.
            var share = count == 1 ? 0 : (2.0 * i / (count - 1)) - 1;
            var head = new Point2(share * (count - 1) / 2 * section[HeadSpacing].Value, heads.Y);
            Strut(bench, room, section, NamedBar.Numbered("fan strut", i + 1, count), head, section[Spread].Value * share, heads);
        }
    }

    private static void Strut(Bench bench, BarRoom room, DesignSection section, string name, Point2 head, Angle lean, HeadPlace heads)
    {
        var along = new Vec2(Trig.Sin(lean), -Trig.Cos(lean));
        ImmutableArray<SourcePlace> places = [section[Spread].Place, heads.Place, section[HeadSpacing].Place, section[StopShort].Place];
        var tail = room.LiningFrom(head, along) is { } rim ? Tail(bench, head, along, rim, section[StopShort].Value) : null;
        if (tail is not var (at, end) || (at - head).Dot(along) <= section[Stock.Width].Value)
        {
            bench.LeaveOut(
                name,
                $"{Say.The(name)} finds no room between its head, {Say.Mm(-head.Y)} from the neck edge, and the lining",
                "move the heads towards the hole, set them closer, or lessen the spread",
                places);
            return;
        }

        new Bar
        {
            Name = name,
            Through = head.MidpointTo(at),
            Along = along,
            Start = BarEnd.Straight(head, Vec2.UnitX, "head", heads.Bar is null ? [] : [heads.Bar.Name]),
            End = end,
            NotchedOver = bench.Find(BridgePlate.Name) is null ? [] : [BridgePlate.Name],
            Places = places,
        }.Add(bench, room, section, Stock);
    }

    // Against the closing bar the axis meets, else short of the lining or of the tail block, whichever comes first.
    private static (Point2 At, BarEnd End)? Tail(Bench bench, Point2 head, Vec2 along, Point2 rim, double stopShort)
    {
        var axis = new Segment(head, rim);
        foreach (var bar in ClosingBars.Names.Select(bench.Find).OfType<Member>())
        {
            if (Intersections.Of(axis, Bar.Side(bar, "neck side")) is [var meeting])
            {
                return (meeting.Point, BarEnd.Against(bar, "neck side", "tail"));
            }
        }

        var block = bench.Find(Block.Tail.Name)?.Footprint.Outer.Crossings(axis) ?? [];
        var at = (block.Count > 0 ? block[0].Point : rim) - (along * stopShort);
        return (at, BarEnd.Free(at, along, "tail"));
    }

    private sealed record HeadPlace(double Y, SourcePlace Place, Member? Bar);

    private static HeadPlace? Heads(Bench bench, DesignSection section, Hole hole)
    {
        if (section.Find(HeadBelowHole) is { } below)
        {
            return new HeadPlace(-(hole.FarEdge + below.Value), below.Place, null);
        }

        if (section.Find(HeadFromNeckEdge) is { } at)
        {
            return new HeadPlace(-at.Value, at.Place, null);
        }

        var behind = section.Find(HeadBehindBar)!.Value;
        if (LadderBars.NextBelowHole(bench, hole) is not { } bar)
        {
            bench.LeaveOut(
                "fan",
                "the heads of the fan stand behind a ladder bar below the hole, and there is none",
                "add a [[ladder_bar]] with `below_hole`, or place the heads with `head_below_hole`",
                behind.Place);
            return null;
        }

        return new HeadPlace(Bar.Side(bar, "tail side").Start.Y - behind.Value, behind.Place, behind.Value <= Tolerances.TouchMm ? bar : null);
    }
}
