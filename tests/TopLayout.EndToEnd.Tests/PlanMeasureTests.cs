using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// What a stranger measures in the DXF against what the design file says. The reader is tests/readers/measure-dxf: ezdxf for the entities, and formulas
/// of its own for arcs.
/// </summary>
public partial class PlanMeasureTests(ITestOutputHelper output)
{
    private const double Mm = 0.001;

    public static TheoryData<string> Presets => new("auditorium", "straight-tongue", "tapered-tongue");

    [Theory]
    [MemberData(nameof(Presets))]
    public void OutsidePlan_Outline_IsOneSmoothClosedPolylineOfTheDesignsSize(string preset)
    {
        using var desk = new Desk();
        if (Draw(desk, preset) is not { } plans)
        {
            return;
        }

        var outline = Assert.Single(plans["outside-plan"].GetProperty("OUTLINE_CUT").GetProperty("polylines").EnumerateArray());
        Assert.True(outline.GetProperty("closed").GetBoolean());
        Assert.InRange(outline.GetProperty("vertices").GetArrayLength(), 12, 60);
        Assert.All(outline.GetProperty("turns").EnumerateArray(), t => Assert.InRange(t.GetDouble(), -1e-6, 1e-6));

        using var report = JsonDocument.Parse(File.ReadAllBytes(desk.At("plans/report.json")));
        double Said(string what) => report.RootElement.GetProperty("numbers").GetProperty("body").EnumerateArray()
            .Single(r => r.GetProperty("what").GetString() == what).GetProperty("value").GetDouble();
        Assert.InRange(outline.GetProperty("length").GetDouble() / Said("outline, all round"), 1 - 1e-6, 1 + 1e-6);
        Assert.InRange(Math.Abs(outline.GetProperty("area").GetDouble()) / Said("plate area, soundhole not taken off"), 1 - 1e-6, 1 + 1e-6);

        var value = DesignValues(preset);
        var bounds = outline.GetProperty("bounds").EnumerateArray().Select(b => b.GetDouble()).ToArray();
        Near(value["outline.lower_width"], bounds[2] - bounds[0], "lower bout");
        Near(value["outline.length"], bounds[3] - bounds[1], "body length");
        var corners = outline.GetProperty("vertices").EnumerateArray().Select(v => (X: v[0].GetDouble(), Y: v[1].GetDouble())).ToList();
        foreach (var bout in (string[])["upper", "waist", "lower"])
        {
            var station = corners.Where(c => Math.Abs(c.Y + value[$"outline.{bout}_at"]) < Mm).ToList();
            Near(value[$"outline.{bout}_width"], station.Max(c => c.X) - station.Min(c => c.X), bout);
        }

        var hole = plans["outside-plan"].GetProperty("SOUNDHOLE_CUT").GetProperty("circles")[0];
        Near(value["soundhole.diameter"], 2 * hole[2].GetDouble(), "hole");
    }

    /// <summary>Each leg's corners by plane geometry of their own: on the two lines half a width beside an axis through the crossing.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void InsidePlan_XLegs_LieWhereTheDesignSays(string preset)
    {
        using var desk = new Desk();
        if (Draw(desk, preset) is not { } plans)
        {
            return;
        }

        var value = DesignValues(preset);
        double FromJoin(double fret) => value["scale.length"] * (Math.Pow(2, -value["scale.join_fret"] / 12) - Math.Pow(2, -fret / 12));
        var crossing = FromJoin(value["scale.last_fret"]) + value["fretboard.past_last_fret"] + value["soundhole.behind_fretboard"] + value["soundhole.diameter"] + value["x_brace.below_hole"];
        var half = value["x_brace.angle"] / 2 * Math.PI / 180;
        foreach (var (layer, side) in (ReadOnlySpan<(string, int)>)[("X_LEG_TREBLE_MARK", -1), ("X_LEG_BASS_MARK", 1)])
        {
            // Seen from inside, the treble leg's tail end lies at the left.
            var corners = Corners(plans["inside-plan"], layer);
            var offsets = corners.Select(c => (c.X * Math.Cos(half)) + (side * (c.Y + crossing) * Math.Sin(half))).ToList();
            Assert.Equal(2, offsets.Count(o => Math.Abs(o - (value["x_brace.width"] / 2)) < Mm));
            Assert.Equal(2, offsets.Count(o => Math.Abs(o + (value["x_brace.width"] / 2)) < Mm));

            // Every corner stands on the inside of the sides, as the report's ends do.
            using var report = JsonDocument.Parse(File.ReadAllBytes(desk.At("plans/report.json")));
            var bar = report.RootElement.GetProperty("numbers").GetProperty("bars").EnumerateArray()
                .Single(b => b.GetProperty("name").GetString() == (side < 0 ? "X leg, treble" : "X leg, bass"));
            var lower = corners.OrderBy(c => c.Y).Take(2).ToList();
            Near(bar.GetProperty("second_from_neck_edge").GetDouble(), -lower.Average(c => c.Y), layer);
            Near(-bar.GetProperty("second_across").GetDouble(), lower.Average(c => c.X), layer);
        }
    }

