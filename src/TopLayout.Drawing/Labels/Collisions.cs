namespace TopLayout.Drawing.Labels;

/// <summary>A label and what it is drawn over.</summary>
/// <param name="Label">The label.</param>
/// <param name="Other">Another label, or a contour that runs through the letters' box.</param>
public readonly record struct Collision(LabelShape Label, Shape Other);

/// <summary>Finds labels that lie on each other or on lines.</summary>
public static class Collisions
{
    /// <summary>Every overlap of two labels, once, and every label crossed by a line, in the order of the sheet.</summary>
    public static IReadOnlyList<Collision> Of(Sheet sheet)
    {
        var found = new List<Collision>();
        var labels = sheet.Shapes.OfType<LabelShape>().Select(l => (Label: l, l.Frame, l.Bounds)).ToList();
        var lines = sheet.Shapes.OfType<ContourShape>().Select(s => (Shape: s, s.Bounds)).ToList();
        foreach (var (index, (label, frame, bounds)) in labels.Index())
        {
            found.AddRange(labels.Skip(index + 1)
                .Where(o => o.Bounds.Overlaps(bounds) && frame.Meets(o.Frame))
                .Select(o => new Collision(label, o.Label)));
            found.AddRange(lines
                .Where(o => o.Bounds.Overlaps(bounds) && o.Shape.Contour.Segments.Any(frame.Meets))
                .Select(o => new Collision(label, o.Shape)));
        }

        return found;
    }
}
