using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>The usual cautions, short, on sheets that are cut from.</summary>
internal static class Cautions
{
    /// <summary>The part they are drawn under.</summary>
    public const string Part = "cautions";

    /// <summary>For cutting wood with a saw, a router or a laser.</summary>
    public const string Cutting =
        "wood dust harms lungs: extract it; unplug a router to change bits; never leave a laser alone; follow their makers and local rules";

    /// <summary>Where a check failed; true whether or not templates were asked for all the same.</summary>
    public const string Withheld = "A check failed: cure it first. Templates to cut are written only with the option --cut-anyway.";

    /// <summary>Whether a check failed.</summary>
    public static bool HasFailed(ReviewedTop top) => top.Findings.Any(f => f.Severity == Severity.Fail);
}
