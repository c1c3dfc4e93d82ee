using System.CommandLine;
using TopLayout.Lutherie.Findings;
using TopLayout.Plans.Reports;

namespace TopLayout.Cli;

/// <summary>The commands: arguments in, exit code out. Findings go to standard error, results to standard output.</summary>
internal static class Commands
{
    /// <summary>The whole command line.</summary>
    public static RootCommand Root() => new("Lays out the top of a flat-top stringed instrument, and says before gluing which glued edges will crack it.")
    {
        New(), DrawCommand.Make(), Check(), RosetteCommand.Make(), ListPresets(), Explain(),
        WoodsCommand.Make(), ParametersCommand.Make(),
    };

    private static Argument<string> Design() => new("design") { Description = "the design file (TOML)" };

    private static Command New()
    {
        var file = new Argument<string>("file") { Description = "the design file to make" };
        var from = new Option<string>("--from") { Description = "the preset to start from", DefaultValueFactory = _ => "auditorium" };
        var command = new Command("new", "make a commented design file from a preset") { file, from };
        command.SetAction(parsed => NewDesign.Make(parsed.GetValue(file)!, parsed.GetValue(from)!));
        return command;
    }

    private static Command Check()
    {
        var design = Design();
        var json = new Option<bool>("--json") { Description = "print the findings and numbers as JSON" };
        var all = new Option<bool>("--all") { Description = "show passed checks too" };
        var command = new Command("check", "check the glued edges against the grain, and write nothing") { design, json, all };
        command.SetAction(parsed =>
        {
            var review = DesignFile.Check(parsed.GetValue(design)!);
            Print.Findings(review.Findings, parsed.GetValue(all) ? Severity.Pass : Severity.Remark);
            if (review.Top is not { } top)
            {
                return ExitCode.CouldNotRun;
            }

            if (parsed.GetValue(json))
            {
                Print.Bytes(JsonReport.Write(top));
            }
            else
            {
                Console.Out.WriteLine(Print.Summary(parsed.GetValue(design)!, review));
            }

            return review.HasFailed ? ExitCode.CheckFailed : ExitCode.Clean;
        });
        return command;
    }

    private static Command ListPresets()
    {
        var name = new Argument<string?>("name") { Description = "print this preset whole", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("presets", "list the designs that come with the program") { name };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is not { } one)
            {
                var width = Presets.Names.Max(n => n.Length);
                foreach (var preset in Presets.Names)
                {
                    Console.Out.WriteLine($"{preset.PadRight(width)}  {Presets.Summary(preset)}");
                }

                return ExitCode.Clean;
            }

            if (!Presets.Names.Contains(one))
            {
                return Print.UnknownName("preset", one, Presets.Names);
            }

            Console.Out.Write(Presets.Text(one));
            return ExitCode.Clean;
        });
        return command;
    }

    private static Command Explain()
    {
        var code = new Argument<string?>("code") { Description = "a code such as TL3001; lists them all when left out", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("explain", "say what a code means, why it matters and what cures it") { code };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(code) is not { } one)
            {
                foreach (var rule in Rules.All)
                {
                    Console.Out.WriteLine($"{rule.Code}  {rule.Name}");
                }

                return ExitCode.Clean;
            }

            if (Rules.Find(one) is not { } found)
            {
                return Print.UnknownName("code", one, [.. Rules.All.Select(r => r.Code)]);
            }

            Console.Out.WriteLine($"{found.Code}: {found.Name}");
            Console.Out.WriteLine();
            Console.Out.WriteLine(found.Explanation.Trim());
            return ExitCode.Clean;
        });
        return command;
    }
}
