using TopLayout.Lutherie.Designs;
using LengthText = TopLayout.Plans.LengthText;

namespace TopLayout.Tests.Plans;

/// <summary>Lengths as plans print them; an inch is 25.4 mm exactly.</summary>
public class LengthTextTests
{
    [Theory]
    [InlineData(96.3, "3 51/64")]
    [InlineData(25.4, "1")]
    [InlineData(12.7, "1/2")]
    [InlineData(0.01, "0")]
    [InlineData(-0.01, "0")]
    [InlineData(-0.1, "-0.004")]
    [InlineData(1.5875, "0.063")]
    [InlineData(3, "0.118")]
    [InlineData(3.175, "1/8")]
    [InlineData(-38.1, "-1 1/2")]
    [InlineData(101.6, "4")]
    [InlineData(25.3, "1")]
    [InlineData(79.375, "3 1/8")]
    public void OnRule_Inches_AreSixtyFourthsInLowestTermsOrThin(double mm, string expected) => Assert.Equal(expected, LengthText.OnRule(mm, LengthUnit.Inch));

    [Fact]
    public void OnRule_AnyInches_LieWithinHalfASixtyFourth()
    {
        for (var mm = -600.0; mm < 600; mm += 0.37)
        {
            var text = LengthText.OnRule(mm, LengthUnit.Inch).Replace("-", "", StringComparison.Ordinal);
            var inches = text.Split(' ').Sum(part => part.Split('/') is [var over, var under]
                ? double.Parse(over, System.Globalization.CultureInfo.InvariantCulture) / double.Parse(under, System.Globalization.CultureInfo.InvariantCulture)
                : double.Parse(part, System.Globalization.CultureInfo.InvariantCulture));
            Check.Near(Math.Abs(mm), inches * 25.4, (25.4 / 128) + 1e-9, text);
            Assert.True(text.Contains('.', StringComparison.Ordinal) == (inches is > 0 and < 0.125), text);
        }
    }

    /// <summary>11 9/16, 1/16, 1 13/16 as four decimals end in 5: half away from zero, whatever 25.4 does to the double.</summary>
    [Theory]
    [InlineData(11.5625, "11 9/16 (11.563)")]
    [InlineData(0.0625, "0.063")]
    [InlineData(1.8125, "1 13/16 (1.813)")]
    [InlineData(-1.8125, "-1 13/16 (-1.813)")]
    [InlineData(15.6875, "15 11/16 (15.688)")]
    public void Of_Inches_RoundsAHalfAwayFromZero(double inches, string expected) => Assert.Equal(expected, LengthText.Of(inches * 25.4, LengthUnit.Inch));

    /// <summary>An eighth is sold as that; 3 mm is no sixty-fourth.</summary>
    [Theory]
    [InlineData(3.175, LengthUnit.Inch, "1/8 in")]
    [InlineData(3, LengthUnit.Inch, "0.118 in")]
    [InlineData(3, LengthUnit.Millimetre, "3 mm")]
    public void Bit_IsNamedAsItIsSold(double mm, LengthUnit units, string expected) => Assert.Equal(expected, LengthText.Bit(mm, units));

    /// <summary>By hand: 50 / 25.4 = 1.9685, 126 sixty-fourths; 30 mm 75.6 of them; 2.8 mm 0.1102 in. What is typed stays.</summary>
    [Theory]
    [InlineData("runs for 50 and 30 mm, limit 30 mm; 2.8 mm thick", "runs for 1 31/32 and 1 3/16 in, limit 1 3/16 in; 0.110 in thick")]
    [InlineData("write `25 mm below`, 3 strips, 4 mm² and 2 % of it", "write `25 mm below`, 3 strips, 4 mm² and 2 % of it")]
    public void Sentence_InInches_HasNoMm(string mm, string inches)
    {
        Assert.Equal(inches, LengthText.Sentence(mm, LengthUnit.Inch));
        Assert.Equal(mm, LengthText.Sentence(mm, LengthUnit.Millimetre));
    }

    [Fact]
    public void Millimetres_AreTenths() => Assert.Equal("96.3", LengthText.OnRule(96.26, LengthUnit.Millimetre));
}
