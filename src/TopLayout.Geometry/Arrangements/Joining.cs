namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Makes one edge of neighbours with one label on one line or circle, so that a loop does not show where it was cut. An arc of over
/// half a turn becomes two equal ones; a whole circle becomes two half turns from its lowest, leftmost node.
/// </summary>
internal static class Joining
{
    public static List<Piece> Joined(List<Piece> loop)
    {
        var first = 0;
        while (first < loop.Count && IsOneCurve(loop[(first + loop.Count - 1) % loop.Count], loop[first]))
        {
            first++;
        }

        if (first == loop.Count)
        {
            return Circle(loop);
        }

        return Joined(loop, first);
    }

    /// <summary>The same for a chain that does not close.</summary>
    public static List<Piece> JoinedOpen(List<Piece> chain) => Joined(chain, 0);

    private static List<Piece> Joined(List<Piece> loop, int first)
    {
        var joined = new List<Piece>(loop.Count);
        var run = new List<Piece>();
        for (var k = 0; k < loop.Count; k++)
        {
            var piece = loop[(first + k) % loop.Count];
            if (run.Count > 0 && !Extends(run, piece))
            {
                Close(run, joined);
            }

            run.Add(piece);
        }

        Close(run, joined);
        return joined;
    }

    private static bool IsOneCurve(Piece a, Piece b)
    {
        if (a.Label != b.Label || a.Shape.IsArc != b.Shape.IsArc)
        {
            return false;
        }

        return a.Source == b.Source || (a.Shape.IsArc
            ? a.Carrier.Curvature * b.Carrier.Curvature > 0
              && a.Carrier.Center.IsNear(b.Carrier.Center) && Math.Abs(a.Carrier.Radius - b.Carrier.Radius) <= Tolerances.TouchMm
            : a.Shape.Along.Dot(b.Shape.Along) > 0 && new Curve(a.Start, b.End, 0).Passes(a.End, Tolerances.TouchMm));
    }

    private static bool Extends(List<Piece> run, Piece piece)
    {
        if (!IsOneCurve(run[^1], piece))
        {
            return false;
        }

        if (piece.Shape.IsArc || run.TrueForAll(p => p.Source == piece.Source))
        {
            return true;
        }

        var line = new Curve(run[0].Start, piece.End, 0);
        return run.TrueForAll(p => line.Passes(p.End, Tolerances.TouchMm));
    }

    private static void Close(List<Piece> run, List<Piece> joined)
    {
        var (first, last) = (run[0], run[^1]);
        if (run.Count == 1)
        {
            joined.Add(first);
        }
        else if (!first.Shape.IsArc || run.Sum(p => Trig.Atan(Math.Abs(p.Shape.Bulge)).Degrees) <= 45 + Tolerances.SmoothRadians)
        {
            joined.Add(Whole(first, first.Start, last.End));
        }
        else
        {
            var middle = Opposite(first, first.Start, last.End);
            joined.Add(first.Along(first.Start, middle));
            joined.Add(first.Along(middle, last.End));
        }

        run.Clear();
    }

    // The whole strand again, with its own bulge, when both its ends are back.
    private static Piece Whole(Piece piece, Point2 start, Point2 end) =>
        piece.Carrier.Start == start && piece.Carrier.End == end ? piece with { Shape = piece.Carrier } : piece.Along(start, end);

    // The middle of an arc of over half a turn: across the chord's normal, or opposite the ends when they nearly meet.
    private static Point2 Opposite(Piece arc, Point2 start, Point2 end)
    {
        var center = arc.Carrier.Center;
        var (chord, sum) = (end - start, (start - center) + (end - center));
        var away = chord.Length > sum.Length ? -chord.Left * Math.Sign(arc.Shape.Bulge) : -sum;
        return center + (away.Unit * arc.Carrier.Radius);
    }

    private static List<Piece> Circle(List<Piece> loop)
    {
        if (!loop[0].Shape.IsArc)
        {
            return loop;
        }

        var start = loop[Lowest(loop)].Start;
        var center = loop[0].Carrier.Center;
        var (across, bulge) = (center + (center - start), Math.Sign(loop[0].Shape.Bulge));
        var (there, back) = (new Curve(start, across, bulge), new Curve(across, start, bulge));
        return [loop[0] with { Shape = there, Carrier = there }, loop[0] with { Shape = back, Carrier = back }];
    }

    /// <summary>Index of the piece that starts at the lowest vertex; of vertices equally low (to the touch distance) the leftmost.</summary>
    public static int Lowest(List<Piece> loop)
    {
        var (bottom, best) = (double.PositiveInfinity, -1);
        foreach (var piece in loop)
        {
            bottom = Math.Min(bottom, piece.Start.Y + Tolerances.TouchMm);
        }

        for (var i = 0; i < loop.Count; i++)
        {
            if (loop[i].Start.Y <= bottom && (best < 0 || loop[i].Start.X < loop[best].Start.X))
            {
                best = i;
            }
        }

        return best;
    }
}
