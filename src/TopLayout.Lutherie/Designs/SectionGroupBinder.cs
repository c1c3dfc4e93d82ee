using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Holds the written sections to the groups of which exactly one may stand.</summary>
internal static class SectionGroupBinder
{
    /// <summary>Names groups with no member or several; adds the assumed member where a group has one.</summary>
    public static void Bind(ReadingContext context)
    {
        foreach (var group in context.Table.SectionGroups)
        {
            var written = context.Sections.Where(s => group.Members.Contains(s.Section))
                .OrderBy(s => (s.Header.Line, s.Header.Column)).DistinctBy(s => s.Section).ToList();
            if (written.Count > 1)
            {
                AddSeveral(written, context);
            }
            else if (written.Count == 0 && group.HasDefault)
            {
                context.Sections.Add(new RawSection(group.Members[0], context.Source.Start, isWritten: false));
            }
            else if (written.Count == 0)
            {
                AddNone(group, context);
            }
        }
    }

    private static void AddSeveral(List<RawSection> written, ReadingContext context)
    {
        var headers = written.Select(s => $"`{s.Section.Header}`").ToList();
        context.Error(
            Rules.GivenTwice,
            written[^1].Section.Key,
            $"{Say.Listed(headers)} say the same thing in different ways; only one may be written",
            written[^1].Header,
            "delete all but one of these sections",
            [.. written.SkipLast(1).Select(s => s.Header)]);
    }

    private static void AddNone(ExactlyOneOfSections group, ReadingContext context) => context.Error(
        Rules.GivenNot,
        group.Members[0].Key,
        $"the design needs {ValueText.AnyOf([.. group.Members.Select(m => m.Header)])}",
        context.Source.Start,
        $"add one of these sections, such as `{group.Members[0].Header}`");
}
