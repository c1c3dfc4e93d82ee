using System.CommandLine;
using System.CommandLine.Invocation;
using System.Text;
using TopLayout.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
try
{
    var parsed = Commands.Root().Parse(args);
    if (parsed.Action is ParseErrorAction refused)
    {
        // One line for what is wrong and one for the nearest command; help is asked for, never thrown at anyone.
        refused.ShowHelp = false;
        parsed.Invoke(new InvocationConfiguration { Output = Console.Error });
        Console.Error.WriteLine("see `toplayout --help`");
        return ExitCode.CouldNotRun;
    }

    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (Exception bug)
{
    Console.Error.WriteLine("this is a bug in toplayout; please report it with the design file and these lines:");
    Console.Error.WriteLine(bug);
    return ExitCode.Bug;
}
