using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What the builders share while a layout is built: the design, the members so far, and what does not fit.</summary>
internal sealed class Bench(Design design)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Finding> _faults = [];
    private readonly List<Member> _members = [];
    private readonly Dictionary<string, Member> _byName = new(StringComparer.Ordinal);
    private readonly List<PlanMark> _marks = [];
    private readonly List<DrillPoint> _drillPoints = [];
    private readonly List<TieHole> _tieHoles = [];

    public Design Design { get; } = design;

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Failed checks of the building itself: what could not be drawn, or not as the design says.</summary>
    public IReadOnlyList<Finding> Faults => _faults;

    public IReadOnlyList<Member> Members => _members;

    public IReadOnlyList<PlanMark> Marks => _marks;

    public IReadOnlyList<DrillPoint> DrillPoints => _drillPoints;

    public IReadOnlyList<TieHole> TieHoles => _tieHoles;

    public Member? Find(string name) => _byName.GetValueOrDefault(name);

    public void Add(Member member)
    {
        _members.Add(member);
        _byName.Add(member.Name, member);
    }

    public void Mark(PlanMark mark) => _marks.Add(mark);

    public void Drill(DrillPoint point) => _drillPoints.Add(point);

    public void Tie(TieHole hole) => _tieHoles.Add(hole);

    /// <summary>Says that parts do not fit; the first place is the one to change first.</summary>
    public void Misfit(string subject, string sentence, string cure, params IReadOnlyList<SourcePlace> places) =>
        _findings.Add(new Finding(Rules.PartsDoNotFit, Severity.Error, subject, sentence)
        {
            Cure = cure,
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
        });

    /// <summary>Says that a value cannot be read by its part's own grammar.</summary>
    public void Error(Rule rule, string subject, string sentence, string cure, SourcePlace place) =>
        _findings.Add(new Finding(rule, Severity.Error, subject, sentence) { Cure = cure, Place = place });

    /// <summary>Says that a part has no shape where the design puts it, so that the layout does without it; the first place is the one to change first.</summary>
    public void LeaveOut(string subject, string sentence, string cure, params IReadOnlyList<SourcePlace> places) =>
        Fault(Rules.PartLeftOut, Severity.Fail, subject, $"{sentence}; left out of the plan", cure, null, null, places);

    /// <summary>Adds a finding that only the building knows; the first place is the one to change first.</summary>
    public void Fault(
        Rule rule,
        Severity severity,
        string subject,
        string sentence,
        string cure,
        Measurement? measured,
        (Point2 From, Point2 To)? where,
        params IReadOnlyList<SourcePlace> places) => _faults.Add(new Finding(rule, severity, subject, sentence)
        {
            Cure = cure,
            Measured = measured,
            Where = where,
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
        });

    /// <summary>Adds a bar whose footprint may have failed to reach its ends.</summary>
    public void AddOrMisfit(Region? footprint, string name, SourcePlace place, Func<Region, Member> make)
    {
        if (footprint is null)
        {
            Misfit(name, $"{Say.The(name)} does not reach both of its ends inside the body", "move it, or turn it, until its axis crosses the body", place);
        }
        else
        {
            Add(make(footprint));
        }
    }
}
