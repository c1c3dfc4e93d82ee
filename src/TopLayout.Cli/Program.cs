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

    var code = parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    Console.Out.Flush();
    return code;
}
catch (IOException lost) when (lost.GetType() == typeof(IOException))
{
    // Files are written, and their faults said, elsewhere: what is left are the streams this program prints to.
    return Streams.Lost(lost);
}
catch (Exception bug)
{
    Console.Error.WriteLine("this is a bug in toplayout; please report it with the design file and these lines:");
    Console.Error.WriteLine(bug);
    return ExitCode.Bug;
}
