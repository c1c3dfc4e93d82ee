namespace TopLayout.Lutherie.Parts;

/// <summary>What a number may be when all others stay as they are: for the cures of misfits that no formula decides.</summary>
internal static class LegalInterval
{
    private const int Steps = 240;
    private const int Halvings = 40;

    /// <summary>The legal stretch nearest to a value; null when no step of the range is legal.</summary>
    /// <param name="isLegal">Whether a number will do.</param>
    /// <param name="near">The number that will not.</param>
    /// <param name="range">The range searched.</param>
    public static (double Low, double High)? Nearest(Func<double, bool> isLegal, double near, (double Low, double High) range)
    {
        double At(int step) => range.Low + ((range.High - range.Low) * step / Steps);
        var legal = Enumerable.Range(0, Steps + 1).Select(n => isLegal(At(n))).ToArray();
        var nearest = Enumerable.Range(0, Steps + 1).Where(n => legal[n]).OrderBy(n => Math.Abs(At(n) - near)).Select(n => (int?)n).FirstOrDefault();
        if (nearest is not { } found)
        {
            return null;
        }

        var (first, last) = (found, found);
        while (first > 0 && legal[first - 1])
        {
            first--;
        }

        while (last < Steps && legal[last + 1])
        {
            last++;
        }

        return (first == 0 ? range.Low : End(isLegal, At(first), At(first - 1)), last == Steps ? range.High : End(isLegal, At(last), At(last + 1)));
    }

    private static double End(Func<double, bool> isLegal, double legal, double not)
    {
        for (var n = 0; n < Halvings; n++)
        {
            var middle = (legal + not) / 2;
            (legal, not) = isLegal(middle) ? (middle, not) : (legal, middle);
        }

        return legal;
    }
}
