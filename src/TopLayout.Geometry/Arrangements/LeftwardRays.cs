namespace TopLayout.Geometry.Arrangements;

/// <summary>
/// Winding numbers by rays to the left. The chord of each curve counts by the crossing rule half open in y (Hormann and Agathos 2001);
/// an arc adds its turn when the point lies between it and its chord. Curves wait in strips of y, about √n of them.
/// </summary>
internal sealed class LeftwardRays
{
    private readonly Curve[] _curves;
    private readonly List<int>[] _strips;
    private readonly double _bottom;
    private readonly double _height;

    public LeftwardRays(Curve[] curves)
    {
        _curves = curves;
        var box = Box2.Empty;
        foreach (var c in curves)
        {
            box = box.Union(c.Bounds);
        }

        _strips = new List<int>[(int)Math.Sqrt(curves.Length) + 1];
        _bottom = box.IsEmpty ? 0 : box.Min.Y;
        _height = box.IsEmpty ? 1 : Math.Max(box.Height / _strips.Length, double.Epsilon);
        for (var i = 0; i < _strips.Length; i++)
        {
            _strips[i] = [];
        }

        for (var i = 0; i < curves.Length; i++)
        {
            for (var strip = Strip(curves[i].Bounds.Min.Y); strip <= Strip(curves[i].Bounds.Max.Y); strip++)
            {
                _strips[strip].Add(i);
            }
        }
    }

    /// <summary>The winding number of the curves round a point on none of them, each counted by its weight.</summary>
    public int Winding(Point2 p, Func<int, int> weightOf)
    {
        var sum = 0;
        foreach (var i in _strips[Strip(p.Y)])
        {
            var turns = Turns(_curves[i], p);
            sum += turns == 0 ? 0 : turns * weightOf(i);
        }

        return sum;
    }

    /// <summary>How often a curve turns round a point as seen by a ray to the left: −1, 0 or 1.</summary>
    public static int Turns(Curve c, Point2 p)
    {
        if (p.Y < c.Bounds.Min.Y || p.Y > c.Bounds.Max.Y || p.X < c.Bounds.Min.X)
        {
            return 0;
        }

        var (startsBelow, endsBelow) = (c.Start.Y <= p.Y, c.End.Y <= p.Y);
        var isLeft = IsLeft(c, p, startsBelow, endsBelow);
        var chord = startsBelow == endsBelow || startsBelow == isLeft ? 0 : startsBelow ? -1 : 1;
        var isInCap = c.IsArc && isLeft != c.Bulge > 0 && p.DistanceTo(c.Center) < c.Radius;
        return chord + (isInCap ? Math.Sign(c.Bulge) : 0);
    }

    // Left of the chord. One answer for a chord run through either way; a point on a level chord lies above it, as for the crossing rule.
    private static bool IsLeft(Curve c, Point2 p, bool startsBelow, bool endsBelow)
    {
        var runsRight = (c.Start.X, c.Start.Y).CompareTo((c.End.X, c.End.Y)) < 0;
        var (from, to) = runsRight ? (c.Start, c.End) : (c.End, c.Start);
        var side = (to - from).Cross(p - from);
        var isAbove = startsBelow == endsBelow && Math.Abs(side) <= Tolerances.ExactMm * c.ChordLength ? startsBelow : side >= 0;
        return isAbove == runsRight;
    }

    private int Strip(double y) => (int)Math.Clamp((y - _bottom) / _height, 0, _strips.Length - 1);
}
