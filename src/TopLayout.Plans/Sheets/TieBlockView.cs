using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The holes through a tie block on the sheet of the bridge: hidden lines where they run below the block's face, and the block seen from the
/// tail below the plan, where their height is to be seen.
/// </summary>
internal static class TieBlockView
{
    /// <summary>The view's part.</summary>
    public const string Part = "tie block from the tail";

    private const double BelowMm = 24;
    private const double CrossMm = 1;

    /// <summary>The holes in the plan.</summary>
    public static void Plan(SheetBoard board, Layout layout, FaceView view)
    {
        foreach (var hole in layout.TieHoles)
        {
            board.Draw(hole.Name, Role.Hidden, view.Map(hole.Outline));
        }
    }

    /// <summary>The block from the tail, the top's face at its foot, below a box; nothing without holes.</summary>
    public static void FromTail(SheetBoard board, Layout layout, Member bridge, FaceView view, Box2 plan)
    {
        if (layout.TieHoles is not [var first, ..] holes || layout.FindMark(BridgePins.TieBlockName) is not { } mark)
        {
            return;
        }

        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var block = view.Map(mark.Line).Bounds;
        var foot = plan.Min.Y - BelowMm - bridge.ThicknessMm;
        board.Draw(Part, Role.Mark, Contour.Rectangle(new Box2(new Point2(block.Min.X, foot), new Point2(block.Max.X, foot + bridge.ThicknessMm))));
        board.Line(Part, Role.Mark, new Point2(plan.Min.X, foot), new Point2(block.Min.X, foot));
        board.Line(Part, Role.Mark, new Point2(block.Max.X, foot), new Point2(plan.Max.X, foot));
        foreach (var hole in holes)
        {
            var at = new Point2(view.Map(hole.From).X, foot + hole.HeightMm);
            board.Draw($"{hole.Name}, from the tail", Role.Mark, Contour.Circle(at, hole.DiameterMm / 2));
            board.Line($"{hole.Name}, from the tail", Role.Centre, at - (Vec2.UnitY * ((hole.DiameterMm / 2) + CrossMm)), at + (Vec2.UnitY * ((hole.DiameterMm / 2) + CrossMm)));
        }

        var ladder = new Ladder("tie block measures", plan.Max.X + 8, outward: 1);
        ladder.Add(foot + bridge.ThicknessMm, $"tie block seen from the tail, {Of(bridge.ThicknessMm)} high");
        ladder.Add(foot + first.HeightMm, $"{Words(holes.Length)}: middles {Of(first.HeightMm)} above the top, dia {Of(first.DiameterMm)}, drilled along the body");
        ladder.Add(foot, "the top's face; no tie hole goes through it");
        ladder.Draw(board);
    }

    /// <summary>How the holes stand across, as the plan's ladder says it; null without holes.</summary>
    public static string? Across(Layout layout)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        return layout.TieHoles switch
        {
            [] => null,
            [_] => "tie hole on the centre line",
            [var first, var second, ..] all =>
                $"{Words(all.Length)} from bass to treble, one for each string: outer ones {Of(all[^1].From.X - first.From.X)} apart, each {Of(second.From.X - first.From.X)} from the next",
        };
    }

    private static string Words(int count) => count == 1 ? "1 tie hole" : $"{NumberFormat.Whole(count)} tie holes";
}
