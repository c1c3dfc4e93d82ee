namespace TopLayout.Geometry.Fitting;

/// <summary>
/// The circle or line nearest to points by Taubin's algebraic fit (G. Taubin 1991, PAMI 13, 1115), found as the smallest root of its
/// characteristic cubic by Newton's method from zero (N. Chernov, Circular and Linear Regression, 2010, ch. 5). It is kept as
/// A|w|² + B·w + C = 0 with w from the points' mean and |B|² − 4AC = 1, so that a line is A = 0.
/// </summary>
internal readonly record struct CircleFit(Point2 Mean, double A, Vec2 B, double C)
{
    /// <summary>|curvature|, 1/mm.</summary>
    public double Curvature => 2 * Math.Abs(A);

    /// <summary>The direction in which <see cref="Distance"/> grows at a point, unit.</summary>
    public Vec2 NormalAt(Point2 p) => (((p - Mean) * (2 * A)) + B).Unit;

    /// <summary>Distance to the circle or line, mm, signed: with F the form's value 2F/(1 + √(1 + 4AF)) is |p − c| − r without the difference.</summary>
    public double Distance(Point2 p)
    {
        var w = p - Mean;
        var value = (A * w.Dot(w)) + B.Dot(w) + C;
        return 2 * value / (1 + Math.Sqrt(Math.Max(0, 1 + (4 * A * value))));
    }

    /// <summary>The nearest point of the circle or line.</summary>
    public Point2 Nearest(Point2 p) => p - (NormalAt(p) * Distance(p));

    /// <summary>Sum of the squares of the distances, mm².</summary>
    public double Squares(ReadOnlySpan<Point2> points)
    {
        var sum = 0.0;
        foreach (var p in points)
        {
            var distance = Distance(p);
            sum += distance * distance;
        }

        return sum;
    }

    /// <summary>The largest distance, mm.</summary>
    public double Largest(ReadOnlySpan<Point2> points)
    {
        var largest = 0.0;
        foreach (var p in points)
        {
            largest = Math.Max(largest, Math.Abs(Distance(p)));
        }

        return largest;
    }

    /// <summary>The fit to at least two points; the line where they lie on one better.</summary>
    public static CircleFit Of(ReadOnlySpan<Point2> points)
    {
        var sum = default(Vec2);
        foreach (var p in points)
        {
            sum += p - points[0];
        }

        var mean = points[0] + (sum / points.Length);
        var (xx, yy, xy, xz, yz, zz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var p in points)
        {
            var v = p - mean;
            var z = v.Dot(v);
            (xx, yy, xy, xz, yz, zz) = (xx + (v.X * v.X), yy + (v.Y * v.Y), xy + (v.X * v.Y), xz + (v.X * z), yz + (v.Y * z), zz + (z * z));
        }

        var n = points.Length;
        var line = OfLine(mean, xx, yy, xy);
        var circle = OfCircle(mean, xx / n, yy / n, xy / n, xz / n, yz / n, zz / n);
        return circle is { } c && c.Squares(points) <= line.Squares(points) ? c : line;
    }

    // Along the principal axis of the scatter, whose double angle has the tangent 2xy/(xx − yy).
    private static CircleFit OfLine(Point2 mean, double xx, double yy, double xy)
    {
        var along = Trig.Direction(Trig.Atan2(2 * xy, xx - yy) / 2);
        return new CircleFit(mean, 0, along.Left, 0);
    }

    private static CircleFit? OfCircle(Point2 mean, double xx, double yy, double xy, double xz, double yz, double zz)
    {
        var (z, cov) = (xx + yy, (xx * yy) - (xy * xy));
        var a3 = 4 * z;
        var a2 = (-3 * z * z) - zz;
        var a1 = (zz * z) + (4 * cov * z) - (xz * xz) - (yz * yz) - (z * z * z);
        var a0 = (xz * xz * yy) + (yz * yz * xx) - (zz * cov) - (2 * xz * yz * xy) + (z * z * cov);
        var (root, value) = (0.0, a0);
        for (var step = 0; step < 20; step++)
        {
            var next = root - (value / (a1 + (root * ((2 * a2) + (3 * root * a3)))));
            var at = a0 + (next * (a1 + (next * (a2 + (next * a3)))));
            if (!double.IsFinite(next) || !(Math.Abs(at) < Math.Abs(value)))
            {
                break;
            }

            (root, value) = (next, at);
        }

        var determinant = (root * root) - (root * z) + cov;
        var toCenter = new Vec2((xz * (yy - root)) - (yz * xy), (yz * (xx - root)) - (xz * xy)) / 2;
        var size = Math.Sqrt(toCenter.Dot(toCenter) + (z * determinant * determinant));
        return size > 0 && double.IsFinite(size)
            ? new CircleFit(mean, determinant / (2 * size), toCenter / -size, -determinant * z / (2 * size))
            : null;
    }
}
