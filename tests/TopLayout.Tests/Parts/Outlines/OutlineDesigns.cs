using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts.Outlines;

/// <summary>Designs that are hardly more than an outline.</summary>
internal static class OutlineDesigns
{
    public const string Head = "name = \"n\"\nunits = \"mm\"\nscale.length = 640\n";

    public static (Layout? Layout, IReadOnlyList<Finding> Findings) Built(string sections, string head = Head)
    {
        var reading = DesignReader.Read(head + sections, "o.toml", Parameters.Table);
        Assert.Equal([], reading.Findings.Where(f => f.Severity == Severity.Error).Select(FindingText.Of));
        return LayoutBuilder.Build(reading.Design!);
    }

    public static Layout Layout(string sections, string head = Head)
    {
        var (layout, findings) = Built(sections, head);
        Assert.Equal([], findings.Select(FindingText.Of));
        return layout!;
    }

    /// <summary>A body with straight sides and square corners, 500 long: what stands how far from its edge is plain.</summary>
    public static string Box(double half) => FormattableString.Invariant($"""
        [[arc]]
        to_from_neck_edge = 0
        to_from_centre = {half}
        bend = "straight"
        [[arc]]
        to_from_neck_edge = 500
        to_from_centre = {half}
        bend = "straight"
        [[arc]]
        to_from_neck_edge = 500
        to_from_centre = 0
        bend = "straight"

        """);

    /// <summary>What does not fit, as printed.</summary>
    public static string Printed(string sections) => string.Join("\n", Built(sections).Findings.Select(FindingText.Of));

    /// <summary>Half-width by a way of its own: the outline as a fine polygon, cut across.</summary>
    public static double HalfWidth(Contour outline, double at, int side)
    {
        var points = outline.Flattened(1e-4);
        return points.Zip(points.Skip(1).Append(points[0]))
            .Where(e => (e.First.Y + at) * (e.Second.Y + at) <= 0 && e.First.Y != e.Second.Y)
            .Select(e => side * (e.First.X + ((e.Second.X - e.First.X) * (-at - e.First.Y) / (e.Second.Y - e.First.Y)))).Max();
    }
}
