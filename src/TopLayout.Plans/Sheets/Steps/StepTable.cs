using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>The table of a step: what, value, tolerance, and an empty box for what was made.</summary>
internal static class StepTable
{
    private const string Part = "numbers";
    private const double PadMm = 0.9;
    private const double InsetMm = 1.5;

    // Left edges of the columns; the last is the box.
    private static readonly (string Heading, double Left)[] Columns = [("what", 0), ("value", 68), ("tolerance", 119), ("as built", 148)];

    /// <summary>Draws as many rows as fit above the lowest height, at least one; says how many, and the height of the foot, mm.</summary>
    public static (int Taken, double Foot) Draw(SheetBoard board, IReadOnlyList<StepRow> rows, Point2 topLeft, double widthMm, double lowestMm)
    {
        var y = Row(board, [.. Columns.Select(c => c.Heading)], topLeft.Y, widthMm, hasLine: false);
        var taken = 0;
        foreach (var row in rows)
        {
            string[] texts = [row.What, row.Value, row.Tolerance];
            if (taken > 0 && y - Height(texts, widthMm) < -lowestMm)
            {
                break;
            }

            y = Row(board, texts, y, widthMm);
            taken++;
        }

        board.Box(Part, Role.Text, new Box2(new Point2(topLeft.X, y), new Point2(topLeft.X + widthMm, topLeft.Y)));
        foreach (var (_, left) in Columns.Skip(1))
        {
            board.Line(Part, Role.Text, new Point2(left, topLeft.Y), new Point2(left, y));
        }

        return (taken, y);
    }

    // Under the row before it, whose foot gets a line; returns the height of its own, where the next begins.
    private static double Row(SheetBoard board, IReadOnlyList<string> texts, double top, double widthMm, bool hasLine = true)
    {
        if (hasLine)
        {
            board.Line(Part, Role.Text, new Point2(0, top), new Point2(widthMm, top));
        }

        foreach (var (i, text) in texts.Index())
        {
            StepText.Write(board, Part, text, new Point2(Columns[i].Left + InsetMm, top - PadMm), Room(i, widthMm));
        }

        return top - Height(texts, widthMm);
    }

    private static double Height(IReadOnlyList<string> texts, double widthMm) =>
        (texts.Select((t, i) => StepText.Lines(t, Room(i, widthMm)).Count).Max() * StepText.LineMm) + (2 * PadMm);

    private static double Room(int column, double widthMm) =>
        (column + 1 < Columns.Length ? Columns[column + 1].Left : widthMm) - Columns[column].Left - (2 * InsetMm);
}
