using SkiaSharp;
using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Preview;

/// <summary>Draws shapes onto a canvas whose unit is a mm of the sheet: from the page's upper left corner, y down.</summary>
/// <param name="canvas">The canvas.</param>
/// <param name="page">The page, in sheet coordinates, mm.</param>
/// <param name="leastLineMm">The thinnest line drawn, mm; 0 for pens as they are.</param>
internal sealed class SheetPainter(SKCanvas canvas, Box2 page, double leastLineMm)
{
    // Up to a quarter turn a piece is well-conditioned as a conic; its bulge is tan(90°/4).
    private const double QuarterBulge = 0.415;

    /// <summary>Draws them in order.</summary>
    public void Draw(IEnumerable<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            using var path = PathOf(shape);
            using var paint = Paint(Pen.For(shape));
            canvas.DrawPath(path, paint);
        }
    }

    private SKPaint Paint(Pen pen)
    {
        var paint = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeCap = SKStrokeCap.Round,
            StrokeJoin = SKStrokeJoin.Round,
            StrokeWidth = (float)Math.Max(pen.WidthMm, leastLineMm),
            Color = SKColor.Parse(pen.Colour),
            IsAntialias = true,
        };
        if (Pen.Dashes(pen.Style) is [_, ..] dashes)
        {
            paint.PathEffect = SKPathEffect.CreateDash([.. dashes.Select(d => (float)d)], 0);
        }

        return paint;
    }

    private SKPath PathOf(Shape shape)
    {
        using var path = new SKPathBuilder();
        if (shape is ContourShape { Contour: var contour } && FullCircle.Of(contour) is { } circle)
        {
            var center = At(circle.Center);
            path.AddCircle(center.X, center.Y, (float)circle.RadiusMm, SKPathDirection.Clockwise);
            return path.Detach();
        }

        foreach (var line in shape.Lines)
        {
            Append(path, line);
        }

        return path.Detach();
    }

    private void Append(SKPathBuilder path, Contour contour)
    {
        path.MoveTo(At(contour.Vertices[0].Position));
        foreach (var segment in contour.Segments)
        {
            Append(path, segment);
        }

        if (contour.IsClosed)
        {
            path.Close();
        }
    }

    // An arc of sweep s is exactly the conic whose middle point is where the tangents at its ends meet, with weight cos(s/2): with
    // bulge b = tan(s/4), tan(s/2) = 2b/(1 - b²) and cos(s/2) = (1 - b²)/(1 + b²). A left turn lies to the right of its chord.
    private void Append(SKPathBuilder path, Segment segment)
    {
        var (b, square) = (segment.Bulge, segment.Bulge * segment.Bulge);
        if (!segment.IsArc)
        {
            path.LineTo(At(segment.End));
        }
        else if (Math.Abs(b) > QuarterBulge)
        {
            Append(path, segment.Part(0, 0.5));
            Append(path, segment.Part(0.5, 1));
        }
        else
        {
            var corner = segment.Start.MidpointTo(segment.End) - ((segment.End - segment.Start).Left * (b / (1 - square)));
            path.ConicTo(At(corner), At(segment.End), (float)((1 - square) / (1 + square)));
        }
    }

    private SKPoint At(Point2 p) => new((float)(p.X - page.Min.X), (float)(page.Max.Y - p.Y));
}
