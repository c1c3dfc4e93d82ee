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
    [InlineData(0.1, "0")]
    [InlineData(-0.1, "0")]
    [InlineData(-38.1, "-1 1/2")]
    [InlineData(101.6, "4")]
    [InlineData(25.3, "1")]
    [InlineData(79.375, "3 1/8")]
    public void OnRule_Inches_AreSixtyFourthsInLowestTerms(double mm, string expected) => Assert.Equal(expected, LengthText.OnRule(mm, LengthUnit.Inch));

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
        }
    }

    /// <summary>11 9/16, 1/16, 1 13/16 as four decimals end in 5: half away from zero, whatever 25.4 does to the double.</summary>
    [Theory]
    [InlineData(11.5625, "11.563")]
    [InlineData(0.0625, "0.063")]
    [InlineData(1.8125, "1.813")]
    [InlineData(-1.8125, "-1.813")]
    [InlineData(15.6875, "15.688")]
    public void Of_Inches_RoundsAHalfAwayFromZero(double inches, string expected) => Assert.Equal(expected, LengthText.Of(inches * 25.4, LengthUnit.Inch));

    /// <summary>An eighth is sold as that; 3 mm is no sixty-fourth.</summary>
    [Theory]
    [InlineData(3.175, LengthUnit.Inch, "1/8 in")]
    [InlineData(3, LengthUnit.Inch, "0.118 in")]
    [InlineData(3, LengthUnit.Millimetre, "3 mm")]
    public void Bit_IsNamedAsItIsSold(double mm, LengthUnit units, string expected) => Assert.Equal(expected, LengthText.Bit(mm, units));

    [Fact]
    public void Millimetres_AreTenths() => Assert.Equal("96.3", LengthText.OnRule(96.26, LengthUnit.Millimetre));
}
