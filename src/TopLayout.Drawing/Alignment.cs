namespace TopLayout.Drawing;

/// <summary>Which end of a line of text stands at its anchor.</summary>
public enum Alignment
{
    /// <summary>The text starts at the anchor.</summary>
    Left,

    /// <summary>The text stands centred on the anchor.</summary>
    Centre,

    /// <summary>The text ends at the anchor.</summary>
    Right,
}
