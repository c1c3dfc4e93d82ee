using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>Which face of the top a member is glued to or cut into.</summary>
public enum TopFace
{
    /// <summary>The face seen by the player.</summary>
    Outside,

    /// <summary>The braced face.</summary>
    Inside,
}

/// <summary>What sort of thing a member is; decides how it can support an edge that crosses it.</summary>
public enum MemberKind
{
    /// <summary>A brace: long, narrow, its grain along itself.</summary>
    Bar,

    /// <summary>A thin flat piece: bridge plate, flat brace, patch.</summary>
    Plate,

    /// <summary>A neck or tail block.</summary>
    Block,

    /// <summary>The tongue of a neck block.</summary>
    Tongue,

    /// <summary>The strip that widens the side where the top is glued on.</summary>
    Lining,

    /// <summary>The fretboard where it lies on the top.</summary>
    Fretboard,

    /// <summary>The bridge.</summary>
    Bridge,

    /// <summary>A channel cut into the outside face; its edges are walls, and nothing pulls on them.</summary>
    Channel,
}

/// <summary>
/// Anything glued to the top or cut into it. Outside coordinates of a right-handed instrument, mm: bass at −x, y towards the neck,
/// origin where the centre joint meets the body edge.
/// </summary>
public sealed class Member
{
    /// <summary>Its name in trade words, unique in a layout: "tone bar 1".</summary>
    public required string Name { get; init; }

    /// <summary>What sort of thing it is.</summary>
    public required MemberKind Kind { get; init; }

    /// <summary>The face it is on.</summary>
    public required TopFace Face { get; init; }

    /// <summary>Its footprint on the top; every edge is named by its label.</summary>
    public required Region Footprint { get; init; }

    /// <summary>Thickness (height off the top) at its highest, mm; the depth of a channel.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>What it is made of; null for a channel.</summary>
    public required Material? Material { get; init; }

    /// <summary>Direction of its long grain from the y axis, counter-clockwise; of no meaning when the grain is upright.</summary>
    public required Angle Grain { get; init; }

    /// <summary>Labels of edges that are not glued edges: where it meets another part of the same piece, or the side.</summary>
    public ImmutableHashSet<string> UngluedEdges { get; init; } = [];

    /// <summary>Names of members on the same face that it is lapped, notched or butted into, so that it may support their edges.</summary>
    public ImmutableHashSet<string> JoinedWith { get; init; } = [];

    /// <summary>
    /// Half the width across the grain that acts as one piece, mm, where the footprint does not tell it (a kerfed lining); else null
    /// and it is measured on the footprint.
    /// </summary>
    public double? ActingHalfWidthMm { get; init; }

    /// <summary>The places in the design that shaped it; the first is the one to change.</summary>
    public required ImmutableArray<SourcePlace> Places { get; init; }
}
