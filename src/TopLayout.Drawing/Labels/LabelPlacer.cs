using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>
/// Places labels after the geometry, by priority: at a preferred spot; inside the area they name; at one of eight spots round
/// their point, nearest first; last in a column at the side of the page, which grows. From a distance a leader points back. A
/// label keeps off lines, other labels and their leaders, and the points that other labels name. The same input gives the same places.
/// </summary>
public static class LabelPlacer
{
    /// <summary>Places every request.</summary>
    /// <param name="drawn">What stands on the sheet already.</param>
    /// <param name="requests">The labels to place.</param>
    /// <param name="page">The paper so far, mm; labels stay on it or go to the columns beside it and all that is drawn.</param>
    public static PlacedLabels Place(IEnumerable<Shape> drawn, IEnumerable<LabelRequest> requests, Box2 page)
    {
        var list = requests.OrderByDescending(r => r.Priority).ToList();
        if (list.Count == 0)
        {
            return new PlacedLabels([], page);
        }

        var obstacles = new Obstacles(list.Select(r => r.Target));
        var paper = page;
        foreach (var shape in drawn)
        {
            obstacles.Add(shape);
            paper = paper.Union(shape.Bounds);
        }

        var columns = new MarginColumns(paper, list);
        var placed = new List<Shape>();
        foreach (var request in list)
        {
            var spot = OnPage(request, page, obstacles) ?? columns.Take(request, obstacles);
            placed.AddRange(spot.Shapes(request));
            obstacles.Add(spot);
        }

        return new PlacedLabels(placed, columns.Page);
    }

    private static Spot? OnPage(LabelRequest request, Box2 page, Obstacles obstacles) =>
        Spots.Of(request).FirstOrDefault(s => Fits(s, request, page, obstacles));

    private static bool Fits(Spot spot, LabelRequest request, Box2 page, Obstacles obstacles)
    {
        var frame = spot.Label.FrameGrown(request.HeightMm * Spots.Clearance);
        return page.Contains(frame.Bounds.Min) && page.Contains(frame.Bounds.Max)
            && obstacles.LeaveFree(frame, request.Target)
            && (spot.Leader is not { } leader || obstacles.Crossed(leader) == default);
    }
}
