namespace TopLayout.Geometry.Arrangements;

/// <summary>One edge of a loop on its way out of the kernel: its shape, its carrier and its name.</summary>
/// <param name="Shape">The edge.</param>
/// <param name="Carrier">A curve on the line or circle the edge lies on, run through in the same sense.</param>
/// <param name="Source">Number of the strand it comes from; parts of one strand carry one number.</param>
/// <param name="Label">The builder's name.</param>
internal readonly record struct Piece(Curve Shape, Curve Carrier, int Source, string Label)
{
    public static Piece Of(Segment segment, int source)
    {
        var curve = Curve.Of(segment);
        return new Piece(curve, curve, source, segment.Label);
    }

    public Point2 Start => Shape.Start;

    public Point2 End => Shape.End;

    public Segment ToSegment() => new(Start, End, Shape.Bulge, Label);

    /// <summary>The piece along its carrier between other ends.</summary>
    public Piece Along(Point2 start, Point2 end) => this with { Shape = new Curve(start, end, Carrier.BulgeBetween(start, end)) };

    /// <summary>The piece bent to other ends at the same bulge.</summary>
    public Piece Bent(Point2 start, Point2 end) => Bent(start, end, Shape.Bulge);

    /// <summary>Another curve under the piece's name.</summary>
    public Piece Bent(Point2 start, Point2 end, double bulge)
    {
        var shape = new Curve(start, end, bulge);
        return this with { Shape = shape, Carrier = shape };
    }
}
