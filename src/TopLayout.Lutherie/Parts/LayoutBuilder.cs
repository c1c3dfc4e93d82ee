using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// Design → layout, in the fixed order in which one part hangs on another: outline, scale, hole, rosette, X, bridge, plate, blocks and
/// tongue, linings, bars, reinforcement and cleats.
/// </summary>
public static class LayoutBuilder
{
    /// <summary>The layout, or null and what does not fit.</summary>
    public static (Layout? Layout, ImmutableArray<Finding> Findings) Build(Design design)
    {
        var bench = new Bench(design);
        Limits.Hold(bench);
        var layout = Build(bench);
        return (bench.Findings.Count == 0 ? layout : null, [.. Finding.Sorted(bench.Findings)]);
    }

    private static Layout? Build(Bench bench)
    {
        var design = bench.Design;
        if (OutlineForms.Build(bench) is not { } body || Rim.Lines(bench, body.Edge) is not var (inside, lining))
        {
            return null;
        }

        if (Soundhole.Build(bench, lining) is not { } hole)
        {
            return null;
        }

        Fretboard.Build(bench, body.Edge);
        var room = new BarRoom(body.Edge, hole, inside, lining);
        Rosette.Build(bench, hole);
        XBrace.Build(bench, room);
        Bridge.Build(bench, lining);
        BridgePlate.Build(bench, hole);
        Block.Neck.Build(bench, inside);
        Tongue.Build(bench, inside);
        Block.Tail.Build(bench, inside);
        Rim.BuildLinings(bench, inside, lining);
        TransverseBrace.Build(bench, room);
        FlatBrace.Build(bench, room);
        ToneBars.Build(bench, room);
        BuildFurtherBraces(bench, room);
        BuildMarks(bench, body.Edge, room);
        return new Layout
        {
            Design = design,
            Top = Plate.Read(design),
            SkewBass = design[Plate.SkewBass].Value,
            SkewTreble = design[Plate.SkewTreble].Value,
            Body = body,
            InsideOfSides = inside,
            LiningLine = lining,
            Frets = Scale.Frets(design),
            Saddle = Scale.Saddle(design),
            Hole = hole,
            HoleLiner = Soundhole.LinerLine(design, hole),
            Members = [.. bench.Members],
            Marks = [.. bench.Marks],
            DrillPoints = [.. bench.DrillPoints],
            TieHoles = [.. bench.TieHoles],
            Faults = [.. bench.Faults],
        };
    }

    private static void BuildMarks(Bench bench, Contour outline, BarRoom room)
    {
        XCap.Build(bench, room.Hole);
        SaddleSlot.Build(bench);
        BridgePins.Build(bench);
        TrussRod.Build(bench, room.InsideOfSides);
        Binding.Build(bench, outline);
        LocatingPins.Build(bench, outline, room.Hole);
    }

    // What butts against a bar comes after it; the reinforcement and the cleats keep clear of all that is there.
    private static void BuildFurtherBraces(Bench bench, BarRoom room)
    {
        LadderBars.Build(bench, room);
        SoundholeBraces.Build(bench, room);
        FingerBraces.Build(bench, room);
        ClosingBars.Build(bench, room);
        Fan.Build(bench, room);
        FreeBars.Build(bench, room);
        HoleReinforcement.Build(bench, room);
        Cleats.Build(bench, room);
    }
}
