using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The label that names a member on a plan: inside it where it fits, along it when it is a bar.</summary>
internal static class MemberLabel
{
    /// <summary>The request for a member's name.</summary>
    public static LabelRequest For(Member member, FaceView view, Role role)
    {
        var footprint = member.Footprint.Placed(view.Placement);
        return new LabelRequest(member.Name, Role.Text, member.Name, SheetBoard.TextMm, Anchor(member, footprint))
        {
            Inside = IsRing(member) ? null : footprint,
            Rotation = member.Kind is MemberKind.Bar or MemberKind.Fretboard ? Upright(member.Grain, view) : Angle.Zero,
            Priority = role == Role.Mark ? 1 : 2,
        };
    }

    // The middle of a ring lies in its hole.
    private static bool IsRing(Member member) => member.Footprint.Loops.Length > 1;

    // A point of the member: on a ring's outer wall towards the tail's right, else its middle, a little off the centre line.
    private static Point2 Anchor(Member member, Region footprint)
    {
        var box = footprint.Bounds;
        return member.Kind switch
        {
            _ when IsRing(member) => box.Center + (Trig.Direction(Angle.FromDegrees(-30)) * (box.Width / 2)),
            MemberKind.Bar => Middle(footprint),
            MemberKind.Lining => Middle(footprint),
            _ => box.Center,
        };
    }

    private static Point2 Middle(Region footprint)
    {
        var edge = footprint.Edges.MaxBy(e => e.Length);
        return edge.PointAt(0.5) + (edge.TangentAt(0.5).Left * 1);
    }

    // Along the bar, letters never upside down.
    private static Angle Upright(Angle grain, FaceView view)
    {
        var turn = grain.Degrees + 90;
        var degrees = view.Placement.Mirrored ? 180 - turn : turn;
        return Angle.FromDegrees(degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees);
    }
}
