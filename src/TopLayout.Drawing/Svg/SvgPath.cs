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

    private readonly StringBuilder _data = new();

    /// <summary>The data of several contours as one path.</summary>
    public string Data(IEnumerable<Contour> contours)
    {
        _data.Clear();
        foreach (var contour in contours)
        {
            _data.Append(_data.Length > 0 ? " " : "");
            Append(contour);
        }

        return _data.ToString();
    }

    /// <summary>Distance from the left edge of the page.</summary>
    public string X(Point2 p) => Length(p.X - page.Min.X);

    /// <summary>Distance from the top edge of the page.</summary>
    public string Y(Point2 p) => Length(page.Max.Y - p.Y);

    private void Append(Contour contour)
    {
        To("M ", contour.Vertices[0].Position);
        var last = contour.Segments.Length - 1;
        for (var i = 0; i <= last; i++)
        {
            if (!(contour.IsClosed && i == last && !contour.Segments[i].IsArc))
            {
                Append(contour.Segments[i]);
            }
        }

        _data.Append(contour.IsClosed ? " Z" : "");
    }

    private void Append(Segment segment)
    {
        if (!segment.IsArc)
        {
            To(" L ", segment.End);
        }
        else if (Math.Abs(segment.Bulge) > LargestBulge)
        {
            Append(segment.Part(0, 0.5));
            Append(segment.Part(0.5, 1));
        }
        else
        {
            // Turning y round turns the sense round too: a left turn of the sheet has sweep 0.
            _data.Append(" A ").AppendTrimmed(segment.Radius, decimals).Append(' ').AppendTrimmed(segment.Radius, decimals);
            To(segment.Bulge > 0 ? " 0 0 0 " : " 0 0 1 ", segment.End);
        }
    }

    private void To(string command, Point2 p) =>
        _data.Append(command).AppendTrimmed(p.X - page.Min.X, decimals).Append(' ').AppendTrimmed(page.Max.Y - p.Y, decimals);

    private string Length(double mm) => NumberFormat.Trimmed(mm, decimals);
}
