using System.Globalization;
using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>One page for each operation on curves.</summary>
public class CurvePictureTests
{
    private static string F(double value, int decimals = 2) => (Math.Round(value, decimals) + 0.0).ToString("F" + decimals, CultureInfo.InvariantCulture);

    private static string Count(int found, int inView) =>
        $"{found} {(found == 1 ? "solution" : "solutions")}" + (inView < found ? $", {found - inView} too large to draw" : "");

    private static void Draw(PicturePanel panel, params Given[] givens)
    {
        foreach (var given in givens)
        {
            if (given.Line is { } line)
            {
                var (foot, along) = (line.Foot(default), line.Direction.Unit * 46);
                panel.Given(PicturePanel.Line(foot - along, foot + along));
            }
            else if (given.Circle is { Radius: > 0 } circle)
            {
                panel.Given(circle.ToContour());
            }
            else
            {
                panel.Dot(given.Circle!.Value.Center);
            }
        }
    }

    [Fact]
    public void Fillets()
    {
        var page = new PicturePage("fillets", "Fillets and chamfers at one corner");
        void Case(string caption, Contour c, int vertex, double radius)
        {
            var panel = page.Panel(caption, $"radius {F(radius, 0)}");
            panel.Before(c);
            panel.Dot(c.Vertices[vertex].Position);
            foreach (var rounded in c.Fillets(vertex, radius, "fillet"))
            {
                panel.Result(rounded);
                panel.Dot(rounded.Segments.First(s => s.Label == "fillet").Center, 0.5);
            }
        }

        var plate = Contour.Polygon(new(-50, -35), new(50, -35), new(50, -5), new(0, -5), new(-15, 30), new(-50, 30));
        var half = new Contour([new(new(-45, -25)), new(new(45, -25), 1)], isClosed: true);
        var lens = new Contour([new(new(-50, 0), 0.5), new(new(50, 0), 0.35)], isClosed: true);
        var heart = new Contour([new(new(0, -45)), new(new(48, 3), 0.9), new(new(0, 3), 0.9), new(new(-48, 3))], isClosed: true);
        Case("line-line, convex", plate, 1, 18);
        Case("line-line, hollow", plate, 3, 14);
        Case("line-arc, convex", half, 1, 14);
        Case("arc-arc, convex", lens, 1, 12);
        Case("arc-arc, hollow", heart, 2, 16);
        var chamfers = page.Panel("chamfers", "18 before and 10 after, along the contour");
        chamfers.Before(half);
        chamfers.Result(half.TryChamfer(1, 18, 10)!.TryChamfer(0, 18, 10)!);
        page.AssertAsAccepted();
    }

    [Fact]
    public void TangentCirclesToThree()
    {
        var page = new PicturePage("tangent-circles-three", "Circles that touch three givens (Apollonius)");
        void Case(string caption, Given a, Given b, Given c)
        {
            var found = TangentCircles.To(a, b, c);
            var inView = found.Where(s => s.Center.DistanceTo(default) + s.Radius < 64).ToList();
            var panel = page.Panel(caption, Count(found.Count, inView.Count));
            Draw(panel, a, b, c);
            inView.ForEach(s => panel.Result(s.ToContour()));
        }

        Case("three points", new Point2(-30, -20), new Point2(30, -10), new Point2(0, 25));
        Case("three lines", Line.Through(new(-20, -22), new(20, -22)), Line.Through(new(18, -24), new(-2, 6)), Line.Through(new(2, 6), new(-18, -24)));
        Case("two points and a circle", new Point2(-35, 0), new Point2(5, 23), new Circle(new(20, -20), 12));
        Case("point, line and circle", new Point2(-10, -2), Line.Through(new(-50, -30), new(50, -30)), new Circle(new(20, -5), 10));
        Case("two lines and a circle", Line.Through(new(-50, -35), new(50, -25)), Line.Through(new(-50, 35), new(50, 25)), new Circle(new(0, 0), 12));
        Case("three circles apart", new Circle(new(-16, -10), 8), new Circle(new(16, -9), 6), new Circle(new(0, 14), 10));
        page.AssertAsAccepted();
    }

    [Fact]
    public void TangentsToTwo()
    {
        var page = new PicturePage("tangents-two", "Circles of a radius, common tangents and tangent arcs");
        void Radius(string caption, Given a, Given b, double radius)
        {
            var found = TangentCircles.To(a, b, radius);
            var panel = page.Panel(caption, $"radius {F(radius, 0)}: {Count(found.Count, found.Count)}");
            Draw(panel, a, b);
            found.ToList().ForEach(s => panel.Result(s.ToContour()));
        }

        void Leaving(string caption, Given target)
        {
            var (start, tangent) = (new Point2(-20, -32), new Vec2(1, 0.25));
            var arcs = Arcs.LeavingToTouch(start, tangent, target);
            var inView = arcs.Where(a => a.Length < 160).ToList();
            var panel = page.Panel(caption, Count(arcs.Count, inView.Count));
            Draw(panel, target, start);
            panel.Aid(PicturePanel.Line(start - (tangent * 25), start + (tangent * 25)));
            inView.ForEach(panel.Result);
        }

        Radius("line and circle", Line.Through(new(-50, -10), new(50, -10)), new Circle(new(0, 0), 18), 8);
        Radius("two circles", new Circle(new(-16, 0), 16), new Circle(new(16, 0), 12), 7);
        Radius("point and line", new Point2(0, -10), Line.Through(new(-50, -22), new(50, -18)), 15);
        var (first, second) = (new Circle(new(-25, -5), 18), new Circle(new(28, 3), 10));
        var tangents = CommonTangents.Of(first, second);
        var common = page.Panel("common tangents of two circles", Count(tangents.Count, tangents.Count));
        Draw(common, first, second);
        tangents.ToList().ForEach(t => common.Result(PicturePanel.Line(t.OnFirst, t.OnSecond)));
        Leaving("tangent arcs from a point to a line", Line.Through(new(-50, -10), new(50, 30)));
        Leaving("tangent arcs from a point to a circle", new Circle(new(10, 10), 14));
        page.AssertAsAccepted();
    }

