using System.CommandLine;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Cli;

/// <summary>Every section and key of a design file.</summary>
internal static class ParametersCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var section = new Argument<string?>("section") { Description = "show this section alone, such as `outline`", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "print the table as JSON" };
        var command = new Command("parameters", "list every section and key of a design file") { section, json };
        command.SetAction(parsed => Run(parsed.GetValue(section), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string? name, bool json)
    {
        // `top` is the plate; the lines before the first header come with the whole list.
        var shown = Parameters.Table.Sections.Where(s => name is null || s.Key == name.Trim('[', ']')).ToList();
        if (shown.Count == 0)
        {
            return Print.UnknownName("section", name!, [.. Parameters.Table.Sections.Where(s => !s.IsRoot).Select(s => s.Key)]);
        }

        if (json)
        {
            Print.Bytes(ParameterJson.Write(Parameters.Table, shown));
        }
        else
        {
            Console.Out.Write(string.Join('\n', shown.Select(s => ParameterList.Text(Parameters.Table, s))));
        }

        return ExitCode.Clean;
    }
}
