using System.CommandLine;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Cli;

/// <summary>The built-in woods: a list, or one of them whole.</summary>
internal static class WoodsCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var key = new Argument<string?>("key") { Description = "show this wood whole, each number with its source", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("woods", "list the built-in woods, and what is known about each") { key };
        command.SetAction(parsed => Run(parsed.GetValue(key)));
        return command;
    }

    private static int Run(string? key)
    {
        if (key is null)
        {
            Console.Out.Write(WoodText.List(WoodTable.All));
            return ExitCode.Clean;
        }

        if (WoodTable.Find(key) is not { } wood)
        {
            return Print.UnknownName("wood", key, [.. WoodTable.Keys]);
        }

        Console.Out.Write(WoodText.Whole(wood));
        return ExitCode.Clean;
    }
}
