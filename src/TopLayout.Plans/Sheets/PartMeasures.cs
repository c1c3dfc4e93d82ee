using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Plans.Sheets;

/// <summary>What the template of a part says: its sizes, its stuff, and where each piece goes.</summary>
internal static class PartMeasures
{
    // From the part's edge to the line of a size, mm.
    private const double OverMm = 6;
    private const double UnderMm = 11;
    private const double BesideMm = 8;

    /// <summary>Draws its sizes round it: across, at the front and the rear edge where they differ, and along; of a ring outside and inside.</summary>
    public static void Draw(SheetBoard board, string part, Region footprint, LengthUnit units)
    {
        string Of(double mm) => LengthText.WithUnit(mm, units);
        var (outer, box) = (footprint.Outer, footprint.Bounds);
        void Across(string words) => Dimension.Across(board, part, outer.Reach(-Vec2.UnitX), outer.Reach(Vec2.UnitX), box.Max.Y + OverMm, words);
        void Along(string words) => Dimension.Upright(board, part, outer.Reach(Vec2.UnitY), outer.Reach(-Vec2.UnitY), box.Max.X + BesideMm, words);
        if (FullCircle.Of(outer) is { } round)
        {
            Across($"{(footprint.Loops.Length > 1 ? "outside " : "")}diameter {Of(2 * round.RadiusMm)}");
        }
        else if (Widths(outer) is var (front, rear) && Math.Abs(front - rear) > Tolerances.ShortestMm)
        {
            void Edge(double y, double width, double height, string words) =>
                Dimension.Across(board, part, new Point2(LevelEdge(outer, y).Min.X, y), new Point2(LevelEdge(outer, y).Max.X, y), height, $"{words} {Of(width)}");
            Edge(box.Max.Y, front, box.Max.Y + OverMm, "front edge");
            Edge(box.Min.Y, rear, box.Min.Y - UnderMm, "rear edge");
            Along(Of(box.Height));
        }
        else
        {
            Across(Of(box.Width));
            Along(Of(box.Height));
        }

        foreach (var inner in footprint.Loops.Skip(1))
        {
            var words = FullCircle.Of(inner) is { } hole ? $"inside diameter {Of(2 * hole.RadiusMm)}" : $"inside {Of(inner.Bounds.Width)} x {Of(inner.Bounds.Height)}";
            var level = inner.Bounds.Center.Y;
            Dimension.Across(board, part, new Point2(inner.Bounds.Min.X, level), new Point2(inner.Bounds.Max.X, level), box.Min.Y - UnderMm, words);
        }
    }

    // The point of a closed contour that lies farthest in a direction along an axis; of an edge square to it the end nearer to the upper right.
    private static Point2 Reach(this Contour contour, Vec2 direction) => contour.Segments
        .SelectMany(s => (Point2[])[s.Start, s.PointAt(0.25), s.PointAt(0.5), s.PointAt(0.75)])
        .OrderByDescending(p => Math.Round((p.X * direction.X) + (p.Y * direction.Y), 3)).ThenByDescending(p => p.X + p.Y).First();

    private static Box2 LevelEdge(Contour outer, double y) =>
        outer.Segments.Where(s => Math.Abs(s.Start.Y - y) <= Tolerances.TouchMm && Math.Abs(s.End.Y - y) <= Tolerances.TouchMm).Select(s => s.Bounds()).MaxBy(b => b.Width);

    /// <summary>How thick it is, of what, and how that is sawn where the design says so: "1.5 mm thick, Sitka spruce, quarter-sawn".</summary>
    public static string Stuff(Member member, LengthUnit units)
    {
        var material = member.Material!;
        var thick = LengthText.WithUnit(member.ThicknessMm, units) + (member.Kind == MemberKind.Block ? " deep, through the rim" : " thick");
        return material.Sawing switch
        {
            Sawing.Quarter => $"{thick}, {material.Wood.Name}, quarter-sawn",
            Sawing.Flat => $"{thick}, {material.Wood.Name}, flat-sawn",
            _ => $"{thick}, {material.Wood.Name}",
        };
    }

    /// <summary>Where one piece lies along the body and across it, by its ends, or by its middle where it is round.</summary>
    public static string Place(Member member, LengthUnit units)
    {
        string Of(double mm) => LengthText.WithUnit(mm, units);
        var box = member.Footprint.Bounds;
        if (FullCircle.Of(member.Footprint.Outer) is { } circle)
        {
            return $"centre {Of(-circle.Center.Y)} from neck edge, {Across(circle.Center.X, units)}";
        }

        return $"{LengthText.Of(-box.Max.Y, units)} to {Of(-box.Min.Y)} from neck edge, {Across(box.Min.X, box.Max.X, units)}";
    }

    private static string Across(double x, LengthUnit units) =>
        Math.Abs(x) <= Tolerances.ShortestMm ? "on the centre line" : $"{LengthText.Of(Math.Abs(x), units)} to {Side(x)} of the centre line";

    private static string Across(double from, double to, LengthUnit units)
    {
        string Of(double mm) => LengthText.Of(Math.Abs(mm), units);
        var (near, far) = Math.Abs(from) <= Math.Abs(to) ? (from, to) : (to, from);
        return Math.Abs(from + to) <= Tolerances.ShortestMm ? "middle on the centre line"
            : from * to < 0 ? $"{Of(from)} to bass and {Of(to)} to treble of the centre line"
            : $"{Of(near)} to {Of(far)} to {Side(far)} of the centre line";
    }

    private static string Side(double x) => x < 0 ? "bass" : "treble";

    // At the neck end and at the tail end of a part of four straight sides; null for another.
    private static (double Front, double Rear)? Widths(Contour outer)
    {
        var (box, level) = (outer.Bounds, outer.Segments.Where(s => !s.IsArc && Math.Abs(s.Start.Y - s.End.Y) <= Tolerances.TouchMm).ToList());
        double? At(double y) => level.Where(s => Math.Abs(s.Start.Y - y) <= Tolerances.TouchMm).Select(s => (double?)s.Length).FirstOrDefault();
        return outer.Segments.Length == 4 && At(box.Max.Y) is { } front && At(box.Min.Y) is { } rear ? (front, rear) : null;
    }
}
