using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>What every bar says of itself: wood, sawing, width and height. Usual sizes are common practice, no source.</summary>
/// <param name="Stock">Wood and sawing.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record BarStock(Stock Stock, Parameter<double> Width, Parameter<double> Height)
{
    /// <summary>Quartersawn spruce of a usual section, mm.</summary>
    public BarStock(
        Section section,
        (double Low, double High) usualWidth,
        double width,
        (double Low, double High) usualHeight,
        double height)
        : this(
            new Stock(section, "sitka_spruce", Sawing.Quarter),
            Parameter.Length(section, "width", "width", possible: (2, 30), usual: usualWidth, fallback: width),
            Parameter.Length(section, "height", "height at the highest", possible: (2, 30), usual: usualHeight, fallback: height))
    {
    }

    /// <summary>All of them.</summary>
    public IEnumerable<Parameter> All => [.. Stock.All, Width, Height];
}
