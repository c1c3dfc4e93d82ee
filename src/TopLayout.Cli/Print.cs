using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Plans;

namespace TopLayout.Cli;

/// <summary>What is printed, and on which stream.</summary>
internal static class Print
{
    /// <summary>Findings of at least a severity, to standard error.</summary>
    public static void Findings(IEnumerable<Finding> findings, Severity least)
    {
        foreach (var finding in findings.Where(f => f.Severity >= least))
        {
            Console.Error.WriteLine(FindingText.Of(finding));
        }
    }

    /// <summary>Raw bytes to standard output.</summary>
    public static void Bytes(byte[] bytes)
    {
        Console.Out.Flush();
        using var output = Console.OpenStandardOutput();
        output.Write(bytes);
    }

    /// <summary>One line: how many findings of each kind, and how many members were looked at.</summary>
    public static string Summary(string design, Review review)
    {
        string Count(Severity severity, string one, string many)
        {
            var count = review.Findings.Count(f => f.Severity == severity);
            return $"{Say.Count(count)} {(count == 1 ? one : many)}";
        }

        return $"{design}: {Count(Severity.Fail, "failed check", "failed checks")}, {Count(Severity.Warning, "warning", "warnings")}, "
            + $"{Count(Severity.Note, "note", "notes")}, {Count(Severity.Remark, "remark", "remarks")}; "
            + $"{Say.Count(review.Top!.Layout.Members.Length)} parts on the top looked at; `toplayout explain CODE` says more";
    }

    /// <summary>Says that there is no such name, with the nearest one; returns the exit code.</summary>
    public static int UnknownName(string kind, string name, IReadOnlyList<string> known)
    {
        var nearest = Spelling.Nearest(name, known);
        Console.Error.WriteLine($"error: there is no {kind} `{name}`; known are {string.Join(", ", known)}");
        if (nearest is not null)
        {
            Console.Error.WriteLine($"  hint: did you mean `{nearest}`?");
        }

        return ExitCode.CouldNotRun;
    }
}
