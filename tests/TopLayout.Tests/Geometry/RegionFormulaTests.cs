using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Areas against the formulas of any mathematical handbook.</summary>
public class RegionFormulaTests
{
    // Lens of circles R, r at distance d: r² acos((d²+r²−R²)/2dr) + R² acos((d²+R²−r²)/2dR) − ½√((−d+r+R)(d+r−R)(d−r+R)(d+r+R)).
    [Theory]
    [InlineData(5, 3, 6)]
    [InlineData(5, 5, 1)]
    [InlineData(7, 2, 5.5)]
    public void Intersect_TwoCircles_IsTheLens(double big, double small, double d)
    {
        var lens = (small * small * Math.Acos(((d * d) + (small * small) - (big * big)) / (2 * d * small)))
            + (big * big * Math.Acos(((d * d) + (big * big) - (small * small)) / (2 * d * big)))
            - (Math.Sqrt((-d + small + big) * (d + small - big) * (d - small + big) * (d + small + big)) / 2);
        var (a, b) = (HardPairs.Disc(0, 0, big), HardPairs.Disc(d, 0, small));

        Check.Near(lens, a.Intersect(b).Area, 1e-9, "lens");
        Check.Near((Math.PI * ((big * big) + (small * small))) - lens, a.Union(b).Area, 1e-9, "union");
        Check.Near((Math.PI * big * big) - lens, a.Subtract(b).Area, 1e-9, "lune");
    }

    // Segment of height h = r − 3: r² acos((r−h)/r) − (r−h)√(2rh−h²).
    [Fact]
    public void Intersect_CircleAndHalfPlane_IsTheSegment()
    {
        var segment = HardPairs.Disc(0, 0, 5).Intersect(HardPairs.Rectangle(3, -9, 20, 9));

        Check.Near((25 * Math.Acos(3.0 / 5)) - (3 * 4), segment.Area, 1e-10, "segment");
        Assert.Equal(2, segment.Edges.Count());
    }

    // Annulus: π(R² − r²).
    [Fact]
    public void Subtract_ConcentricCircle_IsTheAnnulus()
    {
        var annulus = HardPairs.Disc(1, 2, 7, "outer").Subtract(HardPairs.Disc(1, 2, 4, "inner"));

        Check.Near(Math.PI * (49 - 16), annulus.Area, 1e-10, "annulus");
        Assert.Equal(2, annulus.Loops.Length);
        Assert.All(annulus.Loops[1].Segments, s => Assert.Equal("inner", s.Label));
    }

    // Three circles of radius s about the corners of an equilateral triangle of side s: (π − √3)s²/2.
    [Fact]
    public void Intersect_ThreeCircles_IsTheReuleauxTriangle()
    {
        var (s, h) = (6.0, 3 * Math.Sqrt(3));
        var reuleaux = HardPairs.Disc(0, 0, s).Intersect(HardPairs.Disc(s, 0, s)).Intersect(HardPairs.Disc(s / 2, h, s));

        Check.Near((Math.PI - Math.Sqrt(3)) * s * s / 2, reuleaux.Area, 1e-10, "Reuleaux triangle");
        Assert.Equal(3, reuleaux.Edges.Count());
    }

    [Fact]
    public void Covered_FigureOfEight_KeepsBothLobes()
    {
        var eight = Region.Covered(Contour.Polygon(new(0, 0), new(4, 4), new(4, 0), new(0, 4)));

        Check.Near(8, eight.Area, 1e-12, "two triangles");
        Assert.Equal(2, eight.Parts.Count);
    }

    // Twice round one circle: the non-zero rule keeps what an even-odd rule would lose.
    [Fact]
    public void Covered_TwiceRound_CountsOnce()
    {
        var circle = Contour.Circle(default, 3);

        Check.Near(9 * Math.PI, Region.Covered(new Contour([.. circle.Vertices, .. circle.Vertices], isClosed: true)).Area, 1e-10, "disc");
    }

    [Fact]
    public void Operations_OnTheEmptyRegion_AreLegal()
    {
        var disc = HardPairs.Disc(0, 0, 2);

        Assert.True(Region.Empty.IsEmpty);
        Assert.True(disc.Intersect(Region.Empty).IsEmpty);
        Assert.True(disc.Subtract(disc).IsEmpty);
        Assert.Equal(4 * Math.PI, disc.Union(Region.Empty).Area, 1e-12);
        Assert.True(Region.Union([]).IsEmpty);
        Assert.Empty(Region.Empty.Split(new Contour([new Vertex(default), new Vertex(new Point2(1, 0))], isClosed: false)));
        Assert.Throws<InvalidOperationException>(() => Region.Empty.Outer);
    }
}
