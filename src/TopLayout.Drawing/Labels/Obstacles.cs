using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>What a leader runs over.</summary>
/// <param name="Labels">Labels.</param>
/// <param name="Leaders">Other leaders.</param>
/// <param name="Walls">Times it meets an outline of another part on the near side.</param>
internal readonly record struct Crossed(int Labels, int Leaders, int Walls)
{
    /// <summary>True when it keeps off all letters and leaders.</summary>
    public bool IsReadable => Labels == 0 && Leaders == 0;

    /// <summary>Less than zero when this is the better of two.</summary>
    public int CompareTo(Crossed other) => (Labels, Leaders, Walls).CompareTo((other.Labels, other.Leaders, other.Walls));
}

/// <summary>What a new label must keep off: lines, labels and their leaders, and the points that other labels name.</summary>
internal sealed class Obstacles(IEnumerable<Point2> named)
{
    private readonly List<Point2> _named = [.. named];
    private readonly List<(Segment Line, Box2 Bounds, ContourShape Shape)> _lines = [];
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
        else if (shape is ContourShape drawn)
        {
            _lines.AddRange(drawn.Contour.Segments.Select(s => (s, s.Bounds(), drawn)));
        }
    }

    /// <summary>Adds a label just placed, and its leader.</summary>
    public void Add(Spot spot)
    {
        Add(spot.Label);
        _leaders.AddRange((spot.Leader?.Segments ?? []).Select(s => (s, s.Bounds())));
    }

    /// <summary>True when the frame keeps off every line, label, leader and named point but its own.</summary>
    /// <param name="frame">The letters' box and the white round it.</param>
    /// <param name="own">The point its label names.</param>
    /// <param name="breaksLines">Whether axes and lines behind count for nothing, because they break off round the label.</param>
    public bool LeaveFree(Contour frame, Point2 own, bool breaksLines = false)
    {
        var bounds = frame.Bounds;
        return !_frames.Any(f => f.Bounds.Overlaps(bounds) && Frames.Meets(frame, f.Frame))
            && !_lines.Any(l => l.Bounds.Overlaps(bounds) && !(breaksLines && BrokenLines.MayBreak(l.Shape)) && Frames.Meets(frame, l.Line))
            && !_leaders.Any(l => l.Bounds.Overlaps(bounds) && Frames.Meets(frame, l.Line))
            && !_named.Any(p => p != own && Frames.Holds(frame, p));
    }

    /// <summary>What a leader from a label of a part runs over.</summary>
    public Crossed Over(Contour leader, string part)
    {
        var pieces = leader.Segments.Select(s => (Line: s, Bounds: s.Bounds())).ToList();
        return new Crossed(
            pieces.Sum(p => _frames.Count(f => f.Bounds.Overlaps(p.Bounds) && Frames.Meets(f.Frame, p.Line))),
            pieces.Sum(p => _leaders.Count(l => l.Bounds.Overlaps(p.Bounds) && Intersections.Of(l.Line, p.Line).Count > 0)),
            pieces.Sum(p => _lines.Count(l => l.Bounds.Overlaps(p.Bounds) && l.Shape.Part != part && IsWall(l.Shape) && Intersections.Of(l.Line, p.Line).Count > 0)));
    }

    // An outline of the near side, at its full strength.
    private static bool IsWall(ContourShape shape) =>
        shape.Role is Role.Cut or Role.Pocket or Role.Engrave or Role.Mark or Role.Finding && shape.Emphasis != Emphasis.Faint;
}
