namespace TopLayout.Drawing;

/// <summary>How strongly a shape speaks. Each differs from the others in line width or dash, so it reads without colour too.</summary>
public enum Emphasis
{
    /// <summary>As its role says.</summary>
    Normal,

    /// <summary>Thinner and grey: background.</summary>
    Faint,

    /// <summary>A plain line, green: in order.</summary>
    Good,

    /// <summary>Twice as wide and in long dashes, amber: look again.</summary>
    Doubtful,

    /// <summary>Three times as wide, red: not in order.</summary>
    Bad,
}
