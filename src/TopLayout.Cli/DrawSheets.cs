using TopLayout.Drawing.Pdf;
using TopLayout.Lutherie.Findings;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;

namespace TopLayout.Cli;

/// <summary>The main job: every sheet and the report of a design into a folder.</summary>
internal static class DrawSheets
{
    /// <summary>Runs it; returns the exit code.</summary>
    public static int Run(string design, string? folder, bool overwrite, bool quiet, DrawOptions options, double? previewDpi)
    {
        foreach (var name in options.Only)
        {
            if (!SheetCatalog.All.Any(e => e.Name == name))
            {
                return Print.UnknownName("sheet", name, [.. SheetCatalog.All.Select(e => e.Name)]);
            }
        }

        var review = DesignFile.Check(design);
        Print.Findings(review.Findings, quiet ? Severity.Fail : Severity.Remark);
        if (review.Top is not { } top)
        {
            return ExitCode.CouldNotRun;
        }

        if (Target(design, folder) is not { } target)
        {
            return ExitCode.CouldNotRun;
        }

        var sheets = Pipeline.Sheets(top, options);
        var withheld = Pipeline.Withheld(top, options);
        var progress = quiet ? null : new Progress(Console.Error, Console.IsErrorRedirected);
        IReadOnlyList<OutputFile> files =
        [
            .. Pipeline.Files(top, options, sheets, (s, n) => progress?.Begin("drawing", s.Path, n, sheets.Count)),
            .. Previews.Of(sheets, previewDpi, isWithheld: withheld.Count > 0, (name, n, of) => progress?.Begin("painting", name, n, of)),
        ];
        progress?.End();
        if (files.Count == 0)
        {
            Console.Error.WriteLine($"nothing to draw: the design has no {string.Join(" and no ", options.Only)}, or a check withholds it");
            return review.HasFailed ? ExitCode.CheckFailed : ExitCode.CouldNotRun;
        }

        if (Write(target, files, top.Hash, options, overwrite, quiet) is { } problem)
        {
            Print.Findings([problem], Severity.Error);
            return ExitCode.CouldNotRun;
        }

        if (!quiet)
        {
            foreach (var file in files)
            {
                Console.Out.WriteLine(Path.Combine(target, file.Name));
            }
        }

        SayWhatIsNotAsAsked(Pipeline.TooLarge(sheets, options.Page), options.Page, withheld, previewDpi);
        return review.HasFailed ? ExitCode.CheckFailed : ExitCode.Clean;
    }

    // The folder to write into; null, and why is said, where there is none.
    private static string? Target(string design, string? folder)
    {
        if (folder is "")
        {
            Console.Error.WriteLine("error: `--out` names no folder");
            return null;
        }

        if ((folder ?? Path.GetFileNameWithoutExtension(design)) is { Length: > 0 } target)
        {
            return target;
        }

        Console.Error.WriteLine($"error: `{design}` leaves no name for the folder to write into");
        Console.Error.WriteLine("  hint: name one with `--out`");
        return null;
    }

    private static void SayWhatIsNotAsAsked(IReadOnlyList<string> tooLarge, PageFormat page, IReadOnlyList<string> withheld, double? previewDpi)
    {
        if (previewDpi is not null && Previews.Problem is { } noPreview)
        {
            Console.Error.WriteLine(noPreview);
        }

        if (tooLarge.Count > 0)
        {
            Console.Error.WriteLine($"larger than {page.Name}, so written on a page that fits: {string.Join(", ", tooLarge)}");
        }

        if (withheld.Count > 0)
        {
            Console.Error.WriteLine($"a check failed, so these templates were not written: {string.Join(", ", withheld)}; `--cut-anyway` writes them");
        }
    }

    private static Finding? Write(string target, IReadOnlyList<OutputFile> files, string design, DrawOptions options, bool overwrite, bool quiet)
    {
        if (File.Exists(target))
        {
            return new Finding(Rules.ForeignFile, Severity.Error, target, $"`{target}` is a file, and a folder is wanted to write into") { Cure = "name another with `--out`; nothing was written" };
        }

        try
        {
            var (inTheWay, takenAway) = new OutputFolder(target).Replace(files, design, keepsRest: !options.Only.IsEmpty, overwrite);
            if (inTheWay.Count > 0)
            {
                return InTheWay(target, inTheWay, overwrite);
            }

            if (takenAway.Count > 0 && !quiet)
            {
                Console.Error.WriteLine($"took away {Say.Count(takenAway.Count)} files of an earlier run that this one does not write: {string.Join(", ", takenAway.Take(3))}{(takenAway.Count > 3 ? ", ..." : "")}");
            }

            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return new Finding(Rules.FileNotWritable, Severity.Error, target, $"`{target}` cannot be written: {e.Message.TrimEnd('.')}")
            {
                Cure = "choose another folder with `--out`, or make this one writable; files written before are still whole",
            };
        }
    }

    private static Finding InTheWay(string target, IReadOnlyList<string> names, bool overwrite)
    {
        var list = string.Join(", ", names.Select(n => $"`{n}`"));
        var sentence = overwrite
            ? $"`{target}` holds folders where files are to be written: {list}"
            : $"`{target}` holds files that toplayout did not write, or that were changed since: {list}";
        return new Finding(Rules.ForeignFile, Severity.Error, target, sentence)
        {
            Cure = $"draw into another folder, {(overwrite ? "or move them away" : "move them away, or say `--overwrite`")}; nothing was written",
        };
    }
}
