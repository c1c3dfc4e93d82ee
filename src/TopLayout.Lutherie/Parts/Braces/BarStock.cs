using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>What every bar says of itself: wood, sawing, width and height. Usual sizes are common practice, no source.</summary>
public sealed class BarStock
{
    /// <summary>Quartersawn spruce of a usual section, mm.</summary>
    public BarStock(
        Section section,
        (double Low, double High) usualWidth,
        double width,
        (double Low, double High) usualHeight,
        double height)
    {
        Stock = new Stock(section, "sitka_spruce", Sawing.Quarter);
        Width = Parameter.Length(section, "width", "width", possible: (2, 30), usual: usualWidth, fallback: width);
        Height = Parameter.Length(section, "height", "height at the highest", possible: (2, 30), usual: usualHeight, fallback: height);
    }

    /// <summary>Wood and sawing.</summary>
    public Stock Stock { get; }

    /// <summary>Width.</summary>
    public Parameter<double> Width { get; }

    /// <summary>Height.</summary>
    public Parameter<double> Height { get; }

    /// <summary>All of them.</summary>
    public IEnumerable<Parameter> All => [.. Stock.All, Width, Height];
}
