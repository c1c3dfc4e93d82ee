using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes the shapes of one layer. What differs from the layer's own colour and line type is said at the entity.</summary>
internal sealed class DxfEntities(TagWriter tags, Layer layer)
{
    /// <summary>Writes a shape: a contour as it is, words as text, letters to be made by a tool as strokes.</summary>
    public void Write(Shape shape)
    {
        if (shape is LabelShape label && label.Role is not (Role.Engrave or Role.Mark))
        {
            WriteText(label);
            return;
        }

        foreach (var contour in shape.Lines)
        {
            WriteContour(shape, contour);
        }
    }

    private void WriteContour(Shape shape, Contour contour)
    {
        if (FullCircle.Of(contour) is { } circle)
        {
            Start("CIRCLE", shape);
            tags.Point(10, circle.Center);
            tags.Mm(40, circle.RadiusMm);
        }
        else if (contour.IsClosed || contour.Segments.Length > 1)
        {
            WritePolyline(shape, contour);
        }
        else if (contour.Segments[0].IsArc)
        {
            WriteArc(shape, contour.Segments[0]);
        }
        else
        {
            Start("LINE", shape);
            tags.Point(10, contour.Segments[0].Start);
            tags.Point(11, contour.Segments[0].End);
        }
    }

    // An arc of the format always runs counter-clockwise; one that turns right is written from its end.
    private void WriteArc(Shape shape, Segment arc)
    {
        var (from, to) = arc.Bulge > 0 ? (arc.Start, arc.End) : (arc.End, arc.Start);
        Start("ARC", shape);
        tags.Point(10, arc.Center);
        tags.Mm(40, arc.Radius);
        tags.Degrees(50, FullTurn(Trig.Heading(from - arc.Center)));
        tags.Degrees(51, FullTurn(Trig.Heading(to - arc.Center)));
    }

    private void WritePolyline(Shape shape, Contour contour)
    {
        Start("POLYLINE", shape);
        tags.Whole(66, 1);
        tags.Point(10, new Point2(0, 0));
        tags.Whole(70, contour.IsClosed ? 1 : 0);
        foreach (var (index, vertex) in contour.Vertices.Index())
        {
            tags.Text(0, "VERTEX");
            tags.Text(8, layer.Name);
            tags.Point(10, vertex.Position);
            if (vertex.Bulge != 0 && index < contour.Segments.Length)
            {
                tags.Bulge(vertex.Bulge);
            }
        }

        tags.Text(0, "SEQEND");
        tags.Text(8, layer.Name);
    }

    // Readers set text in a font of their own; where the alignment is not left, the second point counts and the first is a hint.
    private void WriteText(LabelShape label)
    {
        Start("TEXT", label);
        tags.Point(10, label.BaselineStart);
        tags.Mm(40, label.HeightMm);
        tags.Text(1, PlainAscii.Of(label.Text));
        tags.Degrees(50, label.Rotation);
        tags.Text(7, DxfTables.TextStyle);
        if (label.Alignment != Alignment.Left)
        {
            tags.Whole(72, label.Alignment == Alignment.Centre ? 1 : 2);
            tags.Point(11, label.Anchor);
        }
    }

    private void Start(string type, Shape shape)
    {
        tags.Text(0, type);
        tags.Text(8, layer.Name);
        var (own, usual) = (Pen.For(shape), Pen.For(layer.Role));
        if (shape is ContourShape && own.Style != usual.Style)
        {
            tags.Text(6, DxfTables.LineType(own.Style));
        }

        if (own.ColourNumber != usual.ColourNumber)
        {
            tags.Whole(62, own.ColourNumber);
        }
    }

    private static Angle FullTurn(Angle angle) => angle.Degrees < 0 ? angle + Angle.FromDegrees(360) : angle;
}
