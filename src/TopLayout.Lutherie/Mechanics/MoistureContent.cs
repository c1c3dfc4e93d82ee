namespace TopLayout.Lutherie.Mechanics;

/// <summary>What moisture wood comes to in air. Wood Handbook, FPL-GTR-190 (2010), Eq. 4-5, the fit behind its Table 4-2.</summary>
public static class MoistureContent
{
    /// <summary>
    /// The moisture of any wood in balance with air, in percent of its dry mass. The fit follows the table from −1 to 54 °C and 5 to
    /// 95 % humidity within 0.06.
    /// </summary>
    /// <param name="humidityPercent">Relative humidity, in [0, 100).</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static double AtEquilibrium(double humidityPercent, double celsius)
    {
        var t = celsius;
        var w = 349 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        var k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        var k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        var kh = k * humidityPercent / 100;
        var bound = ((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh));
        return 1800 / w * ((kh / (1 - kh)) + bound);
    }
}
