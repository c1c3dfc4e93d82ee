namespace TopLayout.Geometry;

/// <summary>
/// One choice of sides in Apollonius's problem, solved for centre and radius (x, y, ρ). A circle (c, r) touched from side s demands
/// |x − c|² = (ρ + s·r)², a line with left normal n through p demands n·(x − p) = s·ρ. The difference of two circle demands is linear,
/// so two linear demands leave a line in (x, y, ρ), and one circle demand a quadratic on it; three lines leave one point.
/// </summary>
internal sealed class Apollonius
{
    private readonly (Given Given, int Side)[] _demands;
    private readonly Point2 _origin;
    private readonly double _scale;

    public Apollonius(params (Given Given, int Side)[] demands)
    {
        _demands = demands;
        var anchors = demands.Select(d => d.Given.Circle?.Center ?? d.Given.Line!.Value.Point).ToList();
        anchors = [.. demands.Select((d, i) => d.Given.Line?.Foot(anchors[0]) ?? anchors[i])];
        _origin = anchors[0].MidpointTo(anchors[1].MidpointTo(anchors[2]));
        _scale = Math.Max(anchors.Max(p => p.DistanceTo(_origin)), demands.Max(d => d.Given.Circle?.Radius ?? 0));
    }

    /// <summary>None, one or two circles, by radius, then by the centre's x, then y.</summary>
    public IEnumerable<Circle> Solutions()
    {
        if (!(_scale > 0))
        {
            return [];
        }

        var found = new List<Circle>(2);
        foreach (var root in Roots())
        {
            var circle = Polished(new Circle(_origin + (new Vec2(root.X, root.Y) * _scale), root.Z * _scale));
            var size = Math.Max(_scale, circle.Radius);
            var isTangent = _demands.All(d => Math.Abs(Miss(d.Given, d.Side, circle)) <= Tolerances.TangentRatio * size);
            var isGiven = _demands.Any(d => d.Given.Circle is { } c && c.Center.IsNear(circle.Center) && Math.Abs(c.Radius - circle.Radius) <= Tolerances.TouchMm);
            if (circle.Radius > Tolerances.TouchMm && isTangent && !isGiven && !found.Exists(f => f.Center.IsNear(circle.Center)))
            {
                found.Add(circle);
            }
        }

        return found.OrderBy(c => c.Radius).ThenBy(c => c.Center.X).ThenBy(c => c.Center.Y);
    }

    private List<Triple> Roots()
    {
        var lines = _demands.Where(d => d.Given.Line is not null).Select(d => Row(d.Given.Line!.Value, d.Side)).ToList();
        var circles = _demands.Where(d => d.Given.Circle is not null).Select(d => Row(d.Given.Circle!.Value, d.Side)).ToList();
        var rows = lines.Concat(circles.Skip(1).Select(c => (c.Row - circles[0].Row, c.Constant - circles[0].Constant))).ToList();
        for (var i = 0; i < rows.Count; i++)
        {
            var length = rows[i].Item1.Length;
            rows[i] = (rows[i].Item1 / length, rows[i].Item2 / length);
        }

        var along = rows[0].Item1.Cross(rows[1].Item1);
        var square = along.Dot(along);
        if (!(square > Tolerances.RoundingRatio))
        {
            return [];
        }

        // The point of the line nearest to the origin, where both rows vanish.
        var foot = ((rows[1].Item1.Cross(along) * rows[0].Item2) + (along.Cross(rows[0].Item1) * rows[1].Item2)) / -square;
        if (rows.Count == 3)
        {
            var step = rows[2].Item1.Dot(along);
            return Math.Abs(step) <= Tolerances.RoundingRatio ? [] : [foot - (along * ((rows[2].Item1.Dot(foot) + rows[2].Item2) / step))];
        }

        var unit = along / Math.Sqrt(square);
        var (linear, constant) = circles[0];
        return [.. Quadratic(
            unit.Form(unit),
            (2 * foot.Form(unit)) + linear.Dot(unit),
            foot.Form(foot) + linear.Dot(foot) + constant).Select(t => foot + (unit * t))];
    }

