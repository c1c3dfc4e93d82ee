using TopLayout.Geometry;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// How a free piece moves per % moisture, seen in the frame of the top's grain (y along it, x across): a symmetric tensor, so it turns
/// like one (standard mechanics of orthotropic bodies). Positive grows as moisture rises.
/// </summary>
/// <param name="Across">e_xx, per % moisture.</param>
/// <param name="Along">e_yy, per % moisture.</param>
/// <param name="Shear">γ_xy = 2 e_xy, per % moisture.</param>
public readonly record struct FreeStrain(double Across, double Along, double Shear)
{
    /// <summary>A piece with its long grain in the plane.</summary>
    /// <param name="movementAlong">Movement along its grain, per % moisture.</param>
    /// <param name="movementAcross">Movement across its grain in the plane, per % moisture.</param>
    /// <param name="grain">Its grain from the top's, counter-clockwise.</param>
    public static FreeStrain InPlane(double movementAlong, double movementAcross, Angle grain)
    {
        // The piece's grain stands at g = 90° + grain to the x axis, so cos g = −sin(grain), sin g = cos(grain).
        var (c, s) = (-Trig.Sin(grain), Trig.Cos(grain));
        return new FreeStrain(
            (movementAlong * c * c) + (movementAcross * s * s),
            (movementAlong * s * s) + (movementAcross * c * c),
            2 * (movementAlong - movementAcross) * s * c);
    }

    /// <summary>
    /// The free strain of a piece; <see cref="Sawing.Flat"/> and upright moves along its rings across the top. Null when the movement
    /// of its wood, or its sawing, is not known.
    /// </summary>
    /// <param name="material">The piece.</param>
    /// <param name="grain">Its grain from the top's, counter-clockwise; of no meaning when upright.</param>
    public static FreeStrain? Of(Material material, Angle grain)
    {
        var wood = material.Wood;
        if (material.Sawing == Sawing.Unknown || wood.MovementRadial is not { } radial || wood.MovementTangential is not { } tangential)
        {
            return null;
        }

        var (across, other) = material.Sawing == Sawing.Quarter ? (radial.Value, tangential.Value) : (tangential.Value, radial.Value);
        return material.Lie == GrainLie.Upright
            ? new FreeStrain(across, other, 0)
            : InPlane(Wood.MovementAlong.Value, across, grain);
    }

    /// <summary>The strain across an edge whose normal stands at <paramref name="theta"/> to the x axis, per % moisture.</summary>
    public double AcrossEdge(Angle theta)
    {
        var (c, s) = (Trig.Cos(theta), Trig.Sin(theta));
        return (Across * c * c) + (Along * s * s) + (Shear * s * c);
    }

    /// <summary>What this piece moves more than another, component by component.</summary>
    public static FreeStrain operator -(FreeStrain a, FreeStrain b) => new(a.Across - b.Across, a.Along - b.Along, a.Shear - b.Shear);
}
