using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>Axes and lines behind, broken off round letters that stand over them.</summary>
public static class BrokenLines
{
    /// <summary>True for a line that may break off: an axis, or an edge on the far side.</summary>
    public static bool MayBreak(Shape shape) => shape.Role is Role.Centre or Role.Hidden;

    /// <summary>The shapes, with those that may break off left out inside frames.</summary>
    public static IEnumerable<Shape> Of(IEnumerable<Shape> shapes, IReadOnlyList<TurnedBox> frames) => shapes.SelectMany(s =>
    {
        var met = s is ContourShape && MayBreak(s) ? frames.Where(f => f.Bounds.Overlaps(s.Bounds)).ToList() : [];
        return met.Count == 0 ? [s] : Outside(((ContourShape)s).Contour, met).Select(c => c == ((ContourShape)s).Contour ? s : new ContourShape(s.Part, s.Role, c, s.Emphasis));
    });

    // The pieces of a contour outside all frames; the contour itself when that is all of it.
    private static List<Contour> Outside(Contour contour, IReadOnlyList<TurnedBox> frames)
    {
        var (pieces, run, isWhole) = (new List<Contour>(), new List<Segment>(), true);
        void End()
        {
            if (run.Count > 0)
            {
                pieces.Add(Contour.Chain(run, isClosed: false));
                run.Clear();
            }
        }

        foreach (var segment in contour.Segments)
        {
            foreach (var part in Parts(segment, frames))
            {
                var isFree = !frames.Any(f => f.Holds(part.PointAt(0.5)));
                isWhole &= isFree;
                if (isFree)
                {
                    run.Add(part);
                }
                else
                {
                    End();
                }
            }
        }

        End();
        return isWhole ? [contour] : pieces;
    }

    private static IEnumerable<Segment> Parts(Segment segment, IReadOnlyList<TurnedBox> frames)
    {
        var cuts = frames.SelectMany(f => f.ToContour().Segments).SelectMany(side => Intersections.Of(segment, side)).Select(m => m.First).Order().ToList();
        var (from, least) = (0.0, Tolerances.ShortestMm / segment.Length);
        foreach (var to in cuts)
        {
            if (to - from >= least && 1 - to >= least)
            {
                yield return segment.Part(from, to);
                from = to;
            }
        }

        yield return segment.Part(from, 1);
    }
}
