using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Checks;

/// <summary>A layout made ready for the grain check: its glued edges in pieces, and how each member loads the top.</summary>
internal sealed class GrainScene
{
    private readonly Dictionary<string, Member> _members;
    private readonly TopGrain _grain;
    private readonly MemberShapes _shapes;
    private readonly Dictionary<string, MemberShape> _shapeOf;
    private readonly SupportBays _bays;
    private readonly BandScan _scan;
    private readonly TopCases _top;

    /// <param name="layout">The layout.</param>
    /// <param name="calibration">The settings.</param>
    /// <param name="turn">By how much the grain is turned from what the design says: an error of the layout.</param>
    public GrainScene(Layout layout, Calibration calibration, Angle turn)
    {
        (Layout, Calibration) = (layout, calibration);
        var design = layout.Design;
        Season = new Season(
            design[SeasonSection.GluedHumidity].Value, design[SeasonSection.UsedHumidity].Value, design[SeasonSection.Temperature].Value);
        IsSeasonAssumed = design[SeasonSection.GluedHumidity].IsDefault || design[SeasonSection.UsedHumidity].IsDefault;
        _grain = TopGrain.Halves(layout.SkewBass, layout.SkewTreble).Turned(turn);
        _shapes = new MemberShapes(layout.Members);
        _shapeOf = _shapes.All.ToDictionary(s => s.Member.Name, StringComparer.Ordinal);
        _bays = new SupportBays(_shapes, _grain, layout.InsideOfSides, calibration);
        _members = layout.Members.ToDictionary(m => m.Name, StringComparer.Ordinal);
        Pieces = GluedEdges.Of(_shapes, _grain, layout.InsideOfSides, calibration);
        (_scan, _top) = (new BandScan(calibration), new TopCases(layout.Top));
        Sides = GrainRuns.PerSide(Pieces, _scan);
        Loads = layout.Members.ToDictionary(m => m.Name, m => Load(m, Season.MoistureLossPercent), StringComparer.Ordinal);
    }

    public Layout Layout { get; }

    public Calibration Calibration { get; }

    public Season Season { get; }

    public bool IsSeasonAssumed { get; }

    public ImmutableArray<Member> Members => Layout.Members;

    public ImmutableArray<EdgePiece> Pieces { get; }

    /// <summary>The longest run of each side of each member by itself.</summary>
    public ImmutableArray<GrainRun> Sides { get; }

    public IReadOnlyDictionary<string, MemberLoad> Loads { get; }

    public Member Member(string name) => _members[name];

    /// <summary>True when nothing but walls of a channel makes the run.</summary>
    public bool IsOnlyChannel(GrainRun run) => run.Contributions.All(c => _members[c.Member].Kind == MemberKind.Channel);

    /// <summary>
    /// The distinct runs over the edges of all members of a face together that are longer than a floor, mm; of runs that are one the worst,
    /// and of those alike the longest. Longest first.
    /// </summary>
    /// <param name="face">The face.</param>
    /// <param name="floorMm">The floor, mm.</param>
    /// <param name="behind">The runs of the other face: what is too short to ask for anything by itself is looked at only where one of them lies.</param>
    public ImmutableArray<GrainRun> Runs(TopFace face, double floorMm, RunsByX? behind = null)
    {
        var weights = new GrainRuns.Weights(run => (int)Verdict(run).Severity, Calibration.PassLengthMm, (int)Severity.Fail);
        return GrainRuns.Distinct(
            Pieces.Where(p => _members[p.Member].Face == face),
            _scan,
            floorMm,
            behind is null ? weights : weights with { WhereShort = (grain, box) => behind.IsNear(grain, box, 2 * Calibration.BandHalfWidthMm, Calibration.MergeGapMm) });
    }

    public RunVerdict Verdict(GrainRun run) => RunVerdict.Of(run, Loads, Calibration);

    /// <summary>What holds the other stretches of the edges that make a run, by name, each once.</summary>
    public IReadOnlyList<string> HoldersBeside(GrainRun run) =>
    [
        .. Pieces
            .Where(p => p.SupportedBy is not null && run.Contributions.Any(c => c.Member == p.Member && c.Side == p.Side && c.Label == p.Label))
            .Select(p => p.SupportedBy!)
            .Distinct(StringComparer.Ordinal)
            .OrderBy(name => Layout.Members.Select(m => m.Name).Index().FirstOrDefault(m => m.Item == name).Index),
    ];

    /// <summary>The top's grain under a member.</summary>
    public Angle GrainUnder(Member member) => _grain.Under(member.Footprint);

    /// <summary>The mismatch of a member if its wood were sawn otherwise.</summary>
    public Mismatch MismatchIf(Member member, Sawing sawing) =>
        Mismatch(member, member.Material! with { Sawing = sawing }, Season.MoistureLossPercent);

    /// <summary>The mismatch of a member if all were glued in other air.</summary>
    public Mismatch MismatchIfGluedAt(Member member, double humidityPercent) =>
        Mismatch(member, member.Material!, (Season with { GluedHumidityPercent = humidityPercent }).MoistureLossPercent);

    private MemberLoad Load(Member member, double lossPercent) =>
        MemberLoad.Of(member, _top, _grain, lossPercent, Calibration, _bays.Beside(_shapeOf[member.Name]));

    private Mismatch Mismatch(Member member, Material material, double lossPercent) => Mechanics.Mismatch.Of(
        _top,
        material,
        member.ThicknessMm,
        member.Grain - _grain.Under(member.Footprint),
        Loads[member.Name].HalfWidthMm,
        lossPercent,
        Calibration with { SupportSpacingMm = Calibration.SupportSpacingMm ?? _bays.Beside(_shapeOf[member.Name]) });
}
