using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;
using TopLayout.Plans.Reports;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>The numbers of the report, picked out for a step: nothing is worked out a second time.</summary>
internal sealed class StepNumbers(Layout layout)
{
    private readonly Dictionary<string, NumberTable> _tables = BenchNumbers.Of(layout).ToDictionary(t => t.Key, StringComparer.Ordinal);
    private readonly IReadOnlyList<PieceRow> _pieces = PieceRows.Of(layout, isMerged: true);

    /// <summary>A tolerance either way, mm, in the design's unit.</summary>
    public string Within(double mm) => StepTolerance.Within(mm, layout.Design.Units);

    /// <summary>The rows of a table of what, value and perhaps a remark whose first words are these, in the table's order, with one tolerance, mm.</summary>
    public IEnumerable<StepRow> Of(string table, double tolerance, params string[] beginnings) => Of(table, tolerance, Within(tolerance), w => beginnings.Any(b => w.StartsWith(b, StringComparison.Ordinal)));

    /// <summary>The half-widths of a body whose halves differ, bass beside treble, and those of the plate where it ends inside; none where both are alike.</summary>
    public StepGrid HalfWidths()
    {
        var isInside = layout.Body.PlateEdge != layout.Outline;
        return new(
            ["half-width; as built below", $"bass, {Within(StepTolerance.Body)}", "from neck edge", $"treble, {Within(StepTolerance.Body)}", "from neck edge"],
            [
                .. Halves(layout.Outline, isInside ? "outer face of the rim, " : ""),
                .. isInside ? Halves(layout.Body.PlateEdge, "plate, ") : [],
            ]);
    }

    // A place stands once for each half at most; one that only one half has leaves the other's columns empty.
    private IEnumerable<ImmutableArray<string>> Halves(Contour line, string whose)
    {
        string Said(double mm) => Text(mm, StepTolerance.Body);
        return from w in OutlineNumbers.Widths(line)
               where w.Side is not null
               group w by w.Name into place
               let bass = place.Where(w => w.Side == "bass").ToList()
               let treble = place.Where(w => w.Side == "treble").ToList()
               from n in Enumerable.Range(0, Math.Max(bass.Count, treble.Count))
               select (ImmutableArray<string>)[whose + place.Key, .. Columns(bass, n), .. Columns(treble, n)];

        string[] Columns(List<BodyWidth> half, int n) => n < half.Count ? [Said(half[n].Half), Said(half[n].FromNeckEdge)] : ["", ""];
    }

    /// <summary>Where the saddle lies, from the nut and from the neck edge, and what of it is compensation.</summary>
    public StepGrid Saddle()
    {
        var (frets, saddle) = (layout.Frets, layout.Saddle);
        ImmutableArray<string> Row(string what, double y, string across)
        {
            var more = -y - frets.SaddleFromNeckEdge;
            return [what, Text(frets.NeckEdgeFromNut - y), Text(-y), across, Math.Abs(more) < Tolerances.ShortestMm ? "none" : Text(more)];
        }

        return new(
            ["saddle, middle of its slot; as built below", $"from the nut, {Within(StepTolerance.Along)}", "from neck edge", "from centre line", "compensation"],
            [
                Row("theoretical saddle", -frets.SaddleFromNeckEdge, ""),
                Row("under the outer treble string", saddle.Treble.Y, $"{Text(Math.Abs(saddle.Treble.X), StepTolerance.Along)} treble"),
                Row("under the outer bass string", saddle.Bass.Y, $"{Text(Math.Abs(saddle.Bass.X), StepTolerance.Along)} bass"),
            ]);
    }

    /// <summary>The strips to bend for the sides, with what is left over for trimming.</summary>
    public IEnumerable<StepRow> SideStrips() =>
        Of("body", StepTolerance.Body, StepTolerance.Over(StepTolerance.SideStock, layout.Design.Units), w => w.Contains("side strip,", StringComparison.Ordinal));

    /// <summary>Ends and section of every brace.</summary>
    public StepGrid Braces() => new(
        ["brace; as built below", $"one end, {Within(StepTolerance.Brace)}", $"other end, {Within(StepTolerance.Brace)}", $"width x height, {Within(StepTolerance.Meeting)}"],
        [.. _tables["bars"].Rows.Select(r => (ImmutableArray<string>)[Words(r[0]), Place(r[1], r[2], StepTolerance.Brace), Place(r[3], r[4], StepTolerance.Brace), $"{Bare(r[7], StepTolerance.Meeting)} x {Text(r[8], StepTolerance.Meeting)}"])]);

