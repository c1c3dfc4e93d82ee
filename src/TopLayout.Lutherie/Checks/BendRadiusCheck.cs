using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>
/// The tightest bend of the sides. Plain sides of 2 mm bend to 40 mm without trouble; 25 mm wants skill, 15 mm breaks (common practice, no
/// source). Thinner sides bend tighter in proportion.
/// </summary>
public static class BendRadiusCheck
{
    private const double PlainSideMm = 2;
    private const double EasyMm = 40;
    private const double SkilledMm = 25;
    private const double BreaksMm = 15;

    /// <summary>One finding: the tightest arc.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        if (!layout.Outline.Segments.Any(s => s.IsArc))
        {
            yield break;
        }

        var side = layout.Design[Rim.SideThickness];
        var tightest = layout.Outline.Segments.Where(s => s.IsArc).MinBy(s => s.Radius);
        var scale = side.Value / PlainSideMm;
        var severity = tightest.Radius < BreaksMm * scale ? Severity.Fail
            : tightest.Radius < SkilledMm * scale ? Severity.Warning
            : tightest.Radius < EasyMm * scale ? Severity.Remark
            : Severity.Pass;
        var limit = severity == Severity.Fail ? BreaksMm : severity == Severity.Warning ? SkilledMm : EasyMm;
        yield return new Finding(
            Rules.BendRadius,
            severity,
            tightest.Label,
            $"the tightest bend of the sides is the {tightest.Label}, radius {Say.Mm(tightest.Radius)}; sides {Say.Mm(side.Value)} thick bend easily to {Say.Mm(EasyMm * scale)}")
        {
            Measured = new Measurement(tightest.Radius, "mm", limit * scale),
            Where = (tightest.Start, tightest.End),
            Place = side.Place,
            Cure = severity == Severity.Pass ? null : $"thin or laminate the sides there, or give the {tightest.Label} a rounder shape",
        };
    }
}
