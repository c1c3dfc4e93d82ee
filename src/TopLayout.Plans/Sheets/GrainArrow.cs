using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Plans.Sheets;

/// <summary>Which way the long grain of a part runs: an arrow with two heads, or words where it stands upright.</summary>
internal static class GrainArrow
{
    private const string Part = "grain arrow";
    private const double HeadMm = 3;
    private const double HalfMm = 12;

    /// <summary>Draws it below a place; returns the height of what is lowest, mm.</summary>
    /// <param name="board">The sheet.</param>
    /// <param name="member">The part.</param>
    /// <param name="view">The face.</param>
    /// <param name="at">The middle of its upper edge.</param>
    /// <param name="whose">What follows "long grain"; nothing on the sheet of one part.</param>
    public static double Draw(SheetBoard board, Member member, FaceView view, Point2 at, string whose = "")
    {
        if (member.Material!.Lie == GrainLie.Upright)
        {
            board.Write(Part, $"grain{whose} upright, through the depth of the rim", at, alignment: Alignment.Centre);
            return at.Y;
        }

        var along = view.Placement.Apply(new Vec2(-Trig.Sin(member.Grain), Trig.Cos(member.Grain)));
        var half = along * HalfMm;
        var middle = at - new Vec2(0, Math.Abs(half.Y));
        foreach (var way in (ReadOnlySpan<Vec2>)[half, -half])
        {
            var (tip, back) = (middle + way, way.Unit * -HeadMm);
            board.Line(Part, Role.Mark, middle, tip);
            board.Line(Part, Role.Mark, tip, tip + back + (back.Left * 0.4));
            board.Line(Part, Role.Mark, tip, tip + back - (back.Left * 0.4));
        }

        board.Write(Part, "long grain" + whose, middle + new Vec2(Math.Abs(half.X) + 5, -(SheetBoard.TextMm / 2)));
        return middle.Y - Math.Abs(half.Y);
    }
}
