using System.Collections.Immutable;
using System.Runtime.InteropServices;
using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// Λ: the longest unsupported stretch of glued edge within a few millimetres of one grain line, found at events and refined between
/// them. Calibration of this project: a peak of stress does not split spruce, whose cohesive length across the grain is about 27 mm; a
/// hot line longer than the critical Griffith length does. Halves of different skew are scanned in their own frames.
/// </summary>
public static class GrainRuns
{
    private const double EqualMm = RunPatches.EqualMm;

    /// <summary>How much a run weighs, for telling which of those that are one is the worst.</summary>
    /// <param name="Of">The weight of a run.</param>
    /// <param name="FromMm">No run shorter than this weighs anything, mm.</param>
    /// <param name="Most">The greatest weight there is.</param>
    internal sealed record Weights(Func<GrainRun, int> Of, double FromMm, int Most)
    {
        /// <summary>
        /// Whether what lies within a box, in the frame of a grain, weighs anything though no run there can be as long as
        /// <see cref="FromMm"/>: runs elsewhere are not looked for.
        /// </summary>
        public Func<Angle, Box2, bool> WhereShort { get; init; } = (_, _) => true;
    }

    private static readonly Comparison<Contribution> LongestContribution = ByLength;

    /// <summary>The longest run over all the pieces together; null when none of them has an unsupported length along the grain.</summary>
    public static GrainRun? Longest(IEnumerable<EdgePiece> pieces, Calibration calibration) => Longest(pieces, new BandScan(calibration));

