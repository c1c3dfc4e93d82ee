namespace TopLayout.Lutherie.Woods;

/// <summary>How a glued piece's long grain lies against the top.</summary>
public enum GrainLie
{
    /// <summary>In the plane of the top; the member's axis says which way.</summary>
    InPlane,

    /// <summary>Upright, through the depth of the rim, as in most neck blocks.</summary>
    Upright,
}

/// <summary>How a piece is sawn: which way its growth rings stand against the glued face.</summary>
public enum Sawing
{
    /// <summary>Not said by the design: the worse case is taken.</summary>
    Unknown,

    /// <summary>Rings upright to the glued face: moves radially across.</summary>
    Quarter,

    /// <summary>Rings along the glued face: moves tangentially across.</summary>
    Flat,
}

/// <summary>What a piece is made of and how it is cut.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Lie">Whether the long grain lies in the top's plane.</param>
/// <param name="Sawing">How it is sawn.</param>
public sealed record Material(Wood Wood, GrainLie Lie, Sawing Sawing);
