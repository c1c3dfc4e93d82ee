using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Lutherie.Checks;

/// <summary>What the grain check says of one side of one member, taken by itself.</summary>
/// <param name="Member">The member.</param>
/// <param name="Side">Which of its sides.</param>
/// <param name="Edge">The edge that gives most to its longest run.</param>
/// <param name="RunMm">Λ, mm.</param>
/// <param name="AcrossMm">Where that grain line passes the run's middle, mm from the centre line, bass negative.</param>
/// <param name="LeastAngle">Least angle to the grain in the run.</param>
/// <param name="Pulls">False for a channel, which nothing pulls on.</param>
/// <param name="Index">The mismatch index M; null when nothing pulls.</param>
/// <param name="Severity">The verdict.</param>
public sealed record SideVerdict(string Member, EdgeSide Side, string Edge, double RunMm, double AcrossMm, Angle LeastAngle, bool Pulls, double? Index, Severity Severity);

/// <summary>All that the grain check measured.</summary>
public sealed class GrainReview
{
    private readonly Lazy<ImmutableArray<ProfileSample>> _profile;

    internal GrainReview(Func<ImmutableArray<ProfileSample>> profile) => _profile = new Lazy<ImmutableArray<ProfileSample>>(profile);

    /// <summary>The settings it used.</summary>
    public required Calibration Calibration { get; init; }

    /// <summary>Findings, worst first; passes too.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Every side of every member by itself, in building order.</summary>
    public required ImmutableArray<SideVerdict> Sides { get; init; }

    /// <summary>The longest run on each grain line across the top, all members and both faces together; worked out when a sheet asks.</summary>
    public ImmutableArray<ProfileSample> Profile => _profile.Value;

    /// <summary>What the design left open and the check took, in sentences without a full stop.</summary>
    public required ImmutableArray<string> Assumptions { get; init; }
}