    // n·x − s·ρ − n·p = 0
    private (Triple Row, double Constant) Row(Line line, int side)
    {
        var (normal, p) = (line.Direction.Left.Unit, (line.Point - _origin) / _scale);
        return (new Triple(normal.X, normal.Y, -side), -normal.Dot(p));
    }

    // x² + y² − ρ² − 2c·x − 2s·r·ρ + c² − r² = 0; the squares are the form.
    private (Triple Row, double Constant) Row(Circle circle, int side)
    {
        var (c, r) = ((circle.Center - _origin) / _scale, circle.Radius / _scale);
        return (new Triple(-2 * c.X, -2 * c.Y, -2 * side * r), c.Dot(c) - (r * r));
    }

    private static IEnumerable<double> Quadratic(double a, double b, double c)
    {
        var square = (b * b) - (4 * a * c);
        if (Math.Abs(square) <= Tolerances.RoundingRatio * ((b * b) + Math.Abs(4 * a * c)))
        {
            square = 0;
        }

        if (square < 0)
        {
            yield break;
        }

        // The larger root first, the other by the product of the roots: no digits lost, and a = 0 needs no care.
        var q = -(b + (b < 0 ? -Math.Sqrt(square) : Math.Sqrt(square))) / 2;
        if (a != 0)
        {
            yield return q / a;
        }

        if (q != 0)
        {
            yield return c / q;
        }
    }

    private static double Miss(Given given, int side, Circle circle) => given.Line is { } line
        ? line.SignedDistanceTo(circle.Center) - (side * circle.Radius)
        : given.Circle!.Value.Center.DistanceTo(circle.Center) - Math.Abs(circle.Radius + (side * given.Circle!.Value.Radius));

    // Newton's method on the three misses; a double root, where it cannot turn, is left as it is.
    private Circle Polished(Circle circle)
    {
        for (var step = 0; step < 3; step++)
        {
            var rows = _demands.Select(d => (Slope(d.Given, d.Side, circle), Miss(d.Given, d.Side, circle))).ToArray();
            var (u, v, w) = (rows[0].Item1, rows[1].Item1, rows[2].Item1);
            var determinant = u.Dot(v.Cross(w));
            if (!(Math.Abs(determinant) > Tolerances.TangentRatio))
            {
                return circle;
            }

            var by = ((v.Cross(w) * rows[0].Item2) + (w.Cross(u) * rows[1].Item2) + (u.Cross(v) * rows[2].Item2)) / determinant;
            circle = new Circle(circle.Center - new Vec2(by.X, by.Y), circle.Radius - by.Z);
        }

        return circle;
    }

    private static Triple Slope(Given given, int side, Circle circle)
    {
        if (given.Line is { } line)
        {
            var normal = line.Direction.Left.Unit;
            return new Triple(normal.X, normal.Y, -side);
        }

        var away = (circle.Center - given.Circle!.Value.Center).Unit;
        return new Triple(away.X, away.Y, -Math.Sign(circle.Radius + (side * given.Circle!.Value.Radius)));
    }

    /// <summary>Three numbers: a row of coefficients, or a point (x, y, ρ).</summary>
    private readonly record struct Triple(double X, double Y, double Z)
    {
        public double Length => Math.Sqrt(Dot(this));

        public static Triple operator +(Triple a, Triple b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

        public static Triple operator -(Triple a, Triple b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

        public static Triple operator *(Triple a, double k) => new(a.X * k, a.Y * k, a.Z * k);

        public static Triple operator /(Triple a, double k) => new(a.X / k, a.Y / k, a.Z / k);

        public double Dot(Triple o) => (X * o.X) + (Y * o.Y) + (Z * o.Z);

        public Triple Cross(Triple o) => new((Y * o.Z) - (Z * o.Y), (Z * o.X) - (X * o.Z), (X * o.Y) - (Y * o.X));

        /// <summary>xx′ + yy′ − ρρ′.</summary>
        public double Form(Triple o) => (X * o.X) + (Y * o.Y) - (Z * o.Z);
    }
}
