using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>The part of a ring that lies under the fretboard: where a joint, a gap or an odd tile is not seen.</summary>
/// <param name="HalfTurn">Half of it as seen from the hole's centre; zero when the whole ring shows.</param>
public sealed record HiddenArc(Angle HalfTurn)
{
    /// <summary>How far inside the board's outline the end of a ring should lie, mm. Common practice, no source.</summary>
    public const double MarginMm = 3;

    /// <summary>Its length at a radius, mm.</summary>
    public double LengthAt(double radius) => 2 * radius * HalfTurn.Radians;

    /// <summary>
    /// The arc of a ring hidden by a board that ends square across the centre line. A point of a ring at angle w from the line is R·cos w up the
    /// line and R·sin w beside it, so the inner edge must reach past the board's end, cos w ≥ d/Ri, and the outer edge lie under its width,
    /// sin w ≤ b/Ro.
    /// </summary>
    /// <param name="inner">The ring's inner radius, mm.</param>
    /// <param name="outer">The ring's outer radius, mm.</param>
    /// <param name="toBoard">Hole's centre to the board's end, mm.</param>
    /// <param name="halfBoard">Half the board's width, mm.</param>
    /// <param name="margin">How far inside the board's outline it must lie, mm.</param>
    public static HiddenArc Of(double inner, double outer, double toBoard, double halfBoard, double margin = MarginMm)
    {
        var (end, side) = (toBoard + margin, halfBoard - margin);
        if (end >= inner || side <= 0)
        {
            return new HiddenArc(Angle.Zero);
        }

        var past = Trig.Acos(end / inner);
        var beside = Trig.Asin(side / outer);
        return new HiddenArc(past < beside ? past : beside);
    }

    /// <summary>The arc of a circle round the hole that lies under the board at all, to the board's own edges; zero without a board.</summary>
    public static HiddenArc Under(Layout layout, double radius) => Of(layout, radius, radius, margin: 0);

    /// <summary>The arc hidden in a layout; the board is taken as narrow as it is at the ring's far side, a little too narrow elsewhere.</summary>
    public static HiddenArc Of(Layout layout, double inner, double outer, double margin = MarginMm)
    {
        if (layout.Find(Fretboard.Name) is null)
        {
            return new HiddenArc(Angle.Zero);
        }

        var centre = layout.Hole.Center;
        var narrow = Fretboard.HalfWidthAt(layout.Design, Math.Max(0, -centre.Y - outer)) - Math.Abs(centre.X);
        return Of(inner, outer, -centre.Y - Fretboard.EndFromNeckEdge(layout.Design), narrow, margin);
    }
}
