using System.Text.RegularExpressions;
using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Drawing.Pdf;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

public class SheetTests
{
    // The least any sheet keeps white all round.
    private const double MarginMm = 2.9;

    public static TheoryData<string> Presets => [.. Built.PresetNames];

    [Theory]
    [MemberData(nameof(Presets))]
    public void Sheets_OfEveryPreset_NoLabelTouchesAnotherOrALineAndAllStaysOnThePage(string preset)
    {
        var said = new List<string>();
        foreach (var sheet in ((Func<string, string>[])[t => t, InTheOtherUnit]).SelectMany(edit => Sheets(preset, edit)))
        {
            Assert.Equal([], Collisions.Of(sheet).Select(c => $"{sheet.Name}: {c.Label.Text} on {c.Other.Part}"));
            var inside = sheet.Page.Grown(-MarginMm);
            Assert.Equal([], sheet.Shapes.Where(s => !(inside.Contains(s.Bounds.Min) && inside.Contains(s.Bounds.Max))).Select(s => $"{sheet.Name}: {s.Part} leaves the page"));
            said.AddRange(sheet.Shapes.OfType<LabelShape>().Where(l => l.Text is "Numbers to transfer, mm" or "Numbers to transfer, inches").Select(l => l.Text.Split(' ')[^1]));
        }

        Assert.Equal(["inches", "mm"], said.Order());
    }

