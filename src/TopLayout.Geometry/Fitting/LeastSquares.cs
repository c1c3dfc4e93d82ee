namespace TopLayout.Geometry.Fitting;

/// <summary>Levenberg–Marquardt: the parameters that make the sum of squares of residuals least, slopes by differences.</summary>
internal static class LeastSquares
{
    private const int MostRounds = 25;
    private const double LeastDamping = 1e-9;
    private const double MostDamping = 1e9;

    // A round that gains less than this share is the last: on exact data every round gains nearly all there is.
    private const double LeastGain = 1e-2;

    /// <summary>The best parameters found from a start; the start itself where it has no residuals.</summary>
    /// <param name="residuals">The residuals at a choice of parameters, always as many; null where it is impossible.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="steps">The difference to take in each parameter.</param>
    public static double[] Minimise(Func<double[], double[]?> residuals, double[] start, double[] steps)
    {
        if (residuals(start) is not { } here)
        {
            return start;
        }

        var (at, damping) = (start, 1e-3);
        for (var round = 0; round < MostRounds && damping < MostDamping; round++)
        {
            var (matrix, side) = Normal(Slopes(residuals, at, here, steps), here);
            var before = Product(here, here);
            for (var isBetter = false; !isBetter && damping < MostDamping; damping = isBetter ? Math.Max(damping / 5, LeastDamping) : damping * 5)
            {
                var move = Solve(matrix, side, damping);
                var next = at.Zip(move, (p, m) => p - m).ToArray();
                if (residuals(next) is { } there && Product(there, there) < before)
                {
                    (isBetter, at, here) = (true, next, there);
                }
            }

            if (before - Product(here, here) <= LeastGain * before)
            {
                break;
            }
        }

        return at;
    }

    private static double[][] Slopes(Func<double[], double[]?> residuals, double[] at, double[] here, double[] steps)
    {
        var slopes = new double[at.Length][];
        for (var j = 0; j < at.Length; j++)
        {
            var moved = (double[])at.Clone();
            moved[j] += steps[j];
            var there = residuals(moved) ?? here;
            slopes[j] = new double[here.Length];
            for (var k = 0; k < here.Length; k++)
            {
                slopes[j][k] = (there[k] - here[k]) / steps[j];
            }
        }

        return slopes;
    }

    private static (double[,] Matrix, double[] Side) Normal(double[][] slopes, double[] here)
    {
        var n = slopes.Length;
        var (matrix, side) = (new double[n, n], new double[n]);
        for (var i = 0; i < n; i++)
        {
            side[i] = Product(slopes[i], here);
            for (var j = 0; j <= i; j++)
            {
                matrix[i, j] = matrix[j, i] = Product(slopes[i], slopes[j]);
            }
        }

        return (matrix, side);
    }

    private static double Product(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var k = 0; k < a.Length; k++)
        {
            sum += a[k] * b[k];
        }

        return sum;
    }

    // Cholesky's decomposition of the matrix with its diagonal raised; a pivot that rounding makes negative counts as tiny.
    private static double[] Solve(double[,] matrix, double[] side, double damping)
    {
        const double Tiny = 1e-30;
        var n = side.Length;
        var (l, x) = (new double[n, n], (double[])side.Clone());
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = i == j ? (matrix[i, i] * (1 + damping)) + Tiny : matrix[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= l[i, k] * l[j, k];
                }

                l[i, j] = i == j ? Math.Sqrt(Math.Max(sum, Tiny)) : sum / l[j, j];
            }
        }

        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
            {
                x[i] -= l[i, k] * x[k];
            }

            x[i] /= l[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                x[i] -= l[k, i] * x[k];
            }

            x[i] /= l[i, i];
        }

        return x;
    }
}
