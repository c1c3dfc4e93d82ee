using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Reports;

/// <summary>The grain check as a table: each side of each part by itself.</summary>
internal static class GrainNumbers
{
    /// <summary>The table.</summary>
    public static NumberTable Of(GrainReview review) => new(
        "grain",
        "The grain check, part by part",
        [
            new("part", "part"), new("edge", "edge"), new("run", "longest run along one grain line"), new("across", "grain line, from centre"),
            new("angle", "least angle to the grain"), new("index", "mismatch M"), new("verdict", "verdict by itself"),
        ],
        review.Sides.Select(s => (IReadOnlyList<Cell>)
        [
            s.Member, s.Edge, s.RunMm, s.AcrossMm, s.LeastAngle, !s.Pulls ? "nothing pulls" : s.Index is { } m ? Say.TwoDigits(m) : "not known", FindingText.Word(s.Severity),
        ]));
}
