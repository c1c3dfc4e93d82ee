using System.Text;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Svg;

/// <summary>Turns contours into path data on a page: x from its left edge, y down from its top edge, mm.</summary>
/// <param name="page">The page, in sheet coordinates, mm.</param>
/// <param name="decimals">Decimals of every length.</param>
internal sealed class SvgPath(Box2 page, int decimals)
{
    /// <summary>A nanometre: what is made from the drawing.</summary>
    public const int ToWorkTo = 6;

    /// <summary>A micrometre: letters to read.</summary>
    public const int ToRead = 3;

    // Near a half turn a rounded radius may fall short of half the chord, and readers would enlarge it.
    private const double LargestBulge = 0.8;

    /// <summary>The data of several contours as one path.</summary>
    public string Data(IEnumerable<Contour> contours) => string.Join(' ', contours.Select(Data));

    /// <summary>Distance from the left edge of the page.</summary>
    public string X(Point2 p) => Length(p.X - page.Min.X);

    /// <summary>Distance from the top edge of the page.</summary>
    public string Y(Point2 p) => Length(page.Max.Y - p.Y);

    private string Data(Contour contour)
    {
        var data = new StringBuilder("M ").Append(At(contour.Vertices[0].Position));
        var last = contour.Segments.Length - 1;
        foreach (var (index, segment) in contour.Segments.Index())
        {
            if (!(contour.IsClosed && index == last && !segment.IsArc))
            {
                Append(data, segment);
            }
        }

        return data.Append(contour.IsClosed ? " Z" : "").ToString();
    }

    private void Append(StringBuilder data, Segment segment)
    {
        if (!segment.IsArc)
        {
            data.Append(" L ").Append(At(segment.End));
        }
        else if (Math.Abs(segment.Bulge) > LargestBulge)
        {
            Append(data, segment.Part(0, 0.5));
            Append(data, segment.Part(0.5, 1));
        }
        else
        {
            // Turning y round turns the sense round too: a left turn of the sheet has sweep 0.
            var radius = Length(segment.Radius);
            var sweep = segment.Bulge > 0 ? "0" : "1";
            data.Append(" A ").AppendJoin(' ', radius, radius, "0 0", sweep, At(segment.End));
        }
    }

    private string Length(double mm) => NumberFormat.Trimmed(mm, decimals);

    private string At(Point2 p) => $"{X(p)} {Y(p)}";
}
