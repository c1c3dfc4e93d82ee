using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Tests.Designs;

/// <summary>Sections that exclude each other, against a small table of their own.</summary>
public class SectionGroupTests
{
    private static readonly Section Widths = Section.Optional("outline", "an outline from three widths");
    private static readonly Section Measured = Section.Optional("outline_measured", "an outline from measured half-widths");
    private static readonly Section Arcs = Section.Optional("outline_arcs", "an outline from arcs");
    private static readonly Parameter<double> Length = Parameter.Length(Widths, "length", "body length", possible: (100, 700), fallback: 500);
    private static readonly Parameter<double> Every = Parameter.Length(Measured, "every", "distance of the stations", possible: (5, 50));

    [Fact]
    public void Read_OneSection_FindsNothing()
    {
        Assert.Equal("", Printed("units = \"mm\"\n[outline_arcs]\n", Required()));
        Assert.Equal("", Printed("units = \"mm\"\noutline_measured.every = 25\n", Required()));
    }

    [Fact]
    public void Read_SeveralSections_AreNamedFromAllEnds() => Assert.Equal(
        """
        a.toml:6:1: error TL1007: `[outline_arcs]`, `[outline]` and `[outline_measured]` say the same thing in different ways; only one may be written
          also: a.toml:2:1
          also: a.toml:4:1
          hint: delete all but one of these sections
        """.ReplaceLineEndings("\n"),
        Printed("units = \"mm\"\n[outline_arcs]\n\n[outline]\nlength = 500\n[outline_measured]\nevery = 25\n", Required()));

    [Fact]
    public void Read_TwoSectionsOfADefaultedGroup_AreNamedToo() => Assert.StartsWith(
        "a.toml:3:1: error TL1007: `[outline]` and `[outline_measured]` say the same thing",
        Printed("units = \"mm\"\noutline.length = 500\n[outline_measured]\nevery = 25\n", Defaulted()),
        StringComparison.Ordinal);

    [Fact]
    public void Read_NoSection_IsMissingWhereOneIsRequired() => Assert.Equal(
        """
        a.toml:1:1: error TL1008: the design needs `[outline]`, `[outline_measured]` or `[outline_arcs]`
          hint: add one of these sections, such as `[outline]`
        """.ReplaceLineEndings("\n"),
        Printed("units = \"mm\"\n", Required()));

    [Fact]
    public void Read_NoSection_MeansTheFirstWithItsDefaults()
    {
        var design = DesignReader.Read("units = \"mm\"\n", "a.toml", Defaulted()).Design!;

        Assert.True(design.Has(Widths));
        Assert.False(design.Has(Measured));
        Assert.Equal(new Sourced<double>(500, new SourcePlace("a.toml", 1, 1, 0), IsDefault: true), design[Length]);
        Assert.False(DesignReader.Read("units = \"mm\"\n[outline_measured]\nevery = 25\n", "a.toml", Defaulted()).Design!.Has(Widths));
    }

    [Fact]
    public void Group_ThatCannotWork_IsRefusedWhenTheTableIsMade()
    {
        Assert.Throws<ArgumentException>(() => ExactlyOneOfSections.Required(Widths));
        Assert.Throws<ArgumentException>(() => ExactlyOneOfSections.Required(Widths, Section.Always("other", "always there")));
        Assert.Throws<ArgumentException>(() => new ParameterTable([Widths], [], sectionGroups: [ExactlyOneOfSections.Required(Widths, Arcs)]));
    }

    private static string Printed(string text, ParameterTable table) =>
        string.Join("\n", DesignReader.Read(text, "a.toml", table).Findings.Select(FindingText.Of));

    private static ParameterTable Required() => Table(ExactlyOneOfSections.Required(Widths, Measured, Arcs));

    private static ParameterTable Defaulted() => Table(ExactlyOneOfSections.Defaulted(Widths, Measured, Arcs));

    private static ParameterTable Table(ExactlyOneOfSections group) => new([Widths, Measured, Arcs], [Length, Every], sectionGroups: [group]);
}
