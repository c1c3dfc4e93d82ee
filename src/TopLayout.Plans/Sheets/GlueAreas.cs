using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Where glue goes: the footprints of braces and flat parts, hatched askew to their grain, so that strokes and edges keep apart.</summary>
internal static class GlueAreas
{
    /// <summary>The part the strokes belong to.</summary>
    public const string Part = "glue area";

    // The least angle between the strokes and a long edge, and what edge is long.
    private const double ApartDegrees = 15;
    private const double LongMm = 10;

    // From square to the grain, the first that keeps off all long edges.
    private static readonly double[] AskewDegrees = [45, 60, 30, -45, -60, -30, 75, -75, 15, -15];

    /// <summary>Hatches the members of a face that glue holds on the top; linings, which run all round the rim, are left plain.</summary>
    public static void Draw(SheetBoard board, Layout layout, FaceView view)
    {
        foreach (var member in layout.Members.Where(m => m.Face == view.Face && m.Material is not null && m.Kind != MemberKind.Lining))
        {
            Draw(board, layout, member, view);
        }
    }

    /// <summary>Hatches what of one member is glued.</summary>
    public static void Draw(SheetBoard board, Layout layout, Member member, FaceView view)
    {
        var direction = member.Grain.Degrees + 90 + AskewDegrees.MaxBy(a => Math.Min(ApartDegrees, Apart(member, member.Grain.Degrees + 90 + a)));
        board.Hatch(Part, layout.GluedArea(member).Placed(view.Placement), Angle.FromDegrees(view.Placement.Mirrored ? 180 - direction : direction));
    }

    // To the nearest of the long straight edges, degrees.
    private static double Apart(Member member, double direction) => member.Footprint.Edges
        .Where(e => !e.IsArc && e.Length >= LongMm)
        .Select(e => Math.Abs(Math.IEEERemainder(Trig.Heading(e.End - e.Start).Degrees - direction, 180)))
        .DefaultIfEmpty(90)
        .Min();
}
