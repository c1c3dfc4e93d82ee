using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Pdf;
using TopLayout.Drawing.Svg;
using TopLayout.Lutherie.Checks;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Reports;
using TopLayout.Plans.Sheets;

namespace TopLayout.Plans;

/// <summary>The one way from a design's text to what a front end shows or writes.</summary>
public static class Pipeline
{
    /// <summary>Reads, builds and checks a design. Later stages run only when there is something to run on.</summary>
    /// <param name="text">The design file's text.</param>
    /// <param name="file">Its name, for the places in messages.</param>
    public static Review Check(string text, string file)
    {
        var reading = DesignReader.Read(text, file, Parameters.Table);
        if (reading.Design is not { } design)
        {
            return new Review(null, reading.Findings);
        }

        var (layout, misfits) = LayoutBuilder.Build(design);
        if (layout is null)
        {
            return new Review(null, [.. Finding.Sorted([.. reading.Findings, .. misfits])]);
        }

        var grain = GrainCheck.Of(layout);
        var findings = Finding.Sorted([.. reading.Findings, .. grain.Findings, .. LayoutChecks.Of(layout)]).ToList();
        return new Review(new ReviewedTop(layout, grain, [.. findings]), [.. findings]);
    }

    /// <summary>
    /// The sheets of a reviewed top that are wanted, in order. Cut files (templates) are left out when a check failed, unless asked for: a
    /// template that will crack the top should not lie about.
    /// </summary>
    /// <param name="top">The top.</param>
    /// <param name="options">What is drawn.</param>
    public static IReadOnlyList<DrawnSheet> Sheets(ReviewedTop top, DrawOptions options)
    {
        var entries = Wanted(options).Where(e => !(e.IsCutFile && IsWithheld(top, options))).ToList();
        return [.. SideBySide.Each(entries, e => e.Draw(top).Select(s => new DrawnSheet(e.PathOf(s), s, e.HasCentreLine)).ToList()).SelectMany(s => s)];
    }

    /// <summary>The files of a top's sheets, in order, and the report, which comes with all sheets, not with single ones.</summary>
    /// <param name="top">The top.</param>
    /// <param name="options">What is drawn, and how.</param>
    /// <param name="sheets">Its <see cref="Sheets"/>.</param>
    /// <param name="begins">Told the sheet whose files are begun, and how many are with it.</param>
    public static IReadOnlyList<OutputFile> Files(ReviewedTop top, DrawOptions options, IReadOnlyList<DrawnSheet> sheets, Action<DrawnSheet, int>? begins = null)
    {
        var (paper, ruler) = top.Layout.Design.Units == LengthUnit.Inch ? (Paper.Letter, Ruler.Inches) : (Paper.A4, Ruler.Millimetres);
        paper = options.Paper ?? paper;
        var files = SideBySide.Each(sheets, s => Files(s, options, paper, ruler), begins).SelectMany(f => f);
        return [.. files, .. options.Only.IsEmpty ? Report(top, sheets) : []];
    }

    private static OutputFile[] Files(DrawnSheet drawn, DrawOptions options, Paper paper, Ruler ruler)
    {
        var (path, sheet, hasCentreLine) = drawn;
        return
        [
            OutputFile.Written(path + ".dxf", s => DxfWriter.Write(sheet, s, options.Dxf)),
            OutputFile.Written(path + ".svg", s => SvgWriter.Write(sheet, s)),
            OutputFile.Written(path + ".pdf", s => PdfWriter.Write(sheet, s, options.Page, ruler)),
            OutputFile.Written(path + "-tiles.pdf", s => TiledPdfWriter.Write(sheet, s, paper, options.Correction, hasCentreLine ? options.Half : null, ruler)),
        ];
    }

    private static OutputFile[] Report(ReviewedTop top, IReadOnlyList<DrawnSheet> sheets) =>
    [
        new("report.md", MarkdownReport.Write(top)),
        new("report.json", JsonReport.Write(top)),
        new("report.html", HtmlReport.Write(top, [.. sheets.Select(s => s.Sheet).Where(s => s.Name is PlanSheet.OutsideName or PlanSheet.InsideName)])),
    ];

    /// <summary>Names of the wanted cut sheets that <see cref="Sheets"/> leaves out for this top.</summary>
    public static IReadOnlyList<string> Withheld(ReviewedTop top, DrawOptions options) => IsWithheld(top, options)
        ? [.. Wanted(options).Where(e => e.IsCutFile && e.Draw(top).Any()).Select(e => e.Name)]
        : [];

    /// <summary>Names of the sheets that are larger than the page asked for; they are written on a page that fits.</summary>
    public static IReadOnlyList<string> TooLarge(IEnumerable<DrawnSheet> sheets, PageFormat page) =>
        [.. sheets.Where(s => page.Around(s.Sheet) is null).Select(s => s.Sheet.Name)];

    private static IEnumerable<SheetEntry> Wanted(DrawOptions options) =>
        SheetCatalog.All.Where(e => options.Only.IsEmpty || options.Only.Contains(e.Name));

    private static bool IsWithheld(ReviewedTop top, DrawOptions options) => !options.CutAnyway && top.Findings.Any(f => f.Severity == Severity.Fail);
}
