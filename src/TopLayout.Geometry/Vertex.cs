namespace TopLayout.Geometry;

/// <summary>A corner of a contour and the shape of the segment that leaves it.</summary>
/// <param name="Position">Where it lies, mm.</param>
/// <param name="Bulge">tan(sweep/4) of the leaving segment, in [−1, 1], positive turns left; 0 is a line.</param>
/// <param name="Label">Name of the leaving edge; empty when it has none.</param>
public readonly record struct Vertex(Point2 Position, double Bulge = 0, string Label = "");
