using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A hole that a string is tied through: drilled along the body through the tie block, level with the top, so that it is no hole of the top.
/// Outside coordinates of a right-handed instrument, mm.
/// </summary>
/// <param name="Name">Its name in trade words, unique in a layout: "tie hole 1", counted from the bass.</param>
/// <param name="From">Its mouth in the block's front edge, on its axis.</param>
/// <param name="To">Its mouth in the block's rear edge, on its axis.</param>
/// <param name="HeightMm">Its axis above the top's face, mm.</param>
/// <param name="DiameterMm">Its diameter, mm, &gt; 0.</param>
/// <param name="Place">The place in the design that put it there.</param>
public sealed record TieHole(string Name, Point2 From, Point2 To, double HeightMm, double DiameterMm, SourcePlace Place)
{
    /// <summary>What of the block it takes, seen from above.</summary>
    public Contour Outline => Contour.Rectangle(Box2.Around(From - new Vec2(DiameterMm / 2, 0), To + new Vec2(DiameterMm / 2, 0)));
}

/// <summary>The holes of a tie block, one for each string. Usual sizes are common practice, no source.</summary>
public static class TieHoles
{
    /// <summary>How many.</summary>
    public static readonly Parameter<int> Count = Parameter.Count(
        Bridge.Section, "tie_holes", "number of holes through a tie block, one for each string, evenly over `tie_spread`", possible: (1, 24), usual: (4, 12), fallback: 6,
        byBody: BodyValues.Of(tenorUkulele: (4, 4, 8), octaveMandolin: (8, 8, 10)));

    /// <summary>Outer hole to outer hole.</summary>
    public static readonly OptionalParameter<double> Spread = Parameter.Length(
        Bridge.Section, "tie_spread", "outer string to outer string at the tie block; as at the saddle when left out", possible: (15, 120), usual: (36, 64)).Optional();

    /// <summary>Diameter.</summary>
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Bridge.Section, "tie_hole_diameter", "diameter of a hole through the tie block", possible: (0.5, 6), usual: (1.4, 2.2), fallback: 1.6);

    /// <summary>Height above the top.</summary>
    public static readonly Parameter<double> Height = Parameter.Length(
        Bridge.Section, "tie_hole_height", "from the top's face to the middle of a hole through the tie block", possible: (0.5, 20), usual: (3, 5), fallback: 4);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Count, Spread, Diameter, Height];

    /// <summary>Outer string to outer string at the tie block, mm, and the place that says it.</summary>
    public static Sourced<double> SpreadOf(Design design) => design.Find(Spread) ?? design[Scale.StringSpread];

    internal static void Build(Bench bench, Box2 block)
    {
        var design = bench.Design;
        var (count, spread) = (design[Count].Value, SpreadOf(design));
        // From the bass; numbered as strings are, the highest first.
        for (var n = 0; n < count; n++)
        {
            var x = count == 1 ? 0 : spread.Value * (((double)n / (count - 1)) - 0.5);
            bench.Tie(new TieHole(
                $"tie hole {Say.Count(count - n)}", new Point2(x, block.Max.Y), new Point2(x, block.Min.Y), design[Height].Value, design[Diameter].Value, spread.Place));
        }
    }
}
