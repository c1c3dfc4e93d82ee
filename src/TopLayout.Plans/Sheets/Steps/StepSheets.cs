using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>
/// A page for every step of the work, for the bench and for teaching: what it does, a small key, its numbers with the tolerance that
/// matters and room for what was made, the usual cautions. Each prints on one page at home; a long table goes on on the next.
/// </summary>
internal static class StepSheets
{
    /// <summary>Width of a page's content, mm.</summary>
    public const double WidthMm = 174;

    private const string Part = "step";
    private const double HeightMm = 243;
    private const double MarginMm = 3;
    private const double TitleBlockMm = 36;
    private const double GapMm = StepPages.GapMm;
    private const double BelowHeading = -11;

    private static readonly Vec2 KeyMm = new(74, 84);

    /// <summary>The pages, in the order of the work.</summary>
    public static IEnumerable<Sheet> Draw(ReviewedTop top) => StepList.Of(top.Layout).Select((s, i) => i == 0 && Cautions.HasFailed(top) ? s with { Cautions = [Cautions.Withheld, .. s.Cautions] } : s).SelectMany(s => Pages(top, s));

    private static IEnumerable<Sheet> Pages(ReviewedTop top, Step step)
    {
        const double Lowest = -HeightMm + TitleBlockMm + GapMm;
        var first = Opening(new SheetBoard(), top.Layout, step, BelowHeading);
        foreach (var (i, tables) in StepPages.Of(step, first - Lowest, BelowHeading - Lowest).Index())
        {
            var board = new SheetBoard();
            var heading = Heading(step, i + 1);
            board.Write(Part, heading, new Point2(0, -6), 5);
            var y = i == 0 ? Opening(board, top.Layout, step, BelowHeading) : BelowHeading;
            foreach (var table in tables)
            {
                y = table.Draw(board, y) - GapMm;
            }

            var reading = $"places: from the neck edge; then from the centre line, to bass or treble; {LengthText.Name(top.Layout.Design.Units)}";
            TitleBlock.Draw(board, top, heading, reading, new Point2(0, y), WidthMm, isFullSize: false);
            var name = i == 0 ? step.Name : $"{step.Name}-{NumberFormat.Whole(i + 1)}";
            yield return board.Finish(name, $"{step.Title} - {top.Layout.Design[Identity.Name].Value}", $"{step.Does} A page to work from, with room for what was made.", MarginMm);
        }
    }

    private static string Heading(Step step, int page) => $"Step {step.Name[..1]}: {step.Title}{(page > 1 ? $", page {NumberFormat.Whole(page)}" : "")}";

    // The key on the left, words on the right; returns the height below both.
    private static double Opening(SheetBoard board, Layout layout, Step step, double top)
    {
        var key = new Box2(new Point2(0, top - KeyMm.Y), new Point2(KeyMm.X, top));
        StepKey.Draw(board, layout, step, key);
        var (x, width) = (KeyMm.X + GapMm, WidthMm - KeyMm.X - GapMm);
        var y = StepText.Write(board, Part, step.Does, new Point2(x, top), width);
        foreach (var caution in (string[])[.. step.Cautions, StepCautions.Rules])
        {
            y = StepText.Write(board, Cautions.Part, $"- {caution}", new Point2(x, y - 2), width);
        }

        return Math.Min(y, key.Min.Y) - GapMm;
    }
}
