using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Lines of a design that say nothing, because another line of it has them stand aside: the pins of a bridge without pins.</summary>
public static class IdleKeysCheck
{
    /// <summary>A remark for each.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var design = layout.Design;
        return [.. Bridge(design), .. Hole(design), .. NeckEnd(layout)];
    }

    private static IEnumerable<Finding> Bridge(Design design)
    {
        var style = design.Get(BridgePins.Style).Value;
        if (style != BridgeStyle.Pins)
        {
            foreach (var (key, place) in Said(Written(BridgePins.Count, design[BridgePins.Count]), Written(BridgePins.BehindSaddle, design[BridgePins.BehindSaddle]), Written(BridgePins.Line, design.Get(BridgePins.Line)), Written(BridgePins.Diameter, design[BridgePins.Diameter])))
            {
                yield return Idle(key, place, "a bridge without pins", "`style = \"pins\"`");
            }
        }

        if (style != BridgeStyle.Tie)
        {
            foreach (var (key, place) in Said(Written(BridgePins.TieBlock, design[BridgePins.TieBlock]), Written(TieHoles.Count, design[TieHoles.Count]), Written(TieHoles.Diameter, design[TieHoles.Diameter]), Written(TieHoles.Height, design[TieHoles.Height])))
            {
                yield return Idle(key, place, "a bridge without a tie block", "`style = \"tie\"`");
            }
        }
    }

    private static IEnumerable<Finding> Hole(Design design)
    {
        if (design.Get(Soundhole.Shape).Value != HoleShape.D)
        {
            foreach (var (key, place) in Said(Written(Soundhole.StraightTowardNeck, design.Get(Soundhole.StraightTowardNeck)), Written(Soundhole.CornerRadius, design[Soundhole.CornerRadius])))
            {
                yield return Idle(key, place, "a hole that is no D", "`shape = \"d\"`");
            }
        }
    }

    private static IEnumerable<Finding> NeckEnd(Layout layout)
    {
        var design = layout.Design;
        if (design.Has(Tongue.Section) && design.Get(Tongue.Shape).Value != TongueShape.Tapered)
        {
            foreach (var (key, place) in Said(Written(Tongue.EdgeAngle, design[Tongue.EdgeAngle]), Written(Tongue.RootHollow, design[Tongue.RootHollow])))
            {
                yield return Idle(key, place, "a tongue with straight sides", "`shape = \"tapered\"`");
            }
        }

        if (design.Has(TrussRod.Section) && !design.Has(Tongue.Section))
        {
            foreach (var (key, place) in Said(Written(TrussRod.IntoTongue, design[TrussRod.IntoTongue])))
            {
                yield return Idle(key, place, "a neck block without a tongue", "the section [tongue]");
            }
        }
    }

    private static (string Key, bool IsDefault, SourcePlace Place) Written<T>(Parameter parameter, Sourced<T> value) => (parameter.Key, value.IsDefault, value.Place);

    private static IEnumerable<(string Key, SourcePlace Place)> Said(params IEnumerable<(string Key, bool IsDefault, SourcePlace Place)> values) =>
        values.Where(v => !v.IsDefault).Select(v => (v.Key, v.Place));

    private static Finding Idle(string key, SourcePlace place, string of, string instead) =>
        new(Rules.DrawnOtherwise, Severity.Remark, key, $"`{key}` says nothing of {of}") { Place = place, Cure = $"delete the line, or write {instead}" };
}
