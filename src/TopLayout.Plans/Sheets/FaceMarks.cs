using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// What keeps a maker from using a sheet the wrong way round: the face in large letters, bass and treble at their edges, an arrow to the
/// neck, and a letter R that reads wrong on a mirrored print.
/// </summary>
internal static class FaceMarks
{
    private const string Part = "face marks";
    private const double WordMm = 9;

    /// <summary>Draws the marks above a box of geometry, mm; over one half of a body its name in the place of bass and treble.</summary>
    public static void Draw(SheetBoard board, FaceView view, Box2 body, string? halfName = null)
    {
        var (middle, baseline) = (body.Center.X, body.Max.Y + 14);
        board.Write(Part, view.Word, new Point2(middle, baseline), WordMm, Alignment.Centre);
        var half = Lettering.Measure(view.Word, WordMm).Width / 2;
        var (left, right) = view.IsBassLeft ? ("BASS", "TREBLE") : ("TREBLE", "BASS");
        var reach = Math.Max(body.Width / 2, half + 62);
        if (halfName is not null)
        {
            board.Write(Part, halfName, new Point2(middle, baseline + WordMm + 5), 5, Alignment.Centre);
        }
        else
        {
            board.Write(Part, left, new Point2(middle - reach, baseline), 5);
            board.Write(Part, right, new Point2(middle + reach, baseline), 5, Alignment.Right);
        }

        Arrow(board, new Point2(middle - half - 16, baseline - 1));
        board.Draw(Part, Role.Text, Contour.Circle(new Point2(middle + half + 16, baseline + (WordMm / 2)), WordMm * 0.75));
        board.Write(Part, "R", new Point2(middle + half + 16, baseline + (WordMm / 2) - 3), 6, Alignment.Centre);
    }

    /// <summary>A sentence for the title block that says how to read the marks.</summary>
    public static string Reading(FaceView view) => view.Hand == Hand.Left
        ? "left-handed; if the R reads wrong, the sheet is mirrored"
        : "right-handed; if the R reads wrong, the sheet is mirrored";

    private static void Arrow(SheetBoard board, Point2 foot)
    {
        var tip = foot + new Vec2(0, 12);
        board.Line(Part, Role.Text, foot, tip);
        board.Draw(Part, Role.Text, Contour.Polygon(tip, tip + new Vec2(-1.8, -4.5), tip + new Vec2(1.8, -4.5)));
        board.Write(Part, "NECK", foot + new Vec2(-3, 4), SheetBoard.TextMm, Alignment.Right);
    }
}
