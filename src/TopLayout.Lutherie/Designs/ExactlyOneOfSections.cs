using System.Collections.Immutable;

namespace TopLayout.Lutherie.Designs;

/// <summary>Sections that describe one thing in different ways, of which a design has exactly one.</summary>
public sealed class ExactlyOneOfSections
{
    private ExactlyOneOfSections(ImmutableArray<Section> members, bool hasDefault)
    {
        if (members.Length < 2 || members.Any(m => m.Presence == SectionPresence.Always))
        {
            throw new ArgumentException("a group needs two or more sections that may be left out");
        }

        (Members, HasDefault) = (members, hasDefault);
    }

    /// <summary>The sections, at least two, optional or repeatable.</summary>
    public ImmutableArray<Section> Members { get; }

    /// <summary>The first member is there with its defaults when none is written.</summary>
    public bool HasDefault { get; }

    /// <summary>A group of which one must be written.</summary>
    public static ExactlyOneOfSections Required(params Section[] members) => new([.. members], hasDefault: false);

    /// <summary>A group of which the first is there with its defaults when none is written.</summary>
    public static ExactlyOneOfSections Defaulted(Section first, params Section[] others) => new([first, .. others], hasDefault: true);
}
