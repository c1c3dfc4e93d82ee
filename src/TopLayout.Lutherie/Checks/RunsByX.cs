using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Mechanics;

namespace TopLayout.Lutherie.Checks;

/// <summary>Runs in order of the line their edges lie on, to find those near one without looking at all.</summary>
internal sealed class RunsByX
{
    private readonly ImmutableArray<GrainRun> _runs;
    private readonly ImmutableArray<double> _lines;

    public RunsByX(IEnumerable<GrainRun> runs)
    {
        _runs = [.. runs.OrderBy(r => r.EdgeX)];
        _lines = [.. _runs.Select(r => r.EdgeX)];
    }

    /// <summary>The runs whose edges lie within a distance of those of a run, mm.</summary>
    public IEnumerable<GrainRun> Near(GrainRun run, double distanceMm) => Between(run.EdgeX - distanceMm, run.EdgeX + distanceMm);

    /// <summary>True when a run lies on a line no further from a box than a distance, and along it no further than a gap, mm.</summary>
    public bool IsNear(Angle grain, Box2 box, double distanceMm, double gapMm) => Between(box.Min.X - distanceMm, box.Max.X + distanceMm)
        .Any(r => r.Grain == grain && r.FromY <= box.Max.Y + gapMm && r.ToY >= box.Min.Y - gapMm);

    private IEnumerable<GrainRun> Between(double from, double to)
    {
        var first = _lines.BinarySearch(from);
        for (var i = first < 0 ? ~first : FirstEqual(first); i < _runs.Length && _lines[i] <= to; i++)
        {
            yield return _runs[i];
        }
    }

    private int FirstEqual(int i)
    {
        while (i > 0 && _lines[i - 1] == _lines[i])
        {
            i--;
        }

        return i;
    }
}
