using System.Collections.Immutable;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>A layout made ready for the grain check: its glued edges in pieces, and how each member loads the top.</summary>
internal sealed class GrainScene
{
    private readonly ImmutableDictionary<string, Member> _members;

    public GrainScene(Layout layout, Calibration calibration)
    {
        (Layout, Calibration) = (layout, calibration);
        var design = layout.Design;
        Season = new Season(
            design[SeasonSection.GluedHumidity].Value, design[SeasonSection.UsedHumidity].Value, design[SeasonSection.Temperature].Value);
        IsSeasonAssumed = design[SeasonSection.GluedHumidity].IsDefault || design[SeasonSection.UsedHumidity].IsDefault;
        var grain = TopGrain.Halves(layout.SkewBass, layout.SkewTreble);
        _members = layout.Members.ToImmutableDictionary(m => m.Name, StringComparer.Ordinal);
        Pieces = GluedEdges.Of(layout.Members, grain, layout.InsideOfSides, calibration);
        Loads = layout.Members.ToImmutableDictionary(
            m => m.Name, m => MemberLoad.Of(m, layout.Top, grain, Season.MoistureLossPercent, calibration), StringComparer.Ordinal);
    }

    public Layout Layout { get; }

    public Calibration Calibration { get; }

    public Season Season { get; }

    public bool IsSeasonAssumed { get; }

    public ImmutableArray<Member> Members => Layout.Members;

    public ImmutableArray<EdgePiece> Pieces { get; }

    public ImmutableDictionary<string, MemberLoad> Loads { get; }

    public Member Member(string name) => _members[name];

    /// <summary>True when nothing but walls of a channel makes the run.</summary>
    public bool IsOnlyChannel(GrainRun run) => run.Contributions.All(c => _members[c.Member].Kind == MemberKind.Channel);

    /// <summary>The distinct runs over the edges of all members of a face together that are longer than a floor, mm; longest first.</summary>
    public ImmutableArray<GrainRun> Runs(TopFace face, double floorMm) =>
        GrainRuns.Distinct(Pieces.Where(p => _members[p.Member].Face == face), Calibration, floorMm);

    public RunVerdict Verdict(GrainRun run) => RunVerdict.Of(run, Loads, Calibration);
}
