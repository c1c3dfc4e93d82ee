using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Compares regions loop by loop, whichever vertex a loop starts at; a whole circle has no vertices of its own.</summary>
internal static class SameLoops
{
    public static void Assert(Region expected, Region actual, double toleranceMm, bool withLabels = true)
    {
        Xunit.Assert.Equal(expected.Loops.Length, actual.Loops.Length);
        var left = actual.Loops.ToList();
        foreach (var loop in expected.Loops)
        {
            var found = left.FindIndex(l => AreSame(loop, l, toleranceMm, withLabels));
            Xunit.Assert.True(found >= 0, $"no loop like\n{Text(loop)}\namong\n{string.Join('\n', left.Select(Text))}");
            left.RemoveAt(found);
        }
    }

    private static bool AreSame(Contour a, Contour b, double mm, bool withLabels)
    {
        if (a.Segments.Length != b.Segments.Length)
        {
            return false;
        }

        if (IsCircle(a) && IsCircle(b))
        {
            return a.Segments[0].Center.IsNear(b.Segments[0].Center, mm) && Math.Abs(a.SignedArea - b.SignedArea) <= mm * a.Length;
        }

        var count = a.Segments.Length;
        return Enumerable.Range(0, count).Any(shift => Enumerable.Range(0, count).All(i => AreSame(a.Segments[i], b.Segments[(i + shift) % count], mm, withLabels)));
    }

    private static bool AreSame(Segment a, Segment b, double mm, bool withLabels) =>
        a.Start.IsNear(b.Start, mm) && a.End.IsNear(b.End, mm) && a.PointAt(0.5).IsNear(b.PointAt(0.5), mm) && (!withLabels || a.Label == b.Label);

    private static bool IsCircle(Contour c) => c.Segments.Length == 2 && c.Segments.All(s => Math.Abs(Math.Abs(s.Bulge) - 1) < 1e-12);

    private static string Text(Contour c) => string.Join(' ', c.Segments.Select(s => $"({s.Start.X:R},{s.Start.Y:R};{s.Bulge:R} {s.Label})"));
}
