using System.Text;
using System.Text.Json;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// What tests/readers/measure-dxf found in one sheet, asked by part. Places are those of the report: from the neck edge, and across to the treble,
/// whichever face the sheet shows.
/// </summary>
internal sealed class MeasuredPlan(JsonElement layers, bool isMirrored)
{
    private const int LongestLayer = 30;

    private static readonly string[] Roles = ["MARK", "POCKET", "CUT"];

    /// <summary>The lines of a part to work to on this face, or those in a role; none when it is not there.</summary>
    public IReadOnlyList<MeasuredOutline> Outlines(string part, string? onlyRole = null) =>
    [
        .. from role in onlyRole is null ? Roles : [onlyRole]
           let layer = LayerOf(part, role)
           where layer is not null
           from outline in layer.Value.GetProperty("polylines").EnumerateArray().Select(Polyline).Concat(layer.Value.GetProperty("circles").EnumerateArray().Select(Circle))
           select outline,
    ];

    /// <summary>The straight lines of a part, from end to end.</summary>
    public IReadOnlyList<(Spot From, Spot To)> Lines(string part, string role) =>
        [.. LayerOf(part, role)?.GetProperty("lines").EnumerateArray().Select(l => (At(l[0].GetDouble(), l[1].GetDouble()), At(l[2].GetDouble(), l[3].GetDouble()))) ?? []];

    // A layer's name is the part's, in capitals, cut to what DXF takes.
    private JsonElement? LayerOf(string part, string role)
    {
        var stem = new StringBuilder();
        foreach (var c in part.ToUpperInvariant())
        {
            stem.Append(char.IsAsciiLetterOrDigit(c) ? c : stem.Length > 0 && stem[^1] == '_' ? "" : '_');
        }

        var name = stem.ToString()[..Math.Min(stem.Length, LongestLayer - role.Length - 1)].TrimEnd('_') + "_" + role;
        return layers.TryGetProperty(name, out var layer) ? layer : null;
    }

    // Mirrored, a left turn is a right turn; y up against the distance from the neck edge is another mirror.
    private MeasuredOutline Polyline(JsonElement polyline) => new(
        [.. polyline.GetProperty("vertices").EnumerateArray().Select(v => (At(v[0].GetDouble(), v[1].GetDouble()), (isMirrored ? 1 : -1) * v[2].GetDouble()))],
        Bounds([.. polyline.GetProperty("bounds").EnumerateArray().Select(b => b.GetDouble())]),
        Math.Abs(polyline.GetProperty("area").GetDouble()),
        polyline.GetProperty("length").GetDouble());

    private MeasuredOutline Circle(JsonElement circle)
    {
        var (x, y, r) = (circle[0].GetDouble(), circle[1].GetDouble(), circle[2].GetDouble());
        return new MeasuredOutline([], Bounds([x - r, y - r, x + r, y + r]), Math.PI * r * r, 2 * Math.PI * r);
    }

    private (Spot Least, Spot Most) Bounds(double[] b)
    {
        var (one, other) = (At(b[0], b[1]), At(b[2], b[3]));
        return (new Spot(Math.Min(one.Across, other.Across), Math.Min(one.Along, other.Along)), new Spot(Math.Max(one.Across, other.Across), Math.Max(one.Along, other.Along)));
    }

    private Spot At(double x, double y) => new(isMirrored ? -x : x, -y);
}

/// <summary>A place on the top, mm: to the treble, and from the neck edge.</summary>
internal readonly record struct Spot(double Across, double Along)
{
    /// <summary>Halfway to another.</summary>
    public Spot Halfway(Spot other) => new((Across + other.Across) / 2, (Along + other.Along) / 2);

    /// <summary>Distance to another.</summary>
    public double To(Spot other) => Math.Sqrt(((other.Across - Across) * (other.Across - Across)) + ((other.Along - Along) * (other.Along - Along)));
}

/// <summary>A line as measured: vertices with the bulge of what follows each, positive towards growing angles from across to along. A circle has none.</summary>
internal sealed record MeasuredOutline(IReadOnlyList<(Spot At, double Bulge)> Vertices, (Spot Least, Spot Most) Bounds, double Area, double Length)
{
    private IEnumerable<(Spot From, Spot To, double Bulge)> Pieces => Vertices.Zip(Vertices.Skip(1).Append(Vertices[0]), (a, b) => (a.At, b.At, a.Bulge));

    /// <summary>Radius of every arc: chord · (1 + b²) / 4|b|.</summary>
    public IEnumerable<double> Radii => Pieces.Where(p => p.Bulge != 0).Select(p => p.From.To(p.To) * (1 + (p.Bulge * p.Bulge)) / (4 * Math.Abs(p.Bulge)));

    /// <summary>The two longest straight pieces, both in one sense.</summary>
    public ((Spot From, Spot To) First, (Spot From, Spot To) Second) Sides
    {
        get
        {
            var sides = Pieces.Where(p => p.Bulge == 0).OrderByDescending(p => p.From.To(p.To)).Take(2).ToList();
            var (first, second) = ((sides[0].From, sides[0].To), (sides[1].From, sides[1].To));
            return first.From.To(second.From) < first.From.To(second.To) ? (first, second) : (first, (second.To, second.From));
        }
    }

    /// <summary>How far it reaches at a distance from the neck edge, to the bass and to the treble.</summary>
    public (double Bass, double Treble) ReachAt(double along)
    {
        var met = Pieces.SelectMany(p => Crossings(p.From, p.To, p.Bulge, along)).ToList();
        return (met.Min(), met.Max());
    }

    // Where a piece passes a distance from the neck edge. The centre of its circle lies c(1 − b²)/4b to the left of the chord's middle, and the arc itself on
    // the other side of the chord.
    private static IEnumerable<double> Crossings(Spot a, Spot b, double bulge, double along)
    {
        var (dx, dy, chord) = (b.Across - a.Across, b.Along - a.Along, a.To(b));
        if (bulge == 0)
        {
            return (a.Along - along) * (b.Along - along) > 0 || dy == 0 ? [] : [a.Across + (dx * (along - a.Along) / dy)];
        }

        var (middle, off, radius) = (a.Halfway(b), (1 - (bulge * bulge)) / (4 * bulge), chord * (1 + (bulge * bulge)) / (4 * Math.Abs(bulge)));
        var (cx, cy) = (middle.Across - (dy * off), middle.Along + (dx * off));
        var half = Math.Sqrt((radius * radius) - ((along - cy) * (along - cy)));
        return double.IsNaN(half) ? [] : ((double[])[cx - half, cx + half]).Where(x => ((dx * (along - a.Along)) - (dy * (x - a.Across))) * bulge <= 1e-6);
    }
}
