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

    /// <summary>What a chain of a few roundings may add to a length, as a share of it: sixteen times the spacing of doubles round 1.</summary>
    public const double RoundingShare = 16 * 2.220446049250313e-16;

    /// <summary>Nearest points from a centre farther off than this are refined: ten digits of it are gone before the micrometre.</summary>
    public const double FarCenterMm = 1e5;

    /// <summary>What rounding may leave of a difference of two lengths, as a share of their size: below it they are equal.</summary>
    public const double RoundingRatio = 1e-12;

    /// <summary>How well a constructed circle must touch what it was asked to touch, as a share of the figure's size.</summary>
    public const double TangentRatio = 1e-9;

    /// <summary>Two unit tangents that differ by less than this in sine leave a node alike: the curves' ends tell them apart (radians).</summary>
    public const double AlikeRadians = 1e-3;

    /// <summary>Two lines whose unit directions differ by less than this in sine are parallel (radians).</summary>
    public const double ParallelRadians = 1e-12;

    /// <summary>A point nearer than this to a curve lies on it: what computing in doubles leaves of nothing.</summary>
    public const double ExactMm = 1e-9;

    /// <summary>What drawing edges together may move a border by on the average: where it would be more, the area is kept by other means.</summary>
    public const double UnseenMm = 1e-7;

    /// <summary>How far the touch distance may grow where the arrangement contradicts itself.</summary>
    public const double CoarsestTouchMm = 1e-3;

    /// <summary>How far beside an edge a point is taken that stands for the face there.</summary>
    public const double BesideMm = 1e-5;

    /// <summary>A turn below which an angle and its sine are one number to rounding: the arc is computed as a line (radians).</summary>
    public const double StraightRadians = 1e-8;

    /// <summary>By how much a length is moved to see what it does: a slope by difference keeps half the digits.</summary>
    public const double DifferenceMm = 1e-6;
}
