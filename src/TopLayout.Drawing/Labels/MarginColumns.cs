using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>The two columns beside the page for labels that find no place on it: a slot for each, and a leader with a level end.</summary>
internal sealed class MarginColumns
{
    private const double PitchPerHeight = 2.2;
    private const double PadPerHeight = 3;

    private static readonly Vec2[] Bends =
    [
        new(1, 0), new(-1, 0), new(0, 1), new(0, -1), new(1, 1), new(-1, 1), new(1, -1), new(-1, -1),
    ];

    private readonly Box2 _page;
    private readonly double _height;
    private readonly List<(bool Right, int Index)> _free;

    /// <summary>Columns with room for every label on either side.</summary>
    public MarginColumns(Box2 page, IReadOnlyList<LabelRequest> requests)
    {
        (_page, Page, _height) = (page, page, requests.Max(r => r.HeightMm));
        var slots = Math.Max(requests.Count, (int)(page.Height / Pitch));
        _free = [.. Enumerable.Range(0, slots).SelectMany(i => new[] { (true, i), (false, i) })];
    }

    /// <summary>The page, grown by the labels taken so far.</summary>
    public Box2 Page { get; private set; }

    private double Pitch => _height * PitchPerHeight;

    private double Pad => _height * PadPerHeight;

    /// <summary>
    /// The slot whose leader runs straight over the fewest walls, the near side before the far one; where each crosses a label or another leader,
    /// the first with a bend that crosses none; else the one that crosses least.
    /// </summary>
    public Place Best(LabelRequest request, Obstacles obstacles)
    {
        var near = request.Target.X >= _page.Center.X;
        var slots = _free.OrderBy(s => s.Right != near).ThenBy(s => Math.Abs(Level(s.Index) - request.Target.Y)).ToList();
        var best = At(slots[0], request, null, obstacles);
        for (var i = 1; i < slots.Count && best.Crossed != default; i++)
        {
            var way = At(slots[i], request, null, obstacles);
            best = way.Crossed.CompareTo(best.Crossed) < 0 ? way : best;
        }

        if (best.Crossed.IsReadable)
        {
            return best;
        }

        // A bend leads out of a crowd.
        foreach (var way in from reach in (double[])[2, 4, 8] from bend in Bends from slot in slots select At(slot, request, request.Target + (bend * (reach * _height)), obstacles))
        {
            best = way.Crossed.CompareTo(best.Crossed) < 0 ? way : best;
            if (best.Crossed.IsReadable)
            {
                break;
            }
        }

        return best;
    }

    /// <summary>Takes a place: nothing else goes there.</summary>
    public Spot Take(Place place)
    {
        _free.Remove(place.Slot);
        Page = Page.Union(place.Spot.Label.Bounds.Grown(Pad));
        return place.Spot;
    }

    private Place At((bool Right, int Index) slot, LabelRequest request, Point2? via, Obstacles obstacles)
    {
        var spot = SpotAt(slot, request, via);
        return new Place(spot, slot, obstacles.Over(spot.Way!, request.Part));
    }

    private Spot SpotAt((bool Right, int Index) slot, LabelRequest request, Point2? via)
    {
        var level = Level(slot.Index);
        var (edge, outward) = slot.Right ? (_page.Max.X, 1) : (_page.Min.X, -1);
        var middle = new Point2(edge + (outward * (Pad + (request.Letters.Width / 2))), level);
        var end = new Point2(edge + (outward * (Pad - (request.HeightMm * Spots.Clearance))), level);
        Point2[] leader = via is { } bend ? [end, new(edge, level), bend, request.Target] : [end, new(edge, level), request.Target];
        return new Spot(request, middle, Angle.Zero, slot.Right ? Alignment.Left : Alignment.Right, Apart(leader));
    }

    // A target on the edge of the page would make a piece without length.
    private static Point2[] Apart(Point2[] points) => [.. points.Where((p, i) => i == 0 || !p.IsNear(points[i - 1], Tolerances.ShortestMm))];

    /// <summary>A place in a column.</summary>
    /// <param name="Spot">The label there.</param>
    /// <param name="Slot">The slot.</param>
    /// <param name="Crossed">What its leader runs over.</param>
    internal readonly record struct Place(Spot Spot, (bool Right, int Index) Slot, Crossed Crossed);

    private double Level(int slot) => _page.Max.Y - ((slot + 0.5) * Pitch);
}
