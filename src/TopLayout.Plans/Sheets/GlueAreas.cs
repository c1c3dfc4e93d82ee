using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Where glue goes: the footprints of braces and flat parts, hatched askew to their grain, so that strokes and edges keep apart.</summary>
internal static class GlueAreas
{
    /// <summary>The part the strokes belong to.</summary>
    public const string Part = "glue area";

    private const double AskewDegrees = 45;

    /// <summary>Hatches the members of a face that glue holds on the top; linings, which run all round the rim, are left plain.</summary>
    public static void Draw(SheetBoard board, Layout layout, FaceView view)
    {
        foreach (var member in layout.Members.Where(m => m.Face == view.Face && m.Material is not null && m.Kind != MemberKind.Lining))
        {
            Draw(board, member, view);
        }
    }

    /// <summary>Hatches one member.</summary>
    public static void Draw(SheetBoard board, Member member, FaceView view)
    {
        var direction = member.Grain.Degrees + 90 + AskewDegrees;
        board.Hatch(Part, member.Footprint.Placed(view.Placement), Angle.FromDegrees(view.Placement.Mirrored ? 180 - direction : direction));
    }
}
