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
    /// <param name="begins">Told the name of each kind of sheet before it is drawn, its number and how many there are.</param>
    public static IEnumerable<DrawnSheet> Sheets(ReviewedTop top, DrawOptions options, Action<string, int, int>? begins = null)
    {
        var entries = Wanted(options).Where(e => !(e.IsCutFile && IsWithheld(top, options))).ToList();
        foreach (var (i, entry) in entries.Index())
        {
            begins?.Invoke(entry.Name, i + 1, entries.Count);
            foreach (var sheet in entry.Draw(top))
            {
                yield return new DrawnSheet(entry.PathOf(sheet), sheet, entry.HasCentreLine);
            }
        }
    }

    /// <summary>Every file of a reviewed top that is wanted, in order. The report comes with all sheets, not with single ones.</summary>
    /// <inheritdoc cref="Sheets" path="/param"/>
    public static IReadOnlyList<OutputFile> Files(ReviewedTop top, DrawOptions options, Action<string, int, int>? begins = null) =>
        Files(top, options, Sheets(top, options, begins));

    /// <summary>The files of sheets that are drawn, and the report.</summary>
    public static IReadOnlyList<OutputFile> Files(ReviewedTop top, DrawOptions options, IEnumerable<DrawnSheet> sheets)
    {
        var paper = options.Paper ?? (top.Layout.Design.Units == LengthUnit.Inch ? Paper.Letter : Paper.A4);
        var files = new List<OutputFile>();
        foreach (var (path, sheet, hasCentreLine) in sheets)
        {
            files.Add(OutputFile.Written(path + ".dxf", s => DxfWriter.Write(sheet, s, options.Dxf)));
            files.Add(OutputFile.Written(path + ".svg", s => SvgWriter.Write(sheet, s)));
            files.Add(OutputFile.Written(path + ".pdf", s => PdfWriter.Write(sheet, s, options.Page)));
            files.Add(OutputFile.Written(path + "-tiles.pdf", s => TiledPdfWriter.Write(sheet, s, paper, options.Correction, hasCentreLine ? options.Half : null)));
        }

        if (options.Only.IsEmpty)
        {
            files.Add(new OutputFile("report.md", MarkdownReport.Write(top)));
            files.Add(new OutputFile("report.json", JsonReport.Write(top)));
            files.Add(new OutputFile("report.html", HtmlReport.Write(top, [PlanSheet.Outside(top), PlanSheet.Inside(top)])));
        }

        return files;
    }

    /// <summary>Names of the wanted cut sheets that <see cref="Sheets"/> leaves out for this top.</summary>
    public static IReadOnlyList<string> Withheld(ReviewedTop top, DrawOptions options) => IsWithheld(top, options)
        ? [.. Wanted(options).Where(e => e.IsCutFile && e.Draw(top).Any()).Select(e => e.Name)]
        : [];

    /// <summary>The wanted sheets that are larger than the page asked for; they are written on a page that fits.</summary>
    public static IReadOnlyList<string> TooLarge(ReviewedTop top, DrawOptions options) =>
        [.. Wanted(options).Where(e => !(e.IsCutFile && IsWithheld(top, options))).SelectMany(e => e.Draw(top)).Where(s => options.Page.Around(s) is null).Select(s => s.Name)];

    private static IEnumerable<SheetEntry> Wanted(DrawOptions options) =>
        SheetCatalog.All.Where(e => options.Only.IsEmpty || options.Only.Contains(e.Name));

    private static bool IsWithheld(ReviewedTop top, DrawOptions options) => !options.CutAnyway && top.Findings.Any(f => f.Severity == Severity.Fail);
}
