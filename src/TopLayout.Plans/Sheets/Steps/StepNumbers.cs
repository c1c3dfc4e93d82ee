using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>The numbers of the report, picked out for a step: nothing is worked out a second time.</summary>
internal sealed class StepNumbers(Layout layout)
{
    private readonly Dictionary<string, NumberTable> _tables = BenchNumbers.Of(layout).ToDictionary(t => t.Key, StringComparer.Ordinal);

    /// <summary>A tolerance either way, mm, in the design's unit.</summary>
    public string Within(double mm) => StepTolerance.Within(mm, layout.Design.Units);

    /// <summary>The rows of a table of what, value and perhaps a remark whose first words are these, with one tolerance.</summary>
    public IEnumerable<StepRow> Of(string table, string tolerance, params string[] beginnings) =>
        from row in _tables[table].Rows
        let what = Words(row[0])
        where beginnings.Any(b => what.StartsWith(b, StringComparison.Ordinal))
        select new StepRow(row.Count > 2 && Words(row[2]) is { Length: > 0 } remark ? $"{what}; {remark}" : what, Text(row[1]), tolerance);

    /// <summary>Ends and section of every brace.</summary>
    public StepGrid Braces() => new(
        ["brace; as built below", $"one end, {Within(StepTolerance.Brace)}", $"other end, {Within(StepTolerance.Brace)}", $"width x height, {Within(StepTolerance.Meeting)}"],
        [.. _tables["bars"].Rows.Select(r => (ImmutableArray<string>)[Words(r[0]), Place(r[1], r[2]), Place(r[3], r[4]), $"{Bare(r[7])} x {Text(r[8])}"])]);

    /// <summary>Where parts lie and how thick they are.</summary>
    public StepGrid Pieces(string heading, IEnumerable<string> names) => new(
        [$"{heading}; as built below", $"along, {Within(StepTolerance.Meeting)}", $"across, {Within(StepTolerance.Meeting)}", $"thickness, {Within(StepTolerance.Channel)}"],
        [.. names.SelectMany(Rows).Select(r => (ImmutableArray<string>)[Words(r[0]), $"{Bare(r[4])} to {Text(r[5])}", $"{Side(r[6])} to {Side(r[7])}", Text(r[3])])]);

    /// <summary>Where a part lies and how thick it is.</summary>
    public IEnumerable<StepRow> Piece(string name, string thickness = "thickness", double tolerance = StepTolerance.Channel) => Rows(name).SelectMany(r => (StepRow[])
    [
        new($"{name}: along, from neck edge", $"{Bare(r[4])} to {Text(r[5])}", Within(StepTolerance.Meeting)),
        new($"{name}: across, its edges", $"{Side(r[6])} to {Side(r[7])}", Within(StepTolerance.Meeting)),
        new($"{name}: {thickness}", Text(r[3]), Within(tolerance)),
    ]);

    /// <summary>How high a lining stands off the top.</summary>
    public IEnumerable<StepRow> Lining(string name) => Rows(name).Select(r => new StepRow($"{name}: height", Text(r[3]), Within(StepTolerance.Meeting)));

    /// <summary>The holes to drill that are wanted.</summary>
    public IEnumerable<StepRow> Drilled(Func<string, bool> isWanted) => _tables["drill_points"].Rows
        .Where(r => isWanted(Words(r[0])))
        .Select(r => new StepRow($"{Words(r[0])}, hole {Text(r[3])}", Place(r[1], r[2]), Within(StepTolerance.Across)));

    private IEnumerable<IReadOnlyList<Cell>> Rows(string piece) => _tables["pieces"].Rows.Where(r => Words(r[0]) == piece);

    private static string Words(Cell cell) => ((Cell.Words)cell).Text;

    private string Place(Cell along, Cell across) => $"{Bare(along)}; {Side(across)}";

    private string Side(Cell across) => ((Cell.Length)across).Mm switch
    {
        var x when Math.Abs(x) <= Tolerances.ShortestMm => "centre",
        var x => $"{Bare(Math.Abs(x))} {(x < 0 ? "bass" : "treble")}",
    };

    private string Bare(Cell cell) => CellText.Of(cell, layout.Design.Units);

    private string Text(Cell cell) => cell is Cell.Length ? $"{Bare(cell)} {LengthText.Word(layout.Design.Units)}" : Bare(cell);
}
