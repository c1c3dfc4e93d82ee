using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Plans;

/// <summary>Where the names of members stand on the plans, and where their leaders end.</summary>
public class PlanLabelTests
{
    public static TheoryData<string> Presets => [.. Built.PresetNames];

    [Theory]
    [MemberData(nameof(Presets))]
    public void Leaders_OfMembers_EndInTheirOwnMemberAndInNoOther(string preset)
    {
        foreach (var (plan, face, members) in Plans(preset))
        {
            foreach (var member in members)
            {
                foreach (var leader in Leaders(plan, member.Name))
                {
                    var end = leader.Contour.Vertices[^1].Position;
                    Assert.True(Footprint(member, face).Contains(end), $"{plan.Name}: the leader of {member.Name} ends outside it");
                    Assert.Equal([], members.Where(m => m != member && Footprint(m, face).Contains(end)).Select(m => $"{plan.Name}: the leader of {member.Name} ends on {m.Name}"));
                }
            }
        }
    }

    /// <summary>A channel between two others is reached over one of them only.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void Leaders_OfMembers_CrossNoOtherMember(string preset)
    {
        foreach (var (plan, face, members) in Plans(preset))
        {
            foreach (var member in members.Where(m => m.Name != "rosette channel 2"))
            {
                var crossed = from leader in Leaders(plan, member.Name)
                              from other in members
                              where other != member && Footprint(other, face).Edges.Any(e => leader.Contour.Segments.Any(s => Intersections.Of(s, e).Count > 0))
                              select $"{plan.Name}: the leader of {member.Name} crosses {other.Name}";
                Assert.Equal([], crossed.Distinct());
            }
        }
    }

    /// <summary>Seven struts: seven names along them, their middles at one height, each inside its strut.</summary>
    [Fact]
    public void FanStruts_HaveTheirNamesInOneRow()
    {
        var (plan, face, members) = Plans("classical").Single(p => p.Plan.Name == "inside-plan");
        var struts = members.Where(m => m.Name.StartsWith("fan strut ", StringComparison.Ordinal)).ToList();
        var labels = struts.Select(s => plan.Label(s.Name)).ToList();

        Assert.Equal(7, struts.Count);
        Assert.All(labels, l => Check.Near(labels[0].Frame.Bounds.Center.Y, l.Frame.Bounds.Center.Y, 0.01, l.Text));
        Assert.All(struts.Zip(labels), p => Assert.All(p.Second.Frame.Corners, v => Assert.True(Footprint(p.First, face).Contains(v), p.First.Name)));
    }

    [Fact]
    public void BridgePlate_OfAFan_IsNamedWithinIt()
    {
        var (plan, face, members) = Plans("classical").Single(p => p.Plan.Name == "inside-plan");
        var footprint = Footprint(members.Single(m => m.Name == "bridge plate"), face);

        Assert.All(plan.Label("bridge plate").Frame.Corners, v => Assert.True(footprint.Contains(v)));
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void FretboardExtension_IsNamedInsideItAQuarterOfItsWidthOffTheCentreLine(string preset)
    {
        var (plan, face, members) = Plans(preset).Single(p => p.Plan.Name == "outside-plan");
        var board = members.Single(m => m.Kind == MemberKind.Fretboard);
        var label = plan.Label(board.Name);

        Assert.All(label.Frame.Corners, v => Assert.True(Footprint(board, face).Contains(v)));
        Check.Near(board.Footprint.Bounds.Width / 4, Math.Abs(label.Frame.Bounds.Center.X), 0.01, "off the centre line");
    }

    /// <summary>The middle of a name along a bar lies on the bar's middle line.</summary>
    [Theory]
    [InlineData("classical", "upper transverse brace")]
    [InlineData("classical", "ladder bar")]
    [InlineData("arc-chain", "upper transverse brace")]
    public void NamesInBars_StandInTheirMiddle(string preset, string name)
    {
        var (plan, face, members) = Plans(preset).Single(p => p.Plan.Name == "inside-plan");

        Check.Near(Footprint(members.Single(m => m.Name == name), face).Bounds.Center.Y, plan.Label(name).Frame.Bounds.Center.Y, 0.01, name);
    }

    [Theory]
    [InlineData("classical")]
    [InlineData("arc-chain")]
    [InlineData("auditorium")]
    public void Linings_AreNamedAlikeOnBothSides(string preset)
    {
        var (plan, face, members) = Plans(preset).Single(p => p.Plan.Name == "inside-plan");
        bool IsInside(string name) => Footprint(members.Single(m => m.Name == name), face) is var lining
            && plan.Label(name).Frame.Corners.All(lining.Contains);

        Assert.Equal(IsInside("bass lining"), IsInside("treble lining"));
        Check.Near(-plan.Label("bass lining").Frame.Bounds.Center.X, plan.Label("treble lining").Frame.Bounds.Center.X, 12, "one at the left, one at the right");
    }

    /// <summary>The names of two like parts, left and right, stand at mirrored places: their nearer ends, or their middles.</summary>
    [Theory]
    [MemberData(nameof(Presets))]
    public void NamesOfMirroredParts_StandMirrored(string preset)
    {
        var (plan, _, members) = Plans(preset).Single(p => p.Plan.Name == "inside-plan");
        var pairs = from one in members
                    where one.Name.Contains("bass", StringComparison.Ordinal)
                    let other = members.Find(m => m.Name == one.Name.Replace("bass", "treble", StringComparison.Ordinal))
                    where other is not null && MemberLabel.AreMirrored(one, other)
                    select (plan.Label(one.Name), plan.Label(other.Name));

        var apart = pairs.Where(p => Math.Abs(p.Item1.Anchor.Y - p.Item2.Anchor.Y) > 0.01
            || (Math.Abs(p.Item1.Frame.Bounds.Center.X + p.Item2.Frame.Bounds.Center.X) > 0.01 && Math.Abs(p.Item1.Anchor.X + p.Item2.Anchor.X) > 0.01));
        Assert.Equal([], apart.Select(p => $"{p.Item1.Text} {p.Item1.Anchor}, {p.Item2.Text} {p.Item2.Anchor}"));
    }

    private static IEnumerable<(Sheet Plan, TopFace Face, List<Member> Members)> Plans(string preset)
    {
        var layout = Built.Preset(preset);
        (string Name, TopFace Face)[] both = [("outside-plan", TopFace.Outside), ("inside-plan", TopFace.Inside)];
        return both.Select(p => (Drawn.One(preset, p.Name), p.Face, layout.Members.Where(m => m.Face == p.Face).ToList()));
    }

    private static Region Footprint(Member member, TopFace face) => member.Footprint.Placed(new FaceView(face, Hand.Right).Placement);

    private static IEnumerable<ContourShape> Leaders(Sheet sheet, string part) => sheet.Lines(part, Role.Dimension).Where(s => !s.Contour.IsClosed);
}
