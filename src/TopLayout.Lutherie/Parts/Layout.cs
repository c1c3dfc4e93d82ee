using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A whole top, laid out: what every check and sheet reads. Outside coordinates of a right-handed instrument, mm: origin where the
/// centre joint meets the neck edge, bass at −x, y towards the neck, so the body lies at y &lt; 0.
/// </summary>
public sealed class Layout
{
    /// <summary>The design it was built from.</summary>
    public required Design Design { get; init; }

    /// <summary>The top itself.</summary>
    public required TopPlate Top { get; init; }

    /// <summary>Lean of the bass half's grain, + outward towards the tail.</summary>
    public required Angle SkewBass { get; init; }

    /// <summary>Lean of the treble half's grain, + outward towards the tail.</summary>
    public required Angle SkewTreble { get; init; }

    /// <summary>The body's outline, and how the design came to it.</summary>
    public required BodyOutline Body { get; init; }

    /// <summary>Outer face of the sides, counter-clockwise.</summary>
    public Contour Outline => Body.Edge;

    /// <summary>Inside of the sides, counter-clockwise.</summary>
    public required Contour InsideOfSides { get; init; }

    /// <summary>Inner line of the linings, counter-clockwise.</summary>
    public required Contour LiningLine { get; init; }

    /// <summary>Fret positions.</summary>
    public required Frets Frets { get; init; }

    /// <summary>The saddle between the outer strings.</summary>
    public required SaddleLine Saddle { get; init; }

    /// <summary>The soundhole.</summary>
    public required Hole Hole { get; init; }

    /// <summary>Inner face of the strip glued round inside the hole; null when there is none.</summary>
    public Contour? HoleLiner { get; init; }

    /// <summary>All that is glued to the top or cut into it, in building order.</summary>
    public required ImmutableArray<Member> Members { get; init; }

    /// <summary>What the plan shows besides members: slots, caps, ledges.</summary>
    public ImmutableArray<PlanMark> Marks { get; init; } = [];

    /// <summary>Holes to drill through the top.</summary>
    public ImmutableArray<DrillPoint> DrillPoints { get; init; } = [];

    /// <summary>Holes to drill through the tie block, along the body; none of them goes through the top.</summary>
    public ImmutableArray<TieHole> TieHoles { get; init; } = [];

    /// <summary>Findings that only the building could make: parts it left out, or drew otherwise than the design says.</summary>
    public ImmutableArray<Finding> Faults { get; init; } = [];

    /// <summary>The mark of that name; null when the design has none.</summary>
    public PlanMark? FindMark(string name) => Marks.FirstOrDefault(m => m.Name == name);

    /// <summary>The member of that name; null when the design has none.</summary>
    public Member? Find(string name) => Members.FirstOrDefault(m => m.Name == name);

    /// <summary>What of a member's footprint glue can hold on the top: on the plate, without the hole, and without what is cut into the glued faces.</summary>
    public Region GluedArea(Member member)
    {
        var onPlate = Body.PlateEdge == Outline ? member.Footprint : member.Footprint.Intersect(Region.Inside(Body.PlateEdge));
        return Marks.Where(m => m.IsCovered && m.Face == member.Face).Select(m => m.Line).Append(Hole.Edge)
            .Where(free => free.Bounds.Overlaps(member.Footprint.Bounds))
            .Aggregate(onPlate, (area, free) => area.Subtract(Region.Inside(free)));
    }
}
