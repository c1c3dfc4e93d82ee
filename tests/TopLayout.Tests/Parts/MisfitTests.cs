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
            "a tongue 50 mm wide and 44 mm long leaves no flank at 40°; it is drawn 28.7 mm long",
            "shorten it, widen its root, or set `edge_angle` to 28° or less",
            "edge_angle root_width length"
        },
        {
            "tapered-tongue", "length = 44", "length = 20",
            "a tongue 50 mm wide and 20 mm long leaves no flank at 16°; it is drawn with hollows of 1.5 mm",
            "make it 23 mm or longer, narrow its root, or make `root_hollow` smaller",
            "edge_angle root_width length"
        },
        {
            "tapered-tongue", "width = 90 ", "width = 50 ",
            "at its root the tongue is 60.5 mm wide, hollows included, and the neck block's face only 50 mm",
            "narrow `root_width` of the tongue by 10.6 mm or more, or widen the neck block by as much",
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
            "the rosette channel, 3 mm deep, goes through the top of 2.8 mm; a floor of 1.2 mm or more is usual",
            "make the channel 1.6 mm deep or less, and its inlay thinner",
            "depth thickness"
        },
        {
            "auditorium", "width = 20", "width = 40",
            "the flat brace lies over the neck block on the inside face, 40.6 mm from the neck edge",
            "there is no room for it beside the neck block: turn, shorten or narrow the flat brace, or leave one of the two out",
            "length width"
        },
        {
            "auditorium", "diameter = 100", "from_neck_edge = 50",
            "the soundhole reaches 8.6 mm into the linings",
            "make it 17.2 mm or more smaller across, or move it 8.6 mm or more towards the middle of the body",
            "[soundhole] width"
        },
        {
            "auditorium", "below_hole = 33", "below_hole = 110",
            "at its front edge, 278.6 mm from the neck edge, the legs of the X leave 0 mm for the bridge plate; left out of the plan",
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

        var findings = Built.Failed(reading.Design);

        Assert.Contains((sentence, cure), findings.Select(f => (f.Sentence, f.Cure!)));
        var finding = findings.First(f => f.Sentence == sentence);
        Assert.Equal(keys, string.Join(' ', finding.OtherPlaces.Prepend(finding.Place!.Value).Select(p => KeyAt(text, p))));
    }

    [Theory]
    [InlineData("tapered-tongue", "[bridge_plate]", "tone bar")]
    [InlineData("auditorium", "[x_brace]", "bridge plate")]
    public void Build_PartWithoutWhatItHangsOn_SaysWhichSectionToAdd(string preset, string section, string subject)
    {
        var text = Built.PresetText(preset);
        var start = text.IndexOf(section, StringComparison.Ordinal);
        var end = text.IndexOf("\n[", start, StringComparison.Ordinal);
        var reading = DesignReader.Read(text.Remove(start, end - start), "t.toml", Parameters.Table);

        var finding = Built.Failed(reading.Design!).First(f => f.Subject == subject);
        Assert.Contains(section, finding.Cure, StringComparison.Ordinal);
    }

    // The key on the line of a place; the header where the place is a section's.
    private static string KeyAt(string text, SourcePlace place) => text.Split('\n')[place.Line - 1].Split('=', '#')[0].Trim();
}
