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
            s.Member, Edge(review, s), s.RunMm, s.AcrossMm, s.LeastAngle, !s.Pulls ? "nothing pulls" : s.Index is { } m ? Say.TwoDigits(m) : "not known", FindingText.Word(s.Severity),
        ]));

    // Where an edge stands twice, on both sides of the centre line, each with its side.
    private static string Edge(GrainReview review, SideVerdict side) => review.Sides.All(s => s.Member != side.Member || s.Edge != side.Edge || s.AcrossMm < 0 == side.AcrossMm < 0) ? side.Edge
        : $"{side.Edge}, {(side.AcrossMm < 0 ? "bass" : "treble")} side";
}
