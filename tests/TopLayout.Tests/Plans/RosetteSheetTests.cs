using System.Text;
using TopLayout.Drawing;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Svg;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.HouseRules;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>The rosette's sheets as DXF, its pairs of code and value read here line by line.</summary>
public class RosetteSheetTests
{
    /// <summary>
    /// By hand. Auditorium: hole 50, channel 54 to 63. Classical: hole 43, channels from 48 by 1.1, 9.8 and 1.1, which share two walls. Jumbo: hole 52,
    /// channel 56 to 66.
    /// </summary>
    [Theory]
    [InlineData("auditorium", new[] { 50.0, 54, 63 })]
    [InlineData("classical", new[] { 43.0, 48, 49.1, 58.9, 60 })]
    [InlineData("jumbo", new[] { 52.0, 56, 66 })]
    public void Walls_AreOneCircleEachRoundOneCentre(string preset, double[] radii)
    {
        var circles = Entities(Sheet(preset, "rosette")).Where(e => e["0"] == "CIRCLE" && (e["8"].EndsWith("_POCKET", StringComparison.Ordinal) || e["8"].EndsWith("_CUT", StringComparison.Ordinal))).ToList();

        Assert.Equal(radii, circles.Select(c => Math.Round(Number(c["40"]), 4)).Order());
        Assert.Single(circles.Select(c => (c["10"], c["20"])).Distinct());
    }

    /// <summary>Seen through the top, where two parts may each have a line of their own, a wall that two channels share is still one.</summary>
    [Fact]
    public void SharedWalls_OnTheInsidePlan_AreOneCircleEach()
    {
        var hidden = Entities(Sheet("classical", "inside-plan")).Where(e => e["0"] == "CIRCLE" && e["8"].StartsWith("ROSETTE", StringComparison.Ordinal)).ToList();

        Assert.Equal([48.0, 49.1, 58.9, 60], hidden.Select(c => Math.Round(Number(c["40"]), 4)).Order());
    }

    /// <summary>The templates are nested: pivot hole, disc and rings round one centre; every tile is a closed outline of four corners.</summary>
    [Theory]
    [InlineData("auditorium", 4)]
    [InlineData("classical", 6)]
    [InlineData("jumbo", 4)]
    public void Templates_AreTrueCirclesAndClosedTiles(string preset, int circles)
    {
        var cut = Entities(Sheet(preset, "rosette-templates")).Where(e => e.TryGetValue("8", out var layer) && layer.EndsWith("_CUT", StringComparison.Ordinal)).ToList();

        Assert.Equal(circles, cut.Count(e => e["0"] == "CIRCLE"));
        Assert.Single(cut.Where(e => e["0"] == "CIRCLE").Select(c => (c["10"], c["20"])).Distinct());
        var tiles = cut.Where(e => e["0"] == "POLYLINE").ToList();
        Assert.True(tiles.Count >= 5, $"only {tiles.Count} tiles");
        Assert.All(tiles, t => Assert.Equal("1", t["70"]));
    }

    /// <summary>Each ring is named on the enlarged sheet, and none of its lines is one to cut.</summary>
    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    [InlineData("jumbo")]
    public void Enlarged_NamesEveryRingAndHasNothingToCut(string preset)
    {
        var sheet = Sheet(preset, "rosette-enlarged");
        var words = sheet.Shapes.OfType<LabelShape>().Select(l => l.Text).ToList();

        var layout = Built.Preset(preset);
        Assert.All(Rosette.Channels(layout.Design, layout.Hole.Radius).SelectMany(c => c.Rings), r => Assert.Contains(words, w => w.StartsWith(r.Name + ": ", StringComparison.Ordinal)));
        Assert.DoesNotContain(sheet.Shapes, s => s.Role is Role.Cut or Role.Pocket or Role.Engrave);
    }

    /// <summary>The README shows these; TOPLAYOUT_ACCEPT_SAMPLES=1 writes them, and a person looks at them. The auditorium's are among its samples.</summary>
    [Theory]
    [InlineData("classical", "rosette")]
    [InlineData("classical", "rosette-enlarged")]
    [InlineData("jumbo", "rosette")]
    [InlineData("jumbo", "rosette-enlarged")]
    public void Picture_OfAPreset_IsTheAcceptedOne(string preset, string name)
    {
        using var stream = new MemoryStream();
        SvgWriter.Write(Sheet(preset, name), stream);
        var path = Path.Combine(Repository.Root, "output-samples", "rosettes", $"{preset}-{name}.svg");
        if (Environment.GetEnvironmentVariable("TOPLAYOUT_ACCEPT_SAMPLES") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, stream.ToArray());
        }

        Assert.True(File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(stream.ToArray()), $"{path} is not what is drawn; look, then accept with TOPLAYOUT_ACCEPT_SAMPLES=1");
    }

    private static Sheet Sheet(string preset, string name) =>
        Assert.Single(SheetCatalog.All.Single(e => e.Name == name).Draw(Pipeline.Check(Built.PresetText(preset), preset + ".toml").Top!));

    // Entities of the entities section: their codes, the first value of each.
    private static List<Dictionary<string, string>> Entities(Sheet sheet)
    {
        using var stream = new MemoryStream();
        DxfWriter.Write(sheet, stream, new DxfOptions());
        var lines = Encoding.UTF8.GetString(stream.ToArray()).Split('\n').Select(l => l.Trim()).ToList();
        var entities = new List<Dictionary<string, string>>();
        for (var i = lines.IndexOf("ENTITIES") + 1; i + 1 < lines.Count && lines[i + 1] != "ENDSEC"; i += 2)
        {
            if (lines[i] == "0")
            {
                entities.Add([]);
            }

            entities[^1].TryAdd(lines[i], lines[i + 1]);
        }

        return entities;
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
