using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>What each line of a plan means: a sample of every way in which lines are drawn on it, and a word.</summary>
internal static class Legend
{
    /// <summary>The part it is drawn under.</summary>
    public const string Part = "legend";
    private const double SampleMm = 22;
    private const double ColumnMm = 56;
    private const double WidestMm = 185;
    private const double AfterSampleMm = 3;
    private const double ApartMm = 4;
    private const double RowMm = 5;
    private const double SwatchMm = 3;

    private static readonly (Role Role, Emphasis Emphasis, string Means)[] Entries =
    [
        (Role.Cut, Emphasis.Normal, "cut"),
        (Role.Pocket, Emphasis.Normal, "channel wall"),
        (Role.Mark, Emphasis.Normal, "this face"),
        (Role.Mark, Emphasis.Bad, "edge fails"),
        (Role.Mark, Emphasis.Doubtful, "edge doubtful"),
        (Role.Mark, Emphasis.Good, "edge passes"),
        (Role.Mark, Emphasis.Faint, "other edges"),
        (Role.Hidden, Emphasis.Normal, "covered, not glued"),
        (Role.Hidden, Emphasis.Faint, "other face"),
        (Role.Centre, Emphasis.Normal, "centre, datum"),
        (Role.Finding, Emphasis.Bad, "run that fails, barbs close"),
        (Role.Finding, Emphasis.Doubtful, "doubtful run, barbs wide"),
        (Role.Finding, Emphasis.Normal, "note; profile: longest edge"),
        (Role.Finding, Emphasis.Faint, "grain line; profile: all on it"),
    ];

    /// <summary>Draws it below a place, in as many columns as a page of a print in pages is wide for, three at most.</summary>
    /// <param name="board">The sheet.</param>
    /// <param name="topLeft">Where.</param>
    /// <param name="glued">What the hatching means.</param>
    public static void Draw(SheetBoard board, Point2 topLeft, string glued = "glued")
    {
        var drawn = board.Lines;
        var entries = Entries.Where(e => drawn.Contains((e.Role, e.Emphasis))).DistinctBy(e => e.Means).ToList();
        var words = entries.Select(e => e.Means).Concat(board.HasHatching ? [glued] : []);
        var column = words.Select(w => SampleMm + AfterSampleMm + Lettering.Measure(w, SheetBoard.TextMm).Width + ApartMm).Append(ColumnMm).Max();
        Point2 Place(int number)
        {
            var columns = Math.Clamp((int)(WidestMm / column), 1, 3);
            return topLeft + new Vec2(number % columns * column, -RowMm * ((number / columns) + 1));
        }

        foreach (var (i, entry) in entries.Index())
        {
            var at = Place(i);
            board.Sample(Part, entry.Role, entry.Emphasis, at, at + new Vec2(SampleMm, 0));
            board.Write(Part, entry.Means, at + new Vec2(SampleMm + AfterSampleMm, -1.2));
        }

        if (board.HasHatching)
        {
            var at = Place(entries.Count);
            var sample = Contour.Rectangle(new Box2(at - new Vec2(0, SwatchMm / 2), at + new Vec2(SampleMm, SwatchMm / 2)));
            board.Draw(Part, Role.Hatch, sample);
            board.Hatch(Part, Region.Inside(sample), Angle.FromDegrees(45));
            board.Write(Part, glued, at + new Vec2(SampleMm + AfterSampleMm, -1.2));
        }
    }
}
