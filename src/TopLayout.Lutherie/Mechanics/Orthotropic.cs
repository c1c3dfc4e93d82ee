using TopLayout.Geometry;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>Stiffness of wood at an angle to its grain, from the turned compliance of an orthotropic body (standard mechanics).</summary>
public static class Orthotropic
{
    /// <summary>
    /// Modulus in MPa at an angle to the grain, in the plane of L and X (R or T):
    /// 1/E = cos⁴/E_L + sin⁴/E_X + (1/G_LX − 2ν_LX/E_L) sin² cos².
    /// </summary>
    public static double Modulus(double alongMPa, double acrossMPa, double shearMPa, double poissonAlong, Angle fromGrain)
    {
        var (c2, s2) = (Square(Trig.Cos(fromGrain)), Square(Trig.Sin(fromGrain)));
        return 1 / ((c2 * c2 / alongMPa) + (s2 * s2 / acrossMPa) + (((1 / shearMPa) - (2 * poissonAlong / alongMPa)) * s2 * c2));
    }

    /// <summary>
    /// Shear modulus in MPa between the direction at an angle to the grain in the plane and the upright: 1/G = cos²/G_Lz + sin²/G_Xz.
    /// </summary>
    public static double UprightShear(double alongUprightMPa, double acrossUprightMPa, Angle fromGrain) =>
        1 / ((Square(Trig.Cos(fromGrain)) / alongUprightMPa) + (Square(Trig.Sin(fromGrain)) / acrossUprightMPa));

    private static double Square(double value) => value * value;
}
