using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Tests.Parts;
using Xunit.Abstractions;

namespace TopLayout.Tests.Checks;

public class GrainFindingsTests(ITestOutputHelper output)
{
    /// <summary>What a side of a part is judged by itself, a finding tells at least as severely: joined with other edges it is no milder.</summary>
    [Theory]
    [InlineData(20266, false, 400)]
    [InlineData(20267, true, 400)]
    public void Findings_OfRandomDesigns_TellEverySideAtLeastAsSeverelyAsItIsByItself(int seed, bool usual, int count)
    {
        var designs = new RandomDesigns(seed, usual);
        var told = 0;
        for (var n = 0; n < count; n++)
        {
            var text = designs.Next();
            if (DesignReader.Read(text, "drawn", Parameters.Table).Design is not { } design || LayoutBuilder.Build(design).Layout is not { } layout)
            {
                continue;
            }

            var review = GrainCheck.Of(layout);
            foreach (var side in review.Sides.Where(s => s.Pulls && s.Severity > Severity.Pass))
            {
                told++;
                Assert.True(
                    review.Findings.Any(f => f.Severity >= side.Severity && f.Sentence.Contains($"of the {side.Member}", StringComparison.Ordinal)),
                    $"seed {seed}, design {n}: {side} is told by none of\n{string.Join('\n', review.Findings.Where(f => f.Severity > Severity.Pass).Select(f => $"{f.Severity} {f.Sentence}"))}\n{text}");
            }
        }

        output.WriteLine($"{told} sides");
        Assert.True(told > count / 10);
    }
}
