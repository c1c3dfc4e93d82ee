using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class ContourTests
{
    // Chord 100, bulge 1e-9: sagitta 5e-8 mm, radius 2.5e10 mm. As an arc its middle came out 1e-6 mm off, at 1e-20 anywhere.
    [Theory]
    [InlineData(1e-9)]
    [InlineData(-1e-20)]
    public void Contour_ArcFlatterThanTheTolerance_IsALine(double bulge)
    {
        var segment = new Contour([new Vertex(default, bulge, "top"), new Vertex(new Point2(100, 0))], isClosed: false).Segments[0];

        Assert.False(segment.IsArc);
        Assert.Equal(new Point2(25, 0), segment.PointAt(0.25));
        Assert.Equal("top", segment.Label);
    }

    [Fact]
    public void Contour_FlatArcAboveTheTolerance_StaysAnArc() =>
        Assert.True(new Contour([new Vertex(default, 2.1e-8), new Vertex(new Point2(100, 0))], isClosed: false).Segments[0].IsArc);
}
