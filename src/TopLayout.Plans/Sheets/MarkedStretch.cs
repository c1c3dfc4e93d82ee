using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// One stretch of the top that a finding marks: straight from end to end, or, where curved edges alone make it, beside each of them, so that a maker
/// sees which wall is meant. Where another mark lies on the same stretch it keeps to a lane of its own beside it.
/// </summary>
internal sealed class MarkedStretch
{
    private const double BarMm = 3;
    private const double WallBarMm = 1.1;
    private const double HatchMm = 3;

    // Off the edge it goes along, on the side where the part is not.
    private const double OffWallMm = 1.2;

    // From lane to lane, with the bars and the hatching of the one before; and how near two marks melt into one.
    private const double LaneMm = 5;
    private const double WallLaneMm = 2.4;
    private const double StraightMeltMm = 3;
    private const double WallMeltMm = 0.9;
    private const double ShortestMeltMm = 3;

    // Pieces this near each other, end to end, are read as one.
    private const double OnePieceMm = 4;

    private readonly string _part;
    private readonly ImmutableArray<Contour> _paths;
    private readonly bool _isBesideEdges;
    private readonly bool _isRun;

    /// <param name="part">The part its lines belong to.</param>
    /// <param name="where">Its ends in outside coordinates, mm.</param>
    /// <param name="trace">The edges that make it, each with its part to the left; none when it is no run.</param>
    /// <param name="view">The face.</param>
    /// <param name="isRun">Whether it lies along the grain.</param>
    /// <param name="lane">How many marks lie between it and where it belongs.</param>
    public MarkedStretch(string part, (Point2 From, Point2 To) where, ImmutableArray<Segment> trace, FaceView view, bool isRun, int lane = 0)
    {
        (_part, _isRun) = (part, isRun);
        (From, To) = (view.Map(where.From), view.Map(where.To));
        _isBesideEdges = !trace.IsEmpty && trace.All(s => s.IsArc && (s.Bulge > 0 || s.Radius > 2 * (OffWallMm + (lane * WallLaneMm))));
        var aside = Vec2.UnitX * (From.X < 0 ? -lane * LaneMm : lane * LaneMm);
        (From, To) = _isBesideEdges ? (From, To) : (From + aside, To + aside);
        _paths = _isBesideEdges ? [.. Chains(trace.Select(s => Beside(s, OffWallMm + (lane * WallLaneMm)))).Select(view.Map)]
            : From.IsNear(To, Tolerances.ShortestMm) ? []
            : [new Contour([new Vertex(From), new Vertex(To)], isClosed: false)];
    }

    /// <summary>Its end at the tail, on the sheet.</summary>
    public Point2 From { get; }

    /// <summary>Its end at the neck, on the sheet.</summary>
    public Point2 To { get; }

    /// <summary>Whether its hatching is drawn.</summary>
    public bool IsHatched { get; private set; }

    /// <summary>Its lines.</summary>
    public ImmutableArray<Contour> Paths => _paths;

    /// <summary>The longest line of each of its pieces: each stands alone and wants its number.</summary>
    public IEnumerable<Contour> Pieces
    {
        get
        {
            var pieces = new List<List<Contour>>();
            foreach (var path in _paths)
            {
                bool IsNear(Contour other) => Ends(path).Any(e => Ends(other).Any(o => o.DistanceTo(e) < OnePieceMm));
                var near = pieces.Where(p => p.Exists(IsNear)).ToList();
                pieces.RemoveAll(near.Contains);
                pieces.Add([.. near.SelectMany(p => p), path]);
            }

            return pieces.Select(p => p.MaxBy(c => c.Length)!);
        }
    }

    /// <summary>Whether it lies on another so nearly that the two read as one.</summary>
    public bool MeltsInto(MarkedStretch other)
    {
        var apart = _isBesideEdges || other._isBesideEdges ? WallMeltMm : StraightMeltMm;
        var along = _paths.SelectMany(path => Enumerable.Range(0, (int)path.Length + 1).Select(mm => At(path, mm / path.Length).Point));
        return along.Count(p => other._paths.Any(o => o.DistanceTo(p) < apart)) > ShortestMeltMm;
    }

    /// <summary>Its lines and the bars at their ends; a cross where it is a point.</summary>
    public void Draw(SheetBoard board, Emphasis emphasis)
    {
        if (_paths.IsEmpty)
        {
            var (up, across) = (Vec2.UnitY * BarMm, Vec2.UnitX * BarMm);
            board.Line(_part, Role.Finding, From - up, From + up, emphasis);
            board.Line(_part, Role.Finding, From - across, From + across, emphasis);
        }

        foreach (var path in _paths)
        {
            board.Draw(_part, Role.Finding, path, emphasis);
            foreach (var (end, along) in (ReadOnlySpan<(Point2, Vec2)>)[At(path, 0), At(path, 1)])
            {
                // The bars of a straight run lie across the sheet, whatever its skew.
                var bar = _isBesideEdges ? along.Left * WallBarMm : (_isRun ? Vec2.UnitX : along.Left) * BarMm;
                board.Line(_part, Role.Finding, end - bar, end + bar, Emphasis.Normal);
            }
        }
    }

    /// <summary>Strokes away from the centre line, up towards the neck: close, or three times as wide.</summary>
    public void Hatch(SheetBoard board, bool isClose)
    {
        IsHatched = true;
        foreach (var path in _paths)
        {
            var stroke = new Vec2(From.X < 0 ? -HatchMm : HatchMm, HatchMm);
            var strokes = (int)(path.Length / (isClose ? HatchMm : 3 * HatchMm));
            for (var i = 1; i < strokes - 1; i++)
            {
                var at = At(path, (double)i / strokes).Point;
                board.Line(_part, Role.Finding, at, at + stroke, Emphasis.Normal);
            }
        }
    }

    // An arc round the same centre, off the edge to its right.
    private static Segment Beside(Segment edge, double offMm) => edge with
    {
        Start = edge.Start - (edge.TangentAt(0).Left * offMm),
        End = edge.End - (edge.TangentAt(1).Left * offMm),
    };

    private static Point2[] Ends(Contour path) => [path.Segments[0].Start, path.Segments[^1].End];

    private static IEnumerable<Contour> Chains(IEnumerable<Segment> pieces)
    {
        var chain = new List<Segment>();
        foreach (var piece in pieces)
        {
            if (chain.Count > 0 && !chain[^1].End.IsNear(piece.Start, Tolerances.ShortestMm))
            {
                yield return Contour.Chain(chain, isClosed: false);
                chain = [];
            }

            chain.Add(chain.Count == 0 ? piece : piece with { Start = chain[^1].End });
        }

        yield return Contour.Chain(chain, isClosed: false);
    }

    // The place at a share of the length, and the way there.
    internal static (Point2 Point, Vec2 Along) At(Contour path, double fraction)
    {
        var rest = fraction * path.Length;
        foreach (var segment in path.Segments)
        {
            if (rest <= segment.Length)
            {
                return (segment.PointAt(rest / segment.Length), segment.TangentAt(rest / segment.Length));
            }

            rest -= segment.Length;
        }

        return (path.Segments[^1].End, path.Segments[^1].TangentAt(1));
    }
}
