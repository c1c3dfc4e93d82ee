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
                return [new Segment(from, Node(node[(colon + 1)..]), BulgeOf(Number(node[1..colon])))];
            default:
                return [new Segment(from, Node(node))];
        }
    }

    // A quarter oval of two arcs: the flat one turns 30°, the round one 60°, which gives fuller ends than an ellipse. A first arc of
    // radius p turns by t, a second of radius q by the rest of 90°; the reach a along the first tangent is p·sin t + q·(1 − sin t),
    // the reach b along the last p·(1 − cos t) + q·cos t, the joint lies at (p·sin t, p·(1 − cos t)).
    private static Segment[] Quarter(Point2 from, Point2 to, bool left)
    {
        var d = to - from;
        var alongXFirst = d.X * d.Y > 0 == left;
        var (u, v) = alongXFirst ? (new Vec2(d.X, 0), new Vec2(0, d.Y)) : (new Vec2(0, d.Y), new Vec2(d.X, 0));
        var (a, b) = (u.Length, v.Length);
        var side = left ? 1 : -1;
        if (a == b)
        {
            return [new Segment(from, to, side * BulgeOf(90))];
        }

        var turn = a > b ? 30 : 60;
        var (s, c) = (Trig.Sin(Angle.FromDegrees(turn)), Trig.Cos(Angle.FromDegrees(turn)));
        var p = ((a * c) - (b * (1 - s))) / ((s * c) - ((1 - s) * (1 - c)));
        var joint = from + (u.Unit * (p * s)) + (v.Unit * (p * (1 - c)));
        return [new Segment(from, joint, side * BulgeOf(turn)), new Segment(joint, to, side * BulgeOf(90 - turn))];
    }

    private static double BulgeOf(double degrees) => Trig.Tan(Angle.FromDegrees(degrees / 4));

    // An arc turns by twice the angle between its first tangent and its chord.
    private static Segment Smooth(Point2 from, Point2 to, Vec2 tangent) => new(from, to, Trig.Tan(Trig.Turn(tangent, to - from) / 2));

    private static Point2 Node(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return new Point2(Number(text[..comma]), Number(text[(comma + 1)..]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
