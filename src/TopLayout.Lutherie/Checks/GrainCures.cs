using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a maker can do about a run, the lever that helps most first.</summary>
internal static class GrainCures
{
    // A lever that takes off less than this share of the mismatch is not worth a word.
    private const double WorthShare = 0.85;

    // The humidity at which most workshops aim to glue, %: common practice, no source.
    private const double WorkshopHumidityPercent = 45;

    // A member whose grain is so near the top's cannot be turned across it: it is there to stiffen the top along.
    private static readonly Angle AlongTop = Angle.FromDegrees(20);

    /// <summary>
    /// The cures for a run along these members, the one that gives most first. Of wood and air it says what the run comes to by that alone.
    /// </summary>
    public static string For(GrainScene scene, GrainFindings.Found found, IReadOnlyList<Member> members)
    {
        var levers = Levers(scene, found, members).Distinct().ToList();
        var more = levers.Count > 1 && found.Severity >= Severity.Warning ? "; check again after each, as one by itself may not be enough" : "";
        return string.Join("; ", levers) + more;
    }

    private static IEnumerable<string> Levers(GrainScene scene, GrainFindings.Found found, IReadOnlyList<Member> members)
    {
        foreach (var member in members)
        {
            if (Shape(scene, found, member, members) is { } shape)
            {
                yield return shape;
            }
        }

        // Beside a block alone nothing goes across: the block itself stands there.
        if (members.Any(m => m.Kind is MemberKind.Tongue or MemberKind.Fretboard))
        {
            yield return $"carry a brace (a flat brace, or the upper transverse brace) across the grain over the line, near {Say.Mm(Math.Round(-found.Run.From.MidpointTo(found.Run.To).Y))} from the neck edge";
        }

        if (!found.IsOnlyChannel)
        {
            foreach (var lever in Materials(scene, found, members))
            {
                yield return lever;
            }
        }
    }

    // The levers of wood and air, with the mismatch they lead to.
    private static IEnumerable<string> Materials(GrainScene scene, GrainFindings.Found found, IReadOnlyList<Member> members)
    {
        foreach (var member in members.Where(m => m.Material is { Sawing: not Sawing.Quarter } && !scene.Loads[m.Name].IsCrossGrain))
        {
            var (now, then) = (scene.Loads[member.Name].Mismatch!, scene.MismatchIf(member, Sawing.Quarter));
            if (then.Index < WorthShare * now.Index)
            {
                yield return $"saw {Say.The(member.Name)} on the quarter (`sawing = \"quarter\"`): its mismatch {Say.TwoDigits(then.Index)} instead of "
                    + $"{Say.TwoDigits(now.Index)}, {Outcome(scene, found, m => m == member ? then : null)}";
            }
        }

        if (members.Where(m => scene.Loads[m.Name].Mismatch is not null).MaxBy(m => scene.Loads[m.Name].Mismatch!.Index) is { } worst
            && scene.Season.GluedHumidityPercent > WorkshopHumidityPercent)
        {
            var (now, then) = (scene.Loads[worst.Name].Mismatch!.Index, scene.MismatchIfGluedAt(worst, WorkshopHumidityPercent).Index);
            if (then < WorthShare * now)
            {
                yield return $"glue at {GrainWords.Percent(WorkshopHumidityPercent)} humidity instead of {GrainWords.Percent(scene.Season.GluedHumidityPercent)}: "
                    + $"mismatch of {Say.The(worst.Name)} {Say.TwoDigits(then)} instead of {Say.TwoDigits(now)}, "
                    + Outcome(scene, found, m => scene.Loads[m.Name].Mismatch is null ? null : scene.MismatchIfGluedAt(m, WorkshopHumidityPercent));
            }
        }
    }

    // What the run, and what lies in line with it on the other face, comes to when members load the top otherwise.
    private static string Outcome(GrainScene scene, GrainFindings.Found found, Func<Member, Mismatch?> changed)
    {
        var loads = (found.Together ?? found.Run).Contributions.Select(c => c.Member).Distinct().ToDictionary(
            name => name,
            name => changed(scene.Member(name)) is { } other ? scene.Loads[name] with { Mismatch = other } : scene.Loads[name],
            StringComparer.Ordinal);
        Severity Of(GrainRun run) => RunVerdict.Of(run, loads, scene.Calibration).Severity;
        var own = Of(found.Run);
        var severity = found.Together is { } together && Of(together) is var joint && joint > own ? joint : own;
        return severity >= found.Severity ? "by itself not enough" : severity == Severity.Pass ? "and it passes" : $"and a {FindingText.Word(severity)} is left";
    }