    /// <summary>The pockets of the ends that are let into the linings, both ends of a brace in one row.</summary>
    public StepGrid BraceEnds()
    {
        string Opening(IEnumerable<BraceEnd> ends) => string.Join("; ", ends.Select(e => $"{Bare(e.FromMm, StepTolerance.Brace)} to {Text(e.ToMm, StepTolerance.Brace)}, {LengthText.Of(e.ToRim)}"));
        return new(
            [
                "pockets of; as built below", $"bass side, from to, {Within(StepTolerance.Brace)}, angle to the rim", $"treble side, from to, {Within(StepTolerance.Brace)}, angle to the rim",
                $"width square to the brace, {StepTolerance.PocketRoom(layout.Design.Units)}; depth, {Within(StepTolerance.Channel)}",
            ],
            [
                .. Lutherie.Parts.BraceEnds.Of(layout).GroupBy(e => e.Bar).Select(b => (ImmutableArray<string>)
                [
                    b.Key.Name, Opening(b.Where(e => e.Side == "bass")), Opening(b.Where(e => e.Side == "treble")), $"{Text(b.First().WidthMm)} wide, {Text(b.First().HeightMm)} deep",
                ]),
            ]);
    }

    /// <summary>How high brace ends are left at the rim; none where none reaches it.</summary>
    public IEnumerable<StepRow> EndHeight() => Lutherie.Parts.BraceEnds.Of(layout).Where(e => e.Bar.Kind == MemberKind.Bar).Select(e => e.HeightMm).Distinct().Order().ToList() is [var least, ..] heights
        ? [new("brace ends at the rim, height", heights.Count == 1 ? Text(least) : $"{Bare(least)} to {Text(heights[^1])}", Within(StepTolerance.Channel), "carved down to it: as deep as their pockets, step 5")]
        : [];

    /// <summary>What is glued on the braces, not on the top.</summary>
    public IEnumerable<StepRow> Caps() => _pieces.Where(p => p.Face == PieceRows.OnBraces)
        .Select(p => new StepRow($"{p.Name}, over the crossing", $"{Text(p.Bounds.Width, StepTolerance.Meeting)} square, {Text(p.ThicknessMm)} thick", Within(StepTolerance.Meeting), "glued on last, to the legs; it does not touch the top"));

    /// <summary>Where parts lie and how thick they are.</summary>
    public StepGrid Pieces(string heading, Func<PieceRow, bool> isWanted) => new(
        [$"{heading}; as built below", $"along, {Within(StepTolerance.Meeting)}", $"across, {Within(StepTolerance.Meeting)}", $"thickness, {Within(StepTolerance.Channel)}"],
        [.. _pieces.Where(isWanted).Select(p => (ImmutableArray<string>)[p.Name, p.Along ?? Along(p), p.Across ?? Across(p), Text(p.ThicknessMm)])]);

    /// <summary>Where a part lies and how thick it is.</summary>
    public IEnumerable<StepRow> Piece(string name, string thickness = "thickness", double tolerance = StepTolerance.Channel) => _pieces.Where(p => p.Name == name).SelectMany(p => (StepRow[])
    [
        new($"{name}: along, from neck edge", Along(p), Within(StepTolerance.Meeting)),
        new($"{name}: across, its edges", Across(p), Within(StepTolerance.Meeting)),
        new($"{name}: {thickness}", Text(p.ThicknessMm, tolerance), Within(tolerance)),
    ]);

    /// <summary>A block: where it lies, how deep it is through the rim, of what, how its grain lies, and its template's sheet.</summary>
    public IEnumerable<StepRow> Block(string name, string sheet) => WithRemark(Piece(name, "depth through the rim", StepTolerance.Meeting), name, $"template: sheet parts/{sheet}");

    /// <summary>The tongue: the same; its outline's sizes stand on its template.</summary>
    public IEnumerable<StepRow> Tongue() => WithRemark(Piece(Lutherie.Parts.Tongue.Name), Lutherie.Parts.Tongue.Name, "widths, angles and radii: see sheet tongue, its template");

