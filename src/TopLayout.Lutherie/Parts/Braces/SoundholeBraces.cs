using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// Soundhole braces: a short bar on each side of the hole, from the upper transverse brace down to the leg of the X that passes there, or
/// to the ladder bar next below the hole; or floating.
/// </summary>
public static class SoundholeBraces
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("soundhole_braces", "a short bar on each side of the hole");

    /// <summary>What they are made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (5, 8), 6, usualHeight: (5, 12), 7);

    /// <summary>Beside the hole.</summary>
    public static readonly Parameter<double> BesideHole = Parameter.Length(
        Section, "beside_hole", "from the hole's edge to the bar's centre line, level with the hole's centre", possible: (3, 150), usual: (10, 30), fallback: 16);

    /// <summary>Angle to the centre line.</summary>
    public static readonly Parameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle to the centre line, + outward towards the tail", possible: (-45, 45), usual: (-15, 20), fallback: 0);

    /// <summary>How they end.</summary>
    public static readonly Parameter<BarEnds> Ends = Parameter.Choice(
        Section, "ends", "butted against the braces above and below, or floating", BarEnds.Butted, ("butted", BarEnds.Butted), ("floating", BarEnds.Floating));

    /// <summary>Length of a floating one.</summary>
    public static readonly Parameter<double> Length = Parameter.Length(
        Section, "length", "length of a floating bar, its middle level with the hole's centre", possible: (10, 300), usual: (40, 120), fallback: 80);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, BesideHole, Angle, Ends, Length];

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        foreach (var (side, name, legName) in (ReadOnlySpan<(int, string, string)>)[
            (-1, "soundhole brace, bass", XBrace.TrebleLeg), (1, "soundhole brace, treble", XBrace.BassLeg)])
        {
            // Above the crossing the legs have changed sides.
            var middle = new Point2(room.Hole.Center.X + (side * (room.Hole.HalfWidth + section[BesideHole].Value)), room.Hole.Center.Y);
            var along = new Vec2(side * Trig.Sin(section[Angle].Value), -Trig.Cos(section[Angle].Value));
            if (EndsOf(bench, room, section, middle, along, legName) is not var (start, end))
            {
                return;
            }

            new Bar
            {
                Name = name,
                Through = middle,
                Along = along,
                Start = start,
                End = end,
                Places = [section[BesideHole].Place, section[Angle].Place],
            }.Add(bench, room, section, Stock);
        }
    }

    private static (BarEnd Start, BarEnd End)? EndsOf(Bench bench, BarRoom room, DesignSection section, Point2 middle, Vec2 along, string legName)
    {
        if (section.Get(Ends).Value == BarEnds.Floating)
        {
            var half = along * (section[Length].Value / 2);
            return (BarEnd.Free(middle - half, along, "neck end"), BarEnd.Free(middle + half, along, "tail end"));
        }

        var (above, below) = (bench.Find(TransverseBrace.Name), bench.Find(legName) ?? LadderBars.NextBelowHole(bench, room.Hole));
        if (above is null || below is null)
        {
            bench.LeaveOut(
                "soundhole braces",
                $"soundhole braces butt against a brace above and one below the hole, and there is none {(above is null ? "above" : "below")}",
                above is null
                    ? "add the section [transverse_brace], or let them float with `ends = \"floating\"`"
                    : "add the section [x_brace] or a [[ladder_bar]] with `below_hole`, or let them float with `ends = \"floating\"`",
                section.Get(Ends).Place);
            return null;
        }

        return (BarEnd.Against(above, "tail side", "neck end"), BarEnd.Against(below, "neck side", "tail end"));
    }
}
