using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>Where labels ended up.</summary>
public sealed class PlacedLabels
{
    internal PlacedLabels(IEnumerable<Shape> shapes, Box2 page) => (Shapes, Page) = ([.. shapes], page);

    /// <summary>Labels, leaders and the dots at their ends, in the order of placing.</summary>
    public ImmutableArray<Shape> Shapes { get; }

    /// <summary>The page, grown by margin columns where labels had to go there.</summary>
    public Box2 Page { get; }
}