    private IEnumerable<StepRow> WithRemark(IEnumerable<StepRow> rows, string name, string template) => rows.Select((r, i) => i switch
    {
        0 when layout.Find(name)?.Material is not null => r with { Remark = Stuff(layout.Find(name)!) },
        1 => r with { Remark = template },
        _ => r,
    });

    private static string Stuff(Member member) => member.Material!.Lie == GrainLie.Upright ? $"{member.Material.Wood.Name}, long grain through the depth of the rim"
        : $"{member.Material.Wood.Name}, long grain {(Math.Abs(member.Grain.Degrees) < 45 ? "along the top's" : "across the top's")}";

    /// <summary>The notches of braces that cross other parts.</summary>
    public IEnumerable<StepRow> Notches() =>
        Reports.Notches.Rows(layout).Select(n => new StepRow(n.What, $"{Text(n.DepthMm)} deep", Within(StepTolerance.Channel), n.How));

    /// <summary>How thick the top is before the channels are cut and after levelling; none where nothing is levelled off.</summary>
    public IEnumerable<StepRow> Thickness() => Levelling <= 0 ? [] :
    [
        new("top's thickness, before the channel is cut", Text(Printed(layout.Top.ThicknessMm) + Printed(Levelling)), Within(StepTolerance.Channel), $"{Text(Levelling)} of it is levelled off with the ring"),
        new("top's thickness, levelled", Text(layout.Top.ThicknessMm), Within(StepTolerance.Channel), "finished; then the hole is cut"),
    ];

    /// <summary>The channels of the rosette.</summary>
    public StepGrid Channels()
    {
        var rows = _tables["positions"].Rows.Select(r => (What: Words(r[0]), Value: r[1])).Where(r => r.What.StartsWith(Rosette.Name, StringComparison.Ordinal)).ToList();
        var wall = layout.Hole.Radius is null ? "wall, from the hole's edge" : "radius";
        var within = Within(StepTolerance.Channel);
        return new(
            ["channel; as built below", $"inner {wall}, {within}", $"outer {wall}, {within}", $"depth below the finished face, {within}"],
            [.. rows.Chunk(3).Select(c => (ImmutableArray<string>)[c[0].What[..c[0].What.IndexOf(',', StringComparison.Ordinal)], Text(c[0].Value), Text(c[1].Value), Depth(c[2].Value)])]);

        string Depth(Cell depth) => Levelling > 0 ? $"{Text(depth)}; {Text(Printed(((Cell.Length)depth).Mm) + Printed(Levelling))} when cut" : Text(depth);
    }

    /// <summary>What is set at the bench for every cut round the pivot.</summary>
    public StepGrid Cuts()
    {
        var grid = Table(
            "rosette_cuts",
            ["cut round the pivot", "bit", "radius", "pivot to bit centre", $"caliper on bit and {LengthText.Bit(layout.Design[Rosette.Pin].Value, layout.Design.Units)} pin", "depth when cut"],
            ["cut", "bit", "radius", "pivot_to_bit", "pin_to_bit", "depth"]);

        // The numbers' remark begins with it.
        var how = _tables.TryGetValue("rosette_cuts", out var table) ? table.Rows.Select(r => Words(r[^1]).StartsWith("caliper over", StringComparison.Ordinal) ? "over" : "between").ToList() : [];
        return grid with { Rows = [.. grid.Rows.Select((r, i) => r.SetItem(4, $"{r[4]} {how[i]}"))] };
    }

    /// <summary>The rings from the hole outward.</summary>
    public StepGrid Rings() => Table("rosette_rings", ["ring, from the hole outward", "inner radius", $"width{Play}", "strip to cut, length"], ["ring", "inner", "width", "strip"]);

    /// <summary>The tiles to saw.</summary>
    public StepGrid Tiles() => Table(
        "rosette_tiles", ["tiles", "how many", "width inside", "width outside", "length along the radius", "least thickness", "each side off square"], ["ring", "count", "inner_width", "outer_width", "depth", "least_thickness", "off_square"]);

    /// <summary>The holes to drill that are wanted.</summary>
    public IEnumerable<StepRow> Drilled(Func<string, bool> isWanted) => _tables["drill_points"].Rows
        .Where(r => isWanted(Words(r[0])))
        .Select(r => new StepRow($"{Words(r[0])}, hole {Text(r[3])}", Place(r[1], r[2], StepTolerance.Across), Within(StepTolerance.Across)));

