using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>
/// A table of a step with room for what was made: as a last column, or, where a part has several numbers in one row, as an empty box under each.
/// </summary>
internal sealed class StepTable
{
    private const string Part = "numbers";
    private const double PadMm = 0.9;
    private const double InsetMm = 1.5;
    private const double BoxMm = 6;

    private static readonly ImmutableArray<double> NumberColumns = [0, 68, 119, 148, StepSheets.WidthMm];
    private static readonly ImmutableArray<double> GridColumns = [0, 46, 92, 138, StepSheets.WidthMm];

    private readonly ImmutableArray<double> _edges;
    private readonly IReadOnlyList<string> _headings;
    private readonly ReadOnlyMemory<IReadOnlyList<string>> _rows;
    private readonly bool _hasBoxes;

    private StepTable(ImmutableArray<double> edges, IReadOnlyList<string> headings, ReadOnlyMemory<IReadOnlyList<string>> rows, bool hasBoxes) =>
        (_edges, _headings, _rows, _hasBoxes) = (edges, headings, rows, hasBoxes);

    /// <summary>A number a row.</summary>
    public static StepTable Of(IEnumerable<StepRow> rows) =>
        new(NumberColumns, ["what", "value", "tolerance", "as built"], rows.Select(r => (IReadOnlyList<string>)[r.What, r.Value, r.Tolerance]).ToArray(), hasBoxes: false);

    /// <summary>A part a row.</summary>
    public static StepTable Of(StepGrid grid) => new(GridColumns, grid.Headings, grid.Rows.Select(r => (IReadOnlyList<string>)r).ToArray(), hasBoxes: true);

    /// <summary>
    /// Draws as many rows as fit above the lowest height, none where not even one does; returns what is left, null when that is nothing, and the
    /// height of the foot, mm.
    /// </summary>
    public (StepTable? Left, double Foot) Draw(SheetBoard board, double top, double lowest)
    {
        var head = top - Height(_headings, 0);
        var (y, taken) = (head, 0);
        foreach (var row in _rows.Span)
        {
            if (y - Height(row, Box) < lowest)
            {
                break;
            }

            y = Row(board, row, y);
            taken++;
        }

        if (taken == 0)
        {
            return (this, top);
        }

        Texts(board, _headings, top);
        board.Box(Part, Role.Text, new Box2(new Point2(_edges[0], y), new Point2(_edges[^1], top)));
        foreach (var edge in _edges.AsSpan()[1..^1])
        {
            board.Line(Part, Role.Text, new Point2(edge, top), new Point2(edge, y));
        }

        return (taken == _rows.Length ? null : new StepTable(_edges, _headings, _rows[taken..], _hasBoxes), y);
    }

    private double Box => _hasBoxes ? BoxMm : 0;

    // Under the row before it, whose foot gets a line; returns the height of its own, where the next begins.
    private double Row(SheetBoard board, IReadOnlyList<string> texts, double top)
    {
        board.Line(Part, Role.Text, new Point2(_edges[0], top), new Point2(_edges[^1], top));
        Texts(board, texts, top);
        var foot = top - Height(texts, Box);
        if (_hasBoxes)
        {
            board.Line(Part, Role.Text, new Point2(_edges[1], foot + BoxMm), new Point2(_edges[^1], foot + BoxMm), Emphasis.Faint);
        }

        return foot;
    }

    private void Texts(SheetBoard board, IReadOnlyList<string> texts, double top)
    {
        foreach (var (i, text) in texts.Index())
        {
            StepText.Write(board, Part, text, new Point2(_edges[i] + InsetMm, top - PadMm), Room(i));
        }
    }

    // A name may reach down beside the boxes.
    private double Height(IReadOnlyList<string> texts, double box) =>
        (2 * PadMm) + Math.Max(Lines(texts, 0) * StepText.LineMm, (Enumerable.Range(1, texts.Count - 1).Max(i => Lines(texts, i)) * StepText.LineMm) + box);

    private int Lines(IReadOnlyList<string> texts, int column) => StepText.Lines(texts[column], Room(column)).Count;

    private double Room(int column) => _edges[column + 1] - _edges[column] - (2 * InsetMm);
}
