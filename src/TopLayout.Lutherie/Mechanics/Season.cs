namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// The air in which the top was glued, where every joint is free of stress, and the air it is used in. Relative humidity in percent,
/// in [0, 100); temperature in °C.
/// </summary>
/// <param name="GluedHumidityPercent">Humidity at gluing.</param>
/// <param name="UsedHumidityPercent">Humidity in use.</param>
/// <param name="Celsius">Temperature of both.</param>
public readonly record struct Season(double GluedHumidityPercent, double UsedHumidityPercent, double Celsius)
{
    /// <summary>
    /// The season of a design that names none: glued at 60 %, used at 25 %, 21 °C. Calibration of this project: a summer workshop
    /// without control and a heated room in winter.
    /// </summary>
    public static Season Default => new(60, 25, 21);

    /// <summary>Moisture the wood loses from gluing to use, in percent of its dry mass; negative when it takes up moisture.</summary>
    public double MoistureLossPercent =>
        MoistureContent.AtEquilibrium(GluedHumidityPercent, Celsius) - MoistureContent.AtEquilibrium(UsedHumidityPercent, Celsius);
}