    /// <summary>The same holes, a row each, those of one size in one column.</summary>
    public StepGrid Holes(Func<string, bool> isWanted) => new(
        ["hole; as built below", $"along, {Within(StepTolerance.Across)}", $"across, {Within(StepTolerance.Across)}", "diameter"],
        [.. _tables["drill_points"].Rows.Where(r => isWanted(Words(r[0]))).Select(r => (ImmutableArray<string>)[Words(r[0]), Text(r[1]), Side(((Cell.Length)r[2]).Mm, StepTolerance.Across), Text(r[3])])]);

    /// <summary>The holes through the tie block: what is drilled along the body, level with the top.</summary>
    public StepGrid TieHoles() => new(
        ["hole through the tie block, along the body; as built below", $"across, {Within(StepTolerance.Across)}", $"middle above the top, {Within(StepTolerance.Across)}", "diameter"],
        [.. layout.TieHoles.Select(h => (ImmutableArray<string>)[h.Name, Side(h.From.X, StepTolerance.Across), Text(h.HeightMm), Text(h.DiameterMm)])]);

    private string Play => layout.Design.Has(Rosette.Section) && layout.Design[Rosette.Clearance].Value is > 0 and var play
        ? $"; their channel has {LengthText.WithUnit(play, layout.Design.Units)} more for glue"
        : "";

    private double Printed(double mm) => LengthText.AsPrinted(mm, layout.Design.Units);

    private double Levelling => layout.Design.Has(Rosette.Section) ? layout.Design[Rosette.Levelling].Value : 0;

    private IEnumerable<StepRow> Of(string table, double tolerance, string said, Func<string, bool> isWanted) =>
        from row in _tables[table].Rows
        let what = Words(row[0])
        where isWanted(what)
        select new StepRow(what, Text(row[1], tolerance), row[1] is Cell.Words ? "" : said, row.Count > 2 ? Words(row[2]) : "");

    // Without boxes: settings and stock, not what was made.
    private StepGrid Table(string key, IEnumerable<string> headings, string[] columns)
    {
        if (!_tables.TryGetValue(key, out var table))
        {
            return new([.. headings], []) { HasBoxes = false };
        }

        var at = columns.Select(c => table.Columns.Index().First(t => t.Item.Key == c).Index).ToList();
        return new([.. headings], [.. table.Rows.Select(r => (ImmutableArray<string>)[.. at.Select(i => Text(r[i]))])]) { HasBoxes = false };
    }

    private string Along(PieceRow p) => $"{Bare(-p.Bounds.Max.Y, StepTolerance.Meeting)} to {Text(-p.Bounds.Min.Y, StepTolerance.Meeting)}";

    private string Across(PieceRow p) => Math.Abs(p.Bounds.Min.X + p.Bounds.Max.X) <= Tolerances.ShortestMm
        ? $"±{Text(p.Bounds.Max.X, StepTolerance.Meeting)}"
        : $"{Side(p.Bounds.Min.X, StepTolerance.Meeting)} to {Side(p.Bounds.Max.X, StepTolerance.Meeting)}";

    private static string Words(Cell cell) => ((Cell.Words)cell).Text;

    private string Place(Cell along, Cell across, double tolerance) => $"{Bare(along, tolerance)}; {Side(((Cell.Length)across).Mm, tolerance)}";

    private string Side(double x, double tolerance) =>
        Math.Abs(x) <= Tolerances.ShortestMm ? "centre" : $"{Bare(Math.Abs(x), tolerance)} {(x < 0 ? "bass" : "treble")}";

    // As fine as the tolerance asks: where that is a mm, to a tenth, and inches as a rule reads them where it sees the tolerance.
    private string Bare(Cell cell, double tolerance = 0) => cell is not Cell.Length { Mm: var mm } ? CellText.Of(cell, layout.Design.Units)
        : layout.Design.Units == LengthUnit.Inch && tolerance >= LengthText.FinestOnRuleMm ? LengthText.OnRule(mm, LengthUnit.Inch)
        : layout.Design.Units != LengthUnit.Inch && tolerance >= StepTolerance.Body ? NumberFormat.Fixed(LengthText.Rounded(mm, 1), 1)
        : CellText.Of(cell, layout.Design.Units);

    private string Text(Cell cell, double tolerance = 0) => cell is Cell.Length ? $"{Bare(cell, tolerance)} {LengthText.Word(layout.Design.Units)}" : Bare(cell);
}
