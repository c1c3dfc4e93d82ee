namespace TopLayout.Geometry;

/// <summary>
/// Circles that touch points, lines and circles. Order of the solutions: by side of the first given, then of the second, then of the
/// third (left of a line before right; outside a circle before round or within it), then by radius, then by the centre's x, then y.
/// Each touches its givens to <see cref="Tolerances.TangentRatio"/> of the figure's size; a given itself is no solution.
/// </summary>
public static class TangentCircles
{
    /// <summary>
    /// The circles of a radius that touch two givens: at most eight. The centres lie on the givens' parallels at that radius.
    /// Empty where none does, where the radius is not above zero, or where there is no end of them.
    /// </summary>
    public static IReadOnlyList<Circle> To(Given a, Given b, double radiusMm)
    {
        var found = new List<Circle>();
        foreach (var onA in radiusMm > 0 ? a.Sides : [])
        {
            foreach (var onB in b.Sides)
            {
                if (a.Centers(onA, radiusMm) is { } p && b.Centers(onB, radiusMm) is { } q)
                {
                    found.AddRange(Given.Meet(p, q).Select(c => new Circle(c, radiusMm)));
                }
            }
        }

        return found;
    }

    /// <summary>
    /// The circles that touch three givens (Apollonius's problem): at most eight. Empty where none does or where there is no end of
    /// them; a straight line that touches all three is no circle.
    /// </summary>
    public static IReadOnlyList<Circle> To(Given a, Given b, Given c)
    {
        var found = new List<Circle>();
        foreach (var onA in a.Sides)
        {
            foreach (var onB in b.Sides)
            {
                foreach (var onC in c.Sides)
                {
                    found.AddRange(new Apollonius((a, onA), (b, onB), (c, onC)).Solutions());
                }
            }
        }

        return found;
    }
}
