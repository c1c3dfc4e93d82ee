namespace TopLayout.Drawing;

/// <summary>How a line is broken. Dashes are a property of the line, never pieces of geometry.</summary>
public enum LineStyle
{
    /// <summary>Unbroken.</summary>
    Continuous,

    /// <summary>Short dashes.</summary>
    Dashed,

    /// <summary>Long and short dashes in turn.</summary>
    Chain,

    /// <summary>Long dashes.</summary>
    LongDashed,

    /// <summary>Dots.</summary>
    Dotted,
}

/// <summary>How a line looks.</summary>
/// <param name="WidthMm">Line width, mm, &gt; 0.</param>
/// <param name="Colour">Red, green and blue as "#rrggbb", dark enough for white paper.</param>
/// <param name="ColourNumber">The nearest of the numbered colours of tagged files, 1 to 255; 7 is black or white.</param>
/// <param name="Style">How the line is broken.</param>
public readonly record struct Pen(double WidthMm, string Colour, int ColourNumber, LineStyle Style)
{
    /// <summary>The pen of a role.</summary>
    public static Pen For(Role role) => role switch
    {
        Role.Cut => new(0.5, "#000000", 7, LineStyle.Continuous),
        Role.Pocket => new(0.4, "#1d4f91", 5, LineStyle.Continuous),
        Role.Engrave => new(0.25, "#6b3a8c", 6, LineStyle.Continuous),
        Role.Mark => new(0.25, "#404040", 9, LineStyle.Continuous),
        Role.Hidden => new(0.25, "#404040", 9, LineStyle.Dashed),
        Role.Centre => new(0.13, "#7a4a12", 34, LineStyle.Chain),
        Role.Dimension => new(0.13, "#1f5f5f", 4, LineStyle.Continuous),
        Role.Text => new(0.25, "#000000", 7, LineStyle.Continuous),
        Role.Finding => new(0.35, "#7a1f3d", 2, LineStyle.Continuous),
        Role.Hatch => new(0.13, "#5a5a5a", 8, LineStyle.Continuous),
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };

    /// <summary>The pen of a role at an emphasis.</summary>
    public static Pen For(Role role, Emphasis emphasis)
    {
        var pen = For(role);
        return emphasis switch
        {
            Emphasis.Normal => pen,
            Emphasis.Faint when role == Role.Finding => new(0.18, "#5a5a5a", 8, LineStyle.Dashed),
            Emphasis.Faint => pen with { WidthMm = 0.1, Colour = "#8c8c8c", ColourNumber = 8 },
            Emphasis.Good => new(pen.WidthMm * 1.4, "#1e6b38", 3, LineStyle.Dotted),
            Emphasis.Doubtful => new(pen.WidthMm * 2, "#9a5b00", 30, LineStyle.LongDashed),
            Emphasis.Bad => pen with { WidthMm = pen.WidthMm * 3, Colour = "#b00020", ColourNumber = 1 },
            _ => throw new ArgumentOutOfRangeException(nameof(emphasis)),
        };
    }

    /// <summary>
    /// The pen of a shape. Letters are written unbroken, a tenth of their height wide within [0.13, 0.5] mm, whatever the role;
    /// emphasis changes their colour, and half as wide again for the worst.
    /// </summary>
    public static Pen For(Shape shape)
    {
        var pen = For((shape as ContourShape)?.LooksLike ?? shape.Role, shape.Emphasis);
        if (shape is not LabelShape label)
        {
            return pen;
        }

        var width = Math.Clamp(label.HeightMm / 10, 0.13, 0.5) * (label.Emphasis == Emphasis.Bad ? 1.5 : 1);
        return pen with { WidthMm = width, Style = LineStyle.Continuous };
    }

    /// <summary>Dash, gap, dash, gap … in mm; empty for an unbroken line.</summary>
    public static IReadOnlyList<double> Dashes(LineStyle style) => style switch
    {
        LineStyle.Continuous => [],
        LineStyle.Dashed => [3, 1.5],
        LineStyle.Chain => [10, 1.5, 1.5, 1.5],
        LineStyle.LongDashed => [8, 2],
        LineStyle.Dotted => [0.8, 1.2],
        _ => throw new ArgumentOutOfRangeException(nameof(style)),
    };
}
