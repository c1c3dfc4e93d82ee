using TopLayout.Geometry;

namespace TopLayout.Drawing.Labels;

/// <summary>Whether things meet the frame of a label: its four sides or its inside.</summary>
public static class Frames
{
    /// <summary>True when a line or arc touches the frame or lies in it.</summary>
    public static bool Meets(Contour frame, Segment line) =>
        Holds(frame, line.Start) || frame.Segments.Any(side => Intersections.Of(side, line).Count > 0);

    /// <summary>True when two frames share a point.</summary>
    public static bool Meets(Contour frame, Contour other) =>
        Holds(other, frame.Vertices[0].Position) || other.Segments.Any(side => Meets(frame, side));

    /// <summary>True when the point lies in the frame, which is convex and runs counter-clockwise.</summary>
    public static bool Holds(Contour frame, Point2 p) => frame.Segments.All(side => (side.End - side.Start).Cross(p - side.Start) >= 0);
}
