using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What the builders share while a layout is built: the design, the members so far, and what does not fit.</summary>
internal sealed class Bench(Design design)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Member> _members = [];

    public Design Design { get; } = design;

    public IReadOnlyList<Finding> Findings => _findings;

    public IReadOnlyList<Member> Members => _members;

    public Member? Find(string name) => _members.Find(m => m.Name == name);

    public void Add(Member member) => _members.Add(member);

    /// <summary>Says that parts do not fit; the first place is the one to change first.</summary>
    public void Misfit(string subject, string sentence, string cure, params IReadOnlyList<SourcePlace> places) =>
        _findings.Add(new Finding(Rules.PartsDoNotFit, Severity.Error, subject, sentence)
        {
            Cure = cure,
            Place = places[0],
            OtherPlaces = [.. places.Skip(1).Distinct().Where(p => p != places[0])],
        });

    /// <summary>Adds a bar whose footprint may have failed to reach its ends.</summary>
    public void AddOrMisfit(Region? footprint, string name, SourcePlace place, Func<Region, Member> make)
    {
        if (footprint is null)
        {
            Misfit(name, $"the {name} does not reach both of its ends inside the body", "move it, or turn it, until its axis crosses the body", place);
        }
        else
        {
            Add(make(footprint));
        }
    }
}