    private static string? Shape(GrainScene scene, GrainFindings.Found found, Member member, IReadOnlyList<Member> members) => member.Kind switch
    {
        MemberKind.Tongue when scene.Layout.Design.Get(Tongue.Shape).Value != TongueShape.Tapered =>
            "taper the tongue (`shape = \"tapered\"`, `edge_angle = 15` or more), so that its edge crosses every grain line",
        MemberKind.Tongue => "raise `edge_angle` of the tongue",
        // The fretboard says so already.
        MemberKind.Block when member.Name == Block.Neck.Name && members.Any(m => m.Kind == MemberKind.Fretboard && !BlockCarriesFretboard(scene, m)) => null,
        MemberKind.Block => members.Count == 1 ? $"shorten {Say.TheLast(member.Name)}" : $"make {Say.The(member.Name)} wider, so that its sides leave this grain line",
        MemberKind.Fretboard when !BlockCarriesFretboard(scene, member) => "widen the neck block at least 5 mm past the fretboard's edges on both sides",
        MemberKind.Plate when IsByTheHole(found, member) => $"move {Say.The(member.Name)} off that line (`inset`); its `width` moves only the other side",
        MemberKind.Plate when IsRing(member) => Ring(scene, member, members),
        MemberKind.Plate when IsByItsLongSide(found, member) => $"move {Say.The(member.Name)} off that line, or make it wider or narrower until its edges leave it",
        MemberKind.Plate => $"cut the ends of {Say.The(member.Name)} at an angle to the grain, or bring them under a brace",
        MemberKind.Lining => "use a narrower or kerfed lining there",
        MemberKind.Bar when GrainAngle.Between(member.Grain, scene.GrainUnder(member)) < AlongTop => $"make {Say.The(member.Name)} narrower, or end it under a bar across the grain",
        MemberKind.Bar => $"turn {Say.The(member.Name)} across the grain, or make it narrower",
        MemberKind.Bridge => "round or angle the bridge's ends",
        MemberKind.Channel => Channels(scene, [.. members.Where(m => m.Kind == MemberKind.Channel).Select(m => Say.TheLast(m.Name))]),
        _ => null,
    };

    // Channels side by side are moved together.
    private static string Channels(GrainScene scene, IReadOnlyList<string> named) =>
        $"move {Say.Listed(named)} until {(named.Count == 1 ? "its" : "their")} walls stand {Apart(scene)} or more from the edge on the same grain line";

    // Every ring runs along the grain at two places: its edges can leave a line, and its wood can follow the top.
    private static string Ring(GrainScene scene, Member ring, IReadOnlyList<Member> members) => members.Count > 1
        ? $"make {Say.The(ring.Name)} wider or narrower, until its edges stand {Apart(scene)} or more from that line"
        : ring.Material?.Wood.Key == scene.Layout.Top.Wood.Key
            ? $"make {Say.The(ring.Name)} narrower or thinner"
            : $"make {Say.The(ring.Name)} of the top's own wood, sawn like the top, or narrower or thinner";

    // No grain line has both edges in its band.
    private static string Apart(GrainScene scene) => Say.Mm(2 * scene.Calibration.BandHalfWidthMm);

    // Most of what it gives to the run, on whichever face.
    private static bool IsByItsLongSide(GrainFindings.Found found, Member member) =>
        (found.Together ?? found.Run).Contributions.Where(c => c.Member == member.Name).MaxBy(c => c.LengthMm) is { IsLongSide: true };

    // With the side by which its inset is measured, and no other, and something else on that line.
    private static bool IsByTheHole(GrainFindings.Found found, Member member) =>
        (found.Together ?? found.Run).Contributions is var all
        && all.Any(c => c.Member != member.Name)
        && all.Where(c => c.Member == member.Name).Select(c => c.Label).Distinct().ToList() is [HoleReinforcement.HoleSide];

    private static bool IsRing(Member member) => member.Footprint.Loops.Length > 1;

    private static bool BlockCarriesFretboard(GrainScene scene, Member fretboard) =>
        scene.Layout.Find(Block.Neck.Name) is { } block
        && block.Footprint.Bounds.Max.X >= fretboard.Footprint.Bounds.Max.X + scene.Calibration.BlockContinuesBeyondMm;
}
