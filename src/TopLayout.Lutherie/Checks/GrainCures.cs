using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a maker can do about a run, the lever that helps most first.</summary>
internal static class GrainCures
{
    /// <summary>The cures for a run along these members, the one that gives most first.</summary>
    public static string For(GrainScene scene, GrainRun run, IReadOnlyList<Member> members) =>
        string.Join("; or ", Levers(scene, run, members).Distinct());

    private static IEnumerable<string> Levers(GrainScene scene, GrainRun run, IReadOnlyList<Member> members)
    {
        foreach (var member in members)
        {
            if (Shape(scene, member, isAlone: members.Count == 1) is { } shape)
            {
                yield return shape;
            }
        }

        if (members.Any(m => m.Kind is MemberKind.Tongue or MemberKind.Block or MemberKind.Fretboard))
        {
            yield return $"carry a brace (a flat brace, or the upper transverse brace) across the grain over the line, near {Say.Mm(Math.Round(-run.From.MidpointTo(run.To).Y))} from the neck edge";
        }

        if (members.FirstOrDefault(m => m.Material is { Sawing: not Sawing.Quarter, Lie: GrainLie.InPlane } && !scene.Loads[m.Name].IsCrossGrain) is { } flat)
        {
            yield return $"saw the {flat.Name} on the quarter (`sawing = \"quarter\"`)";
        }

        if (scene.Season.GluedHumidityPercent - scene.Season.UsedHumidityPercent > 20)
        {
            yield return "glue at a humidity nearer to the one in use";
        }
    }

    private static string? Shape(GrainScene scene, Member member, bool isAlone) => member.Kind switch
    {
        MemberKind.Tongue when scene.Layout.Design.Get(Tongue.Shape).Value == TongueShape.Straight =>
            "taper the tongue (`shape = \"tapered\"`, `edge_angle = 15` or more), so that its edge crosses every grain line",
        MemberKind.Tongue => "raise `edge_angle` of the tongue",
        MemberKind.Block => isAlone ? $"shorten the {member.Name}" : $"make the {member.Name} wider, so that its sides leave this grain line",
        MemberKind.Fretboard when !BlockCarriesFretboard(scene, member) => "widen the neck block at least 5 mm past the fretboard's edges on both sides",
        MemberKind.Plate => $"cut the ends of the {member.Name} at an angle to the grain, or bring them under a brace",
        MemberKind.Lining => "use a narrower or kerfed lining there",
        MemberKind.Bar => $"turn the {member.Name} across the grain, or make it narrower",
        MemberKind.Bridge => "round or angle the bridge's ends",
        MemberKind.Channel => "move the channel by 10 mm or more from the edge on the same grain line",
        _ => null,
    };

    private static bool BlockCarriesFretboard(GrainScene scene, Member fretboard) =>
        scene.Layout.Find(Block.Neck.Name) is { } block
        && block.Footprint.Bounds.Max.X >= fretboard.Footprint.Bounds.Max.X + scene.Calibration.BlockContinuesBeyondMm;
}
