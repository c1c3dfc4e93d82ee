using System.Text.RegularExpressions;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans;
using Xunit.Abstractions;

namespace TopLayout.Tests.Parts;

/// <summary>
/// Any legal file ends in a layout or in messages with a place, soon. TOPLAYOUT_RANDOM_DESIGNS sets another number of designs than 1,000.
/// Not beside other tests, as it keeps time.
/// </summary>
[Collection(nameof(RobustnessTests))]
[CollectionDefinition(nameof(RobustnessTests), DisableParallelization = true)]
public partial class RobustnessTests(ITestOutputHelper output)
{
    private const double LongestSeconds = 1;

    // Shares of designs that must give a layout, drawn from what is usual and from all that is possible.
    private const double LeastUsual = 0.95;
    private const double LeastPossible = 0.6;

    private static readonly Parameter[] Fractions =
    [
        Outline.WaistShareUpper, Outline.WaistShareLower, Outline.NeckCorner, Outline.TailCorner, Outline.UpperReach, Outline.LowerReach,
    ];

    [Theory]
    [InlineData(20261, false)]
    [InlineData(20262, true)]
    public void Check_RandomDesigns_EndInALayoutOrInPositionedMessagesWithinASecond(int seed, bool usual)
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("TOPLAYOUT_RANDOM_DESIGNS"), out var asked) ? asked : 1000;
        var designs = new RandomDesigns(seed, usual);
        var (laidOut, slowest, slowestText, refusals) = (0, 0.0, "", new Dictionary<string, int>(StringComparer.Ordinal));
        for (var n = 0; n < count; n++)
        {
            var text = designs.Next();
            var (review, seconds) = Checked(text, $"seed {seed}, design {n}");
            (slowest, slowestText) = seconds > slowest ? (seconds, text) : (slowest, slowestText);
            laidOut += review.Top is null ? 0 : 1;
            foreach (var subject in review.Findings.Where(f => f.Severity == Severity.Error).Select(Kind).Distinct())
            {
                refusals[subject] = refusals.GetValueOrDefault(subject) + 1;
            }
        }

        output.WriteLine($"{(usual ? "usual" : "possible")} ranges, seed {seed}: {laidOut} of {count} designs give a layout; the slowest took {slowest:F3} s");
        output.WriteLine($"the slowest:\n{slowestText}");
        foreach (var (kind, times) in refusals.OrderByDescending(r => r.Value).ThenBy(r => r.Key, StringComparer.Ordinal).Take(12))
        {
            output.WriteLine($"{times,6}  {kind}");
        }

        Assert.True(laidOut >= count * (usual ? LeastUsual : LeastPossible), $"seed {seed}: only {laidOut} of {count} designs give a layout");
    }

    [Fact]
    public void Check_LegalStationsWithAnyFractions_NeverRefuseTheOutline()
    {
        const int seed = 20263;
        var random = new Random(seed);
        var (drawn, tight) = (0, 0);
        foreach (var body in Body.All.Select(Body.Word))
        {
            for (var n = 0; n < 150; n++)
            {
                var lines = string.Concat(Fractions.Select(f =>
                    FormattableString.Invariant($"{f.Key} = {f.Possible!.Value.Low + ((f.Possible.Value.High - f.Possible.Value.Low) * random.NextDouble()):0.0000}\n")));
                var design = $"name = \"n\"\nunits = \"mm\"\nbody = \"{body}\"\nscale.length = 600\n[outline]\n{lines}";

                var (review, _) = Checked(design, $"seed {seed}, {body}, {n}");

                Assert.All(review.Findings, f => Assert.NotEqual("outline", f.Subject));
                tight += review.Findings.Any(f => f.Subject == "lining" && f.Severity == Severity.Error) ? 1 : 0;
                drawn++;
            }
        }

        output.WriteLine($"{tight} of {drawn} outlines have a corner too tight for sides and lining");
    }

    private static (Review Review, double Seconds) Checked(string text, string which)
    {
        try
        {
            // A busy machine is no fault of the design: the processor's time counts, not the clock's, and the best of three.
            var (review, seconds) = Timed(text);
            for (var again = 0; again < 2 && seconds > LongestSeconds; again++)
            {
                seconds = Math.Min(seconds, Timed(text).Seconds);
            }

            Assert.True(seconds <= LongestSeconds, $"took {seconds:F1} s");
            Assert.Equal(review.Top is null, review.Findings.Any(f => f.Severity == Severity.Error));
            Assert.All(review.Findings.Where(f => f.Severity == Severity.Error), f => Assert.True(f.Place is { Line: >= 1, Column: >= 1 } && f.Rule == Rules.PartsDoNotFit, FindingText.Of(f)));
            return (review, seconds);
        }
        catch (Exception failure)
        {
            throw new InvalidOperationException($"{which}:\n{text}", failure);
        }
    }

    private static (Review Review, double Seconds) Timed(string text)
    {
        var before = Environment.CpuUsage.TotalTime;
        var review = Pipeline.Check(text, "r.toml");
        return (review, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
    }

    // A refusal with its numbers left out.
    private static string Kind(Finding finding) => $"{finding.Subject}: {Number().Replace(finding.Sentence, "#")}";

    [GeneratedRegex("-?[0-9]+([.][0-9]+)?")]
    private static partial Regex Number();
}
