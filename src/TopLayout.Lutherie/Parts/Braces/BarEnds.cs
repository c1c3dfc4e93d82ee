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

/// <summary>One end of a bar: what it is cut to, what its edge is called, and what it is joined with there.</summary>
/// <param name="Stop">The contour the bar is cut to.</param>
/// <param name="Label">Name of the end edge.</param>
/// <param name="JoinedWith">Names of the members that hold it there; none for a free end.</param>
internal sealed record BarEnd(Contour Stop, string Label, ImmutableHashSet<string> JoinedWith)
{
    private static readonly ImmutableHashSet<string> Linings = ["bass lining", "treble lining"];

    /// <summary>Whether the end is let into the lining.</summary>
    public bool IsInLining => JoinedWith == Linings;

    /// <summary>Let into the lining and cut to the inside of the sides.</summary>
    public static BarEnd InLining(BarRoom room, string label) => new(room.InsideOfSides, label, Linings);

    /// <summary>Cut square at a point of the axis, held by nothing.</summary>
    public static BarEnd Free(Point2 at, Vec2 along, string label) => new(Batten.Square(at, along), label, []);

    /// <summary>Cut against one side of another bar.</summary>
    public static BarEnd Against(Member bar, string side, string label)
    {
        var edge = Bar.Side(bar, side);
        return new BarEnd(new Contour([new Vertex(edge.Start), new Vertex(edge.End)], isClosed: false), label, [bar.Name]);
    }

    /// <summary>A key that chooses between letting in and stopping free.</summary>
    public static Parameter<BarEnds> Choice(Section section, BarEnds fallback) => Parameter.Choice(
        section, "ends", "let into the lining, or floating: short of it", fallback, ("lining", BarEnds.Lining), ("floating", BarEnds.Floating));
}
