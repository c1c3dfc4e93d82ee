using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>A label that wants a place: what it says, and the point it names.</summary>
public sealed class LabelRequest(string part, Role role, string text, double heightMm, Point2 target)
{
    /// <summary>What it belongs to, in plain words.</summary>
    public string Part { get; } = part;

    /// <summary>The role of the letters; a leader is always <see cref="Drawing.Role.Dimension"/>.</summary>
    public Role Role { get; } = role;

    /// <summary>The words.</summary>
    public string Text { get; } = text;

    /// <summary>Height of a capital, mm, &gt; 0.</summary>
    public double HeightMm { get; } = heightMm;

    /// <summary>The box round its letters, written from the origin to the right, mm.</summary>
    internal Box2 Letters { get; } = Lettering.Measure(text, heightMm);

    /// <summary>The point it names, mm; no other label is put over it.</summary>
    public Point2 Target { get; } = target;

    /// <summary>Higher is placed earlier; equal ones in the order of the list.</summary>
    public int Priority { get; init; }

    /// <summary>How strongly label and leader speak.</summary>
    public Emphasis Emphasis { get; init; }

    /// <summary>The direction of the baseline at preferred spots and inside the area; elsewhere the label lies level.</summary>
    public Angle Rotation { get; init; }

    /// <summary>Places tried first, in order: the middle of the label, mm.</summary>
    public ImmutableArray<Point2> Preferred { get; init; } = [];

    /// <summary>Other points of what it names, good for the end of a leader; tried after the target.</summary>
    public ImmutableArray<Point2> Elsewhere { get; init; } = [];

    /// <summary>Whether axes and lines behind break off round it at a preferred spot or inside the area, when it finds no place free of them.</summary>
    public bool BreaksLines { get; init; }

    /// <summary>Whether a leader always says which point is meant, as where several lines run close.</summary>
    public bool WantsLeader { get; init; }

    /// <summary>The request for the like thing mirrored across x = 0: both get mirrored places, when there are such with room on both sides.</summary>
    public LabelRequest? Mirrored { get; init; }

    /// <summary>The area it names: tried next, wholly inside, as near to the target as it fits, along the baseline or square to it. Null when it names a point only.</summary>
    public Region? Inside { get; init; }
}
