using System.Globalization;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using Xunit.Abstractions;

namespace TopLayout.Tests.Parts;

/// <summary>
/// What hangs on what: each number of a preset is changed a little, and nothing moves but the members that the table below lets depend on it.
/// </summary>
public class MovedMembersTests(ITestOutputHelper output)
{
    // The chains of the layout: what places the hole, the saddle, the rim's lines, the bridge plate's rear, the X.
    private static readonly string[] Frets = ["scale.length", "scale.join_fret"];
    private static readonly string[] Board = [.. Frets, "scale.last_fret", "fretboard.past_last_fret"];
    private static readonly string[] Hole = [.. Board, "soundhole"];
    private static readonly string[] Inside = ["outline", "sides.thickness"];
    private static readonly string[] Lining = [.. Inside, "lining.width"];
    private static readonly string[] BridgeEdges = [.. Frets, "scale.compensation_bass", "scale.compensation_treble", "bridge.front_to_saddle", "bridge.depth"];
    private static readonly string[] SaddleLine = [.. Frets, "scale.compensation_bass", "scale.compensation_treble", "scale.string_spread"];
    private static readonly string[] X = [.. Hole, "x_brace.below_hole", "x_brace.angle", "x_brace.width"];
    private static readonly string[] Transverse = [.. Hole, "transverse_brace.above_hole", "transverse_brace.width"];
    private static readonly string[] Ladder = [.. Hole, "ladder_bar.below_hole", "ladder_bar.width"];

    // By the beginning of a member's name: the sections or keys that may move it, or change what it is made of.
    private static readonly (string Member, string[] Keys)[] Depends =
    [
        ("bridge pin", [.. SaddleLine, "bridge.pins", "bridge.pin_diameter", "bridge.pins_behind_saddle"]),
        ("saddle slot", [.. SaddleLine, "saddle_slot"]),
        ("tie block", [.. BridgeEdges, "bridge.length", "bridge.tie_block", "bridge.tie_spread"]),
        ("tie hole", [.. BridgeEdges, "bridge.tie_block", "bridge.tie_holes", "bridge.tie_spread", "bridge.tie_hole_diameter", "bridge.tie_hole_height"]),
        ("X cap", [.. X, "x_cap"]),
        ("locating pin, neck", ["locating_pins.diameter", "locating_pins.under_fretboard"]),
        ("locating pin, tail", ["locating_pins.diameter", "locating_pins.at_tail", "outline.length"]),
        ("locating pin, bridge", ["locating_pins.diameter", "locating_pins.bridge_across", .. BridgeEdges]),
        ("soundhole centre", [.. Hole, "locating_pins.diameter"]),
        ("fretboard extension", [.. Board, "fretboard", "outline"]),
        ("pivot of the rosette", [.. Hole, "rosette.pin"]),
        ("rosette", [.. Hole, "rosette", "ring 1", "ring 2", "ring 3", "ring 4", "ring 5"]),
        ("X leg", [.. X, "x_brace", .. Inside]),
        ("bridge plate", [.. BridgeEdges, "bridge_plate", .. X]),
        ("bridge", [.. BridgeEdges, "bridge"]),
        ("neck block", [.. Inside, "neck_block"]),
        ("tail block", [.. Inside, "tail_block"]),
        ("bass lining", [.. Inside, "lining", "neck_block.width", "tail_block.width"]),
        ("treble lining", [.. Inside, "lining", "neck_block.width", "tail_block.width"]),
        ("upper transverse brace", [.. Transverse, "transverse_brace", .. Inside]),
        ("flat brace", [.. Transverse, "flat_brace", "neck_block.length", .. Inside]),
        ("tone bar 1", [.. X, .. BridgeEdges, "bridge_plate.behind_bridge", "tone_bar 1", .. Lining]),
        ("tone bar 2", [.. X, .. BridgeEdges, "bridge_plate.behind_bridge", "tone_bar 2", .. Lining]),
        ("ladder bar", [.. Ladder, "ladder_bar", .. Inside]),
        ("fan strut", [.. Ladder, "fan", .. BridgeEdges, "closing_bars", "tail_block.length", .. Lining]),
        ("closing bar", [.. BridgeEdges, "closing_bars", .. Lining]),
        ("hole reinforcement", [.. Hole, "hole_reinforcement"]),
    ];

