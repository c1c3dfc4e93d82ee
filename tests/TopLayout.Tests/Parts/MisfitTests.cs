using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

/// <summary>Parts that do not fit each other: the exact sentence and cure, and the keys on both sides of the contradiction.</summary>
public class MisfitTests
{
    public static TheoryData<string, string, string, string, string, string> Misfits => new()
    {
        {
            "tapered-tongue", "edge_angle = 16", "edge_angle = 40",
            "a tongue 50 mm wide and 44 mm long leaves no flank at 40°",
            "shorten it, widen its root, or set `edge_angle` to 28° or less",
            "edge_angle root_width length"
        },
        {
            "tapered-tongue", "length = 44", "length = 20",
            "a tongue 50 mm wide and 20 mm long leaves no flank at 16°",
            "make it 23 mm or longer, narrow its root, or make `root_hollow` smaller",
            "edge_angle root_width length"
        },
        {
            "tapered-tongue", "width = 90 ", "width = 50 ",
            "at its root the tongue is 60.5 mm wide, hollows included, and the neck block's face only 50 mm",
            "narrow `root_width` of the tongue, or widen the neck block",
            "root_width width"
        },
        {
            "auditorium", "waist_width = 242", "waist_width = 300",
            "the waist must be narrower than both bouts",
            "make `waist_width` smaller than `upper_width` and `lower_width`",
            "waist_width upper_width lower_width"
        },
        {
            "auditorium", "lower_at = 376", "lower_at = 186",
            "the stations must come in order from the neck: upper bout, waist, lower bout, tail",
            "raise or lower `upper_at`, `waist_at` and `lower_at` until they do, below `length`",
            "upper_at waist_at lower_at length"
        },
        {
            "auditorium", "depth = 1.4", "depth = 3",
            "a channel 3 mm deep goes through a top 2.8 mm thick",
            "make the channel shallower: a floor of 1.2 mm is usual",
            "depth thickness"
        },
        {
            "auditorium", "width = 20", "width = 40",
            "the flat brace is 40 mm wide and only 26.1 mm fit between the neck block's face and the upper transverse brace",
            "narrow the flat brace, shorten the neck block, or move the transverse brace towards the hole",
            "width length"
        },
        {
            "auditorium", "diameter = 100", "from_neck_edge = 50",
            "the hole, 100 mm across and centred 50 mm from the neck edge, does not lie inside the linings",
            "make it smaller, or move it towards the middle of the body",
            "[soundhole] from_neck_edge"
        },
        {
            "auditorium", "below_hole = 33", "below_hole = 110",
            "at its front edge, 278.6 mm from the neck edge, the legs of the X leave 0 mm for the bridge plate",
            "cross the X nearer to the hole, open its angle, or let the plate reach less far ahead of the bridge",
            "ahead_of_bridge below_hole angle"
        },
    };

    [Theory]
    [MemberData(nameof(Misfits))]
    public void Build_PartsThatDoNotFit_SayWhatWhereAndWhatToDo(string preset, string from, string to, string sentence, string cure, string keys)
    {
        var text = Built.PresetText(preset);
        Assert.Contains(from, text, StringComparison.Ordinal);
        text = text.Replace(from, to, StringComparison.Ordinal);
        text = to.StartsWith("from_neck_edge", StringComparison.Ordinal) ? text.Replace("behind_fretboard = 6", "", StringComparison.Ordinal) : text;
        var reading = DesignReader.Read(text, "t.toml", Parameters.Table);
        Assert.NotNull(reading.Design);

        var (layout, findings) = LayoutBuilder.Build(reading.Design);

        Assert.Null(layout);
        var finding = findings.First(f => f.Sentence == sentence || findings.Length == 1);
        Assert.Equal(sentence, finding.Sentence);
        Assert.Equal(cure, finding.Cure);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal(keys, string.Join(' ', finding.OtherPlaces.Prepend(finding.Place!.Value).Select(p => KeyAt(text, p))));
    }

    [Theory]
    [InlineData("tapered-tongue", "[bridge_plate]", "tone bar 1")]
    [InlineData("auditorium", "[x_brace]", "bridge plate")]
    public void Build_PartWithoutWhatItHangsOn_SaysWhichSectionToAdd(string preset, string section, string subject)
    {
        var text = Built.PresetText(preset);
        var start = text.IndexOf(section, StringComparison.Ordinal);
        var end = text.IndexOf("\n[", start, StringComparison.Ordinal);
        var reading = DesignReader.Read(text.Remove(start, end - start), "t.toml", Parameters.Table);

        var (layout, findings) = LayoutBuilder.Build(reading.Design!);

        Assert.Null(layout);
        var finding = findings.First(f => f.Subject == subject);
        Assert.Contains(section, finding.Cure, StringComparison.Ordinal);
    }

    // The key on the line of a place; the header where the place is a section's.
    private static string KeyAt(string text, SourcePlace place) => text.Split('\n')[place.Line - 1].Split('=', '#')[0].Trim();
}
