namespace TopLayout.Geometry;

/// <summary>How an offset goes round a corner on its outer side. <c>default</c> is <see cref="Round"/>.</summary>
public readonly record struct Corner
{
    private Corner(double limit) => MitreLimit = limit;

    /// <summary>The largest mitre limit: only corners sharper than 0.11° are cut. Farther tips would not be places any more.</summary>
    public const double LargestMitreLimit = 1000;

    /// <summary>Distance of a mitre's tip from the corner over the offset, up to which corners are mitred; 0 for round corners.</summary>
    public double MitreLimit { get; }

    /// <summary>An arc about the corner: every point of the border lies at the offset distance.</summary>
    public static Corner Round => default;

    /// <summary>
    /// The neighbours drawn out along their tangents until they meet; a corner whose tip would lie further off than
    /// <paramref name="limit"/> times the offset is cut straight across. That ratio is the mitre limit of SVG and PDF.
    /// </summary>
    /// <param name="limit">In [1, <see cref="LargestMitreLimit"/>]; at 4 a corner sharper than 29° is cut.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range or not a number.</exception>
    public static Corner Mitre(double limit = 4) => limit is >= 1 and <= LargestMitreLimit
        ? new Corner(limit)
        : throw new ArgumentOutOfRangeException(nameof(limit), limit, $"a mitre limit lies in [1, {LargestMitreLimit}]");
}
