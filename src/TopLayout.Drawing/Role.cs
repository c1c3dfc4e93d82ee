namespace TopLayout.Drawing;

/// <summary>What a shape is for: it sets the pen, and with the part it names the layer.</summary>
public enum Role
{
    /// <summary>A line to cut through.</summary>
    Cut,

    /// <summary>The wall of a recess.</summary>
    Pocket,

    /// <summary>A line to engrave.</summary>
    Engrave,

    /// <summary>A line to mark out and work to.</summary>
    Mark,

    /// <summary>An edge on the far side.</summary>
    Hidden,

    /// <summary>An axis.</summary>
    Centre,

    /// <summary>A measurement and its lines.</summary>
    Dimension,

    /// <summary>Words and what frames them.</summary>
    Text,

    /// <summary>Something to look at.</summary>
    Finding,

    /// <summary>Thin strokes that fill an area.</summary>
    Hatch,
}
