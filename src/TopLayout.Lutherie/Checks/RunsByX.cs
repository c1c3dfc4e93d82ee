using System.Collections.Immutable;
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
    public IEnumerable<GrainRun> Near(GrainRun run, double distanceMm)
    {
        var first = _lines.BinarySearch(run.EdgeX - distanceMm);
        for (var i = first < 0 ? ~first : FirstEqual(first); i < _runs.Length && _lines[i] <= run.EdgeX + distanceMm; i++)
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
