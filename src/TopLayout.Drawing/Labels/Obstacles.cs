using System.Runtime.InteropServices;
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
    private readonly List<Line> _lines = [];
    private readonly List<Line> _walls = [];
    private readonly List<Line> _leaders = [];
    private readonly List<(TurnedBox Frame, Box2 Bounds)> _frames = [];

    /// <summary>Adds a drawn shape.</summary>
    public void Add(Shape shape)
    {
        if (shape is LabelShape label)
        {
            Add(label.Frame.Grown(label.HeightMm * Spots.Clearance));
        }
        else if (shape is ContourShape drawn)
        {
            var (mayBreak, isWall) = (BrokenLines.MayBreak(drawn), IsWall(drawn));
            foreach (var segment in drawn.Contour.Segments)
            {
                var line = new Line(segment, segment.Bounds(), drawn.Part, mayBreak);
                _lines.Add(line);
                if (isWall)
                {
                    _walls.Add(line);
                }
            }
        }
    }

    /// <summary>Adds a label just placed, and its leader.</summary>
    public void Add(Spot spot)
    {
        Add(spot.Frame);
        foreach (var segment in Pieces(spot.Way ?? []))
        {
            _leaders.Add(new Line(segment, segment.Bounds(), spot.Request.Part, MayBreak: false));
        }
    }

    /// <summary>True when the frame keeps off every line, label, leader and named point but its own.</summary>
    /// <param name="frame">The letters' box and the white round it.</param>
    /// <param name="own">The point its label names.</param>
    /// <param name="breaksLines">Whether axes and lines behind count for nothing, because they break off round the label.</param>
    public bool LeaveFree(TurnedBox frame, Point2 own, bool breaksLines = false)
    {
        var bounds = frame.Bounds;
        return !_frames.Exists(f => f.Bounds.Overlaps(bounds) && frame.Meets(f.Frame))
            && !Meets(frame, bounds, _lines, breaksLines)
            && !Meets(frame, bounds, _leaders, breaksLines: false)
            && !_named.Exists(p => p != own && frame.Holds(p));
    }

    /// <summary>What a leader from a label of a part runs over.</summary>
    public Crossed Over(Point2[] leader, string part)
    {
        var (labels, leaders, walls) = (0, 0, 0);
        foreach (var piece in Pieces(leader))
        {
            // A straight piece of a leader is a box without height.
            var (bounds, box) = (piece.Bounds(), new TurnedBox(piece.PointAt(0.5), piece.TangentAt(0.5), piece.Length / 2, 0));
            labels += _frames.Count(f => f.Bounds.Overlaps(bounds) && f.Frame.Meets(piece));
            leaders += Crossings(piece, bounds, box, _leaders, but: null);
            walls += Crossings(piece, bounds, box, _walls, part);
        }

        return new Crossed(labels, leaders, walls);
    }

    private void Add(TurnedBox frame) => _frames.Add((frame, frame.Bounds));

    private static bool Meets(TurnedBox frame, Box2 bounds, List<Line> lines, bool breaksLines)
    {
        foreach (ref readonly var line in CollectionsMarshal.AsSpan(lines))
        {
            if (line.Bounds.Overlaps(bounds) && !(breaksLines && line.MayBreak) && frame.Meets(line.Segment))
            {
                return true;
            }
        }

        return false;
    }

    // Lines of a part's own count for nothing.
    private static int Crossings(Segment piece, Box2 bounds, TurnedBox box, List<Line> lines, string? but)
    {
        var count = 0;
        foreach (ref readonly var line in CollectionsMarshal.AsSpan(lines))
        {
            if (line.Bounds.Overlaps(bounds) && line.Part != but
                && (line.Segment.IsArc ? !box.IsPassedBy(line.Segment) && Intersections.Of(line.Segment, piece).Count > 0 : box.Meets(line.Segment)))
            {
                count++;
            }
        }

        return count;
    }

    private static IEnumerable<Segment> Pieces(Point2[] way) => way.Zip(way.Skip(1), (from, to) => new Segment(from, to));

    // An outline of the near side, at its full strength.
    private static bool IsWall(ContourShape shape) =>
        shape.Role is Role.Cut or Role.Pocket or Role.Engrave or Role.Mark or Role.Finding && shape.Emphasis != Emphasis.Faint;

    // A piece of what is drawn; one that may break off round a label counts for nothing where the label allows it.
    private readonly record struct Line(Segment Segment, Box2 Bounds, string Part, bool MayBreak);
}
