using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>How a bridge holds the strings.</summary>
public enum BridgeStyle
{
    /// <summary>Not said, or by a tailpiece.</summary>
    Plain,

    /// <summary>By pins through bridge, top and plate.</summary>
    Pins,

    /// <summary>By a tie block behind the saddle.</summary>
    Tie,
}

/// <summary>The line that the pins stand on.</summary>
public enum PinLine
{
    /// <summary>Each pin as far behind the saddle as the next.</summary>
    Parallel,

    /// <summary>Straight across the body.</summary>
    Straight,
}

/// <summary>What holds the strings behind the saddle: pin holes, drilled through the top, or a tie block. Usual sizes are common practice, no source.</summary>
public static class BridgePins
{
    /// <summary>The tie block's name.</summary>
    public const string TieBlockName = "tie block";

    private const string PinName = "bridge pin";

    /// <summary>Pins or a tie block.</summary>
    public static readonly Parameter<BridgeStyle> Style = Parameter.Choice(
        Bridge.Section,
        "style",
        "how it holds the strings: pins, tie (a tie block), or plain: neither is drawn",
        BridgeStyle.Plain,
        ("plain", BridgeStyle.Plain),
        ("pins", BridgeStyle.Pins),
        ("tie", BridgeStyle.Tie));

    /// <summary>How many pins.</summary>
    public static readonly Parameter<int> Count = Parameter.Count(
        Bridge.Section, "pins", "number of pins, one for each string, evenly over the string spread", possible: (1, 24), usual: (4, 12), fallback: 6,
        byBody: BodyValues.Of(tenorUkulele: (4, 4, 8), octaveMandolin: (8, 8, 10)));

    /// <summary>Saddle to pins.</summary>
    public static readonly Parameter<double> BehindSaddle = Parameter.Length(
        Bridge.Section, "pins_behind_saddle", "from the saddle to the middles of the pins, along the body", possible: (3, 60), usual: (9, 18), fallback: 13);

    /// <summary>How the pins stand.</summary>
    public static readonly Parameter<PinLine> Line = Parameter.Choice(
        Bridge.Section,
        "pin_line",
        "parallel: each pin as far behind the saddle as the next; straight: across the body, measured on the centre line",
        PinLine.Parallel,
        ("parallel", PinLine.Parallel),
        ("straight", PinLine.Straight));

    /// <summary>Diameter of a pin hole.</summary>
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Bridge.Section, "pin_diameter", "diameter of a pin hole as drilled, before it is reamed", possible: (1, 12), usual: (4.5, 5.5), fallback: 5);

    /// <summary>Depth of the tie block.</summary>
    public static readonly Parameter<double> TieBlock = Parameter.Length(
        Bridge.Section, "tie_block", "a tie block's depth along the body, from the bridge's rear edge", possible: (3, 40), usual: (9, 15), fallback: 12);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Style, Count, BehindSaddle, Line, Diameter, TieBlock, .. TieHoles.All];

    /// <summary>Whether a hole is one of the pins'.</summary>
    public static bool IsPin(DrillPoint point) => point.Name.StartsWith(PinName, StringComparison.Ordinal);

    internal static void Build(Bench bench)
    {
        if (bench.Find(Bridge.Name) is null)
        {
            return;
        }

        switch (bench.Design.Get(Style).Value)
        {
            case BridgeStyle.Pins:
                BuildPins(bench);
                break;
            case BridgeStyle.Tie:
                BuildTieBlock(bench);
                break;
        }
    }

    private static void BuildPins(Bench bench)
    {
        var design = bench.Design;
        var (saddle, behind, count) = (Scale.Saddle(design), design[BehindSaddle], design[Count].Value);
        // From the bass; numbered as strings are, the highest first.
        for (var n = 0; n < count; n++)
        {
            var over = saddle.Bass + ((saddle.Treble - saddle.Bass) * (count == 1 ? 0.5 : (double)n / (count - 1)));
            var from = design.Get(Line).Value == PinLine.Parallel ? over.Y : saddle.Middle.Y;
            bench.Drill(new DrillPoint($"{PinName} {Findings.Say.Count(count - n)}", new Point2(over.X, from - behind.Value), design[Diameter].Value, behind.Place));
        }
    }

    private static void BuildTieBlock(Bench bench)
    {
        var design = bench.Design;
        var (half, rear, depth) = ((TieHoles.SpreadOf(design).Value / 2) + TieBlockBeyondMm, -Bridge.RearFromNeckEdge(design), design[TieBlock]);
        half = Math.Min(half, design[Bridge.Length].Value / 2);
        var block = Box2.Around(new Point2(-half, rear), new Point2(half, rear + depth.Value));
        bench.Mark(new PlanMark(TieBlockName, TopFace.Outside, Contour.Rectangle(block), depth.Place));
        TieHoles.Build(bench, block);
    }

    // A tie block reaches this far past the outer strings, mm. Common practice, no source.
    private const double TieBlockBeyondMm = 11;
}
