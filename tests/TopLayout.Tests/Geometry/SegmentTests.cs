using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class SegmentTests
{
    [Fact]
    public void Bounds_ArcOverTop_IncludesQuadrantPoint()
    {
        var bounds = new Segment(new Point2(10, 0), new Point2(-10, 0), 1).Bounds();

        Check.Near(10, bounds.Max.Y, 1e-12, "top of a half circle of radius 10");
    }
}
