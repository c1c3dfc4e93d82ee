using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>A bar that is built, as another bar meets it: its two long sides, and the axis midway between them.</summary>
internal sealed class BarAxis
{
    private static readonly string[] SideLabels = ["neck side", "tail side", "bass side", "treble side"];

    private readonly Member _bar;
    private readonly Segment _first;
    private readonly Segment _second;

    /// <summary>The sides of a member that was built as a bar.</summary>
    public BarAxis(Member bar)
    {
        _bar = bar;
        var sides = bar.Footprint.Outer.Segments.Select(s => s.Label).Where(SideLabels.Contains).Distinct().Select(s => Bar.Side(bar, s)).ToList();
        (_first, _second) = (sides[0], sides[1]);
        var way = _first.TangentAt(0);
        Line = BarStrip.Line(_first.Start + (way.Left * (way.Cross(_second.Start - _first.Start) / 2)), way, "");
    }

    /// <summary>The axis, longer than any top.</summary>
    public Segment Line { get; }

    /// <summary>Names of its ends.</summary>
    public IEnumerable<string> Ends => _bar.Footprint.Outer.Segments.Select(s => s.Label).Where(s => !SideLabels.Contains(s)).Distinct();

    /// <summary>Where its axis leaves it at an end; null when the end has no such name.</summary>
    public Point2? End(string name) => _bar.Footprint.Outer.Segments.Where(s => s.Label == name)
        .SelectMany(s => Intersections.Of(s, Line)).Select(m => (Point2?)m.Point).FirstOrDefault();

    /// <summary>Where a straight line across the top or along it meets the axis inside the bar's own length; null when it does not.</summary>
    public Point2? Meeting(Point2 through, Vec2 along)
    {
        var line = BarStrip.Line(through, along, "");
        var isMet = _bar.Footprint.Outer.Crossings(line).Count > 0;
        return isMet && Intersections.Of(Line, line) is [var only] ? only.Point : null;
    }

    /// <summary>Where a line along the top meets its two sides, the one towards the neck first; null when it passes the bar by.</summary>
    public (double Upper, double Lower)? EdgesAt(double x)
    {
        var at = _bar.Footprint.Outer.Crossings(BarStrip.Line(new Point2(x, 0), Vec2.UnitY, "")).Select(c => -c.Point.Y).ToList();
        return at.Count > 0 ? (at.Min(), at.Max()) : null;
    }

    /// <summary>The side that something running away from the bar leaves it by.</summary>
    public Segment SideFacing(Vec2 away) => -_first.TangentAt(0).Left.Dot(away) >= -_second.TangentAt(0).Left.Dot(away) ? _first : _second;
}
