namespace TopLayout.Lutherie.Designs;

/// <summary>Reads a numeric entry and holds it to its ranges.</summary>
internal static class NumberReading
{
    /// <summary>The number in mm, degrees, % or °C; null, with a finding, when there is none or it is out of range.</summary>
    public static double? Read(Parameter parameter, RawEntry entry, ReadingContext context) => throw new NotImplementedException();
}
