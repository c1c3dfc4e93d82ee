using TopLayout.Drawing.Labels;
using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>One line of text, anchored on its baseline. It never mirrors: place the anchor, not the letters.</summary>
public sealed record LabelShape : Shape
{
    /// <summary>The longest text, characters: what one line of the narrowest format holds after spelling out its signs.</summary>
    public const int MaxLength = 200;

    private readonly Box2 _letters;

    /// <summary>A line of text.</summary>
    /// <exception cref="ArgumentException">A text that is blank, overlong or more than one line, a height that is not positive, an anchor that is not finite,
    /// or a role that a tool would follow as a closed wall (<see cref="Role.Cut"/>, <see cref="Role.Pocket"/>).</exception>
    public LabelShape(
        string part,
        Role role,
        string text,
        Point2 anchor,
        double heightMm,
        Alignment alignment = Alignment.Left,
        Angle rotation = default,
        Emphasis emphasis = Emphasis.Normal)
        : base(part, role, emphasis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        Demand(text.Length <= MaxLength, $"a label has at most {MaxLength} characters", nameof(text));
        Demand(!text.Any(char.IsControl), "a label is one line", nameof(text));
        Demand(anchor.IsFinite, "an anchor is finite", nameof(anchor));
        Demand(heightMm > 0 && double.IsFinite(heightMm), "a height is positive", nameof(heightMm));
        Demand(role is not (Role.Cut or Role.Pocket), "letters are not walls", nameof(role));
        (Text, Anchor, HeightMm, Alignment, Rotation) = (text, anchor, heightMm, alignment, rotation);
        _letters = Lettering.Measure(text, heightMm);
    }

    /// <summary>The words.</summary>
    public string Text { get; }

    /// <inheritdoc/>
    public override bool IsOnlyRead => Role is not (Role.Engrave or Role.Mark);

    /// <summary>The point of the baseline that <see cref="Alignment"/> names, mm.</summary>
    public Point2 Anchor { get; }

    /// <summary>Height of a capital, mm, &gt; 0.</summary>
    public double HeightMm { get; }

    /// <summary>Which end stands at the anchor.</summary>
    public Alignment Alignment { get; }

    /// <summary>Direction of the baseline from +x.</summary>
    public Angle Rotation { get; }

    /// <summary>Where the baseline starts, whatever the alignment, mm.</summary>
    public Point2 BaselineStart => Lettering.Placement(_letters, Anchor, Rotation, Alignment).Apply(new Point2(0, 0));

    /// <summary>The box round the letters, turned with the text.</summary>
    public TurnedBox Frame => TurnedBox.Around(Lettering.Placement(_letters, Anchor, Rotation, Alignment).Apply(_letters.Center), _letters, Rotation);

    /// <inheritdoc/>
    public override Box2 Bounds => Frame.Bounds;

    /// <inheritdoc/>
    public override IReadOnlyList<Contour> Lines => Lettering.Strokes(Text, Anchor, HeightMm, Rotation, Alignment);

    private static void Demand(bool holds, string rule, string parameter)
    {
        if (!holds)
        {
            throw new ArgumentException(rule, parameter);
        }
    }
}
