using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// Running measures beside a drawing: one upright line, a tick at every height, and the texts spread so that none touches the next.
/// All measures start from one datum, so none adds up another's error.
/// </summary>
internal sealed class Ladder(string part, double x, int outward)
{
    private const double TickMm = 3;
    private const double JogMm = 7;
    private readonly List<(double Y, double From, string Text)> _rungs = [];

    /// <summary>Adds a measure at a height; the tick runs from <paramref name="fromX"/>, or from the upright line when left out.</summary>
    public void Add(double y, string text, double? fromX = null) => _rungs.Add((y, fromX ?? x, text));

    /// <summary>Draws the ladder onto the board.</summary>
    public void Draw(SheetBoard board, bool hasUpright = true)
    {
        if (_rungs.Count == 0)
        {
            return;
        }

        var rungs = _rungs.OrderByDescending(r => r.Y).ThenByDescending(r => Math.Abs(r.From - x)).ToList();
        if (hasUpright && rungs.Count > 1)
        {
            board.Line(part, Role.Dimension, new Point2(x, rungs[0].Y), new Point2(x, rungs[^1].Y));
        }

        var texts = Spread([.. rungs.Select(r => r.Y)], 1.75 * SheetBoard.TextMm);
        for (var i = 0; i < rungs.Count; i++)
        {
            var (y, from, text) = rungs[i];
            var bend = x + (outward * TickMm);
            var end = bend + (outward * JogMm);

            // Measures at one height share its tick, the longest.
            var hasTick = i == 0 || rungs[i - 1].Y - y >= Tolerances.ShortestMm;
            board.Draw(part, Role.Dimension, new Contour(Distinct([new(hasTick ? from : bend, y), new(bend, y), new(end, texts[i])]), isClosed: false));
            board.Write(
                part,
                text,
                new Point2(end + outward, texts[i] - (SheetBoard.TextMm / 2)),
                alignment: outward > 0 ? Alignment.Left : Alignment.Right,
                role: Role.Dimension);
        }
    }

    /// <summary>Heights from top to bottom moved apart to at least a gap, each cluster kept centred on what it stands for.</summary>
    internal static double[] Spread(IReadOnlyList<double> wanted, double gap)
    {
        // Pool adjacent violators on y + i·gap: clusters of equal offset share their mean.
        var pools = new List<(double Sum, int Count)>();
        for (var i = 0; i < wanted.Count; i++)
        {
            pools.Add((wanted[i] + (i * gap), 1));
            while (pools.Count > 1 && pools[^1].Sum / pools[^1].Count > pools[^2].Sum / pools[^2].Count)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }

        return [.. pools.SelectMany(p => Enumerable.Repeat(p.Sum / p.Count, p.Count)).Select((mean, i) => mean - (i * gap))];
    }

    private static IEnumerable<Vertex> Distinct(IEnumerable<Point2> points)
    {
        Point2? last = null;
        foreach (var p in points)
        {
            if (last is not { } l || !l.IsNear(p, Tolerances.ShortestMm))
            {
                yield return new Vertex(p);
                last = p;
            }
        }
    }
}