    /// <summary>
    /// The longest run of each side of each member by itself, in the order of the pieces: the number by which a member is judged.
    /// A side without an unsupported length along the grain is left out.
    /// </summary>
    public static ImmutableArray<GrainRun> PerSide(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        PerSide(pieces, new BandScan(calibration));

    /// <summary>The same by a scan that is at hand.</summary>
    internal static ImmutableArray<GrainRun> PerSide(IEnumerable<EdgePiece> pieces, BandScan scan)
    {
        var (sides, numbers) = (new List<List<EdgePiece>>(), new Dictionary<(string, EdgeSide), int>());
        foreach (var piece in pieces)
        {
            if (piece.Side != EdgeSide.Neither)
            {
                if (!numbers.TryGetValue((piece.Member, piece.Side), out var side))
                {
                    numbers.Add((piece.Member, piece.Side), side = sides.Count);
                    sides.Add([]);
                }

                sides[side].Add(piece);
            }
        }

        return [.. sides.Select(side => Longest(side, scan)).OfType<GrainRun>()];
    }

    /// <summary>
    /// The runs over all the pieces together that are longer than a floor, longest first. Runs on neighbouring grain lines that overlap
    /// along the grain are one; the longest of them stands for all.
    /// </summary>
    public static ImmutableArray<GrainRun> Distinct(IEnumerable<EdgePiece> pieces, Calibration calibration, double floorMm) =>
        Distinct(pieces, new BandScan(calibration), floorMm);

    /// <summary>
    /// The same by a scan that is at hand. Where another run of those that are one weighs more than the longest, the heaviest stands for all.
    /// </summary>
    internal static ImmutableArray<GrainRun> Distinct(IEnumerable<EdgePiece> pieces, BandScan scan, double floorMm, Weights? weights = null)
    {
        var runs = new List<GrainRun>();
        foreach (var frame in Frames(pieces))
        {
            AddRuns(frame, scan, floorMm, onlyLongest: false, runs, weights);
        }

        runs.Sort(LongestFirst);
        return [.. runs];
    }

    private static GrainRun? Longest(IEnumerable<EdgePiece> pieces, BandScan scan)
    {
        var runs = new List<GrainRun>();
        foreach (var frame in Frames(pieces))
        {
            AddRuns(frame, scan, 0, onlyLongest: true, runs);
        }

        runs.Sort(LongestFirst);
        return runs.Count == 0 ? null : runs[0];
    }

    // A total order, so that no sort can change it: runs alike in all three are on one line and one.
    private static int LongestFirst(GrainRun a, GrainRun b)
    {
        var order = Math.Round(b.LengthMm / EqualMm).CompareTo(Math.Round(a.LengthMm / EqualMm));
        order = order != 0 ? order : Math.Round(a.X / EqualMm).CompareTo(Math.Round(b.X / EqualMm));
        order = order != 0 ? order : Math.Round(a.FromY / EqualMm).CompareTo(Math.Round(b.FromY / EqualMm));
        return order != 0 ? order : a.Half.CompareTo(b.Half);
    }

    /// <summary>Λ and the total over the grain lines, in order of x within each half; zero where no edge lies.</summary>
    public static ImmutableArray<ProfileSample> Profile(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        [.. Frames(pieces).SelectMany(frame =>
        {
            var (scan, half) = (new BandScan(calibration), HalfOf(frame));
            scan.Take(frame.Pieces);
            return scan.Profile().Select(s => new ProfileSample(half, s.X, s.Longest, s.Total));
        })];

    // Pieces of one grain, in order of their first; nearly always all of them.
    private static List<Frame> Frames(IEnumerable<EdgePiece> pieces)
    {
        var frames = new List<Frame>(2);
        foreach (var piece in pieces)
        {
            PiecesOf(piece.Grain, frames).Add(piece);
        }

        return frames;
    }

    private static List<EdgePiece> PiecesOf(Angle grain, List<Frame> frames)
    {
        foreach (var frame in frames)
        {
            if (frame.Grain == grain)
            {
                return frame.Pieces;
            }
        }

        frames.Add(new Frame(grain, []));
        return frames[^1].Pieces;
    }

    private static TopHalf HalfOf(Frame frame) =>
        frame.Pieces.Select(p => p.Half).Distinct().ToList() is [var only] ? only : TopHalf.Whole;

    private static void AddRuns(Frame frame, BandScan scan, double floorMm, bool onlyLongest, List<GrainRun> runs, Weights? weights = null)
    {
        scan.Take(frame.Pieces);
        var patches = scan.Patches(
            Math.Max(floorMm, EqualMm), onlyLongest, weights is null ? null : box => weights.WhereShort(frame.Grain, box) ? 0 : weights.FromMm - EqualMm);
        for (var i = 0; i < patches.Count; i++)
        {
            var longest = ToRun(patches[i], frame.Grain, scan);
            runs.Add(weights is null ? longest : Heaviest(longest, patches[i], frame.Grain, scan, weights));
        }
    }

    // The edges change from interval to interval: the longest run of each is weighed.
    private static GrainRun Heaviest(GrainRun longest, ReadOnlySpan<RunAt> patch, Angle grain, BandScan scan, Weights weights)
    {
        var (heaviest, weight) = (longest, longest.LengthMm < weights.FromMm ? weights.Most : weights.Of(longest));
        for (var i = 0; i < patch.Length && weight < weights.Most; i++)
        {
            if (patch[i].Run.Length >= weights.FromMm && IsLongestOfInterval(patch, i))
            {
                var run = WithContributions(patch[i].X, patch[i].Run, grain, scan);
                (heaviest, weight) = weights.Of(run) is var own && own > weight ? (run, own) : (heaviest, weight);
            }
        }

        return heaviest;
    }

    private static bool IsLongestOfInterval(ReadOnlySpan<RunAt> patch, int i)
    {
        var own = patch[i];
        for (var j = i - 1; j >= 0 && patch[j].Interval == own.Interval; j--)
        {
            if (patch[j].Run.Overlaps(own.Run) && patch[j].Run.Length >= own.Run.Length)
            {
                return false;
            }
        }

        for (var j = i + 1; j < patch.Length && patch[j].Interval == own.Interval; j++)
        {
            if (patch[j].Run.Overlaps(own.Run) && patch[j].Run.Length > own.Run.Length)
            {
                return false;
            }
        }

        return true;
    }

    // The longest run of a patch; where several grain lines in a row are equally bad, the middle one, and of several such rows the one nearest
    // to the centre line: so a top and its mirror image have mirrored runs.
    private static GrainRun ToRun(ReadOnlySpan<RunAt> patch, Angle grain, BandScan scan)
    {
        var worst = 0.0;
        foreach (var at in patch)
        {
            worst = Math.Max(worst, at.Run.Length);
        }

        Stretch? Worst(double x, Stretch near) => scan.Find(x, near, worst - EqualMm);
        var (first, last, nearest) = (-1, -1, (First: -1, Middle: double.PositiveInfinity));
        for (var i = 0; i < patch.Length; i++)
        {
            if (patch[i].Run.Length < worst - EqualMm)
            {
                continue;
            }

            var goesOn = first >= 0 && (patch[last].GoesOnTo(patch[i]) || Worst((patch[last].X + patch[i].X) / 2, patch[last].Run) is not null);
            (first, last) = (goesOn ? first : i, i);
            var ownMiddle = (patch[first].X + patch[last].X) / 2;
            if (first == nearest.First || Math.Abs(ownMiddle) < Math.Abs(nearest.Middle) - EqualMm)
            {
                nearest = (first, ownMiddle);
            }
        }

        var (x, run, _, _) = patch[nearest.First];
        var middle = nearest.Middle;
        return Worst(middle, run) is { } found
            ? WithContributions(middle, found, grain, scan)
            : WithContributions(x, run, grain, scan);
    }

    private static GrainRun WithContributions(double x, Stretch run, Angle grain, BandScan scan)
    {
        var w = scan.Calibration.BandHalfWidthMm;
        var shares = new List<Share>();
        var half = (TopHalf?)null;
        foreach (var edge in scan.InBand(x))
        {
            var stretch = edge.StretchAt(x, w);
            var (low, high) = (Math.Max(stretch.Low, run.Low), Math.Min(stretch.High, run.High));
            if (edge.IsSupported || high <= low)
            {
                continue;
            }

            var piece = edge.Piece;
            half = half is null || half == piece.Half ? piece.Half : TopHalf.Whole;
            ShareOf(piece, shares).Add(high - low, edge.Edge.LeastAngle(x - w, x + w), (edge.Edge.XAt(low) + edge.Edge.XAt(high)) / 2);
        }

        var contributions = new Contribution[shares.Count];
        for (var i = 0; i < contributions.Length; i++)
        {
            contributions[i] = shares[i].ToContribution();
        }

        contributions.AsSpan().Sort(LongestContribution);
        return new GrainRun(half ?? TopHalf.Whole, grain, x, run.Low, run.High, ImmutableCollectionsMarshal.AsImmutableArray(contributions));
    }

    private static Share ShareOf(EdgePiece piece, List<Share> shares)
    {
        foreach (var share in shares)
        {
            if (share.IsOf(piece))
            {
                return share;
            }
        }

        shares.Add(new Share(piece));
        return shares[^1];
    }

    private static int ByLength(Contribution a, Contribution b)
    {
        var order = Math.Round(b.LengthMm / EqualMm).CompareTo(Math.Round(a.LengthMm / EqualMm));
        order = order != 0 ? order : string.CompareOrdinal(a.Member, b.Member);
        order = order != 0 ? order : string.CompareOrdinal(a.Label, b.Label);
        return order != 0 ? order : (a.Side, a.IsLongSide).CompareTo((b.Side, b.IsLongSide));
    }

    private readonly record struct Frame(Angle Grain, List<EdgePiece> Pieces);

    // What the pieces of one edge give to a run.
    private sealed class Share(EdgePiece first)
    {
        private double _length;
        private double _moment;
        private Angle _least = Angle.FromDegrees(180);

        public bool IsOf(EdgePiece piece) =>
            piece.Member == first.Member && piece.Side == first.Side && piece.Label == first.Label && piece.IsLongSide == first.IsLongSide;

        public void Add(double length, Angle angle, double x)
        {
            _length += length;
            _moment += length * x;
            _least = angle < _least ? angle : _least;
        }

        public Contribution ToContribution() => new(first.Member, first.Side, first.Label, first.IsLongSide, _length, _least, _moment / _length);
    }
}
