namespace TopLayout.Lutherie.Mechanics;

/// <summary>
/// A glued piece on a strip of the top across its grain, after a loss of moisture: layered beam of Timoshenko 1925, force built up
/// over the shear-lag length of Suhir 1986, and the hinge of the thin top beside the stiff edge as a beam on an elastic foundation
/// (Hetényi, from memory). Linear, steady, no creep; <see cref="Calibration.Relaxation"/> stands for the rest. Stress in MPa.
/// </summary>
public sealed record Strip
{
    private Strip()
    {
    }

    /// <summary>X: modulus across the top times what the piece would shrink more than the top does there; negative: it holds the top wide.</summary>
    public required double DriverMPa { get; init; }

    /// <summary>σ₀ = ρ E₁ C₁ ΔM: tension across the top far from the piece, from rim and braces.</summary>
    public required double FarStressMPa { get; init; }

    /// <summary>λ: axial compliance of the pair with its bending, mm/N.</summary>
    public required double AxialCompliance { get; init; }

    /// <summary>κ: compliance of the interface in shear, mm³/N.</summary>
    public required double InterfaceCompliance { get; init; }

    /// <summary>1/k, mm: the length over which force passes into the piece.</summary>
    public required double ShearLagMm { get; init; }

    /// <summary>f_w, in [0, 1): how much of the full force so narrow a piece builds up.</summary>
    public required double WidthFactor { get; init; }

    /// <summary>Force in the top under the piece over h₁ X.</summary>
    public required double Share { get; init; }

    /// <summary>N: force per mm of edge, N/mm.</summary>
    public required double Force { get; init; }

    /// <summary>Curl of the free pair, 1/mm.</summary>
    public required double Curvature { get; init; }

    /// <summary>Rise of the free pair over its half-width, mm.</summary>
    public required double SagittaMm { get; init; }

    /// <summary>σ_b: bending of the top just outside the edge.</summary>
    public required double HingeMPa { get; init; }

    /// <summary>e: elastic stress across the grain that the piece adds at its edge; σ_b, and what it holds back when it holds the top wide.</summary>
    public required double ExcessMPa { get; init; }

    /// <summary>M: e relaxed, over the strength across the grain; 0 when the wood takes up moisture, for which there is no index.</summary>
    public required double Index { get; init; }

    /// <summary>Mean tension across the top under the piece: σ₀ − share·X.</summary>
    public required double CoreMPa { get; init; }

    /// <summary>That tension relaxed, over the strength: how hard the piece holds the top wide. 0 when the wood takes up moisture.</summary>
    public required double RestraintIndex { get; init; }

    /// <summary>Shear of the glue line at the edge.</summary>
    public required double GlueShearMPa { get; init; }

    /// <summary>The strip of a piece.</summary>
    /// <param name="top">The top.</param>
    /// <param name="patch">The piece.</param>
    /// <param name="halfWidthMm">b: half its width across the top's grain, mm, &gt; 0.</param>
    /// <param name="lossPercent">ΔM: moisture lost since gluing, in percent.</param>
    /// <param name="moved">χ: share of its own change the piece has made; 1 steady, 0 right after a fast drop.</param>
    /// <param name="calibration">The settings.</param>
    public static Strip Of(TopSection top, PatchSection patch, double halfWidthMm, double lossPercent, double moved, Calibration calibration)
    {
        var (e1, h1, e2, h2, b) = (top.AcrossMPa, top.ThicknessMm, patch.AcrossMPa, patch.ThicknessMm, halfWidthMm);
        var far = calibration.RimRestraint * e1 * top.MovementAcross * lossPercent;
        var driver = far + (e1 * ((moved * patch.MovementAcross) - top.MovementAcross) * lossPercent);
        var bending = ((e1 * Cube(h1)) + (e2 * Cube(h2))) / 12;
        var axial = (1 / (e1 * h1)) + (1 / (e2 * h2));
        var arm = (h1 + h2) / 2;
        var lambda = axial + (arm * arm / bending);
        var kappa = (h1 / (3 * top.RollingMPa)) + (h2 / (3 * patch.ShearMPa));
        var k = Math.Sqrt(lambda / kappa);
        var width = 1 - (1 / Math.Cosh(k * b));
        var force = driver / e1 / lambda * width;
        var share = width / (lambda * e1 * h1);
        var curvature = force * arm / bending;
        var hinge = HingeStress(top, curvature, bending + (arm * arm / axial), b, calibration);
        var excess = driver > 0 ? hinge : Math.Abs(hinge) + (calibration.HeldWideShare * share * Math.Abs(driver));
        var core = far - (share * driver);
        var perStrength = lossPercent > 0 ? calibration.Relaxation / top.StrengthMPa : 0;
        return new Strip
        {
            DriverMPa = driver,
            FarStressMPa = far,
            AxialCompliance = lambda,
            InterfaceCompliance = kappa,
            ShearLagMm = 1 / k,
            WidthFactor = width,
            Share = share,
            Force = force,
            Curvature = curvature,
            SagittaMm = curvature * b * b / 2,
            HingeMPa = hinge,
            ExcessMPa = excess,
            Index = excess * perStrength,
            CoreMPa = core,
            RestraintIndex = core * perStrength,
            GlueShearMPa = driver / e1 / lambda * k * Math.Tanh(k * b),
        };
    }

    // The curled piece turns the top at its edge; the top turns back as a beam across the grain, borne by its own stiffness along the
    // grain between the transverse supports. The pair's stiffness against that couple is the composite one.
    private static double HingeStress(TopSection top, double curvature, double composite, double halfWidthMm, Calibration calibration)
    {
        var decay = calibration.SpanShape / (calibration.SupportSpacingMm ?? calibration.UsualSupportSpacingMm) * Math.Sqrt(Math.Sqrt(top.BendingAlong / (4 * top.BendingAcross)));
        var acting = Math.Min(halfWidthMm, 1 / decay);
        var turn = curvature * acting / (1 + (2 * top.BendingAcross * decay * acting / composite));
        return 12 * top.BendingAcross / (top.ThicknessMm * top.ThicknessMm) * decay * turn;
    }

    private static double Cube(double value) => value * value * value;
}
