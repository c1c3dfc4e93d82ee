using System.CommandLine;
using System.CommandLine.Parsing;

namespace TopLayout.Cli;

/// <summary>Says what is wrong with a command line, in a line each with a hint; help is asked for, never thrown at anyone.</summary>
internal static class Usage
{
    /// <summary>Prints it to standard error; returns the exit code.</summary>
    public static int Refuse(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        // After a command that there is not, nothing further can be judged.
        foreach (var word in command is RootCommand ? parsed.UnmatchedTokens.Take(1) : parsed.UnmatchedTokens)
        {
            Unknown(command, word);
        }

        if (parsed.UnmatchedTokens.Count == 0)
        {
            foreach (var error in parsed.Errors)
            {
                Console.Error.WriteLine($"error: {Sentence(command, error)}");
            }
        }

        Console.Error.WriteLine($"  help: {HelpOf(command)}");
        return ExitCode.CouldNotRun;
    }

    private static string HelpOf(Command command) => command is RootCommand ? "toplayout --help" : $"toplayout {command.Name} --help";

    private static void Unknown(Command command, string word)
    {
        var isOption = word.StartsWith('-');
        if (!isOption && command.Subcommands.Count == 0)
        {
            Console.Error.WriteLine($"error: `{word}` is one word too many for `{command.Name}`; quote a name that has blanks in it");
            return;
        }

        string[] known = isOption
            ? [.. command.Options.SelectMany(o => o.Aliases.Prepend(o.Name)).Where(n => n.StartsWith("--", StringComparison.Ordinal)), .. OfAll(command)]
            : [.. command.Subcommands.Select(c => c.Name)];
        Print.UnknownName(isOption ? "option" : "command", word, known);
    }

    // The options that stand on the root and hold everywhere.
    private static IEnumerable<string> OfAll(Command command) => command is RootCommand ? [] : ["--help"];

    private static string Sentence(Command command, ParseError error) => error.SymbolResult switch
    {
        ArgumentResult argument => $"`{command.Name}` needs <{argument.Argument.Name}>: {argument.Argument.Description}",
        OptionResult { Tokens.Count: > 1 } option => $"`{option.Option.Name}` stands there twice; once is enough",
        OptionResult { Tokens.Count: 1 } => error.Message.TrimEnd('.'),
        OptionResult option => $"`{option.Option.Name}` needs a value: {option.Option.Description}",
        CommandResult result when command.Subcommands.Count > 0 && result.Command == command =>
            $"say what to do: {string.Join(", ", command.Subcommands.Select(c => c.Name))}",
        _ => error.Message.TrimEnd('.'),
    };
}
