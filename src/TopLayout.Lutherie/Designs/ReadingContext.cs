using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>What one reading shares: the findings so far, the file's unit once it is known, the sections as written.</summary>
internal sealed class ReadingContext(ParameterTable table, SourceText source)
{
    public ParameterTable Table { get; } = table;

    public SourceText Source { get; } = source;

    public List<Finding> Findings { get; } = [];

    public List<RawSection> Sections { get; } = [];

    /// <summary>The unit of bare lengths; null while `units` is missing or wrong, when bare lengths cannot be judged.</summary>
    public LengthUnit? Units { get; set; }

    /// <summary>The kind of body; null while the file says none, or a wrong one.</summary>
    public BodyType? Body { get; set; }

    /// <summary>The unit to print in.</summary>
    public LengthUnit Shown => Units ?? LengthUnit.Millimetre;

    public void Error(Rule rule, string subject, string sentence, SourcePlace place, string cure, params SourcePlace[] others) =>
        Findings.Add(new Finding(rule, Severity.Error, subject, sentence) { Place = place, Cure = cure, OtherPlaces = [.. others] });

    public void Remark(Rule rule, string subject, string sentence, SourcePlace place) =>
        Findings.Add(new Finding(rule, Severity.Remark, subject, sentence) { Place = place });

    public void WrongType(Parameter parameter, RawEntry entry, string wanted, string example) => Error(
        Rules.WrongType,
        parameter.Path,
        $"`{parameter.Key}` must be {wanted}; it is {ValueSyntaxName.Of(entry.Value)}",
        entry.Place,
        $"write for example `{example}`");

    public void SectionForValue(Parameter parameter, SourcePlace place) => Error(
        Rules.SectionOrValue,
        parameter.Path,
        $"`{parameter.Key}` takes one value; it is written as a section",
        place,
        $"write for example `{Example(parameter)}`");

    /// <summary>A line that the file could have for a parameter.</summary>
    public string Example(Parameter parameter) => parameter.ExampleLine(Shown, Body);

    /// <summary>Every place where the file writes a parameter, section by section; nothing for null.</summary>
    public IEnumerable<RawEntry> EntriesOf(Parameter? parameter) =>
        Sections.Where(s => s.Section == parameter?.Section).SelectMany(s => s.Entries).Where(e => e.Key == parameter!.Key);

    /// <summary>The text of an entry; null when it is no text.</summary>
    public static string? TextOf(RawEntry entry) => (entry.Value as StringValueSyntax)?.Value;
}
