using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The outline of something that the plan shows and that is neither glued to the top nor cut into it, so no member: the saddle's slot in the
/// bridge, the slot of the truss rod in the neck block, the cap on the crossing of the X. Outside coordinates of a right-handed instrument, mm.
/// </summary>
/// <param name="Name">Its name in trade words, unique in a layout.</param>
/// <param name="Face">The face it is seen on.</param>
/// <param name="Line">Its outline, or an open line.</param>
/// <param name="Place">The place in the design that shaped it.</param>
public sealed record PlanMark(string Name, TopFace Face, Contour Line, SourcePlace Place)
{
    /// <summary>What it is made of; null for a slot or a line.</summary>
    public Material? Material { get; init; }

    /// <summary>Its thickness, or the depth of a slot, mm; 0 for a line.</summary>
    public double ThicknessMm { get; init; }

    /// <summary>True when it lies between parts and top, cut into the faces that are glued: nothing is glued there, and it is seen from neither side.</summary>
    public bool IsCovered { get; init; }
}
