using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>A new top for an old rim: it is let into the ledge behind the binding that was left in place.</summary>
public static class Ledge
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("ledge", "a new top inside the binding of an old rim");

    /// <summary>What is left standing of the binding.</summary>
    public static readonly Parameter<double> Binding = Parameter.Length(
        Section, "binding", "width of the binding left in place: the plate is that much smaller all round", possible: (0.2, 12), usual: (1.2, 6.5), fallback: 2);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Binding];

    /// <summary>The plate's edge: the body's, or that much inside it; null, with the misfit said, when nothing is left there.</summary>
    internal static Contour? PlateEdge(Bench bench, Contour body)
    {
        if (!bench.Design.Has(Section))
        {
            return body;
        }

        var binding = bench.Design[Binding];
        return Inset.Of(bench, body, binding.Value, "plate inside the binding", binding.Place);
    }
}
