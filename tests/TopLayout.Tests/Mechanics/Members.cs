using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>Members built by hand, and what the model says of them: Sitka 2.8 mm, grain along y, glued at 60 % and used at 25 %.</summary>
internal static class Members
{
    public static readonly TopPlate Top = new(WoodTable.Find("sitka_spruce")!, 2.8);

    public static readonly TopGrain Straight = TopGrain.OnePlate(Angle.Zero);

    /// <summary>The inside line of the sides beside the neck: the line y = 0.</summary>
    public static readonly Contour Rim = new([new Vertex(new Point2(-200, 0)), new Vertex(new Point2(200, 0))], isClosed: false);

    public static Member Make(
        string name, MemberKind kind, Region footprint, double thickness, string wood, Sawing sawing = Sawing.Quarter, double grain = 0,
        TopFace face = TopFace.Inside, params string[] joinedWith) => new()
        {
            Name = name,
            Kind = kind,
            Face = face,
            Footprint = footprint,
            ThicknessMm = thickness,
            Material = kind == MemberKind.Channel ? null : new Material(WoodTable.Find(wood)!, GrainLie.InPlane, sawing),
            Grain = Angle.FromDegrees(grain),
            UngluedEdges = ["root"],
            JoinedWith = [.. joinedWith],
            Places = [],
        };

    /// <summary>A spruce brace straight across the top at a y, notched over what it crosses.</summary>
    public static Member BraceAt(double y, params string[] joinedWith) => Make(
        $"brace {y}", MemberKind.Bar, Shapes.Bar(new Point2(-100, y), new Point2(100, y), 8), 15, "sitka_spruce", grain: 90, joinedWith: joinedWith);

    /// <summary>The worst side of one member among others, its load and its verdict.</summary>
    public static (double Length, MemberLoad Load, RunVerdict Verdict) Judge(Member member, IEnumerable<Member> others, Contour? rim = null, TopPlate? top = null)
    {
        IReadOnlyList<Member> members = [member, .. others];
        var pieces = GluedEdges.Of(members, Straight, rim, Calibration.Default).Where(p => p.Member == member.Name);
        var load = MemberLoad.Of(member, top ?? Top, Straight, Season.Default.MoistureLossPercent, Calibration.Default);
        var loads = new Dictionary<string, MemberLoad> { [member.Name] = load };
        var worst = GrainRuns.PerSide(pieces, Calibration.Default)
            .Select(run => (Run: run, Verdict: RunVerdict.Of(run, loads, Calibration.Default)))
            .OrderByDescending(v => v.Run.LengthMm)
            .FirstOrDefault();
        return worst.Run is null
            ? (0, load, new RunVerdict(Lutherie.Findings.Severity.Pass, LengthClass.Stops, null, null, false))
            : (worst.Run.LengthMm, load, worst.Verdict);
    }
}