    /// <summary>The straight bars' corners by plane geometry of their own: lines square to the centre line, half a width to each side.</summary>
    [Fact]
    public void InsidePlan_TransverseFlatAndToneBars_LieWhereTheDesignSays()
    {
        using var desk = new Desk();
        if (Draw(desk, "auditorium") is not { } plans)
        {
            return;
        }

        var (value, plan) = (DesignValues("auditorium"), plans["inside-plan"]);
        var hole = plan.GetProperty("SOUNDHOLE_CUT").GetProperty("circles")[0];
        var edge = -hole[1].GetDouble() - hole[2].GetDouble();
        var upper = edge - value["transverse_brace.above_hole"];
        AssertLevels(Corners(plan, "UPPER_TRANSVERSE_BRACE_MARK"), upper, value["transverse_brace.width"]);
        var face = Corners(plan, "NECK_BLOCK_MARK").Max(c => -c.Y);
        AssertLevels(Corners(plan, "FLAT_BRACE_MARK"), (face + upper - (value["transverse_brace.width"] / 2)) / 2, value["flat_brace.width"]);
        Near(value["flat_brace.length"], Corners(plan, "FLAT_BRACE_MARK").Max(c => c.X) - Corners(plan, "FLAT_BRACE_MARK").Min(c => c.X), "flat brace");

        // Seen from inside the bar runs from the left leg down to the right; both sides half a width beside an axis at the design's angle.
        // The preset leaves the bar's width at its default of 7 mm.
        var (angle, width) = (value["tone_bar.angle"] * Math.PI / 180, 7.0);
        var across = Corners(plan, "TONE_BAR_1_MARK").Select(c => (c.X * Math.Cos(angle)) + (c.Y * Math.Sin(angle))).Order().ToList();
        Near(width, across[^1] - across[0], "tone bar 1, width");
        Assert.Equal(2, across.Count(a => a - across[0] < Mm));
        Assert.Equal(2, across.Count(a => across[^1] - a < Mm));
    }

    private static void AssertLevels(List<(double X, double Y)> corners, double fromNeckEdge, double width)
    {
        Assert.Equal(2, corners.Count(c => Math.Abs(c.Y + fromNeckEdge - (width / 2)) < Mm));
        Assert.Equal(2, corners.Count(c => Math.Abs(c.Y + fromNeckEdge + (width / 2)) < Mm));
    }

    [Fact]
    public void Tongue_Template_HasItsFlanksAtTheDesignsAngle()
    {
        using var desk = new Desk();
        if (Draw(desk, "tapered-tongue") is not { } plans)
        {
            return;
        }

        var value = DesignValues("tapered-tongue");
        var tongue = Assert.Single(plans["tongue"].GetProperty("TONGUE_CUT").GetProperty("polylines").EnumerateArray());
        var vertices = tongue.GetProperty("vertices").EnumerateArray().Select(v => (X: v[0].GetDouble(), Y: v[1].GetDouble(), Bulge: v[2].GetDouble())).ToList();

        // One piece with the block, whose sides run straight to its face; the tongue's flanks lean.
        var sides = vertices.Zip(vertices.Skip(1).Append(vertices[0])).Where(e => e.First.Bulge == 0 && Math.Abs(e.First.Y - e.Second.Y) > 1).ToLookup(e => Math.Abs(e.First.X - e.Second.X) < Mm);
        Assert.Equal((2, 2), (sides[true].Count(), sides[false].Count()));
        Assert.All(sides[false], f => Near(value["tongue.edge_angle"], Math.Atan2(Math.Abs(f.Second.X - f.First.X), Math.Abs(f.Second.Y - f.First.Y)) * 180 / Math.PI, "angle"));
        Near(value["neck_block.width"], sides[true].Max(s => s.First.X) - sides[true].Min(s => s.First.X), "width of the block");
        Near(value["tongue.length"], sides[true].Min(s => Math.Min(s.First.Y, s.Second.Y)) - tongue.GetProperty("bounds")[1].GetDouble(), "length");
    }

