namespace TopLayout.Geometry;

/// <summary>How a band ends at the ends of its path.</summary>
public enum BandEnd
{
    /// <summary>A half circle about the end.</summary>
    Round,

    /// <summary>Straight across, through the end.</summary>
    Flat,
}
