using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>What a new label must keep off: lines, labels and their leaders, and the points that other labels name.</summary>
internal sealed class Obstacles(IEnumerable<Point2> named)
{
    private readonly List<Point2> _named = [.. named];
    private readonly List<(Segment Line, Box2 Bounds)> _lines = [];
    private readonly List<(Segment Line, Box2 Bounds)> _leaders = [];
    private readonly List<(Contour Frame, Box2 Bounds)> _frames = [];

    /// <summary>Adds a drawn shape.</summary>
    public void Add(Shape shape)
    {
        if (shape is LabelShape label)
        {
            var frame = label.FrameGrown(label.HeightMm * Spots.Clearance);
            _frames.Add((frame, frame.Bounds));
        }
        else
        {
            _lines.AddRange(shape.Lines.SelectMany(l => l.Segments).Select(s => (s, s.Bounds())));
        }
    }

    /// <summary>Adds a label just placed, and its leader.</summary>
    public void Add(Spot spot)
    {
        Add(spot.Label);
        _leaders.AddRange((spot.Leader?.Segments ?? []).Select(s => (s, s.Bounds())));
    }

    /// <summary>True when the frame keeps off every line, label, leader and named point but its own.</summary>
    public bool LeaveFree(Contour frame, Point2 own)
    {
        var bounds = frame.Bounds;
        return !_frames.Any(f => f.Bounds.Overlaps(bounds) && Frames.Meets(frame, f.Frame))
            && !_lines.Concat(_leaders).Any(l => l.Bounds.Overlaps(bounds) && Frames.Meets(frame, l.Line))
            && !_named.Any(p => p != own && Frames.Holds(frame, p));
    }

    /// <summary>How many labels and how many other leaders a leader crosses.</summary>
    public (int Labels, int Leaders) Crossed(Contour leader)
    {
        var pieces = leader.Segments.Select(s => (Line: s, Bounds: s.Bounds())).ToList();
        return (
            pieces.Sum(p => _frames.Count(f => f.Bounds.Overlaps(p.Bounds) && Frames.Meets(f.Frame, p.Line))),
            pieces.Sum(p => _leaders.Count(l => l.Bounds.Overlaps(p.Bounds) && Intersections.Of(l.Line, p.Line).Count > 0)));
    }
}