    [Fact]
    public void Plans_OfARightHandedTop_HaveBassAndTrebleWhereTheyBelong()
    {
        using var desk = new Desk();
        if (Draw(desk, "auditorium") is not { } plans)
        {
            return;
        }

        double TextX(string sheet, string text) => plans[sheet].GetProperty("FACE_MARKS_TEXT").GetProperty("texts").EnumerateArray()
            .Single(t => t.GetProperty("text").GetString() == text).GetProperty("x").GetDouble();
        Assert.True(TextX("outside-plan", "BASS") < TextX("outside-plan", "TREBLE"));
        Assert.True(TextX("inside-plan", "TREBLE") < TextX("inside-plan", "BASS"));

        var saddle = plans["outside-plan"].GetProperty("SADDLE_MARK").GetProperty("lines")[0].EnumerateArray().Select(v => v.GetDouble()).ToArray();
        var (bass, treble) = saddle[0] < saddle[2] ? ((saddle[0], saddle[1]), (saddle[2], saddle[3])) : ((saddle[2], saddle[3]), (saddle[0], saddle[1]));
        Assert.True(bass.Item1 < 0 && treble.Item1 > 0 && bass.Item2 < treble.Item2, "the bass end is set back");
        Assert.True(Corners(plans["outside-plan"], "TONE_BAR_1_HIDDEN").MaxBy(c => c.Y).X > 0, "the first tone bar's head is at +x");
        Assert.All(plans.Values.SelectMany(p => p.EnumerateObject()).SelectMany(l => l.Value.GetProperty("texts").EnumerateArray()), t => Assert.False(t.GetProperty("mirrored").GetBoolean()));
    }

    [Fact]
    public void InsidePlan_OfEveryPart_MirrorsTheOutsidePlan()
    {
        using var desk = new Desk();
        if (Draw(desk, "auditorium") is not { } plans)
        {
            return;
        }

        var parts = PartCorners(plans["outside-plan"]);
        Assert.True(parts.Count > 12, $"{parts.Count} parts");
        AssertMirrored(parts, PartCorners(plans["inside-plan"]));

        // A left-handed top seen from outside is the right-handed one seen from inside.
        using var other = new Desk();
        var left = Measure(other, other.Preset("auditorium", ("handed = \"right\"", "handed = \"left\"")));
        Assert.Equal(PartCorners(plans["inside-plan"]), PartCorners(left!["outside-plan"]));
        AssertMirrored(PartCorners(plans["inside-plan"]), PartCorners(left["inside-plan"]));
    }

    private static void AssertMirrored(SortedDictionary<string, List<string>> parts, SortedDictionary<string, List<string>> others)
    {
        Assert.Equal(parts.Keys, others.Keys);
        foreach (var (part, corners) in parts)
        {
            Assert.Equal(corners.Select(c => Mirrored(c)).Order(StringComparer.Ordinal), others[part].Order(StringComparer.Ordinal));
        }
    }

    private static string Mirrored(string corner)
    {
        var xy = corner.Split(' ');
        return xy[0] == "0.0000" ? corner : xy[0][0] == '-' ? $"{xy[0][1..]} {xy[1]}" : $"-{xy[0]} {xy[1]}";
    }

    // Corners of every part that lies on the top, whatever its role on that face; findings, measures, lettering and the legend are left out.
    private static SortedDictionary<string, List<string>> PartCorners(JsonElement plan)
    {
        var parts = new SortedDictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var layer in plan.EnumerateObject().Where(l => LayerRole().IsMatch(l.Name) && !l.Name.StartsWith("LEGEND", StringComparison.Ordinal)))
        {
            var corners = Corners(plan, layer.Name).Concat(ArcMiddles(plan, layer.Name))
                .Concat(layer.Value.GetProperty("circles").EnumerateArray().Select(c => (X: c[0].GetDouble(), Y: c[1].GetDouble() + c[2].GetDouble())))
                .Concat(layer.Value.GetProperty("lines").EnumerateArray().SelectMany(l => new[] { (X: l[0].GetDouble(), Y: l[1].GetDouble()), (X: l[2].GetDouble(), Y: l[3].GetDouble()) }));
            var broken = BrokenEnds(layer.Value, layer.Name);
            corners = broken.Count == 0 ? corners : corners.Except(broken).Distinct();
            parts[LayerRole().Replace(layer.Name, "")] = [.. corners.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.X + 0.0:0.0000} {c.Y:0.0000}").Replace("-0.0000", "0.0000", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        }

        return parts;
    }

