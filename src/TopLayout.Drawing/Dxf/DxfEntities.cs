using TopLayout.Geometry;

namespace TopLayout.Drawing.Dxf;

/// <summary>Writes the shapes of one layer. What differs from the layer's own colour and line type is said at the entity.</summary>
internal sealed class DxfEntities(DxfRecords records, Layer layer)
{
    private readonly TagWriter _tags = records.Tags;

    /// <summary>Writes a shape: a contour as it is, words as text, letters to be made by a tool as strokes.</summary>
    public void Write(Shape shape)
    {
        if (shape is LabelShape { IsOnlyRead: true } label)
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
            Start("CIRCLE", shape, "AcDbCircle");
            _tags.Point(10, circle.Center);
            _tags.Mm(40, circle.RadiusMm);
        }
        else if (records.Options.Level == DxfLevel.LinesAndArcs || (!contour.IsClosed && contour.Segments.Length == 1))
        {
            foreach (var segment in contour.Segments)
            {
                WriteSegment(shape, segment);
            }
        }
        else if (records.Options.Level == DxfLevel.R2000)
        {
            WriteLightPolyline(shape, contour);
        }
        else
        {
            WritePolyline(shape, contour);
        }
    }

    private void WriteSegment(Shape shape, Segment segment)
    {
        if (segment.IsArc)
        {
            WriteArc(shape, segment);
            return;
        }

        Start("LINE", shape, "AcDbLine");
        _tags.Point(10, segment.Start);
        _tags.Point(11, segment.End);
    }

    // An arc of the format always runs counter-clockwise; one that turns right is written from its end.
    private void WriteArc(Shape shape, Segment arc)
    {
        var (from, to) = arc.Bulge > 0 ? (arc.Start, arc.End) : (arc.End, arc.Start);
        Start("ARC", shape, "AcDbCircle");
        _tags.Point(10, arc.Center);
        _tags.Mm(40, arc.Radius);
        records.Classes("AcDbArc");
        _tags.Degrees(50, FullTurn(Trig.Heading(from - arc.Center)));
        _tags.Degrees(51, FullTurn(Trig.Heading(to - arc.Center)));
    }

    private void WritePolyline(Shape shape, Contour contour)
    {
        Start("POLYLINE", shape, "AcDb2dPolyline");
        _tags.Whole(66, 1);
        _tags.Origin();
        _tags.Whole(70, contour.IsClosed ? 1 : 0);
        foreach (var (index, vertex) in contour.Vertices.Index())
        {
            _tags.Text(0, "VERTEX");
            _tags.Text(8, layer.Name);
            _tags.Point(10, vertex.Position);
            WriteBulge(contour, index, vertex);
        }

        _tags.Text(0, "SEQEND");
        _tags.Text(8, layer.Name);
    }

    // The count comes first: readers that meet the flag before it lose it.
    private void WriteLightPolyline(Shape shape, Contour contour)
    {
        Start("LWPOLYLINE", shape, "AcDbPolyline");
        _tags.Whole(90, contour.Vertices.Length);
        _tags.Whole(70, contour.IsClosed ? 1 : 0);
        foreach (var (index, vertex) in contour.Vertices.Index())
        {
            _tags.Point2D(10, vertex.Position);
            WriteBulge(contour, index, vertex);
        }
    }

    private void WriteBulge(Contour contour, int index, Vertex vertex)
    {
        if (vertex.Bulge != 0 && index < contour.Segments.Length)
        {
            _tags.Bulge(vertex.Bulge);
        }
    }

    // Readers set text in a font of their own; where the alignment is not left, the second point counts and the first is a hint.
    private void WriteText(LabelShape label)
    {
        Start("TEXT", label, "AcDbText");
        _tags.Point(10, label.BaselineStart);
        _tags.Mm(40, label.HeightMm);
        _tags.Text(1, PlainAscii.Of(label.Text));
        _tags.Degrees(50, label.Rotation);
        _tags.Text(7, DxfTables.StyleName(records));
        if (label.Alignment != Alignment.Left)
        {
            _tags.Whole(72, label.Alignment == Alignment.Centre ? 1 : 2);
            _tags.Point(11, label.Anchor);
        }

        records.Classes("AcDbText");
    }

    private void Start(string type, Shape shape, string ofClass)
    {
        _tags.Text(0, type);
        records.Identify(records.Options.HasHandles ? records.NextHandle() : "", records.ModelSpace, 5, "AcDbEntity");
        _tags.Text(8, layer.Name);
        var (own, usual) = (Pen.For(shape), Pen.For(layer.Role));
        if (shape is ContourShape && own.Style != usual.Style)
        {
            _tags.Text(6, DxfTables.LineType(records, own.Style));
        }

        if (own.ColourNumber != usual.ColourNumber)
        {
            _tags.Whole(62, own.ColourNumber);
        }

        records.Classes(ofClass);
    }

    private static Angle FullTurn(Angle angle) => angle.Degrees < 0 ? angle + Angle.FromDegrees(360) : angle;
}