    [Theory]
    [InlineData("auditorium")]
    [InlineData("classical")]
    public void Members_WhenOneNumberChanges_MoveOnlyIfTheyDependOnIt(string preset)
    {
        var before = Signatures(Built.Preset(preset));
        var (changed, idle) = (0, new List<string>());
        foreach (var (key, text) in Changes(Built.PresetText(preset)))
        {
            var after = Signatures(Built.Preset(preset, _ => text));
            var moved = before.Keys.Union(after.Keys).Where(m => before.GetValueOrDefault(m) != after.GetValueOrDefault(m)).ToList();
            foreach (var member in moved)
            {
                var keys = Depends.First(d => member.StartsWith(d.Member, StringComparison.Ordinal)).Keys;
                Assert.True(
                    keys.Any(k => key == k || key.StartsWith(k + ".", StringComparison.Ordinal) || key.Replace(" 1.", ".", StringComparison.Ordinal).StartsWith(k, StringComparison.Ordinal)),
                    $"{preset}: the {member} moved with {key}");
            }

            changed += moved.Count > 0 ? 1 : 0;
            if (moved.Count == 0)
            {
                idle.Add(key);
            }
        }

        output.WriteLine($"{preset}: {changed} numbers move members; these move none: {string.Join(", ", idle)}");
        Assert.All(idle, key => Assert.Contains(key.Split('.')[0], (string[])["season", "top", "scale", "soundhole", "tongue", "ring 3"]));
    }

    // Every number of the preset, one at a time: a little more, a count one more, nothing a tenth of a mm.
    private static IEnumerable<(string Key, string Text)> Changes(string text)
    {
        var lines = text.Split('\n');
        var (section, number) = ("", 0);
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith('['))
            {
                var header = lines[i].Split('#')[0].Trim();
                number = header.StartsWith("[[", StringComparison.Ordinal) ? lines.Take(i + 1).Count(l => l.Split('#')[0].Trim() == header) : 0;
                section = header.Trim('[', ']') + (number > 0 ? $" {number}" : "");
            }

            var (key, value) = (lines[i].Split('=')[0].Trim(), lines[i].Contains('=', StringComparison.Ordinal) ? lines[i].Split('=')[1].Split('#')[0].Trim() : "");
            // Tiles and motif must agree, and neither moves a member.
            if (section.Length > 0 && key is not ("tiles" or "repeat") && double.TryParse(value, CultureInfo.InvariantCulture, out var was))
            {
                var parameter = Parameters.Table.Of(Parameters.Table.Sections.Single(s => s.Key == section.Split(' ')[0])).Single(p => p.Key == key);
                var now = parameter.Kind == ParameterKind.Count ? was + 1 : was == 0 ? 0.1 : was * 1.003;
                yield return ($"{section}.{key}", string.Join('\n', [.. lines[..i], string.Create(CultureInfo.InvariantCulture, $"{key} = {now}"), .. lines[(i + 1)..]]));
            }
        }
    }

    // What a member is: its corners and arcs to a billionth of a mm, its thickness, wood and grain; marks and drill points likewise.
    private static Dictionary<string, string> Signatures(Layout layout)
    {
        var all = layout.Members.Select(m => (m.Name, Text: string.Create(CultureInfo.InvariantCulture, $"{m.ThicknessMm} {m.Material?.Wood.Key} {m.Grain.Degrees:F9} {Corners(m.Footprint.Loops)}")))
            .Concat(layout.Marks.Select(m => (m.Name, Text: string.Create(CultureInfo.InvariantCulture, $"{m.ThicknessMm} {Corners([m.Line])}"))))
            .Concat(layout.DrillPoints.Select(p => (p.Name, Text: string.Create(CultureInfo.InvariantCulture, $"{p.DiameterMm} {p.At.X:F9} {p.At.Y:F9}"))))
            .Concat(layout.TieHoles.Select(h => (h.Name, Text: string.Create(CultureInfo.InvariantCulture, $"{h.DiameterMm} {h.HeightMm} {Corners([h.Outline])}"))));
        return all.ToDictionary(m => m.Name, m => m.Text, StringComparer.Ordinal);
    }

    private static string Corners(IEnumerable<Contour> loops) => string.Join(
        ' ', loops.SelectMany(l => l.Vertices).Select(v => string.Create(CultureInfo.InvariantCulture, $"{v.Position.X:F9} {v.Position.Y:F9} {v.Bulge:F9}")));
}
