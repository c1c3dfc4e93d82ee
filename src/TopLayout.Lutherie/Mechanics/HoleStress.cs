namespace TopLayout.Lutherie.Mechanics;

/// <summary>Stress beside a round hole in an orthotropic plate under tension. Lekhnitskii, from memory.</summary>
public static class HoleStress
{
    /// <summary>
    /// Peak over far stress at the hole's edge, at the two points in line with the grain, under tension across it:
    /// 1 + √(2(√(E_x/E_y) − ν_xy) + E_x/G), x across. With the roles of x and y changed it is the peak under tension along.
    /// </summary>
    /// <param name="pulledMPa">Modulus in the direction of the tension.</param>
    /// <param name="otherMPa">Modulus across it.</param>
    /// <param name="shearMPa">Shear modulus in the plane.</param>
    /// <param name="poissonPulled">Contraction per strain under a pull in the direction of the tension.</param>
    public static double Factor(double pulledMPa, double otherMPa, double shearMPa, double poissonPulled) =>
        1 + Math.Sqrt((2 * (Math.Sqrt(pulledMPa / otherMPa) - poissonPulled)) + (pulledMPa / shearMPa));
}