    // Where a line behind breaks off round letters: the ends of its pieces that no other piece goes on from.
    private static HashSet<(double X, double Y)> BrokenEnds(JsonElement layer, string name)
    {
        var pieces = layer.GetProperty("polylines").EnumerateArray().Where(p => !p.GetProperty("closed").GetBoolean())
            .Select(p => p.GetProperty("vertices").EnumerateArray().Select(v => (X: v[0].GetDouble(), Y: v[1].GetDouble())).ToList())
            .Select(v => new[] { v[0], v[^1] })
            .Concat(layer.GetProperty("lines").EnumerateArray().Select(l => new[] { (X: l[0].GetDouble(), Y: l[1].GetDouble()), (X: l[2].GetDouble(), Y: l[3].GetDouble()) }))
            .ToList();
        return name.EndsWith("_HIDDEN", StringComparison.Ordinal) && pieces.Count > 1
            ? [.. pieces.SelectMany(p => p).CountBy(e => e).Where(c => c.Value == 1).Select(c => c.Key)]
            : [];
    }

    // The middle of every arc, from its chord and bulge (sagitta = bulge · chord / 2, to the right of the chord when positive): a mirrored
    // arc whose bulge was not turned round bows to the wrong side, though its ends are right.
    private static IEnumerable<(double X, double Y)> ArcMiddles(JsonElement plan, string layer)
    {
        foreach (var polyline in plan.GetProperty(layer).GetProperty("polylines").EnumerateArray())
        {
            var vertices = polyline.GetProperty("vertices").EnumerateArray().Select(v => (X: v[0].GetDouble(), Y: v[1].GetDouble(), Bulge: v[2].GetDouble())).ToList();
            var ends = polyline.GetProperty("closed").GetBoolean() ? vertices.Skip(1).Append(vertices[0]) : vertices.Skip(1);
            foreach (var (a, b) in vertices.Zip(ends).Where(e => e.First.Bulge != 0))
            {
                yield return (((a.X + b.X) / 2) + (a.Bulge / 2 * (b.Y - a.Y)), ((a.Y + b.Y) / 2) - (a.Bulge / 2 * (b.X - a.X)));
            }
        }
    }

    private static List<(double X, double Y)> Corners(JsonElement plan, string layer) =>
    [
        .. plan.GetProperty(layer).GetProperty("polylines").EnumerateArray()
            .SelectMany(p => p.GetProperty("vertices").EnumerateArray()).Select(v => (v[0].GetDouble(), v[1].GetDouble())),
    ];

    private Dictionary<string, JsonElement>? Draw(Desk desk, string preset) => Measure(desk, Toplayout.PresetFile(preset));

    private Dictionary<string, JsonElement>? Measure(Desk desk, string design)
    {
        var files = DrawnDxf.WriteWithReport(design, desk.At("plans"), "outside-plan", "inside-plan", "tongue");
        return OutsideReader.MeasureDxf(output, [.. files]) is { } text
            ? JsonDocument.Parse(text).RootElement.EnumerateObject().ToDictionary(f => Path.GetFileNameWithoutExtension(f.Name), f => f.Value)
            : null;
    }

    private static void Near(double expected, double actual, string what) =>
        Assert.True(Math.Abs(expected - actual) <= Mm, $"{what}: the design says {expected:R}, the drawing {actual:R}");

    // "section.key" of every plain number in a preset.
    private static Dictionary<string, double> DesignValues(string preset)
    {
        var (section, values) = ("", new Dictionary<string, double>());
        foreach (var line in File.ReadLines(Toplayout.PresetFile(preset)))
        {
            section = Header().Match(line) is { Success: true } h ? h.Groups[1].Value : section;
            if (Setting().Match(line) is { Success: true } s)
            {
                values.TryAdd($"{section}.{s.Groups[1].Value}", double.Parse(s.Groups[2].Value, CultureInfo.InvariantCulture));
            }
        }

        return values;
    }

    [GeneratedRegex("_(CUT|POCKET|MARK|HIDDEN)$")]
    private static partial Regex LayerRole();

    [GeneratedRegex(@"^\[+(\w+)\]+")]
    private static partial Regex Header();

    [GeneratedRegex(@"^(\w+) = (-?[\d.]+)\b")]
    private static partial Regex Setting();
}
