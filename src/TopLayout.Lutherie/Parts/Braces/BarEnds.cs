using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>How a bar ends.</summary>
public enum BarEnds
{
    /// <summary>Let into the linings and cut to the inside of the sides.</summary>
    Lining,

    /// <summary>Free, short of the linings.</summary>
    Floating,

    /// <summary>Cut against other bars.</summary>
    Butted,
}

/// <summary>One end of a bar: the line it is cut along, what its edge is called, and what it is joined with there.</summary>
/// <param name="Label">Name of the end edge.</param>
/// <param name="Cut">The line it is cut along, from end to end of what holds it there; null when the inside of the sides cuts it.</param>
/// <param name="JoinedWith">Names of the members that hold it there; none for a free end.</param>
internal sealed record BarEnd(string Label, Segment? Cut, ImmutableHashSet<string> JoinedWith)
{
    // A free end's cut has no end of its own; any length will do.
    private const double HalfCutMm = 1;

    private static readonly ImmutableHashSet<string> Linings = ["bass lining", "treble lining"];

    /// <summary>Whether the end is let into the lining.</summary>
    public bool IsInLining => JoinedWith == Linings;

    /// <summary>The member it butts against; null for another kind of end.</summary>
    public Member? Holder { get; init; }

    /// <summary>Let into the lining and cut to the inside of the sides.</summary>
    public static BarEnd InLining(string label) => new(label, null, Linings);

    /// <summary>Cut square at a point of the axis, held by nothing.</summary>
    public static BarEnd Free(Point2 at, Vec2 along, string label) => Straight(at, along.Unit.Left, label, []);

    /// <summary>Cut along a line through a point, joined with some members there, or with none.</summary>
    public static BarEnd Straight(Point2 at, Vec2 way, string label, ImmutableHashSet<string> joinedWith) =>
        new(label, new Segment(at - (way * HalfCutMm), at + (way * HalfCutMm), 0, label), joinedWith);

    /// <summary>Cut against one side of another bar.</summary>
    public static BarEnd Against(Member bar, string side, string label) =>
        new(label, Bar.Side(bar, side) with { Label = label }, [bar.Name]) { Holder = bar };

    /// <summary>A key that chooses between letting in and stopping free.</summary>
    public static Parameter<BarEnds> Choice(Section section, BarEnds fallback) => Parameter.Choice(
        section, "ends", "let into the lining, or floating: short of it", fallback, ("lining", BarEnds.Lining), ("floating", BarEnds.Floating));
}
