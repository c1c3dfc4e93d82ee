using CsCheck;
using TopLayout.Geometry;
using Xunit.Abstractions;

namespace TopLayout.Tests.Geometry;

public class FlatArcTests(ITestOutputHelper output)
{
    private const string Seed = "0001drawing8";

    [Theory]
    [InlineData(Tolerances.FlatSagittaMm)]
    [InlineData(5e-6)]
    [InlineData(1e-3)]
    public void Intersections_LineThroughAnAlmostFlatArc_IsFoundOnce(double sagitta)
    {
        output.WriteLine($"seed {Seed}");
        var point = Gen.Select(Gen.Double[0, 300], Gen.Double[0, 300], (x, y) => new Point2(x, y));
        var crossing = Gen.Select(point, point, Gen.Double[0.2, 0.8], Gen.Double[20, 160]).Where((a, b, _, _) => a.DistanceTo(b) > 20);

        crossing.Array[2000].Sample(
            crossings => Assert.All(crossings, c =>
            {
                var (start, end, fraction, degrees) = c;
                var arc = new Segment(start, end, 2 * sagitta / start.DistanceTo(end));
                var across = Trig.Direction(Trig.Heading(end - start) + Angle.FromDegrees(degrees));
                var middle = arc.PointAt(fraction);

                var meeting = Assert.Single(Intersections.Of(new Segment(middle - (across * 7), middle + (across * 9)), arc));

                Check.Near(0, meeting.Point.DistanceTo(middle), 2e-5, $"{arc}");
            }),
            seed: Seed,
            iter: 1);
    }
}
