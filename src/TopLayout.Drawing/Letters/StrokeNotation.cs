using System.Globalization;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Letters;

/// <summary>
/// Reads strokes from a short notation. Blanks part the nodes, '|' the strokes; a stroke that ends where it began is closed.
/// <code>
/// x,y       a straight line to the node
/// (x,y      a quarter turn to the left that leaves and arrives along the axes; )x,y the same to the right
/// ~x,y      an arc that runs on smoothly from the piece before
/// @t:x,y    an arc that turns t degrees to the left, or right when negative
/// *x,y      a dot
/// </code>
/// </summary>
internal static class StrokeNotation
{
    private const double DotRadius = 3;

    /// <summary>The contours of a notation.</summary>
    public static IEnumerable<Contour> Read(string notation) => notation.Split('|').Select(s => Stroke(s.Trim()));

    private static Contour Stroke(string notation)
    {
        if (notation[0] == '*')
        {
            return Contour.Circle(Node(notation[1..]), DotRadius);
        }

        var nodes = notation.Split(' ');
        var at = Node(nodes[0]);
        var pieces = new List<Segment>();
        foreach (var node in nodes.Skip(1))
        {
            pieces.AddRange(Pieces(node, at, pieces));
            at = pieces[^1].End;
        }

        return Contour.Chain(pieces, isClosed: at.IsNear(pieces[0].Start));
    }

    private static Segment[] Pieces(string node, Point2 from, List<Segment> before)
    {
        switch (node[0])
        {
            case '(':
                return Quarter(from, Node(node[1..]), left: true);
            case ')':
                return Quarter(from, Node(node[1..]), left: false);
            case '~':
                return [Smooth(from, Node(node[1..]), before[^1].TangentAt(1))];
            case '@':
                var colon = node.IndexOf(':', StringComparison.Ordinal);
                return [new Segment(from, Node(node[(colon + 1)..]), Trig.Tan(Angle.FromDegrees(Number(node[1..colon]) / 4)))];
            default:
                return [new Segment(from, Node(node))];
        }
    }

    // Both arcs of a quarter oval turn 45°. With the reach a along the first tangent and b along the last,
    // a = r·sin45 + q·(1−cos45) and b = r·(1−cos45) + q·sin45; the joint lies at (r·sin45, r·(1−cos45)).
    private static Segment[] Quarter(Point2 from, Point2 to, bool left)
    {
        var d = to - from;
        var alongXFirst = d.X * d.Y > 0 == left;
        var (u, v) = alongXFirst ? (new Vec2(d.X, 0), new Vec2(0, d.Y)) : (new Vec2(0, d.Y), new Vec2(d.X, 0));
        var (a, b) = (u.Length, v.Length);
        var side = left ? 1 : -1;
        if (a == b)
        {
            return [new Segment(from, to, side * Trig.Tan(Angle.FromDegrees(22.5)))];
        }

        var (s, c) = (Trig.Sin(Angle.FromDegrees(45)), 1 - Trig.Cos(Angle.FromDegrees(45)));
        var r = ((a * s) - (b * c)) / ((s * s) - (c * c));
        var joint = from + (u.Unit * (r * s)) + (v.Unit * (r * c));
        var bulge = side * Trig.Tan(Angle.FromDegrees(11.25));
        return [new Segment(from, joint, bulge), new Segment(joint, to, bulge)];
    }

    // An arc turns by twice the angle between its first tangent and its chord.
    private static Segment Smooth(Point2 from, Point2 to, Vec2 tangent) => new(from, to, Trig.Tan(Trig.Turn(tangent, to - from) / 2));

    private static Point2 Node(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return new Point2(Number(text[..comma]), Number(text[(comma + 1)..]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
