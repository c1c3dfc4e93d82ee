using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>One thing on a sheet. Coordinates are mm, y up.</summary>
public abstract record Shape
{
    private protected Shape(string part, Role role, Emphasis emphasis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(part);
        (Part, Role, Emphasis) = (part, role, emphasis);
    }

    /// <summary>What it belongs to, in plain words ("outline", "slot 2"); not blank.</summary>
    public string Part { get; }

    /// <summary>What it is for.</summary>
    public Role Role { get; }

    /// <summary>How strongly it speaks.</summary>
    public Emphasis Emphasis { get; }

    /// <summary>True when no tool follows it: letters to read, which a micrometre serves.</summary>
    public virtual bool IsOnlyRead => false;

    /// <summary>The smallest axis-parallel box round its lines, mm; line width does not count.</summary>
    public abstract Box2 Bounds { get; }

    /// <summary>The lines and arcs to draw; for a label its letters.</summary>
    public abstract IReadOnlyList<Contour> Lines { get; }
}

/// <summary>A contour with a pen. A whole circle is written as a circle.</summary>
public sealed record ContourShape : Shape
{
    /// <summary>A contour as part of something.</summary>
    public ContourShape(string part, Role role, Contour contour, Emphasis emphasis = Emphasis.Normal)
        : base(part, role, emphasis) => Contour = contour;

    /// <summary>The lines and arcs, mm.</summary>
    public Contour Contour { get; }

    /// <summary>The role whose pen draws it, when not its own: a legend's sample of a wall is no wall.</summary>
    public Role? LooksLike { get; init; }

    /// <inheritdoc/>
    public override Box2 Bounds => Contour.Bounds;

    /// <inheritdoc/>
    public override IReadOnlyList<Contour> Lines => [Contour];
}
