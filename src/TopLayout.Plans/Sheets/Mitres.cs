using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// Where two sides meet at a point of the outline, as at the horn of a pointed cutaway, and with them linings and binding: each pair is mitred on the
/// line from the point through the corners inside it.
/// </summary>
internal static class Mitres
{
    /// <summary>The part it belongs to.</summary>
    public const string Part = "mitre";

    // A sharper corner is no bend of one side. Common practice, no source.
    private const double SharpDegrees = 20;

    // A corner inside belongs to a point when it is no farther off than this many times the line it lies on.
    private const double NearTimes = 4;

    /// <summary>What a maker does there.</summary>
    public const string Meaning = "mitre at the point: sides, linings and binding meet on this line, each cut to it";

    /// <summary>The sharp corners of a closed contour.</summary>
    public static IEnumerable<Point2> Corners(Contour contour)
    {
        var segments = contour.Segments;
        return from i in Enumerable.Range(0, segments.Length)
               let next = segments[(i + 1) % segments.Length]
               where Math.Abs(Trig.Turn(segments[i].TangentAt(1), next.TangentAt(0)).Degrees) > SharpDegrees
               select next.Start;
    }

    /// <summary>From each point of the outline, clear of the blocks, through the corners of the lines inside it, as far as they have one.</summary>
    public static IEnumerable<IReadOnlyList<Point2>> Of(Layout layout, params IReadOnlyList<Contour> inside)
    {
        var blocks = layout.Members.Where(m => m.Kind == MemberKind.Block).ToList();
        foreach (var point in Corners(layout.Outline))
        {
            if (blocks.Exists(b => b.Footprint.DistanceTo(point) <= 2 * layout.InsideOfSides.DistanceTo(point)))
            {
                continue;
            }

            var line = new List<Point2> { point };
            foreach (var contour in inside)
            {
                var near = Corners(contour).OrderBy(c => c.DistanceTo(point)).Take(1).ToList();
                if (near is [var corner] && corner.DistanceTo(point) <= NearTimes * contour.DistanceTo(point))
                {
                    line.Add(corner);
                }
            }

            if (line.Count > 1)
            {
                yield return line;
            }
        }
    }

    /// <summary>Draws the mitres of sides and linings, or of the binding on the plan of the outside, and asks for their names.</summary>
    public static void Draw(SheetBoard board, Layout layout, FaceView view, bool isOfBinding)
    {
        IReadOnlyList<Contour> inside = isOfBinding
            ? [.. layout.Marks.Where(Binding.IsLedge).OrderBy(m => m.Name == Binding.LedgeName ? 0 : 1).Select(m => m.Line)]
            : [layout.InsideOfSides, layout.LiningLine];
        foreach (var line in Of(layout, inside))
        {
            board.Draw(Part, Role.Mark, view.Map(new Contour(line.Select(p => new Vertex(p)), isClosed: false)));
            board.Name(new LabelRequest(Part, Role.Text, Part, SheetBoard.TextMm, view.Map(line[^2].MidpointTo(line[^1]))));
        }
    }
}
