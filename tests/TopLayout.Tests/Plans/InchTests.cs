using System.Globalization;
using System.Text.RegularExpressions;
using TopLayout.Drawing;
using TopLayout.Plans;
using TopLayout.Plans.Reports;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>
/// In a design in inches the same number is written by the same rule on every sheet and in the report: the nearest sixty-fourth, with or
/// without its thousandths in brackets; below an eighth thousandths alone, three of them.
/// </summary>
public class InchTests
{
    private const double HalfSixtyFourth = (1.0 / 128) + 0.0005 + 1e-9;

    private static readonly Regex Both = new(@"(?<fraction>([0-9]+ )?[0-9]+/[0-9]+|[0-9]+) \((?<decimal>-?[0-9]+\.[0-9]+)\)", RegexOptions.ExplicitCapture);

    // The thousandths of a number that ends the line before, broken for want of room.
    private static readonly Regex Continued = new(@"^\([0-9]+\.[0-9]{3}\)");

    // An angle, a share, an area, the mismatch: no lengths.
    private static readonly Regex NoLength = new(@"[0-9.]+(°| ?%| in²)|mismatch( M)?:? [0-9.]+|(restraint|factor) [0-9.]+|sha256 \S+", RegexOptions.ExplicitCapture);

    [Fact]
    public void EveryNumber_OfTheInchPreset_IsWrittenByOneRule()
    {
        var texts = Texts().ToList();

        Assert.True(texts.Count(t => Both.IsMatch(t)) > 100);
        Assert.All(texts, t => Assert.True(Fault(t) is null, $"{t}: {Fault(t)}"));
    }

    [Theory]
    [InlineData("3 51/64 (3.791) in", true)]
    [InlineData("3.791 in", false)]
    [InlineData("3 51/64 (3.79) in", false)]
    [InlineData("3 49/64 (3.791) in", false)]
    [InlineData("0.110 in", true)]
    [InlineData("0.11 in", false)]
    [InlineData("49.5° and 0.25 %", true)]
    [InlineData("30 mm", false)]
    public void Rule_TellsRightFromWrong(string text, bool isRight) => Assert.Equal(isRight, Fault(text) is null);

    /// <summary>By hand: 1/16 is printed 0.063, 0.2 mm of levelling 0.008, the top 0.110: 0.063 + 0.008 and 0.110 - 0.063, so that a reader can add them up.</summary>
    [Fact]
    public void Thousandths_AddUpAsPrinted()
    {
        const string Remark = "0.071 in when cut, 0.008 in of it levelled off; leaves a floor of 0.047 in";

        Assert.Contains(Texts(), t => t.Contains(Remark, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Texts()
    {
        var top = Pipeline.Check(Built.PresetText("inches"), "inches.toml").Top!;
        foreach (var sheet in SheetCatalog.All.SelectMany(e => e.Draw(top)))
        {
            foreach (var label in sheet.Shapes.OfType<LabelShape>())
            {
                yield return label.Text;
            }
        }

        foreach (var block in ReportContent.Of(top))
        {
            foreach (var text in Texts(block))
            {
                yield return text;
            }
        }
    }

    private static IEnumerable<string> Texts(ReportBlock block) => block switch
    {
        ReportBlock.Heading h => [h.Text],
        ReportBlock.Paragraph p => [p.Text],
        ReportBlock.Bullets b => b.Items.SelectMany(i => i.Lines),
        ReportBlock.Table { Numbers: var table } => table.Rows.SelectMany(r => r.Index())
            .Where(c => table.Columns[c.Index].Key != "index")
            .Select(c => CellText.Of(c.Item, TopLayout.Lutherie.Designs.LengthUnit.Inch)),
        _ => [],
    };

    // What is wrong with a text; null when nothing is.
    private static string? Fault(string text)
    {
        if (Regex.IsMatch(text, @"[0-9] mm\b"))
        {
            return "mm";
        }

        foreach (Match both in Both.Matches(text))
        {
            if (both.Groups["decimal"].Value.Split('.')[1].Length != 3 || Math.Abs(Value(both.Groups["fraction"].Value) - Math.Abs(double.Parse(both.Groups["decimal"].Value, CultureInfo.InvariantCulture))) > HalfSixtyFourth)
            {
                return "fraction and thousandths differ";
            }
        }

        foreach (Match alone in Regex.Matches(NoLength.Replace(Continued.Replace(Both.Replace(text, ""), ""), ""), @"[0-9]+\.[0-9]+"))
        {
            if (alone.Value.Split('.')[1].Length != 3 || double.Parse(alone.Value, CultureInfo.InvariantCulture) > (1.0 / 8) + 1e-9)
            {
                return $"{alone.Value} stands alone";
            }
        }

        return null;
    }

    private static double Value(string fraction) => fraction.Split(' ').Sum(part => part.Split('/') is [var over, var under]
        ? double.Parse(over, CultureInfo.InvariantCulture) / double.Parse(under, CultureInfo.InvariantCulture)
        : double.Parse(part, CultureInfo.InvariantCulture));
}
