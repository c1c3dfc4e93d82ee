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
    /// <summary>Runs that differ by less are equally long, mm.</summary>
    private const double EqualMm = 1e-6;

    /// <summary>The longest run over all the pieces together; null when none of them has an unsupported length along the grain.</summary>
    public static GrainRun? Longest(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        Distinct(pieces, calibration, 0).FirstOrDefault();

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
    public static ImmutableArray<GrainRun> Distinct(IEnumerable<EdgePiece> pieces, Calibration calibration, double floorMm) => [.. Frames(pieces)
        .SelectMany(frame => InFrame(frame, calibration, floorMm))
        .OrderByDescending(r => Math.Round(r.LengthMm / EqualMm))
        .ThenBy(r => Math.Round(r.X / EqualMm))
        .ThenBy(r => Math.Round(r.FromY / EqualMm))];

    /// <summary>Λ and the total over the grain lines, in order of x within each half; zero where no edge lies.</summary>
    public static ImmutableArray<ProfileSample> Profile(IEnumerable<EdgePiece> pieces, Calibration calibration) =>
        [.. Frames(pieces).SelectMany(frame => new BandScan(frame, calibration).Stations().Select(s =>
            new ProfileSample(HalfOf(frame), s.X, s.Longest, s.Runs.Sum(r => r.Length))))];

    private static IEnumerable<IGrouping<Angle, EdgePiece>> Frames(IEnumerable<EdgePiece> pieces) => pieces.GroupBy(p => p.Grain);

    private static TopHalf HalfOf(IEnumerable<EdgePiece> pieces) =>
        pieces.Select(p => p.Half).Distinct().ToList() is [var only] ? only : TopHalf.Whole;

    private static IEnumerable<GrainRun> InFrame(IGrouping<Angle, EdgePiece> frame, Calibration calibration, double floorMm)
    {
        var scan = new BandScan(frame, calibration);
        return Patches([.. scan.Stations()], Math.Max(floorMm, EqualMm)).Select(patch => ToRun(patch, frame.Key, scan, calibration));
    }

    // Groups of runs that overlap along the grain from one station to the next, each with the number of its station.
    private static IEnumerable<List<(int Station, double X, Stretch Run)>> Patches(List<Station> stations, double floorMm)
    {
        var entries = new List<(int Station, double X, Stretch Run)>();
        var leader = new List<int>();
        int Lead(int i) => leader[i] == i ? i : leader[i] = Lead(leader[i]);
        var (lastFrom, lastTo) = (0, 0);
        for (var station = 0; station < stations.Count; station++)
        {
            foreach (var run in stations[station].Runs.Where(r => r.Length > floorMm))
            {
                var own = entries.Count;
                leader.Add(own);
                entries.Add((station, stations[station].X, run));
                for (var i = lastFrom; i < lastTo; i++)
                {
                    if (entries[i].Run.Overlaps(run))
                    {
                        leader[Lead(i)] = Lead(own);
                    }
                }
            }

            (lastFrom, lastTo) = (lastTo, entries.Count);
        }

        return entries.Index().GroupBy(e => Lead(e.Index), e => e.Item).Select(g => g.ToList());
    }

    // The longest run of a patch; where several grain lines in a row are equally bad, the middle one.
    private static GrainRun ToRun(List<(int Station, double X, Stretch Run)> patch, Angle grain, BandScan scan, Calibration calibration)
    {
        var worst = patch.Max(e => e.Run.Length);
        var equal = patch.Where(e => e.Run.Length >= worst - EqualMm).OrderBy(e => e.Station).ToList();
        var row = equal.TakeWhile((e, i) => i == 0 || e.Station - equal[i - 1].Station <= 1).ToList();
        var (x, stretch) = (row[0].X, row[0].Run);
        var middle = (row[0].X + row[^1].X) / 2;
        foreach (var run in scan.At(middle).Runs.Where(r => r.Overlaps(stretch) && r.Length >= worst - EqualMm))
        {
            return WithContributions(middle, run, grain, scan, calibration);
        }

        return WithContributions(x, stretch, grain, scan, calibration);
    }

    private static GrainRun WithContributions(double x, Stretch run, Angle grain, BandScan scan, Calibration calibration)
    {
        var w = calibration.BandHalfWidthMm;
        var parts = scan.InBand(x)
            .Where(p => !p.Piece.IsSupported && p.Stretch.Overlaps(run))
            .Select(p => (p.Piece, p.Edge, Low: Math.Max(p.Stretch.Low, run.Low), High: Math.Min(p.Stretch.High, run.High)))
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
