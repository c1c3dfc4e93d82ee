using System.Collections.Immutable;

namespace TopLayout.Lutherie.Designs;

/// <summary>Every section, key and group a design file may use, in the order help shows them.</summary>
public sealed class ParameterTable
{
    /// <summary>The key every file starts with: the unit of its bare lengths. In every table, first in the root.</summary>
    public static readonly Parameter<LengthUnit> Units = Parameter.Choice(
        Section.Root, "units", "unit of the lengths in this file", ("mm", LengthUnit.Millimetre), ("in", LengthUnit.Inch));

    /// <summary>A table. The root and <see cref="Units"/> are added in front; throws when a section or key stands twice or is not listed.</summary>
    public ParameterTable(
        IEnumerable<Section> sections,
        IEnumerable<Parameter> parameters,
        IEnumerable<ExactlyOneOf>? groups = null,
        IEnumerable<ExactlyOneOfSections>? sectionGroups = null)
    {
        Sections = [Section.Root, .. sections.Where(s => !s.IsRoot)];
        Parameters = [Units, .. parameters.Where(p => p != Units)];
        Groups = [.. groups ?? []];
        SectionGroups = [.. sectionGroups ?? []];
        Demand(Sections.Select(s => s.Key).Distinct(StringComparer.Ordinal).Count() == Sections.Length, "a section stands twice");
        Demand(Parameters.Select(p => p.Path).Distinct(StringComparer.Ordinal).Count() == Parameters.Length, "a key stands twice");
        Demand(!Parameters.Any(p => Sections.Any(s => s.Key == p.Path)), "a key and a section have the same name");
        Demand(Parameters.All(p => Sections.Contains(p.Section)), "a parameter's section is not listed");
        Demand(Groups.SelectMany(g => g.Members).All(Parameters.Contains), "a group's member is not listed");
        Demand(SectionGroups.SelectMany(g => g.Members).All(Sections.Contains), "a group's section is not listed");
    }

    /// <summary>The sections, the root first.</summary>
    public ImmutableArray<Section> Sections { get; }

    /// <summary>The parameters of all sections.</summary>
    public ImmutableArray<Parameter> Parameters { get; }

    /// <summary>The groups of which a design gives exactly one.</summary>
    public ImmutableArray<ExactlyOneOf> Groups { get; }

    /// <summary>The groups of sections of which a design has exactly one.</summary>
    public ImmutableArray<ExactlyOneOfSections> SectionGroups { get; }

    /// <summary>The parameters of one section, in table order.</summary>
    public IEnumerable<Parameter> Of(Section section) => Parameters.Where(p => p.Section == section);

    private static void Demand(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new ArgumentException(otherwise);
        }
    }
}
