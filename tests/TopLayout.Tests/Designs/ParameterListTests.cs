using System.Text.Json;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.HouseRules;

namespace TopLayout.Tests.Designs;

/// <summary>The table of parameters as help, README and machines see it.</summary>
public class ParameterListTests
{
    private const string Begin = "<!-- parameters: begin -->\n";
    private const string End = "<!-- parameters: end -->";

    /// <summary>TOPLAYOUT_ACCEPT_SAMPLES=1 rewrites the README's table.</summary>
    [Fact]
    public void Readme_Table_IsTheListOfParameters()
    {
        var path = Path.Combine(Repository.Root, "README.md");
        var readme = File.ReadAllText(path);
        var (from, to) = (readme.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, readme.IndexOf(End, StringComparison.Ordinal));
        Assert.True(from >= Begin.Length && to >= from, "README.md has no markers for the table");
        var expected = "\n" + ParameterMarkdown.Write(Parameters.Table) + "\n";
        if (Environment.GetEnvironmentVariable("TOPLAYOUT_ACCEPT_SAMPLES") == "1")
        {
            File.WriteAllText(path, readme[..from] + expected + readme[to..]);
            return;
        }

        Assert.Equal(expected, readme[from..to]);
    }

    [Fact]
    public void Text_OfASection_SaysEverythingAboutEachKey() => Assert.Equal(
        """
        [soundhole]  the hole; always there; what is left out has its default
          diameter: diameter of the soundhole
              length, from 10 to 200 mm; usual from 80 to 110 mm; default: 98 mm
          position: a fraction
              number, from 0 to 1; default: 0.25

        """.ReplaceLineEndings("\n"),
        ParameterList.Text(SampleTable.Table, SampleTable.Soundhole));

    [Fact]
    public void Text_OfAGroup_ShowsWhatIsAssumedAndWhatExcludesWhat() => Assert.Equal(
        """
        [x_brace]  the X; always there; what is left out has its default
          angle: angle of the X
              angle, from 60 to 130°; usual from 90 to 104°; default: 98°
          target: half spread at the bridge
              length, from 10 to 120 mm; default: none
          wood: wood of the X
              wood, the key of a wood; default: `sitka_spruce`
          exactly one of `angle` or `target`

        """.ReplaceLineEndings("\n"),
        ParameterList.Text(SampleTable.Table, SampleTable.XBrace));

    [Fact]
    public void Text_OfAParameterByBody_ListsEachBody()
    {
        var text = ParameterList.Text(Parameters.Table, Soundhole.Section);

        Assert.Contains("      classical: 86 mm, usual from 82 to 90 mm\n", text, StringComparison.Ordinal);
        Assert.Contains("length, from 200 to 900 mm; usual from 340 to 660 mm; default: required", ParameterList.Text(Parameters.Table, Scale.Section), StringComparison.Ordinal);
        Assert.Contains("      parlour: 12, usual 12\n", ParameterList.Text(Parameters.Table, Scale.Section), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_OfTheTable_HoldsEverySectionAndKey()
    {
        using var json = JsonDocument.Parse(ParameterJson.Write(Parameters.Table, Parameters.Table.Sections));

        var sections = json.RootElement.GetProperty("sections").EnumerateArray().ToList();
        Assert.Equal(Parameters.Table.Sections.Select(s => s.Key), sections.Select(s => s.GetProperty("section").GetString()));
        Assert.Equal(Parameters.Table.Parameters.Select(p => p.Key).Order(), sections.SelectMany(s => s.GetProperty("keys").EnumerateArray()).Select(k => k.GetProperty("key").GetString()).Order());
        var diameter = sections.Single(s => s.GetProperty("section").GetString() == "soundhole").GetProperty("keys")[0];
        Assert.Equal(100, diameter.GetProperty("default").GetDouble());
        Assert.Equal([15.0, 200.0], diameter.GetProperty("possible").EnumerateArray().Select(v => v.GetDouble()));
        Assert.Equal(86, diameter.GetProperty("by_body").GetProperty("classical").GetProperty("default").GetDouble());
        Assert.Equal("mm", diameter.GetProperty("unit").GetString());
    }
}
