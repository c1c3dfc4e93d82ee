using System.Text;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// Drawing operators, in mm with y up. PDF has no arcs: each is drawn by cubics with handles 4/3·tan(θ/4) of the radius long. Such a cubic leaves
/// its arc by 2.7·10⁻⁴ of the radius over 90°, 4.3·10⁻⁶ over 45° and 3.7·10⁻⁷ over 30° (found by sampling); the widest is taken that stays
/// within a tenth of a micrometre, or a micrometre for letters that are only read, and 30° at least.
/// </summary>
internal sealed class PdfContent
{
    /// <summary>Points to the millimetre.</summary>
    public const double PointsPerMm = 72 / 25.4;

    // Widest piece, and its error as a share of the radius.
    private static readonly (double Degrees, double Error)[] Pieces = [(90, 2.7e-4), (45, 4.3e-6), (30, 3.7e-7)];

    private const int MmDecimals = 4;
    private static readonly Fineness ToWorkTo = new(MmDecimals, 1e-4);
    private static readonly Fineness ToRead = new(3, 1e-3);

    private readonly StringBuilder _text = new();
    private Pen? _pen;

    /// <summary>A length or coordinate in mm to a tenth of a micrometre.</summary>
    public static string Mm(double mm) => NumberFormat.Trimmed(mm, MmDecimals);

    /// <summary>A length as points, as boxes want it.</summary>
    public static string Points(double mm) => NumberFormat.Trimmed(mm * PointsPerMm, MmDecimals);

    /// <summary>The operators so far.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>From now on one unit is one mm.</summary>
    public PdfContent InMillimetres() => Line($"{NumberFormat.Trimmed(PointsPerMm, 8)} 0 0 {NumberFormat.Trimmed(PointsPerMm, 8)} 0 0 cm");

    /// <summary>Saves the state of the page.</summary>
    public PdfContent Save() => Line("q");

    /// <summary>Restores it.</summary>
    public PdfContent Restore()
    {
        _pen = null;
        return Line("Q");
    }

    /// <summary>Shifts and stretches all that follows; a stretch of 1 is true size.</summary>
    public PdfContent Place(Vec2 shift, double stretchX = 1, double stretchY = 1) =>
        Line($"{NumberFormat.Trimmed(stretchX, 8)} 0 0 {NumberFormat.Trimmed(stretchY, 8)} {Mm(shift.X)} {Mm(shift.Y)} cm");

    /// <summary>Nothing outside the box is drawn from now on.</summary>
    public PdfContent Clip(Box2 box) => Line($"{Mm(box.Min.X)} {Mm(box.Min.Y)} {Mm(box.Width)} {Mm(box.Height)} re W n");

    /// <summary>Draws a named form.</summary>
    public PdfContent Draw(string form) => Line($"/{form} Do");

    /// <summary>What follows belongs to a named layer, until <see cref="EndLayer"/>.</summary>
    public PdfContent BeginLayer(string name) => Line($"/OC /{name} BDC");

    /// <summary>Ends the layer.</summary>
    public PdfContent EndLayer() => Line("EMC");

    /// <summary>Draws a shape with its pen; the words of a label lie over its strokes, unseen.</summary>
    public PdfContent Draw(Shape shape)
    {
        Use(Pen.For(shape));
        var fineness = shape.IsOnlyRead ? ToRead : ToWorkTo;
        foreach (var contour in shape.Lines)
        {
            Path(contour, fineness);
        }

        Line("S");
        return shape is LabelShape label ? Line(PdfText.Unseen(label)) : this;
    }

    private PdfContent Line(string operators)
    {
        _text.Append(operators).Append('\n');
        return this;
    }

    // Only what changes; ends and corners are round.
    private void Use(Pen pen)
    {
        if (pen == _pen)
        {
            return;
        }

        _pen = pen;
        var colour = string.Join(' ', ((int[])[1, 3, 5]).Select(i => NumberFormat.Trimmed(Convert.ToInt32(pen.Colour.Substring(i, 2), 16) / 255.0, 3)));
        var dashes = string.Join(' ', Pen.Dashes(pen.Style).Select(Mm));
        Line($"1 J 1 j {colour} RG {Mm(pen.WidthMm)} w [{dashes}] 0 d");
    }

    private void Path(Contour contour, Fineness fineness)
    {
        At(contour.Vertices[0].Position, fineness).Append("m\n");
        foreach (var segment in contour.Segments)
        {
            if (segment.IsArc)
            {
                Arc(segment, fineness);
            }
            else
            {
                At(segment.End, fineness).Append("l\n");
            }
        }

        if (contour.IsClosed)
        {
            Line("h");
        }
    }

    private void Arc(Segment arc, Fineness fineness)
    {
        var radius = arc.Radius;
        var widest = Pieces.Where(p => p.Error * radius <= fineness.MostErrorMm).Select(p => p.Degrees).DefaultIfEmpty(Pieces[^1].Degrees).First();
        var pieces = (int)Math.Ceiling((Math.Abs(arc.Sweep.Degrees) / widest) - 1e-9);
        for (var i = 0; i < pieces; i++)
        {
            var piece = arc.Part((double)i / pieces, (double)(i + 1) / pieces);

            // 4/3·tan(θ/4) of the radius, and tan(θ/4) is the bulge; the radius is d(1 + b²)/4|b|.
            var handle = piece.ChordLength * (1 + (piece.Bulge * piece.Bulge)) / 3;
            At(piece.Start + (piece.TangentAt(0) * handle), fineness);
            At(piece.End - (piece.TangentAt(1) * handle), fineness);
            At(piece.End, fineness).Append("c\n");
        }
    }

    private StringBuilder At(Point2 p, Fineness fineness) =>
        _text.AppendTrimmed(p.X, fineness.Decimals).Append(' ').AppendTrimmed(p.Y, fineness.Decimals).Append(' ');

    // Decimals of every coordinate in mm, and how far a cubic may leave its arc.
    private readonly record struct Fineness(int Decimals, double MostErrorMm);
}
