using System.CommandLine;
using System.CommandLine.Invocation;
using System.Text;
using TopLayout.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
try
{
    var parsed = Commands.Root().Parse(args);
    if (parsed.Action is ParseErrorAction)
    {
        return Usage.Refuse(parsed);
    }

    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (Exception bug)
{
    Console.Error.WriteLine("this is a bug in toplayout; please report it with the design file and these lines:");
    Console.Error.WriteLine(bug);
    return ExitCode.Bug;
}
