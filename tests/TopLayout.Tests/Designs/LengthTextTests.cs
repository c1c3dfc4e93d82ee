using CsCheck;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Tests.Designs;

public class LengthTextTests
{
    [Theory]
    [InlineData("110 mm", 110)]
    [InlineData("110mm", 110)]
    [InlineData("  110.25   MM ", 110.25)]
    [InlineData("11 cm", 110)]
    [InlineData("1.1 cm", 11)]
    [InlineData("4.25 in", 107.95)] // 4.25 × 25.4
    [InlineData("4 5/16 in", 109.5375)] // 69/16 × 25.4
    [InlineData("4-5/16 in", 109.5375)]
    [InlineData("4 - 5/16 inches", 109.5375)]
    [InlineData("4 5 / 16 inch", 109.5375)]
    [InlineData("5/16\"", 7.9375)] // 5/16 × 25.4
    [InlineData("5/16 ″", 7.9375)]
    [InlineData("4''", 101.6)]
    [InlineData("0 mm", 0)]
    [InlineData("-3 mm", -3)]
    [InlineData("−3 mm", -3)]
    [InlineData("+3 mm", 3)]
    [InlineData("-1 1/2 in", -38.1)]
    [InlineData(".5 in", 12.7)]
    [InlineData("004 in", 101.6)]
    public void TryRead_Length_GivesMillimetres(string text, double millimetres)
    {
        Assert.True(LengthText.TryRead(text, out var read, out var problem), problem);
        Check.Near(millimetres, read, 1e-9, text);
    }

    [Theory]
    [InlineData("", "has no number")]
    [InlineData("wide", "has no number")]
    [InlineData("mm", "has no number")]
    [InlineData("110", "has no unit")]
    [InlineData("4 5/16", "has no unit")]
    [InlineData("110 furlong", "has the unknown unit `furlong`")]
    [InlineData("110 m", "has the unknown unit `m`")]
    [InlineData("98°", "has the unknown unit `°`")]
    [InlineData("4 5/0 in", "has a fraction over zero")]
    [InlineData("5/0 mm", "has a fraction over zero")]
    [InlineData("4,25 in", "is not a number and a unit")]
    [InlineData("4 5 in", "is not a number and a unit")]
    [InlineData("4/5/6 in", "is not a number and a unit")]
    [InlineData("4 -in", "is not a number and a unit")]
    [InlineData("1e3 mm", "is not a number and a unit")]
    [InlineData("from 10 to 12 mm", "is not a number and a unit")]
    [InlineData("1. mm", "is not a number and a unit")]
    [InlineData("٤ mm", "has no number")]
    public void TryRead_Other_SaysWhatIsWrong(string text, string expected)
    {
        Assert.False(LengthText.TryRead(text, out _, out var problem));
        Assert.Equal(expected, problem);
    }

    [Fact]
    public void TryRead_InchesAndMillimetres_GiveTheSameNumber()
    {
        Assert.True(LengthText.TryRead("4 5/16 in", out var inches, out _));
        Assert.True(LengthText.TryRead("109.5375 mm", out var millimetres, out _));
        Assert.Equal(millimetres, inches);
    }

    [Fact]
    public void TryRead_AnyText_DoesNotThrow() => Draws.All(
        Gen.OneOf(Gen.String, Gen.Char["0123456789 /.,-+\"'inmc"].Array[0, 70].Select(letters => new string(letters))),
        seed: 20261,
        count: 20_000,
        text => LengthText.TryRead(text, out _, out _));

    [Fact]
    public void Write_AnyLength_ReadsBack() => Draws.All(
        Gen.Select(Gen.Double[-2000, 2000], Gen.Bool),
        seed: 20262,
        count: 10_000,
        drawn =>
        {
            var text = LengthText.Write(drawn.Item1, drawn.Item2 ? LengthUnit.Inch : LengthUnit.Millimetre);
            Assert.True(LengthText.TryRead(text, out var read, out var problem), $"{text} {problem}");
            Check.Near(drawn.Item1, read, 2e-8, text); // nine decimals of an inch
        });
}
