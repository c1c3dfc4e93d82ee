using System.Collections.Immutable;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Design text to design: the only place where a unit of the user's becomes mm.</summary>
public static class DesignReader
{
    /// <summary>The longest text read, in characters.</summary>
    public const int LongestText = 1_000_000;

    /// <summary>Reads a design against a table; never throws for what a text contains.</summary>
    public static Reading Read(string text, string file, ParameterTable table) => ReadWhole(text, file, table).Reading;

    /// <summary>The same, with the sections as they are written.</summary>
    internal static (Reading Reading, ReadingContext Context) ReadWhole(string text, string file, ParameterTable table)
    {
        var context = new ReadingContext(table, new SourceText(text, file));
        var design = text.Length > LongestText ? Refused(context, text.Length) : Parsed(context) is { } syntax ? Bound(syntax, context) : null;
        return (new Reading(design, context.Findings), context);
    }

    private static Design? Refused(ReadingContext context, int length)
    {
        context.Error(
            Rules.TooLarge,
            context.Source.File,
            $"`{context.Source.File}` has {ValueText.Number(length, 0)} characters; at most {ValueText.Number(LongestText, 0)} are read",
            context.Source.Start,
            "name a design file");
        return null;
    }

    /// <summary>The syntax tree; null, with findings, when the text is not TOML or holds nothing.</summary>
    private static DocumentSyntax? Parsed(ReadingContext context)
    {
        DocumentSyntax syntax;
        try
        {
            // What stands twice is found by SectionCollector, which knows both places. The line feed keeps the parser from throwing
            // when the text ends inside an escape such as "\u00.
            syntax = SyntaxParser.Parse(context.Source.Text + "\n", context.Source.File, validate: false);
        }
        catch (TomlException tooDeep)
        {
            // The one thing the tolerant parser throws for: lists in lists beyond 64 levels.
            SyntaxProblems.AddTooDeep(tooDeep, context);
            return null;
        }

        if (syntax.HasErrors)
        {
            SyntaxProblems.Add(syntax.Diagnostics, context);
            return null;
        }

        if (syntax.KeyValues.ChildrenCount + syntax.Tables.ChildrenCount == 0)
        {
            context.Error(
                Rules.EmptyFile, context.Source.File, "the file holds no key and no section", context.Source.Start, "begin with `units = \"mm\"`");
            return null;
        }

        return syntax;
    }

    private static Design Bound(DocumentSyntax syntax, ReadingContext context)
    {
        new SectionCollector(context).Collect(syntax);
        SectionGroupBinder.Bind(context);
        var sections = ImmutableDictionary.CreateBuilder<Section, ImmutableArray<DesignSection>>();

        // The root comes first and `units` first in it, so the unit is known before any length.
        foreach (var section in context.Table.Sections)
        {
            sections[section] = [.. SectionBinder.Bind(section, context)];
        }

        return new Design(context.Source.File, context.Shown, sections.ToImmutable());
    }
}
