using System.Text;
using TopLayout.Drawing;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Reports;

/// <summary>The ways to refit a rosette as a terminal shows them, lengths in the design's units.</summary>
public static class RefitText
{
    /// <summary>All of it, the best way first.</summary>
    public static string Of(RefitReport report, LengthUnit units)
    {
        string Said(double mm) => LengthText.WithUnit(mm, units);
        string Told(string sentence) => LengthText.Sentence(sentence, units);
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');
        var oval = report.Ring.OvalMm > 0 ? $", on the average; it is {Said(report.Ring.OvalMm)} oval" : "";
        Line($"Hole {Said(report.OldDiameterMm)} -> {Said(report.NewDiameterMm)}; the ring measures {Said(2 * report.Ring.InnerMm)} to {Said(2 * report.Ring.OuterMm)} across{oval}; its channel leaves a floor of {Said(report.FloorMm)}.");
        if (report.AirBeforeHz is { } before && report.AirAfterHz is { } after)
        {
            Line($"Air in the body, an estimate with rigid walls: {NumberFormat.Fixed(after / before, 3)} times as high ({NumberFormat.Trimmed(before, 0)} -> {NumberFormat.Trimmed(after, 0)} Hz).");
        }

        if (report.Remark is { } remark)
        {
            Line($"Remark: a hole of {Said(report.NewDiameterMm)}; {Told(remark)}.");
        }

        foreach (var (i, tried) in report.Options.Index())
        {
            var option = tried.Option;
            Line("");
            Line($"{NumberFormat.Whole(i + 1)}. {option.Title} ({option.Key}): {Word(option.Verdict)}");
            Line($"   why      {Told(option.Reason)}");
            if (option.Verdict != RefitVerdict.Refused)
            {
                Line($"   cost     {Told(option.Cost)}");
                Line($"   ring     radius {Said(option.InnerMm)} to {Said(option.OuterMm)}, margin to the hole {Said(option.MarginMm)}");
                Line($"   residue  {Residue(option.ResidueMm, units)}{(option.ResidueWhere.Length > 0 ? $", {Told(option.ResidueWhere)}" : "")}");
            }

            foreach (var finding in tried.NewFindings)
            {
                Line($"   then     {FindingText.Word(finding.Severity)} {finding.Rule.Code}: {Told(finding.Sentence)}{(finding.Cure is { } cure ? $"; cure: {Told(cure)}" : "")}");
            }

            foreach (var finding in tried.GoneFindings)
            {
                Line($"   no more  {FindingText.Word(finding.Severity)} {finding.Rule.Code}: {Told(finding.Sentence)}");
            }
        }

        return text.ToString();
    }

    private static string Residue(double mm, LengthUnit units) => units == LengthUnit.Inch ? LengthText.WithUnit(mm, units) : $"{NumberFormat.Trimmed(mm, 2)} mm";

    /// <summary>A verdict as it is printed, and in JSON.</summary>
    public static string Word(RefitVerdict verdict) => verdict switch
    {
        RefitVerdict.Recommended => "recommended",
        RefitVerdict.Workable => "workable",
        _ => "refused",
    };
}
