namespace TopLayout.Tests.Parts.Braces;

/// <summary>Braces that do not fit: the exact sentence and cure, and the keys at which the design can be mended.</summary>
public class BraceMisfitTests
{
    public static TheoryData<string, Func<string, string>, string, string, string> Misfits => new()
    {
        {
            "classical", t => t.Replaced("below_hole = 24", "below_hole = 2"),
            "the ladder bar reaches 1 mm over the hole's edge",
            "move the ladder bar by 7 mm away from the hole for 6 mm, or make the hole smaller",
            "below_hole diameter"
        },
        {
            "classical", t => t.With("[[ladder_bar]]\nbelow_hole = 60\nends = \"floating\""),
            "ladder bar 2 floats, and nothing says how far it reaches; left out of the plan",
            "add `half_length`, or let its ends into the linings with `ends = \"lining\"`",
            "ends"
        },
        {
            "classical", t => t.With("[[ladder_bar]]\nbelow_hole = 60\nhalf_length = 80"),
            "ladder bar 2 is let into the linings, and has a half-length besides; left out of the plan",
            "leave `half_length` out, or say `ends = \"floating\"`",
            "half_length [[ladder_bar]]"
        },
        {
            "classical", t => t.With("[[ladder_bar]]\nbelow_hole = 60\nends = \"floating\"\nhalf_length = 140"),
            "ladder bar 2 runs past the inside of the sides at its bass end and is cut off there",
            "shorten it there by 2 mm and more for the lining, move it towards the middle of the body, or let it into the lining where it can be",
            "below_hole half_length"
        },
        {
            "classical", t => t.Without("[bridge_plate]").Without("[fan]").With("[bridge_plate]\nthickness = 1.5"),
            "nothing says how wide the bridge plate is: the design has no X, and the plate no length; left out of the plan",
            "add `length` to the bridge plate, or the section [x_brace]",
            "[bridge_plate]"
        },
        {
            "concert", t => t.Replaced("behind_bridge = 4", "behind_bridge = 4\nlength = 150"),
            "the bridge plate reaches 23.6 mm into the legs of the X, 272.6 mm from the neck edge",
            "make the plate 69.3 mm or more shorter across the top, or cross the X nearer to the hole",
            "length at_bridge_front angle"
        },
        {
            "concert", t => t.Replaced("behind_bridge = 4", "behind_bridge = -20").Replaced("ahead_of_bridge = 2", "ahead_of_bridge = -10"),
            "the bridge plate is 2 mm from its front to its rear edge; left out of the plan",
            "let it reach further ahead of the bridge, or behind it",
            "ahead_of_bridge behind_bridge"
        },
        {
            "classical", t => t.Without("[[ladder_bar]]"),
            "the heads of the fan stand behind a ladder bar below the hole, and there is none; left out of the plan",
            "add a [[ladder_bar]] with `below_hole`, or place the heads with `head_below_hole`",
            "head_behind_bar"
        },
        {
            "classical", t => t.Replaced("head_behind_bar = 0 ", "head_from_neck_edge = 460 ").Without("[closing_bars]").Replaced("count = 7 ", "count = 1 "),
            "the fan strut finds no room between its head, 460 mm from the neck edge, and the lining; left out of the plan",
            "move the heads towards the hole, set them closer, or lessen the spread",
            "spread head_from_neck_edge head_spacing [fan]"
        },
        {
            "classical", t => t.Replaced("behind_bridge = 100", "behind_bridge = 140"),
            "the closing bar, bass, finds no room between the centre line and the lining; left out of the plan",
            "move it towards the bridge, or bring its inner end nearer to the centre line",
            "behind_bridge inner_gap"
        },
        {
            "classical", t => t.With("[finger_braces]"),
            "finger braces hang on the legs of the X, and the design has no X; left out of the plan",
            "add the section [x_brace], or leave [finger_braces] out",
            "[finger_braces]"
        },
        {
            "concert", t => t.Replaced("from_crossing = 74", "from_crossing = 215").Replaced("per_side = 2", "per_side = 1"),
            "the finger brace, bass, 215 mm from the crossing, finds no room between the leg and the lining; left out of the plan",
            "move it along the leg towards the crossing, set the braces closer, or turn them",
            "from_crossing spacing angle"
        },
        {
            "jumbo", t => t.Without("[transverse_brace]").Without("[flat_brace]"),
            "soundhole braces butt against a brace above and one below the hole, and there is none above; left out of the plan",
            "add the section [transverse_brace], or let them float with `ends = \"floating\"`",
            "[soundhole_braces]"
        },
        {
            "classical", t => t.Without("[[ladder_bar]]").Without("[fan]").With("[soundhole_braces]"),
            "soundhole braces butt against a brace above and one below the hole, and there is none below; left out of the plan",
            "add the section [x_brace] or a [[ladder_bar]] with `below_hole`, or let them float with `ends = \"floating\"`",
            "[soundhole_braces]"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 300\nangle = 20\nends = \"floating\""),
            "bar 1 floats, and nothing says how long it is; left out of the plan",
            "add `length`, give a second point with `end_from_neck_edge` and `end_across`, or let it into the linings with `ends = \"lining\"`",
            "ends"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 300\nangle = 20\nlength = 50"),
            "bar 1 has a length, and its ends are said in another way besides; left out of the plan",
            "leave `length` out, or give one point, `angle` and `ends = \"floating\"`",
            "length [[bar]]"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 300\nacross = 3\nend_from_neck_edge = 304"),
            "the two points of bar 1 are 5 mm apart, less than its width; left out of the plan",
            "set them further apart, or give one point and `angle`",
            "end_from_neck_edge from_neck_edge"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 154\nangle = 60"),
            "bar 1 reaches 45.9 mm over the hole's edge",
            "move bar 1 by 52 mm away from the hole for 6 mm, or make the hole smaller",
            "from_neck_edge diameter"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 190\nacross = 122\nangle = 0"),
            "bar 1 does not reach both of its ends inside the body; left out of the plan",
            "move it, or turn it, until its axis crosses the body",
            "from_neck_edge across angle"
        },
        {
            "classical", t => t.With("[[bar]]\nfrom_neck_edge = 600\nangle = 90"),
            "bar 1 does not reach both of its ends inside the body; left out of the plan",
            "move it, or turn it, until its axis crosses the body",
            "from_neck_edge [[bar]] angle"
        },
    };

    [Theory]
    [MemberData(nameof(Misfits))]
    public void Build_BracesThatDoNotFit_SayWhatWhereAndWhatToDo(string preset, Func<string, string> edit, string sentence, string cure, string keys)
    {
        var misfits = Built.Misfits(preset, edit);

        Assert.Contains((sentence, cure, keys), misfits);
    }
}