    /// <summary>What a tile says and draws beside the drawing keeps apart too, on every paper.</summary>
    [Theory]
    [InlineData("auditorium")]
    [InlineData("jumbo")]
    [InlineData("arc-chain")]
    public void Tiles_OfEverySheet_NoFurnitureTouchesAnother(string preset)
    {
        foreach (var (sheet, paper) in Sheets(preset, t => t).SelectMany(s => Paper.All.Select(p => (s, p))))
        {
            var grid = TileGrid.Of(sheet, paper);
            var furniture = new TileFurniture(grid, sheet.Title, "corrected: x by +0.22 %, y by -0.15 %", isHalf: false, Ruler.Inches);
            foreach (var tile in grid.Tiles)
            {
                var page = new Sheet("tile", sheet.Title, "", new Box2(new Point2(0, 0), new Point2(grid.WidthMm, grid.HeightMm)), furniture.Of(tile));
                Assert.Equal([], Collisions.Of(page).Select(c => $"{sheet.Name} {tile.Name} on {paper.Name}: {c.Label.Text} on {(c.Other as LabelShape)?.Text ?? c.Other.Part}"));
                Assert.True(page.Page.Contains(page.Extents.Min) && page.Page.Contains(page.Extents.Max), $"{sheet.Name} {tile.Name} on {paper.Name}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void Plans_OfEveryPreset_HoldFewWords(string preset)
    {
        foreach (var sheet in Sheets(preset, t => t, e => e.Name is not ("numbers" or "outline" or "steps")))
        {
            var characters = sheet.Shapes.OfType<LabelShape>().Sum(l => l.Text.Length);
            Assert.True(characters < 1650, $"{sheet.Name}: {characters} characters");
        }
    }

    /// <summary>A failed check may name a stretch across the body, or a point: a flat brace over its neighbours, a tone bar over the X.</summary>
    [Theory]
    [InlineData("width = 20", "width = 40", "the flat brace")]
    [InlineData("below_hole = 33", "below_hole = 110", "tone bar 1")]
    public void Plans_OfATopThatDoesNotFit_AreDrawnWithTheFailureMarked(string from, string to, string subject)
    {
        var review = Pipeline.Check(Built.PresetText("auditorium").Replaced(from, to), "x.toml");

        Assert.Contains(review.Findings, f => f.Severity == Severity.Fail && f.Sentence.StartsWith(subject, StringComparison.Ordinal));
        var plan = SheetCatalog.All.SelectMany(e => e.Draw(review.Top!)).First(s => s.Name == "inside-plan");
        Assert.Contains(plan.Shapes.OfType<ContourShape>(), s => s.Role == Role.Finding && s.Emphasis == Emphasis.Bad);
    }

    /// <summary>Whatever gives a layout is drawn, every sheet of it.</summary>
    [Theory]
    [InlineData(20264, false)]
    [InlineData(20265, true)]
    public void Sheets_OfRandomDesigns_AreDrawn(int seed, bool usual)
    {
        var designs = new RandomDesigns(seed, usual);
        var drawn = 0;
        for (var n = 0; n < 60; n++)
        {
            var text = designs.Next();
            if (Pipeline.Check(text, "random.toml").Top is { } top)
            {
                try
                {
                    drawn += SheetCatalog.All.SelectMany(e => e.Draw(top)).Count();
                }
                catch (Exception e) when (e is ArgumentException or InvalidOperationException or NullReferenceException)
                {
                    Assert.Fail($"seed {seed}, design {n}: {e}\n{text}");
                }
            }
        }

        Assert.True(drawn > 60, $"seed {seed}: {drawn} sheets");
    }

    [Theory]
    [InlineData("right", "BASS", "TREBLE")]
    [InlineData("left", "TREBLE", "BASS")]
    public void OutsidePlan_OfAHand_HasItsBassOnThatSide(string hand, string left, string right)
    {
        var sheet = Sheets("auditorium", t => t.Replace("handed = \"right\"", $"handed = \"{hand}\"", StringComparison.Ordinal)).First(s => s.Name == "outside-plan");

        double X(string text) => sheet.Shapes.OfType<LabelShape>().Single(l => l.Text == text).Bounds.Center.X;
        Assert.True(X(left) < 0 && X(right) > 0);
        Assert.Contains(sheet.Shapes.OfType<LabelShape>(), l => l.Text.StartsWith($"{hand}-handed", StringComparison.Ordinal));
    }

    [Fact]
    public void Ladder_CrowdedHeights_AreSpreadInOrderAndStayCentred()
    {
        const int seed = 7;
        var random = new Random(seed);
        for (var n = 0; n < 500; n++)
        {
            var wanted = Enumerable.Range(0, random.Next(1, 20)).Select(_ => random.NextDouble() * 60).OrderDescending().ToList();

            var spread = Ladder.Spread(wanted, 4);

            Assert.All(spread.Zip(spread.Skip(1)), p => Assert.True(p.First - p.Second >= 4 - 1e-9, $"seed {seed}, draw {n}"));
            Check.Near(wanted.Average(), spread.Average(), 1e-9, $"seed {seed}, draw {n}: middle");
            Assert.All(wanted.Zip(spread), p => Assert.True(Math.Abs(p.First - p.Second) <= 4 * wanted.Count, $"seed {seed}, draw {n}"));
        }
    }

    // The same top with every length as it is, said in the other unit: only the texts change.
    private static string InTheOtherUnit(string text)
    {
        var (unit, other) = text.Contains("units = \"in\"", StringComparison.Ordinal) ? ("in", "mm") : ("mm", "in");
        var keys = Parameters.Table.Parameters.Where(p => p.Kind is ParameterKind.Length or ParameterKind.Lengths).Select(p => p.Key).ToHashSet();
        var isLength = false;
        var lines = text.Split('\n').Select(line =>
        {
            var (code, value) = (line.Split('#')[0], line.IndexOf('=', StringComparison.Ordinal) + 1);
            isLength = value == 0 || value > code.Length ? isLength && code.Trim().Length > 0 : keys.Contains(code[..(value - 1)].Trim());
            value = value > code.Length ? 0 : value;
            var numbers = isLength && !code.Contains('"', StringComparison.Ordinal) ? Regex.Replace(code[value..], @"\d+(\.\d+)?", m => $"\"{m.Value} {unit}\"") : code[value..];
            return code[..value] + numbers + line[code.Length..];
        });
        return string.Join('\n', lines).Replace($"units = \"{unit}\"", $"units = \"{other}\"", StringComparison.Ordinal);
    }

    private static IEnumerable<Sheet> Sheets(string preset, Func<string, string> edit, Func<SheetEntry, bool>? isWanted = null)
    {
        var review = Pipeline.Check(edit(Built.PresetText(preset)), preset);
        Assert.NotNull(review.Top);
        return SheetCatalog.All.Where(isWanted ?? (_ => true)).SelectMany(e => e.Draw(review.Top));
    }
}
