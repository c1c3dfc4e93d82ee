namespace TopLayout.Tests;

/// <summary>The one two-sided comparison of numbers in tests.</summary>
internal static class Check
{
    public static void Near(double expected, double actual, double tolerance, string what = "") =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"{what}: expected {expected:R} ± {tolerance:R}, got {actual:R}");
}
