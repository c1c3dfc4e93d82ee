using System.Collections.Immutable;
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

    /// <summary>The longest run over all the pieces together; null when none of them has an unsupported length along the grain.</summary>
    public static GrainRun? Longest(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        Sorted(Frames(pieces).SelectMany(frame => InFrame(frame, calibration, 0, onlyLongest: true))).FirstOrDefault();

    /// <summary>
    /// The longest run of each side of each member by itself, in the order of the pieces: the number by which a member is judged.
    /// A side without an unsupported length along the grain is left out.
    /// </summary>
    public static ImmutableArray<GrainRun> PerSide(IEnumerable<EdgePiece> pieces, Calibration calibration) => [.. pieces
        .Where(p => p.Side != EdgeSide.Neither)
        .GroupBy(p => (p.Member, p.Side))
        .Select(side => Longest(side, calibration))
        .OfType<GrainRun>()];

    /// <summary>
    /// The runs over all the pieces together that are longer than a floor, longest first. Runs on neighbouring grain lines that overlap
    /// along the grain are one; the longest of them stands for all.
    /// </summary>
    public static ImmutableArray<GrainRun> Distinct(IEnumerable<EdgePiece> pieces, Calibration calibration, double floorMm) =>
        [.. Sorted(Frames(pieces).SelectMany(frame => InFrame(frame, calibration, floorMm, onlyLongest: false)))];

    private static IEnumerable<GrainRun> Sorted(IEnumerable<GrainRun> runs) => runs
        .OrderByDescending(r => Math.Round(r.LengthMm / EqualMm))
        .ThenBy(r => Math.Round(r.X / EqualMm))
        .ThenBy(r => Math.Round(r.FromY / EqualMm));

    /// <summary>Λ and the total over the grain lines, in order of x within each half; zero where no edge lies.</summary>
    public static ImmutableArray<ProfileSample> Profile(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        [.. Frames(pieces).SelectMany(frame => new BandScan(frame, calibration).Profile().Select(s =>
            new ProfileSample(HalfOf(frame), s.X, s.Longest, s.Total)))];

    private static IEnumerable<IGrouping<Angle, EdgePiece>> Frames(IEnumerable<EdgePiece> pieces) => pieces.GroupBy(p => p.Grain);

    private static TopHalf HalfOf(IEnumerable<EdgePiece> pieces) =>
        pieces.Select(p => p.Half).Distinct().ToList() is [var only] ? only : TopHalf.Whole;

    private static IEnumerable<GrainRun> InFrame(IGrouping<Angle, EdgePiece> frame, Calibration calibration, double floorMm, bool onlyLongest)
    {
        var scan = new BandScan(frame, calibration);
        return scan.Patches(Math.Max(floorMm, EqualMm), onlyLongest).All().Select(patch => ToRun(patch, frame.Key, scan, calibration));
    }

    // The longest run of a patch; where several grain lines in a row are equally bad, the middle one.
    private static GrainRun ToRun(List<RunAt> patch, Angle grain, BandScan scan, Calibration calibration)
    {
        var worst = patch.Max(e => e.Run.Length);
        bool IsWorst(double x, Stretch run) => scan.At(x).Exists(r => r.Overlaps(run) && r.Length >= worst - EqualMm);
        var equal = patch.Where(e => e.Run.Length >= worst - EqualMm).OrderBy(e => e.X).ToList();
        var last = 0;
        while (last + 1 < equal.Count && IsWorst((equal[last].X + equal[last + 1].X) / 2, equal[last].Run))
        {
            last++;
        }

        var middle = (equal[0].X + equal[last].X) / 2;
        foreach (var run in scan.At(middle).Where(r => r.Overlaps(equal[0].Run) && r.Length >= worst - EqualMm))
        {
            return WithContributions(middle, run, grain, scan, calibration);
        }

        return WithContributions(equal[0].X, equal[0].Run, grain, scan, calibration);
    }

    private static GrainRun WithContributions(double x, Stretch run, Angle grain, BandScan scan, Calibration calibration)
    {
        var w = calibration.BandHalfWidthMm;
        var parts = scan.InBand(x)
            .Where(p => !p.Edge.IsSupported && p.Stretch.Overlaps(run))
            .Select(p => (p.Edge.Piece, p.Edge.Edge, Low: Math.Max(p.Stretch.Low, run.Low), High: Math.Min(p.Stretch.High, run.High)))
            .Select(p => (p.Piece, Length: p.High - p.Low, Angle: p.Edge.LeastAngle(x - w, x + w), X: (p.Edge.XAt(p.Low) + p.Edge.XAt(p.High)) / 2))
            .Where(p => p.Length > 0)
            .ToList();
        var contributions = parts
            .GroupBy(p => (p.Piece.Member, p.Piece.Side, p.Piece.Label, p.Piece.IsLongSide))
            .Select(g => new Contribution(
                g.Key.Member, g.Key.Side, g.Key.Label, g.Key.IsLongSide, g.Sum(p => p.Length), g.Min(p => p.Angle),
                g.Sum(p => p.Length * p.X) / g.Sum(p => p.Length)))
            .OrderByDescending(c => Math.Round(c.LengthMm / EqualMm))
            .ThenBy(c => c.Member, StringComparer.Ordinal)
            .ThenBy(c => c.Label, StringComparer.Ordinal);
        return new GrainRun(HalfOf(parts.Select(p => p.Piece)), grain, x, run.Low, run.High, [.. contributions]);
    }
}
