using System.CommandLine;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Shops.Rosettes;
using TopLayout.Plans.Reports;

namespace TopLayout.Cli;

/// <summary>The command <c>rosette</c>: the ways to put a ring round another hole, side by side; one of them written into a new design.</summary>
internal static class RosetteCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var design = new Argument<string>("design") { Description = "the design file (TOML)" };
        var hole = new Option<double?>("--hole") { Description = "diameter of the new hole: mm, or text with its unit", HelpName = "diameter", CustomParser = r => Length(r, "--hole") };
        var ring = new Option<OldRing?>("--old-ring")
        {
            Description = "a salvaged ring instead of the design's: inner and outer diameter and the number of its tiles, if any; an oval one with both diameters, along and across: 111x110.2,128x127,60",
            HelpName = "inner,outer[,tiles]",
            CustomParser = r =>
            {
                if (SalvagedRing.Read(r.Tokens[0].Value) is { } read)
                {
                    return read;
                }

                r.AddError($"`--old-ring` takes two diameters and perhaps a number of tiles, as `110,128,60`, the inner diameter first; it is `{r.Tokens[0].Value}`");
                return null;
            },
        };
        var json = new Option<bool>("--json") { Description = "print the ways as JSON" };
        var apply = new Option<string?>("--apply") { Description = "write the design with the best way, or the one named by `--way`, into this file", HelpName = "file" };
        var way = new Option<string?>("--way") { Description = $"the way to apply: {string.Join(", ", RefitStrategy.All.Select(s => s.Key))}", HelpName = "way" };
        var overwrite = new Option<bool>("--overwrite") { Description = "replace the file of `--apply` when it is already there" };
        var command = new Command("rosette", "weigh the ways to put the rosette, or a salvaged ring, round another hole") { design, hole, ring, json, apply, way, overwrite };
        command.SetAction(parsed => Run(
            new Request(parsed.GetValue(design)!, parsed.GetValue(hole), parsed.GetValue(ring), parsed.GetValue(json)),
            parsed.GetValue(apply),
            parsed.GetValue(way),
            parsed.GetValue(overwrite)));
        return command;
    }

    private static double? Length(System.CommandLine.Parsing.ArgumentResult result, string option)
    {
        var given = result.Tokens[0].Value;
        if (SalvagedRing.Length(given) is { } mm)
        {
            return mm;
        }

        result.AddError($"`{option}` takes a length, as `98` for mm or `3.86 in`; it is `{given}`");
        return null;
    }

    private static int Run(Request request, string? apply, string? way, bool overwrite)
    {
        var known = RefitStrategy.All.Select(s => s.Key).ToList();
        if (way is not null && !known.Contains(way))
        {
            return Print.UnknownName("way", way, known);
        }

        if (way is not null && apply is null)
        {
            return Refuse("`--way` names the way that `--apply` writes, and there is no `--apply`", $"as in `toplayout rosette top.toml --hole 98 --way {way} --apply new.toml`");
        }

        if (request.Hole is not { } diameter)
        {
            return Refuse("`rosette` needs `--hole`, the diameter of the new hole", "as in `toplayout rosette top.toml --hole 98`");
        }

        var (review, text) = DesignFile.CheckWithText(request.Design);
        if (review.Top is not { } top)
        {
            Print.Findings(review.Findings, Severity.Error);
            return ExitCode.CouldNotRun;
        }

        var (report, refusal) = RefitShop.Weigh(text, request.Design, diameter, request.Ring);
        if (report is null)
        {
            var hint = top.Layout.Design.Units == LengthUnit.Inch ? "; a number alone is mm here, inches are written as `3.875 in`" : "";
            return Refuse(refusal!, $"change the design or the size of the hole{hint}");
        }

        if (request.Json)
        {
            Print.Bytes(RefitJson.Write(report));
        }
        else
        {
            Console.Out.Write(RefitText.Of(report, top.Layout.Design.Units));
        }

        var chosen = report.Options.First(o => way is null || o.Option.Key == way);
        return apply is not null ? Apply(chosen, apply, overwrite)
            : report.Options.All(o => o.Option.Verdict == RefitVerdict.Refused) ? ExitCode.CheckFailed
            : ExitCode.Clean;
    }

    private static int Apply(TriedOption chosen, string file, bool overwrite)
    {
        if (chosen.Text is not { } text)
        {
            Console.Error.WriteLine($"error: `{chosen.Option.Key}` is refused: {chosen.Option.Reason}; nothing was written");
            return ExitCode.CheckFailed;
        }

        if (NewFile.Write(file, text, overwrite) is { } problem)
        {
            Print.Findings([problem], Severity.Error);
            return ExitCode.CouldNotRun;
        }

        Console.Error.WriteLine($"{file}: the design with `{chosen.Option.Key}`");
        return ExitCode.Clean;
    }

    private static int Refuse(string why, string hint)
    {
        Console.Error.WriteLine($"error: {why}");
        Console.Error.WriteLine($"  hint: {hint}");
        return ExitCode.CouldNotRun;
    }

    private sealed record Request(string Design, double? Hole, OldRing? Ring, bool Json);
}
