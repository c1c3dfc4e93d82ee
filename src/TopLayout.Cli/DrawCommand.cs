using System.CommandLine;
using TopLayout.Drawing.Dxf;
using TopLayout.Drawing.Pdf;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;

namespace TopLayout.Cli;

/// <summary>The command <c>draw</c>: its arguments and options.</summary>
internal static class DrawCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var design = new Argument<string>("design") { Description = "the design file (TOML)" };
        var folder = new Option<string?>("--out") { Description = "the folder to write into; a folder named after the design when left out" };
        var only = new Option<string[]>("--only")
        {
            Description = $"only this sheet, other files of the same design in the folder stay; may stand several times: {string.Join(", ", SheetCatalog.All.Select(e => e.Name))}",
            HelpName = "sheet",
        };
        var paper = Word("--paper", "paper of the tiled PDF files; A4 when left out, or Letter when the design is in inches", [.. Paper.All.Select(p => (p.Name, (Paper?)p))]);
        var page = Word("--page", "page of the PDF files that show a sheet whole; as large as the sheet when left out", [.. PageFormat.All.Select(p => (p.Name, (PageFormat?)p))]);
        var half = Word("--half", "of the tiled plans of the whole top only this side of the centre line, with a fold line", ("left", (SheetHalf?)SheetHalf.Left), ("right", SheetHalf.Right));
        var measuredX = Measured("--measured-x", "bar across");
        var measuredY = Measured("--measured-y", "bar along");
        var level = Word("--dxf", "level of the DXF files: r12 (every reader), r2000, or lines-and-arcs for readers that lose bulges", ("r12", DxfLevel.R12), ("r2000", DxfLevel.R2000), ("lines-and-arcs", DxfLevel.LinesAndArcs));
        var unit = Word("--dxf-unit", "unit of the DXF files: mm or in", ("mm", DxfUnit.Mm), ("in", DxfUnit.Inch));
        var origin = Word("--dxf-origin", "origin of the DXF files: datum (centre joint at the neck edge) or corner (lower left of the sheet)", ("datum", DxfOrigin.Datum), ("corner", DxfOrigin.Corner));
        var preview = Previews.Option();
        var overwrite = new Option<bool>("--overwrite") { Description = "replace files in the way, whoever wrote them" };
        var cutAnyway = new Option<bool>("--cut-anyway") { Description = "write the templates although a check failed" };
        var quiet = new Option<bool>("--quiet") { Description = "say nothing but errors and failed checks" };
        var command = new Command("draw", "write every sheet and the report into a folder")
        {
            design, folder, only, page, paper, half, measuredX, measuredY, level, unit, origin, preview, overwrite, cutAnyway, quiet,
        };
        command.SetAction(parsed => DrawSheets.Run(
            parsed.GetValue(design)!,
            parsed.GetValue(folder),
            parsed.GetValue(overwrite),
            parsed.GetValue(quiet),
            new DrawOptions
            {
                CutAnyway = parsed.GetValue(cutAnyway),
                Only = [.. parsed.GetValue(only) ?? []],
                Page = parsed.GetValue(page) ?? PageFormat.Fitted,
                Paper = parsed.GetValue(paper),
                Half = parsed.GetValue(half),
                Correction = new ScaleCorrection(parsed.GetValue(measuredX) ?? 1, parsed.GetValue(measuredY) ?? 1),
                Dxf = new DxfOptions(parsed.GetValue(level), parsed.GetValue(unit), parsed.GetValue(origin)),
            },
            parsed.GetValue(preview)));
        return command;
    }

    // What a printed bar measures; what is said of it goes to standard error.
    private static Option<double?> Measured(string name, string bar) => new(name)
    {
        Description = $"what the {bar} the printed page measures, over what it should: 179.6/180; the tiled PDF files come back corrected",
        HelpName = "measured/true",
        CustomParser = result =>
        {
            var (factor, said) = MeasuredBar.Read(name, result.Tokens[0].Value);
            if (factor is null)
            {
                result.AddError(said!);
            }
            else if (said is not null)
            {
                Console.Error.WriteLine(said);
            }

            return factor;
        },
    };

    // One of a few words, in any case; the default of the type stands when none is given.
    private static Option<T> Word<T>(string name, string description, params (string Word, T Value)[] words)
    {
        var option = new Option<T>(name)
        {
            Description = description,
            HelpName = string.Join("|", words.Select(w => w.Word)),
            CustomParser = result =>
            {
                var given = result.Tokens[0].Value;
                foreach (var (word, value) in words)
                {
                    if (word.Equals(given, StringComparison.OrdinalIgnoreCase))
                    {
                        return value;
                    }
                }

                result.AddError($"`{name}` takes {string.Join(", ", words.Select(w => w.Word))}; it is `{given}`");
                return default!;
            },
        };
        return option;
    }
}
