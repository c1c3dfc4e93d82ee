using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>Grain angles from directions.</summary>
internal static class GrainOf
{
    /// <summary>The angle of a direction from the y axis, counter-clockwise, in (−90°, 90°].</summary>
    public static Angle Direction(Vec2 direction)
    {
        var degrees = Trig.Turn(Vec2.UnitY, direction).Degrees;
        return Angle.FromDegrees(degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees);
    }
}