    [Fact]
    public void Fits()
    {
        var page = new PicturePage("arc-fits", "Chains of arcs fitted to points and Bezier curves");
        void Case(string caption, Contour fit, IReadOnlyList<Point2> points, double tolerance)
        {
            var panel = page.Panel(caption, $"{fit.Segments.Length} segments, largest residual {F(points.Max(fit.DistanceTo), 3)} of {F(tolerance, 3)}");
            points.ToList().ForEach(panel.Sample);
            panel.Result(fit);
            fit.Vertices.ToList().ForEach(v => panel.Dot(v.Position, 1));
        }

        var r = new Random(3);
        var s = Contour.Chain(
            [Segment.Leaving(new(-50, -25), new(1, 0), new(-10, -5)), Segment.Leaving(new(-10, -5), new(0.6, 0.8), new(50, 20))], isClosed: false);
        List<Point2> scattered = [.. Enumerable.Range(0, 60).Select(i => s.PointAt(s.Length * i / 59) + new Vec2(r.Between(-0.4, 0.4), r.Between(-0.4, 0.4)))];
        Case("scatter of 0.4 round two arcs, open", ArcFit.Through(scattered, false, 0.8, Angle.FromDegrees(60)), scattered, 0.8);
        List<Point2> pear = [.. Enumerable.Range(0, 70).Select(i => Angle.FromDegrees(i * 360 / 70.0)).Select(a =>
            default(Point2) + (Trig.Direction(a) * (32 + (5 * Trig.Cos(a * 2)) - (3 * Trig.Sin(a * 3)))))];
        Case("smooth closed row", ArcFit.Through(pear, true, 0.3, Angle.FromDegrees(60)), pear, 0.3);
        Case("the same, a tighter tolerance", ArcFit.Through(pear, true, 0.03, Angle.FromDegrees(60)), pear, 0.03);
        var plate = new Contour([new(new(-45, -30)), new(new(45, -30)), new(new(45, 0), 0.2), new(new(-45, 20))], isClosed: true);
        List<Point2> cornered = [.. plate.Segments.SelectMany(e => Enumerable.Range(0, 20).Select(i => e.PointAt(i / 20.0)))];
        Case("corners kept", ArcFit.Through(cornered, true, 0.1, Angle.FromDegrees(35)), cornered, 0.1);
        CubicBezier[] curves = [new(new(-50, -25), new(-20, -25), new(-40, 35), new(0, 20)), new(new(0, 20), new(40, 5), new(10, -45), new(50, -20))];
        List<Point2> along = [.. curves.SelectMany(c => Enumerable.Range(0, 31).Select(i => c.PointAt(i / 30.0)))];
        Case("two cubic Bezier curves", ArcFit.Along(curves, 0.1, Angle.FromDegrees(20))!, along, 0.1);
        Case("the same, a tighter tolerance", ArcFit.Along(curves, 0.01, Angle.FromDegrees(20))!, along, 0.01);
        page.AssertAsAccepted();
    }

    [Fact]
    public void FlatteningAndMeasures()
    {
        var page = new PicturePage("flattening-measures", "Flattening, and the measures of areas");
        var drop = new Contour([new(new(-50, 0)), new(new(20, -30), 1), new(new(20, 30))], isClosed: true);
        foreach (var tolerance in (ReadOnlySpan<double>)[8, 1, 0.05])
        {
            var flat = drop.Flattened(tolerance);
            var panel = page.Panel($"flattened within {F(tolerance)}: {flat.Count} points", $"area {F(drop.SignedArea, 1)}, flattened {F(Contour.Polygon(flat).SignedArea, 1)}");
            panel.Before(drop);
            panel.Result(Contour.Polygon(flat));
            flat.ToList().ForEach(p => panel.Dot(p));
        }

        void Moments(string caption, Contour c)
        {
            var m = c.Moments();
            var panel = page.Panel(caption, $"area {F(m.SignedArea, 1)}, Ixx {F(m.Ixx, 0)}, Iyy {F(m.Iyy, 0)}, Ixy {F(m.Ixy, 0)}");
            panel.Given(c);
            panel.Dot(m.Centroid, 1.2);
            panel.Aid(PicturePanel.Line(new(-55, m.Centroid.Y), new(55, m.Centroid.Y)));
            panel.Aid(PicturePanel.Line(new(m.Centroid.X, -42), new(m.Centroid.X, 40)));
            var p = new Point2(45, 30);
            panel.Dot(p);
            panel.Result(PicturePanel.Line(p, c.ClosestTo(p).Point));
            panel.Label(new Point2(26, 33), "closest point", 3);
        }

        Moments("half circle, radius 40", new Contour([new(new(40, -20), 1), new(new(-40, -20))], isClosed: true));
        Moments("drop", drop);
        Moments("angle", Contour.Polygon(new(-45, -35), new(45, -35), new(45, -15), new(-25, -15), new(-25, 35), new(-45, 35)));
        page.AssertAsAccepted();
    }
}
