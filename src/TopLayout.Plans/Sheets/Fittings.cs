using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>What is drawn besides members: the outlines of slots and caps, and holes to drill with their crosses.</summary>
internal static class Fittings
{
    /// <summary>From a hole's edge to the end of its cross, mm.</summary>
    public const double CrossMm = 2;

    // A leader's dot keeps this off every line.
    private const double ClearMm = 0.5;

    /// <summary>Draws the marks of a face, those behind it hidden, and the drill points.</summary>
    /// <param name="board">The sheet.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="view">The face.</param>
    /// <param name="only">The drill points to draw, and with them what this face has in their part, not at the rim; all when left out.</param>
    public static void Draw(SheetBoard board, Layout layout, FaceView view, IEnumerable<DrillPoint>? only = null)
    {
        foreach (var mark in layout.Marks.Where(m => only is null || (m.Face == view.Face && !Binding.IsLedge(m))))
        {
            var isNear = mark.Face == view.Face;
            board.Draw(mark.Name, isNear && !mark.IsCovered ? Role.Mark : Role.Hidden, view.Map(mark.Line), isNear ? Emphasis.Normal : Emphasis.Faint);
            if (isNear && only is null)
            {
                board.Name(Name(board, mark, view.Map(mark.Line)));
            }
        }

        foreach (var point in only ?? layout.DrillPoints)
        {
            Cross(board, point, view.Map(point.At));
        }
    }

    // Of what has an area a point in it, clear of every line; of a line, and of a ledge all round, a point on it.
    private static LabelRequest Name(SheetBoard board, PlanMark mark, Contour line)
    {
        if (!line.IsClosed || Binding.IsLedge(mark))
        {
            return new LabelRequest(mark.Name, Role.Text, mark.Name, SheetBoard.TextMm, line.Segments[0].PointAt(0.5));
        }

        var area = Region.Inside(line);
        var points = MemberLabel.Grid(area).ToList();
        bool IsFree(Point2 p) => board.IsFree(new TurnedBox(p, Vec2.UnitX, ClearMm, ClearMm), breaksLines: false);
        var clear = points.Where(IsFree).DefaultIfEmpty(points[0]).ToList();
        return new LabelRequest(mark.Name, Role.Text, mark.Name, SheetBoard.TextMm, clear[0]) { Elsewhere = [.. clear], Inside = area };
    }

    /// <summary>A circle of the hole's diameter and a cross over its middle.</summary>
    public static void Cross(SheetBoard board, DrillPoint point, Point2 at)
    {
        var reach = point.RadiusMm + CrossMm;
        board.Draw(point.Name, Role.Mark, Contour.Circle(at, point.RadiusMm));
        board.Line(point.Name, Role.Centre, at - (Vec2.UnitX * reach), at + (Vec2.UnitX * reach));
        board.Line(point.Name, Role.Centre, at - (Vec2.UnitY * reach), at + (Vec2.UnitY * reach));
    }
}
