using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>Fills areas with parallel strokes that keep off the border and break off where something must stay free.</summary>
public static class Hatching
{
    /// <summary>From the border to the end of a stroke, along it, mm: strokes of two areas that touch are no line with a gap.</summary>
    public const double OffBorderMm = 0.4;

    // A shorter stroke reads as dirt.
    private const double LeastMm = 0.8;

    /// <summary>
    /// The strokes across an area, a step apart, on one grid through the origin. A stroke that only grazes a corner or an arc is left out.
    /// </summary>
    /// <param name="area">The area.</param>
    /// <param name="direction">The strokes' direction from +x.</param>
    /// <param name="stepMm">From one to the next, square to them, mm, &gt; 0.</param>
    /// <param name="free">Closed contours inside which nothing is drawn.</param>
    public static IEnumerable<Contour> Strokes(Region area, Angle direction, double stepMm, IEnumerable<Contour> free)
    {
        var (turn, back) = (new Placement(default, direction, false), new Placement(default, -direction, false));
        var bounds = area.Bounds;
        var level = area.Placed(back);
        var gaps = free.Where(f => f.Bounds.Overlaps(bounds)).Select(f => f.Placed(back)).ToList();
        var box = level.Bounds;

        // Every line runs past all it may cross, or it would meet a gap once.
        var reach = gaps.Aggregate(box, (b, g) => b.Union(g.Bounds));
        var (loops, holes) = (level.Loops.Select(l => new Loop(l)).ToArray(), gaps.Select(g => new Loop(g)).ToArray());
        for (var row = Math.Floor(box.Min.Y / stepMm) + 1; row * stepMm < box.Max.Y; row++)
        {
            var line = new Segment(new Point2(reach.Min.X - 1, row * stepMm), new Point2(reach.Max.X + 1, row * stepMm));
            var pieces = Inside(loops, line);
            foreach (var hole in holes)
            {
                pieces = hole.IsAt(line) ? Without(pieces, Inside([hole], line)) : pieces;
            }

            foreach (var (from, to) in pieces)
            {
                var (start, end) = (new Point2(from + OffBorderMm, line.Start.Y), new Point2(to - OffBorderMm, line.Start.Y));
                if (end.X - start.X >= LeastMm)
                {
                    yield return new Contour([new Vertex(turn.Apply(start)), new Vertex(turn.Apply(end))], isClosed: false);
                }
            }
        }
    }

    // The stretches of a level line inside closed loops, by the even-odd rule; none where it meets them an odd number of times.
    private static List<(double From, double To)> Inside(ReadOnlySpan<Loop> loops, Segment line)
    {
        var met = new List<double>();
        foreach (var loop in loops)
        {
            loop.AddCrossings(line, met);
        }

        met.Sort();
        var pieces = new List<(double From, double To)>();
        for (var i = 1; met.Count % 2 == 0 && i < met.Count; i += 2)
        {
            pieces.Add((met[i - 1], met[i]));
        }

        return pieces;
    }

    private static List<(double From, double To)> Without(List<(double From, double To)> pieces, List<(double From, double To)> gaps)
    {
        foreach (var gap in gaps)
        {
            pieces = [.. pieces.SelectMany(p => ((double From, double To)[])[(p.From, Math.Min(p.To, gap.From)), (Math.Max(p.From, gap.To), p.To)]).Where(p => p.To > p.From)];
        }

        return pieces;
    }

    // A closed contour and how far each of its pieces reaches.
    private readonly struct Loop(Contour contour)
    {
        // Two crossings nearer than this are one, at the end of a piece.
        private const double OnceMm = 10 * Tolerances.TouchMm;

        private readonly Box2 _bounds = contour.Bounds;
        private readonly (Segment Piece, Box2 Bounds)[] _pieces = [.. contour.Segments.Select(s => (s, s.Bounds().Grown(Tolerances.TouchMm)))];

        public bool IsAt(Segment line) => IsAt(_bounds, line);

        // Where a level line that runs past all of it crosses it; two pieces that meet on the line count once.
        public void AddCrossings(Segment line, List<double> met)
        {
            var first = met.Count;
            if (!IsAt(line))
            {
                return;
            }

            foreach (var (piece, bounds) in _pieces)
            {
                foreach (var meeting in IsAt(bounds, line) ? Intersections.Of(line, piece) : [])
                {
                    if (met.FindIndex(first, x => Math.Abs(x - meeting.Point.X) <= OnceMm) < 0)
                    {
                        met.Add(meeting.Point.X);
                    }
                }
            }
        }

        private static bool IsAt(Box2 bounds, Segment line) => bounds.Min.Y <= line.Start.Y && line.Start.Y <= bounds.Max.Y;
    }
}
