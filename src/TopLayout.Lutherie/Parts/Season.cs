using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The pair of humidities that the checks look at: the air the parts were glued in, and the air they will meet.</summary>
public static class SeasonSection
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("season", "humidity at gluing and in use");

    /// <summary>Relative humidity when the braces are glued.</summary>
    public static readonly Parameter<double> GluedHumidity = Parameter.Percent(
        Section, "glued_humidity", "relative humidity when the parts are glued, %", possible: (5, 95), usual: (40, 55), fallback: 60);

    /// <summary>Relative humidity the instrument will meet.</summary>
    public static readonly Parameter<double> UsedHumidity = Parameter.Percent(
        Section, "used_humidity", "lowest relative humidity it will meet for weeks, %", possible: (5, 95), fallback: 25);

    /// <summary>Air temperature for both.</summary>
    public static readonly Parameter<double> Temperature = Parameter.Temperature(
        Section, "temperature", "air temperature, °C", possible: (0, 50), usual: (15, 30), fallback: 21);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [GluedHumidity, UsedHumidity, Temperature];
}
