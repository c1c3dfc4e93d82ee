using System.Collections.Immutable;

namespace TopLayout.Plans.Reports;

/// <summary>A piece of the report, whatever it is written as. In texts a pair of backticks marks what is typed as it stands.</summary>
internal abstract record ReportBlock
{
    private ReportBlock()
    {
    }

    /// <summary>The title (level 1) or a heading (level 2).</summary>
    public sealed record Heading(int Level, string Text) : ReportBlock;

    /// <summary>A paragraph.</summary>
    public sealed record Paragraph(string Text) : ReportBlock;

    /// <summary>A list.</summary>
    public sealed record Bullets(ImmutableArray<Item> Items) : ReportBlock;

    /// <summary>A table under its own heading.</summary>
    public sealed record Table(NumberTable Numbers) : ReportBlock;

    /// <summary>An entry of a list: words that stand out, may be none, and lines after them.</summary>
    public sealed record Item(string Strong, ImmutableArray<string> Lines);
}
