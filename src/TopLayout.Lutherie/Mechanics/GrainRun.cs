using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>What one edge of one member gives to a run.</summary>
/// <param name="Member">The member.</param>
/// <param name="Side">The side of the member.</param>
/// <param name="Label">The edge.</param>
/// <param name="IsLongSide">True when the edge runs along the member's own long grain.</param>
/// <param name="LengthMm">Length along the grain within the run, mm.</param>
/// <param name="LeastAngle">The least angle to the grain on that part.</param>
/// <param name="EdgeX">Where that part of the edge lies on average, x in the grain's frame, mm.</param>
public sealed record Contribution(
    string Member, EdgeSide Side, string Label, bool IsLongSide, double LengthMm, Angle LeastAngle, double EdgeX);

/// <summary>
/// A stretch of one grain line along which unsupported glued edges lie within the band: a crack can pop open over this length at once.
/// </summary>
/// <param name="Half">The half of the top, or the whole when edges of both halves take part.</param>
/// <param name="Grain">The grain there.</param>
/// <param name="X">The grain line in the grain's frame, mm.</param>
/// <param name="FromY">Its tail end in the grain's frame, mm.</param>
/// <param name="ToY">Its neck end in the grain's frame, mm.</param>
/// <param name="Contributions">The edges that make it, longest first.</param>
public sealed record GrainRun(
    TopHalf Half, Angle Grain, double X, double FromY, double ToY, ImmutableArray<Contribution> Contributions)
{
    /// <summary>Λ, mm.</summary>
    public double LengthMm => ToY - FromY;

    /// <summary>Where the edges of the run lie on average, x in the grain's frame, mm: within the band round <see cref="X"/>.</summary>
    public double EdgeX => Contributions.Sum(c => c.LengthMm * c.EdgeX) / Contributions.Sum(c => c.LengthMm);

    /// <summary>The tail end on the edges' line, in top coordinates.</summary>
    public Point2 From => ToTop(FromY);

    /// <summary>The neck end on the edges' line, in top coordinates.</summary>
    public Point2 To => ToTop(ToY);

    private Point2 ToTop(double y) => new Placement(default, Grain, false).Apply(new Point2(EdgeX, y));
}

/// <summary>The profile of Λ across the top at one grain line, to draw beside the plan.</summary>
/// <param name="Half">The half of the top.</param>
/// <param name="X">The grain line in the grain's frame, mm.</param>
/// <param name="LongestMm">Λ there, mm; 0 where no edge lies.</param>
/// <param name="TotalMm">All runs on it together, mm.</param>
public readonly record struct ProfileSample(TopHalf Half, double X, double LongestMm, double TotalMm);
