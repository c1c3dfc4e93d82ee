namespace TopLayout.Geometry;

/// <summary>Every tolerance of the kernel, in mm unless its name says otherwise. No other class holds one.</summary>
public static class Tolerances
{
    /// <summary>Two points nearer than this are one point, and two edges whose gap is below it touch.</summary>
    public const double TouchMm = 1e-6;

    /// <summary>No segment shorter than this leaves the kernel.</summary>
    public const double ShortestMm = 0.01;

    /// <summary>An arc whose sagitta (rise over its chord) is below this is a line.</summary>
    public const double FlatSagittaMm = 1e-6;

    /// <summary>Two unit tangents that differ by less than this in sine run on without a corner (radians).</summary>
    public const double SmoothRadians = 1e-6;

    /// <summary>Nearest points from a centre farther off than this are refined: ten digits of it are gone before the micrometre.</summary>
    public const double FarCenterMm = 1e5;

    /// <summary>What rounding may leave of a difference of two lengths, as a share of their size: below it they are equal.</summary>
    public const double RoundingRatio = 1e-12;

    /// <summary>How well a constructed circle must touch what it was asked to touch, as a share of the figure's size.</summary>
    public const double TangentRatio = 1e-9;
}
