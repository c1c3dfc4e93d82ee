using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// The findings on a plan: the stretch of the top between two bars square to it, a number beside it, and the list of numbers with what was
/// measured. A run along the grain is hatched besides, the closer the worse it is, and its grain line goes down to the profile. Widths,
/// dashes and hatching tell the verdicts apart without colour. The numbers are the same on all sheets and in the report.
/// </summary>
internal sealed class FindingMarks
{
    private const string Part = "grain run";

    private const int MostUnmarked = 6;

    private readonly IReadOnlyList<Finding> _marked;
    private readonly IReadOnlyList<Finding> _unmarkedFails;

    private FindingMarks(ReviewedTop top, int most)
    {
        _marked = [.. Marked(top).Take(most)];
        _unmarkedFails = [.. top.Findings.Where(f => f.Severity == Severity.Fail && !_marked.Contains(f))];
    }

    /// <summary>The highest number marked.</summary>
    public int Count => _marked.Count;

    /// <summary>How many a plan has at most; the grain sheet has more.</summary>
    public const int MostOnPlan = 6;

    private const int MostOnGrainSheet = 20;

    /// <summary>The worst, of those with a place on the top that ask for something.</summary>
    public static FindingMarks OnPlan(ReviewedTop top) => new(top, MostOnPlan);

    /// <summary>Many.</summary>
    public static FindingMarks OnGrainSheet(ReviewedTop top) => new(top, MostOnGrainSheet);

    /// <summary>The number by which a finding is marked; null when no sheet marks it.</summary>
    public static int? NumberOf(Finding finding, ReviewedTop top) =>
        Marked(top).Take(MostOnGrainSheet).Index().Where(f => f.Item == finding).Select(f => (int?)f.Index + 1).FirstOrDefault();

    /// <summary>Marks each stretch, and numbers each piece of it.</summary>
    public void Draw(SheetBoard board, FaceView view)
    {
        var marks = new List<NumberedMark>();
        foreach (var (i, finding) in _marked.Index())
        {
            foreach (var (where, trace) in Stretches(finding))
            {
                marks.Add(new NumberedMark(finding, i + 1, Apart($"{Part} {NumberFormat.Whole(i + 1)}", finding, where, trace, view, marks)));
            }
        }

        foreach (var (finding, _, stretch) in marks)
        {
            stretch.Draw(board, Of(finding.Severity));
            if (finding.Severity > Severity.Note && IsRun(finding))
            {
                stretch.Hatch(board, isClose: finding.Severity == Severity.Fail);
            }
        }

        MarkNumbers.Draw(board, [.. marks.Select(m => ($"{Part} {NumberFormat.Whole(m.Number)}", NumberFormat.Whole(m.Number), Of(m.Finding.Severity), m.Stretch))]);
    }

    private sealed record NumberedMark(Finding Finding, int Number, MarkedStretch Stretch);

    // Each place of a finding, with what of its edges no other place of it has.
    private static IEnumerable<((Point2 From, Point2 To) Where, ImmutableArray<Segment> Trace)> Stretches(Finding finding)
    {
        var drawn = new List<Segment>();
        foreach (var (i, where) in finding.AlsoAt.Prepend(finding.Where!.Value).Index())
        {
            var trace = finding.Traces.ElementAtOrDefault(i) is { IsDefault: false } known ? known : [];
            ImmutableArray<Segment> left = [.. trace.SelectMany(s => NotYet(s, drawn))];
            drawn.AddRange(left);
            if (trace.IsEmpty || !left.IsEmpty)
            {
                yield return (where, left);
            }
        }
    }

    // In the first lane that no other finding has there.
    private static MarkedStretch Apart(string part, Finding finding, (Point2 From, Point2 To) where, ImmutableArray<Segment> trace, FaceView view, List<NumberedMark> others)
    {
        MarkedStretch In(int lane) => new(part, where, trace, view, IsRun(finding), lane);
        var lane = 0;
        while (lane < others.Count && In(lane) is var own && others.Exists(o => o.Finding != finding && own.MeltsInto(o.Stretch)))
        {
            lane++;
        }

        return In(lane);
    }

    // Marks of one finding may share a stretch of an edge: it is drawn once.
    private static IEnumerable<Segment> NotYet(Segment edge, List<Segment> drawn)
    {
        bool IsOn(Segment own, Point2 p) => own.DistanceTo(p) <= Tolerances.CoarsestTouchMm;
        var cuts = drawn.SelectMany(d => (Point2[])[d.Start, d.End]).Where(p => IsOn(edge, p)).Select(edge.NearestFraction).Append(0).Append(1).Order().ToList();
        return cuts.Zip(cuts.Skip(1)).Where(c => (c.Second - c.First) * edge.Length > Tolerances.ShortestMm)
            .Select(c => edge.Part(c.First, c.Second)).Where(part => !drawn.Exists(d => IsOn(d, part.PointAt(0.5))));
    }

    /// <summary>
    /// The grain lines of the failed runs and warnings: on along the grain to the tail of the body, and below it as high in the profile as the
    /// run is long.
    /// </summary>
    public void GrainLines(SheetBoard board, FaceView view, double tailY, double footY)
    {
        foreach (var (number, finding) in _marked.Index().Where(f => f.Item.Severity > Severity.Note && IsRun(f.Item)))
        {
            var (from, to) = finding.Where!.Value;
            var along = (from - to).Unit;
            var at = from + (along * ((from.Y - tailY) / -along.Y));
            var (part, foot) = ($"{Part} {NumberFormat.Whole(number + 1)}", new Point2(at.X, footY));
            board.Line(part, Role.Finding, view.Map(from), view.Map(at), Emphasis.Faint);
            board.Line(part, Role.Finding, view.Map(foot), view.Map(foot + (Vec2.UnitY * finding.Measured!.Value.Value)), Emphasis.Faint);
        }
    }

    /// <summary>Writes the list under a height, the failed checks without a mark last; returns the height below it, mm.</summary>
    public double List(SheetBoard board, Point2 topLeft, LengthUnit units)
    {
        var y = topLeft.Y;
        void Write(string line, Severity severity)
        {
            y -= 5;
            board.Write("findings", line, new Point2(topLeft.X, y), role: Role.Text, emphasis: Of(severity));
        }

        foreach (var (i, finding) in _marked.Index())
        {
            Write($"{NumberFormat.Whole(i + 1)} {FindingText.Word(finding.Severity)}: {MarkWords.Of(finding, units)}", finding.Severity);
        }

        foreach (var finding in _unmarkedFails.Take(MostUnmarked))
        {
            Write($"not marked, {FindingText.Word(finding.Severity)}: {finding.Subject}: {finding.Rule.Name}", finding.Severity);
        }

        if (_unmarkedFails.Count > MostUnmarked)
        {
            Write($"and {NumberFormat.Whole(_unmarkedFails.Count - MostUnmarked)} more failed checks: see the report", Severity.Fail);
        }

        return y;
    }

    private static IEnumerable<Finding> Marked(ReviewedTop top) =>
        top.Findings.Where(f => f.Where is not null && f.Severity is Severity.Fail or Severity.Warning or Severity.Note);

    /// <summary>Only these lie along the grain: other findings may run any way, or name a point.</summary>
    internal static bool IsRun(Finding finding) => finding.Rule == Rules.EdgeAlongGrain || finding.Rule == Rules.EdgesInLine;

    private static Emphasis Of(Severity severity) => severity switch
    {
        Severity.Fail => Emphasis.Bad,
        Severity.Warning => Emphasis.Doubtful,
        _ => Emphasis.Normal,
    };
}
