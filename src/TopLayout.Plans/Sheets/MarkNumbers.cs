using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The numbers of marks: beside the mark or at its end, nearer to it than to any other; where there is no room, off it at the end of a leader that
/// leaves it at a right angle, across whatever runs along it.
/// </summary>
internal static class MarkNumbers
{
    private const double HeightMm = 4;
    private const double ClearMm = HeightMm * LabelPlacer.ClearancePerHeight;

    // From the line to the white round the number: next to it, or next to its hatching.
    private const double BesideMm = 0.2;
    private const double BesideHatchMm = 3.7;
    private const double NearestOther = 1.4;
    private const double LongestLeaderMm = 30;
    private const double LeaderStepMm = 1;
    private const double DotMm = 0.5;
    private static readonly double[] Fractions = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

    /// <summary>Numbers each piece of each mark.</summary>
    /// <param name="board">The sheet, its lines drawn.</param>
    /// <param name="marks">The part its lines belong to, the number, how strongly it speaks, and the mark.</param>
    public static void Draw(SheetBoard board, IReadOnlyList<(string Part, string Text, Emphasis Emphasis, MarkedStretch Stretch)> marks)
    {
        var taken = new List<TurnedBox>();
        foreach (var (part, text, emphasis, stretch) in marks)
        {
            var others = marks.Where(m => m.Text != text).SelectMany(m => m.Stretch.Paths).ToList();
            var size = Lettering.Measure(text, HeightMm).Grown(ClearMm);
            bool IsFree(Point2 middle) => Frame(middle, size) is var frame && board.IsFree(frame, breaksLines: false) && !taken.Exists(frame.Meets);
            void Write(Point2 middle)
            {
                board.Write(part, text, middle - new Vec2(0, HeightMm / 2), HeightMm, Alignment.Centre, role: Role.Finding, emphasis: emphasis);
                taken.Add(Frame(middle, size));
            }

            if (stretch.Paths.IsEmpty)
            {
                board.Name(new LabelRequest(part, Role.Finding, text, HeightMm, stretch.From) { Priority = -1, Emphasis = emphasis });
            }

            foreach (var path in stretch.Pieces)
            {
                bool IsPlain(Point2 p) => others.TrueForAll(o => o.DistanceTo(p) > NearestOther * path.DistanceTo(p));
                if (Beside(path, size, stretch.IsHatched ? [BesideMm, BesideHatchMm] : [BesideMm]).Concat(AtEnds(path, size)).Where(p => IsPlain(p) && IsFree(p)).Select(p => (Point2?)p).FirstOrDefault() is { } middle)
                {
                    Write(middle);
                }
                else if (Away(board, part, path, size, IsFree) is ({ } foot, { } end, { } at))
                {
                    board.Line(part, Role.Dimension, end, foot, emphasis);
                    board.Draw(part, Role.Dimension, Contour.Circle(foot, DotMm), emphasis);
                    Write(at);
                }
                else
                {
                    board.Name(new LabelRequest(part, Role.Finding, text, HeightMm, MarkedStretch.At(path, 0.5).Point) { Priority = -1, Emphasis = emphasis });
                }
            }
        }
    }

    private static TurnedBox Frame(Point2 middle, Box2 size) => TurnedBox.Around(middle, size, Angle.Zero);

    // How far a box reaches from its middle in a direction.
    private static double Reach(Box2 size, Vec2 way) => (Math.Abs(way.X) * size.Width / 2) + (Math.Abs(way.Y) * size.Height / 2);

    private static IEnumerable<Point2> Beside(Contour path, Box2 size, double[] offs) =>
        from off in offs
        from fraction in Fractions
        let at = MarkedStretch.At(path, fraction)
        from way in (Vec2[])[-at.Along.Left, at.Along.Left]
        select at.Point + (way * (Reach(size, way) + off));

    private static IEnumerable<Point2> AtEnds(Contour path, Box2 size) =>
        from fraction in (double[])[1, 0]
        let at = MarkedStretch.At(path, fraction)
        let way = fraction == 1 ? at.Along : -at.Along
        select at.Point + (way * (Reach(size, way) + BesideMm));

    // The leader over the fewest lines, then the shortest: on its way a leader only meets more of them, so the first free place on each way is the best there.
    private static (Point2 Foot, Point2 End, Point2 Middle)? Away(SheetBoard board, string part, Contour path, Box2 size, Func<Point2, bool> isFree)
    {
        var first =
            from fraction in Fractions
            let at = MarkedStretch.At(path, fraction)
            from way in (Vec2[])[-at.Along.Left, at.Along.Left]
            let step = Enumerable.Range(1, (int)(LongestLeaderMm / LeaderStepMm)).FirstOrDefault(s => isFree(at.Point + (way * ((s * LeaderStepMm) + Reach(size, way)))))
            where step > 0
            select (At: at.Point, Way: way, Step: step, End: at.Point + (way * (step * LeaderStepMm)));
        return first
            .OrderBy(l => board.Crossed(new Segment(l.At, l.End), part)).ThenBy(l => l.Step)
            .Select(l => ((Point2, Point2, Point2)?)(l.At, l.End, l.End + (l.Way * Reach(size, l.Way)))).FirstOrDefault();
    }
}
