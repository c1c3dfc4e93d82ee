using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Where the plate is smaller than the body, under a binding left in place: the names of both edges, and the ends of the plate.</summary>
internal static class PlateEdges
{
    /// <summary>The part that the plate's edge belongs to.</summary>
    public const string Part = "plate edge";

    private const double LeaderMm = 8;
    private const double DotMm = 0.34;

    /// <summary>The ends of the plate on the centre line where they are not the body's.</summary>
    public static void Ends(Layout layout, Action<double, string> add)
    {
        if (layout.Body.PlateEdge != layout.Outline)
        {
            var plate = layout.Body.PlateEdge.Bounds;
            add(plate.Max.Y, $"{StationLadder.Text(layout, -plate.Max.Y)} neck end of the plate");
            add(plate.Min.Y, $"{StationLadder.Text(layout, -plate.Min.Y)} tail end of the plate");
        }
    }

    /// <summary>Names both, the plate's edge from within and the rim's from outside, so that no leader crosses the other line.</summary>
    public static void Name(SheetBoard board, Layout layout, FaceView view)
    {
        if (layout.Body.PlateEdge != layout.Outline)
        {
            var inside = LengthText.WithUnit(layout.Design[Ledge.Binding].Value, layout.Design.Units);
            EdgeName(board, Part, view.Map(layout.Body.PlateEdge), $"edge of the plate: {inside} inside the outer face of the rim", StationLadder.Step(layout), -1);
            NameRim(board, "outline", layout, view);
        }
    }

    /// <summary>Names the rim's outer face where the plate ends inside it.</summary>
    public static void NameRim(SheetBoard board, string part, Layout layout, FaceView view)
    {
        if (layout.Body.PlateEdge != layout.Outline)
        {
            EdgeName(board, part, view.Map(layout.Outline), "outer face of the rim", StationLadder.Step(layout), 1);
        }
    }

    // Beside the right half, midway between two stations, at the first place from the waist down where nothing is in the way.
    private static void EdgeName(SheetBoard board, string part, Contour edge, string words, double step, int outward)
    {
        var half = ClearPlaces.HalfFrame(words);
        var waist = (int)(-edge.Bounds.Center.Y / step);
        var spots = from n in Enumerable.Range(0, waist).SelectMany(i => (int[])[waist + i, waist - i])
                    let y = -(n + 0.5) * step
                    let met = edge.Crossings(new Segment(new Point2(0, y), new Point2(edge.Bounds.Max.X + 1, y)))
                    where met.Count > 0
                    let free = new Point2(met[^1].Point.X + (outward * LeaderMm), y)
                    orderby !ClearPlaces.IsFree(board, free + new Vec2(outward * half.X, 0), half)
                    select (At: met[^1].Point, Near: free);
        if (spots.Select(s => ((Point2 At, Point2 Near)?)s).FirstOrDefault() is var (at, near))
        {
            board.Line(part, Role.Dimension, near, at);
            board.Draw(part, Role.Dimension, Contour.Circle(at, DotMm));
            board.Write(part, words, near + new Vec2(outward * ClearPlaces.OffLinesMm, -SheetBoard.TextMm / 2), alignment: outward > 0 ? Alignment.Left : Alignment.Right);
        }
    }
}
