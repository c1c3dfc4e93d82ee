using System.Globalization;
using TopLayout.Drawing;

namespace TopLayout.Tests.Drawing;

public class NumberFormatTests
{
    [Theory]
    [InlineData(12, "12.0")]
    [InlineData(12.5, "12.5")]
    [InlineData(-0.0, "0.0")]
    [InlineData(-0.0000001, "0.0")]
    [InlineData(-0.000001, "-0.000001")]
    [InlineData(6.39e-15, "0.0")]
    [InlineData(123456789.125, "123456789.125")]
    [InlineData(1e15, "1000000000000000.0")]
    [InlineData(0.1 + 0.2, "0.3")]
    public void Real_SixDecimals_IsPlainWithAtLeastOneDecimal(double value, string expected) =>
        Assert.Equal(expected, NumberFormat.Real(value, 6));

    [Theory]
    [InlineData(100, 2, "100", "100.00")]
    [InlineData(-0.004, 2, "0", "0.00")]
    [InlineData(2.5, 2, "2.5", "2.50")]
    [InlineData(10, 0, "10", "10")]
    public void Trimmed_And_Fixed_DifferInTrailingZerosOnly(double value, int decimals, string trimmed, string exact)
    {
        Assert.Equal(trimmed, NumberFormat.Trimmed(value, decimals));
        Assert.Equal(exact, NumberFormat.Fixed(value, decimals));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Fixed_NotFinite_IsRefused(double value) => Assert.Throws<ArgumentException>(() => NumberFormat.Fixed(value, 3));

    [Fact]
    public void AllFormats_CommaCulture_WriteAPoint()
    {
        InCulture.Run("de-DE", () =>
        {
            Assert.Equal(",", CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator);
            Assert.Equal("-1.5", NumberFormat.Real(-1.5, 6));
            Assert.Equal("1234.5", NumberFormat.Trimmed(1234.5, 2));
            Assert.Equal("1234.50", NumberFormat.Fixed(1234.5, 2));
            Assert.Equal("0.000001", NumberFormat.Mm(1e-6));
            Assert.Equal("-7", NumberFormat.Whole(-7));
        });
    }

    /// <summary>The runtime's own text of the exact value is the reference; beside halves, large and small, and with many decimals.</summary>
    [Fact]
    public void Fixed_RandomNumbers_AreAsTheRuntimeRoundsThem()
    {
        const int seed = 20268;
        var random = new Random(seed);
        for (var n = 0; n < 200_000; n++)
        {
            var decimals = random.Next(11);
            var value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-9, 14));
            value = random.Next(4) switch
            {
                0 => Math.Round(value, Math.Min(decimals, 15)),
                1 => (Math.Floor(value * Math.Pow(10, decimals)) + 0.5) / Math.Pow(10, decimals),
                _ => value,
            };
            var expected = value.ToString($"F{decimals}", CultureInfo.InvariantCulture);
            expected = expected.Any(c => c is >= '1' and <= '9') ? expected : expected.TrimStart('-');

            Assert.True(NumberFormat.Fixed(value, decimals) == expected, $"seed {seed}: {value:R} with {decimals} is {NumberFormat.Fixed(value, decimals)}, not {expected}");
            var trimmed = expected.Contains('.', StringComparison.Ordinal) ? expected.TrimEnd('0').TrimEnd('.') : expected;
            Assert.Equal(trimmed, NumberFormat.Trimmed(value, decimals));
        }
    }
}
