using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Designs;

/// <summary>A whole section written into a text or taken out of it, and nothing else.</summary>
public class SectionEditorTests
{
    private const string Head = "name = \"n\"\nunits = \"mm\"\nscale.length = 645\n";

    private static readonly Setting[] Line = [Rings.Kind.To(RingKind.Line), Rings.Width.To(12.7)];

    /// <summary>12.7 mm are half an inch; the first of its kind goes behind the section asked for, before what follows.</summary>
    [Theory]
    [InlineData(Head + "\n[rosette] # the ring\nmargin = 4\n\n[top]\n", Head + "\n[rosette] # the ring\nmargin = 4\n\n[[ring]]\nkind = \"line\"\nwidth = 12.7\n\n[top]\n")]
    [InlineData(Head + "[rosette]", Head + "[rosette]\n\n[[ring]]\nkind = \"line\"\nwidth = 12.7\n")]
    [InlineData(Head + "rosette.margin = 4\n\n[top]\n", Head + "rosette.margin = 4\n\n[top]\n\n[[ring]]\nkind = \"line\"\nwidth = 12.7\n")]
    [InlineData(Head + "[rosette]\n# first\n[[ring]]\nkind = \"band\"\nwidth = 2\n", Head + "[rosette]\n# first\n[[ring]]\nkind = \"line\"\nwidth = 12.7\n\n[[ring]]\nkind = \"band\"\nwidth = 2\n")]
    [InlineData("name = \"n\"\r\nunits = \"in\"\r\nscale.length = 25.4\r\n[rosette]\r\n", "name = \"n\"\r\nunits = \"in\"\r\nscale.length = 25.4\r\n[rosette]\r\n\r\n[[ring]]\r\nkind = \"line\"\r\nwidth = 0.5\r\n")]
    public void Insert_WritesTheSectionInItsPlace(string text, string expected) =>
        Assert.Equal(expected, SectionEditor.Insert(text, Parameters.Table, Line, Rosette.Section).Text);

    [Fact]
    public void Insert_AmongInlineTables_IsRefused() => Assert.Equal(
        "the design writes its `ring` as a list of inline tables; write each as `[[ring]]`",
        SectionEditor.Insert(Head + "ring = [ { kind = \"band\", width = 2 } ]\n", Parameters.Table, Line, Rosette.Section).Refusal);

    /// <summary>Its lines and the empty ones behind them go; a line that is a comment alone stays, and so does what a later section says.</summary>
    [Fact]
    public void RemoveFirst_TakesOutTheFirstOnly() => Assert.Equal(
        Head + "# a\n# b\n[[ring]]\nkind = \"band\"\nwidth = 2\n",
        SectionEditor.RemoveFirst(Head + "# a\n[[ring]]\nkind = \"line\" # c\n# b\nwidth = 1\n\n\n[[ring]]\nkind = \"band\"\nwidth = 2\n", Parameters.Table, Rings.Section).Text);

    [Fact]
    public void RemoveFirst_OfNone_IsRefused() =>
        Assert.Equal("the design has no `[[ring]]` that could be taken out", SectionEditor.RemoveFirst(Head, Parameters.Table, Rings.Section).Refusal);

    [Theory]
    [InlineData("[rosette]\nmargin = 4\nwidth = 9 # wide\ndepth = 1\n", "[rosette]\nmargin = 4\ndepth = 1\n")]
    [InlineData("rosette.width = 9\nrosette.margin = 4\n", "rosette.margin = 4\n")]
    [InlineData("[rosette]\nmargin = 4\n", "[rosette]\nmargin = 4\n")]
    public void RemoveKey_TakesOutItsLine(string text, string expected) =>
        Assert.Equal(Head + expected, SectionEditor.RemoveKey(Head + text, Parameters.Table, Rosette.Width).Text);

    [Fact]
    public void RemoveKey_OfAnInlineTable_IsRefused() => Assert.Equal(
        "`width` stands in an inline table; write its section under a header, or take it out",
        SectionEditor.RemoveKey(Head + "rosette = { width = 9 }\n", Parameters.Table, Rosette.Width).Refusal);
}
