using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

public class TrigTests
{
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(-90, -1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(-180, 0, -1)]
    [InlineData(3600090, 1, 0)]
    public void SinAndCos_QuarterTurns_AreExact(int degrees, int sin, int cos)
    {
        Assert.Equal(sin, Trig.Sin(Angle.FromDegrees(degrees)));
        Assert.Equal(cos, Trig.Cos(Angle.FromDegrees(degrees)));
    }

    [Fact]
    public void SinAndCos_ThirtyAndSixty_AreExact()
    {
        Assert.Equal(0.5, Trig.Sin(Angle.FromDegrees(150)));
        Assert.Equal(0.5, Trig.Cos(Angle.FromDegrees(-60)));
        Assert.Equal(1, Trig.Tan(Angle.FromDegrees(45)));
        Assert.Equal(1, Trig.Tan(Angle.FromDegrees(-135)));
    }

    [Fact]
    public void SinAndCos_AgainstTheLibrary_AgreeToRounding() => Trials.Run(500, r =>
    {
        var a = Angle.FromDegrees(r.Between(-800, 800));

        Check.Near(Math.Sin(a.Radians), Trig.Sin(a), 4e-15, $"{a}");
        Check.Near(Math.Cos(a.Radians), Trig.Cos(a), 4e-15, $"{a}");
    });

    // (−1, −0) came out at −180°, and the zero vector (−0, 0) at 180°.
    [Fact]
    public void Heading_NegativeZero_CountsAsZero()
    {
        Assert.Equal(180, Trig.Heading(new Vec2(-1, -0.0)).Degrees);
        Assert.Equal(0, Trig.Heading(new Vec2(-0.0, 0)).Degrees);
        Assert.Equal(180, Trig.Turn(Vec2.UnitX, new Vec2(-1, -0.0)).Degrees);
    }
}

public class Vec2Tests
{
    // The text of a record names every property, and Unit's text named its own Unit: the stack overflowed.
    [Fact]
    public void ToString_OfAVector_Ends() => Assert.Equal("(1.5, -2)", new Vec2(1.5, -2).ToString());
}
