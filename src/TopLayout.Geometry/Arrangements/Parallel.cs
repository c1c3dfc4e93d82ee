namespace TopLayout.Geometry.Arrangements;

/// <summary>An edge moved to its right along its normals; an arc keeps its bulge, also where its radius passes zero.</summary>
internal readonly struct Parallel
{
    public Parallel(Curve along, double rightMm, string label)
    {
        (Base, Label) = (along, label);
        (Start, End) = (along.Start - (along.StartTangent.Left * rightMm), along.End - (along.EndTangent.Left * rightMm));
        var keepsSense = 1 + (along.Curvature * rightMm) > 0 && Start.DistanceTo(End) > Tolerances.TouchMm;
        Curve = keepsSense ? new Curve(Start, End, along.Bulge) : null;
    }

    /// <summary>The edge itself.</summary>
    public Curve Base { get; }

    public string Label { get; }

    public Point2 Start { get; }

    public Point2 End { get; }

    /// <summary>The parallel; null where it has shrunk to a point or lies inside out.</summary>
    public Curve? Curve { get; }

    /// <summary>The part between cuts; null stands for an end of its own.</summary>
    public Segment Between(Point2? from, Point2? to)
    {
        var (start, end) = (from ?? Start, to ?? End);
        var bulge = from is null && to is null ? Base.Bulge : Curve!.BulgeBetween(start, end);
        return new Segment(start, end, bulge, Label);
    }
}
