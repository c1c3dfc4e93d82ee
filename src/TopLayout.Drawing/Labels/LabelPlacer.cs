using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>
/// Places labels after the geometry, by priority: at a preferred spot; inside the area they name; at one of eight spots round
/// their point, nearest first; last in a column at the side of the page, which grows. From a distance a leader points back, over no
/// outline of another part as long as there is another way. A label keeps off lines, other labels and their leaders, and the points
/// that other labels name. The same input gives the same places.
/// </summary>
public static class LabelPlacer
{
    /// <summary>White kept round the letters, as a share of their height.</summary>
    public const double ClearancePerHeight = Spots.Clearance;

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
        var (placed, isPlaced) = (new List<Shape>(), new HashSet<LabelRequest>());
        void Put(LabelRequest request, Spot spot)
        {
            placed.AddRange(spot.Shapes());
            obstacles.Add(spot);
            isPlaced.Add(request);
        }

        foreach (var request in list.Where(r => !isPlaced.Contains(r)))
        {
            if (request.Mirrored is { } twin && !isPlaced.Contains(twin) && Pair(request, twin, page, obstacles) is var (own, other))
            {
                Put(request, own);
                Put(twin, other);
            }
            else
            {
                Put(request, Best(request, page, obstacles, columns));
            }
        }

        return new PlacedLabels(placed, columns.Page);
    }

    private static Spot Best(LabelRequest request, Box2 page, Obstacles obstacles, MarginColumns columns)
    {
        Spot? On(IEnumerable<Spot> spots) => First(spots, page, obstacles, breaksLines: false) ?? (request.BreaksLines ? First(spots, page, obstacles, breaksLines: true) : null);
        if ((On(Spots.Preferred(request)) ?? On(Spots.Inside(request))) is { } on)
        {
            return on;
        }

        // Of the places on the page the first whose leader runs over no wall; else the one that runs over the fewest, on the page or beside it.
        var best = default((Spot Spot, int Walls)?);
        foreach (var spot in Spots.Round(request).Where(s => HasRoom(s, page, obstacles, breaksLines: false)))
        {
            var crossed = spot.Way is { } way ? obstacles.Over(way, request.Part) : default;
            if (crossed.IsReadable && (best is null || crossed.Walls < best.Value.Walls))
            {
                best = (spot, crossed.Walls);
                if (crossed.Walls == 0)
                {
                    break;
                }
            }
        }

        if (best is { Walls: 0 } free)
        {
            return free.Spot;
        }

        var beside = columns.Best(request, obstacles);
        return best is { } found && beside.Crossed.CompareTo(new Crossed(0, 0, found.Walls)) >= 0 ? found.Spot : columns.Take(beside);
    }

    // The first spot that has room on both sides, itself and mirrored, its leaders over no wall; null where there is none.
    private static (Spot Own, Spot Other)? Pair(LabelRequest request, LabelRequest twin, Box2 page, Obstacles obstacles)
    {
        (Spot Own, Spot Other)? Free(IEnumerable<Spot> spots, bool breaksLines) =>
            (from own in spots
             where own.IsOnOneSide && HasRoom(own, page, obstacles, breaksLines) && IsClear(own)
             let other = own.MirroredFor(twin)
             where Names(other) && HasRoom(other, page, obstacles, breaksLines) && IsClear(other)
             select ((Spot, Spot)?)(own, other)).FirstOrDefault();
        bool IsClear(Spot spot) => spot.Way is not { } way || obstacles.Over(way, spot.Request.Part) == default;
        var near = Spots.Preferred(request).Concat(Spots.Inside(request));
        return Free(near, breaksLines: false)
            ?? (request.BreaksLines && twin.BreaksLines ? Free(near, breaksLines: true) : null)
            ?? Free(Spots.Round(request), breaksLines: false);
    }

    // What mirrors another only in part is meant there too: by a leader that ends in it, or by words that stand in it or beside it.
    private static bool Names(Spot spot) => spot.Request.Inside is not { } area
        || (spot.Way is { } way ? area.Contains(way[^1]) : spot.Frame.Corners.Min(area.DistanceTo) <= spot.Request.HeightMm);

    private static Spot? First(IEnumerable<Spot> spots, Box2 page, Obstacles obstacles, bool breaksLines)
    {
        foreach (var spot in spots)
        {
            if (HasRoom(spot, page, obstacles, breaksLines))
            {
                return spot;
            }
        }

        return null;
    }

    private static bool HasRoom(Spot spot, Box2 page, Obstacles obstacles, bool breaksLines)
    {
        var frame = spot.Frame;
        var bounds = frame.Bounds;
        return page.Contains(bounds.Min) && page.Contains(bounds.Max) && obstacles.LeaveFree(frame, spot.Request.Target, breaksLines);
    }
}
