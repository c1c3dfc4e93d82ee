namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// What the edges of closed loops sweep when they move to their right: each edge a strip along its normals, which run on through the
/// centre of an arc tighter than the offset; each corner where the border spreads a wedge up to its tip, or its cut. Pieces of simple
/// shape, counter-clockwise: their union is the offset with mitred corners by its definition. It takes four strands an edge where
/// <see cref="RawOffset"/> takes one, but needs no judge: tips reach further than the offset, where distances tell nothing.
/// </summary>
internal sealed class Sweep
{
    private readonly double _rightMm;
    private readonly double _mitreLimit;
    private readonly List<Strand> _strands = [];

    private Sweep(double rightMm, Corner corner) => (_rightMm, _mitreLimit) = (rightMm, corner.MitreLimit);

    /// <summary>
    /// The area of the loops with what they sweep; when they move inward (negative to the right), without. At joints of a loop that
    /// <paramref name="endAfter"/> names a path turns back, ending as it says.
    /// </summary>
    public static Region Of(IEnumerable<IReadOnlyList<Segment>> loops, double rightMm, Corner corner, Func<int, BandEnd?> endAfter)
    {
        var sweep = new Sweep(rightMm, corner);
        foreach (var loop in loops)
        {
            sweep.Add(loop, endAfter);
        }

        return Outlines.Region(Arrangement.Of(sweep._strands), winding => winding >= 1);
    }

    private void Add(IReadOnlyList<Segment> loop, Func<int, BandEnd?> endAfter)
    {
        for (var i = 0; i < loop.Count; i++)
        {
            var side = new Parallel(Curve.Of(loop[i]), _rightMm, loop[i].Label);
            var next = new Parallel(Curve.Of(loop[(i + 1) % loop.Count]), _rightMm, "");
            _strands.Add(new Strand(loop[i]));
            AddStrip(loop[i], side);
            if (endAfter(i) is { } end)
            {
                AddEnd(side, next, end);
            }
            else if (IsSharp(side.Base, next.Base) && InnerCorners.TurnsLeft(side.Base, next.Base) == _rightMm > 0)
            {
                AddWedge(side, next);
            }
        }
    }

    private static bool IsSharp(Curve side, Curve next) =>
        Math.Abs(side.EndTangent.Cross(next.StartTangent)) + Math.Max(0, -side.EndTangent.Dot(next.StartTangent)) > Tolerances.SmoothRadians;

    private void AddStrip(Segment edge, Parallel side)
    {
        var front = new Segment(side.Start, side.End, edge.Bulge, side.Label);
        if (1 + (side.Base.Curvature * _rightMm) > 0)
        {
            AddPiece([edge, Line(edge.End, front.End), front.Reversed(), Line(front.Start, edge.Start)]);
            return;
        }

        var center = side.Base.Center;
        AddPiece([edge, Line(edge.End, center), Line(center, edge.Start)]);
        AddPiece([front, Line(front.End, center), Line(center, front.Start)]);
    }

    // The tip lies where the parallels' tangents meet, on the bisector; at 1/cos(φ/2) times the offset with φ the turn.
    private void AddWedge(Parallel side, Parallel next)
    {
        var (t, u, vertex) = (side.Base.EndTangent, next.Base.StartTangent, side.Base.End);
        var (out1, out2) = (Line(vertex, side.End), Line(next.Start, vertex));
        if (Math.Sqrt(2 / (1 + t.Dot(u))) <= _mitreLimit)
        {
            var tip = vertex - ((t.Left + u.Left) * (_rightMm / (1 + t.Dot(u))));
            AddPiece([out1, new Segment(side.End, tip, 0, side.Label), new Segment(tip, next.Start, 0, side.Label), out2]);
        }
        else
        {
            AddPiece([out1, new Segment(side.End, next.Start, 0, side.Label), out2]);
        }
    }

    private void AddEnd(Parallel side, Parallel next, BandEnd end)
    {
        if (end == BandEnd.Round)
        {
            var (far, quarter) = (side.Base.End + (side.Base.EndTangent * _rightMm), Curve.HalfOfHalf(1, 0, 1));
            AddPiece([new Segment(side.End, far, quarter, side.Label), new Segment(far, next.Start, quarter, side.Label), Line(next.Start, side.End)]);
        }
    }

    private static Segment Line(Point2 from, Point2 to) => new(from, to);

    // Areas that the loops leave when they move inward are run round the other way.
    private void AddPiece(Segment[] piece)
    {
        var isLeft = piece.Sum(s => s.Start == s.End ? 0 : s.AreaTerm()) > 0;
        foreach (var s in piece.Where(s => s.Start != s.End))
        {
            _strands.Add(new Strand(isLeft == _rightMm > 0 ? s : s.Reversed(), 1, 1));
        }
    }
}
