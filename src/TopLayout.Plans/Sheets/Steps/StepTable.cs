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
    private const double InsetMm = 1.5;

    // The name's column in a table of many parts; the others share what is left.
    private const double NameMm = 46;

    private static readonly ImmutableArray<double> NumberColumns = [0, 68, 108, 144, StepSheets.WidthMm];

    // What, value, tolerance, remark, as built; a table takes the one in which it is lowest.
    private static readonly ImmutableArray<ImmutableArray<double>> RemarkColumns =
    [
        [0, 51, 78, 99, 153, StepSheets.WidthMm],
        [0, 66, 94, 114, 154, StepSheets.WidthMm],
        [0, 58, 91, 111, 153, StepSheets.WidthMm],
        [0, 50, 77, 111, 155, StepSheets.WidthMm],
    ];

    private readonly ImmutableArray<double> _edges;
    private readonly IReadOnlyList<string> _headings;
    private readonly ReadOnlyMemory<IReadOnlyList<string>> _rows;
    private readonly bool _hasBoxes;
    private readonly bool _isTight;

    private StepTable(ImmutableArray<double> edges, IReadOnlyList<string> headings, ReadOnlyMemory<IReadOnlyList<string>> rows, bool hasBoxes, bool isTight) =>
        (_edges, _headings, _rows, _hasBoxes, _isTight) = (edges, headings, rows, hasBoxes, isTight);

    /// <summary>How many rows it has.</summary>
    public int Count => _rows.Length;

    /// <summary>Its height, mm.</summary>
    public double HeightMm => HeightOf(Count);

    private double PadMm => _isTight ? 0.5 : 0.9;

    private double BoxMm => !_hasBoxes ? 0 : _isTight ? 5 : 6;

    /// <summary>A number a row.</summary>
    public static StepTable Of(IReadOnlyList<StepRow> rows, bool isTight)
    {
        if (rows.All(r => r.Remark.Length == 0))
        {
            return new(NumberColumns, ["what", "value", "tolerance", "as built"], rows.Select(r => (IReadOnlyList<string>)[r.What, r.Value, r.Tolerance]).ToArray(), hasBoxes: false, isTight);
        }

        var texts = rows.Select(r => (IReadOnlyList<string>)[r.What, r.Value, r.Tolerance, r.Remark]).ToArray();
        return RemarkColumns.Select(c => new StepTable(c, ["what", "value", "tolerance", "remark", "as built"], texts, hasBoxes: false, isTight)).MinBy(t => t.HeightMm)!;
    }

    /// <summary>A part a row.</summary>
    public static StepTable Of(StepGrid grid, bool isTight)
    {
        var values = grid.Headings.Length - 1;
        return new(
            [0, .. Enumerable.Range(0, values + 1).Select(i => NameMm + ((StepSheets.WidthMm - NameMm) * i / values))],
            grid.Headings,
            grid.Rows.Select(r => (IReadOnlyList<string>)r).ToArray(),
            grid.HasBoxes,
            isTight);
    }

    /// <summary>How many of its first rows fit into a height with their heading, mm.</summary>
    public int Fitting(double heightMm)
    {
        var (left, count) = (heightMm - Height(_headings, 0), 0);
        foreach (var row in _rows.Span)
        {
            left -= Height(row, BoxMm);
            if (left < -Tolerances.TouchMm)
            {
                break;
            }

            count++;
        }

        return count;
    }

    /// <summary>Its first rows alone.</summary>
    public StepTable First(int count) => new(_edges, _headings, _rows[..count], _hasBoxes, _isTight);

    /// <summary>What is left after its first rows.</summary>
    public StepTable After(int count) => new(_edges, _headings, _rows[count..], _hasBoxes, _isTight);

    /// <summary>Draws it below a height; returns the height of its foot, mm.</summary>
    public double Draw(SheetBoard board, double top)
    {
        var y = top - Height(_headings, 0);
        Texts(board, _headings, top);
        foreach (var row in _rows.Span)
        {
            y = Row(board, row, y);
        }

        board.Box(Part, Role.Text, new Box2(new Point2(_edges[0], y), new Point2(_edges[^1], top)));
        foreach (var edge in _edges.AsSpan()[1..^1])
        {
            board.Line(Part, Role.Text, new Point2(edge, top), new Point2(edge, y));
        }

        return y;
    }

    private double HeightOf(int count)
    {
        var height = Height(_headings, 0);
        foreach (var row in _rows.Span[..count])
        {
            height += Height(row, BoxMm);
        }

        return height;
    }

    // Under the row before it, whose foot gets a line; returns the height of its own, where the next begins.
    private double Row(SheetBoard board, IReadOnlyList<string> texts, double top)
    {
        board.Line(Part, Role.Text, new Point2(_edges[0], top), new Point2(_edges[^1], top));
        Texts(board, texts, top);
        var foot = top - Height(texts, BoxMm);
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
