using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The tone bars: each butted with its head against one leg of the X behind the bridge plate, running down to the other side and
/// stopping short of the lining. Head on the treble leg by default (common practice, no source).
/// </summary>
public static class ToneBars
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable("tone_bar", "a bar from one leg of the X down to the other side");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Head behind the bridge plate.</summary>
    public static readonly Parameter<double> BehindPlate = Parameter.Length(
        Section, "behind_plate", "from the bridge plate's rear edge to the place where the bar's axis meets the leg's, along the body", possible: (0, 200), usual: (10, 90), fallback: 20);

    /// <summary>Angle to the centre line.</summary>
    public static readonly Parameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle to the centre line", possible: (20, 90), usual: (55, 75), fallback: 64);

    /// <summary>Which leg holds the head.</summary>
    public static readonly Parameter<int> Head = Parameter.Choice(
        Section, "head", "the leg that holds the bar's head", 1, ("treble", 1), ("bass", -1));

    /// <summary>Short of the lining.</summary>
    public static readonly Parameter<double> StopShort = Parameter.Length(
        Section, "stop_short", "from the bar's end to the lining, along the bar", possible: (0, 150), usual: (3, 40), fallback: 8);

    /// <summary>Width.</summary>
    public static readonly Parameter<double> Width = Parameter.Length(
        Section, "width", "width", possible: (2, 20), usual: (6, 7.5), fallback: 7,
        byBody: BodyValues.Of(steel: (7, 6, 7.5), octaveMandolin: (6.5, 6, 7)));

    /// <summary>Height.</summary>
    public static readonly Parameter<double> Height = Parameter.Length(
        Section, "height", "height at the highest", possible: (2, 30), usual: (8, 14), fallback: 12,
        byBody: BodyValues.Of(steel: (12, 9, 14), octaveMandolin: (10, 8, 12)));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, BehindPlate, Angle, Head, StopShort, Width, Height];

    internal static void Build(Bench bench, BarRoom room)
    {
        foreach (var section in bench.Design.Each(Section))
        {
            Build(bench, section, room);
        }
    }

    private static void Build(Bench bench, DesignSection section, BarRoom room)
    {
        var design = bench.Design;
        var name = NamedBar.Numbered("tone bar", section.Number, design.Each(Section).Length);
        if (!design.Has(XBrace.Section) || !design.Has(BridgePlate.Section))
        {
            bench.LeaveOut(
                name, "a tone bar hangs on a leg of the X, behind the bridge plate", "add the sections [x_brace] and [bridge_plate], or leave the tone bar out", section.Place);
            return;
        }

        var side = section.Get(Head).Value;
        var (legName, angle) = (side > 0 ? XBrace.TrebleLeg : XBrace.BassLeg, section[Angle].Value);
        var headY = BridgePlate.RearFromNeckEdge(design) + section[BehindPlate].Value;
        var head = new Point2(side * XBrace.OffsetAt(design, room.Hole, headY), -headY);
        var along = new Vec2(-side * Trig.Sin(angle), -Trig.Cos(angle));
        if (bench.Find(legName) is not { } leg || room.LiningFrom(head, along) is not { } rim || rim.DistanceTo(head) <= section[StopShort].Value + section[Width].Value)
        {
            bench.LeaveOut(
                name, $"{Say.The(name)} finds no room between the leg and the lining", "move its head towards the bridge plate, or turn it", section[BehindPlate].Place, section[Angle].Place);
            return;
        }

        var tail = rim - (along * section[StopShort].Value);
        new Bar
        {
            Name = name,
            HasNeckSide = true,
            Through = head.MidpointTo(tail),
            Along = along,
            Start = BarEnd.Against(leg, "tail side", "head"),
            End = BarEnd.Free(tail, along, "tail"),
            Places = [section[Angle].Place, section[BehindPlate].Place, section[StopShort].Place],
        }.Add(bench, room, section, new BarStock(Stock, Width, Height));
    }
}
