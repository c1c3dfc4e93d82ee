namespace TopLayout.Geometry.Arrangements;

/// <summary>A line or arc on its way into the arrangement.</summary>
/// <param name="Segment">Its shape and label.</param>
/// <param name="Weight">How much the winding number to its left exceeds that to its right: 1 for the border of an area, 0 for a path that only divides or is asked about.</param>
/// <param name="Rank">Of coincident strands the lowest rank gives the label.</param>
internal readonly record struct Strand(Segment Segment, int Weight = 1, int Rank = 0);

/// <summary>A part of a strand between two neighbouring nodes; coincident ones are merged.</summary>
internal struct Fragment
{
    /// <summary>Nodes at its ends.</summary>
    public int From, To;

    /// <summary>Its shape, from the one node to the other.</summary>
    public Curve Curve;

    /// <summary>Winding number to the left less that to the right.</summary>
    public int Weight;

    /// <summary>The first strands that run with it and against it, which give its line or circle; −1 for none.</summary>
    public int With, Against;

    /// <summary>Of the strands that run with it and against it those of the lowest rank, which give its label; −1 for none.</summary>
    public int NameWith, NameAgainst;

    /// <summary>True when a strand of weight 0 takes part.</summary>
    public bool IsPath;
}
