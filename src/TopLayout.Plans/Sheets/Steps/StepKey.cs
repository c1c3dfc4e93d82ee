using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>A small drawing of the top in a frame, to find one's way by: every part on it is named as one of the key, so that nobody cuts it.</summary>
internal static class StepKey
{
    private const string Part = "key";
    private const double HeadMm = 8;
    private const double FootMm = 12;
    private const double MarginMm = 4;
    private const double SpeckMm = 0.02;

    /// <summary>Draws it into a frame, at one to the smallest whole number that fits.</summary>
    public static void Draw(SheetBoard board, Layout layout, Step step, Box2 frame)
    {
        var view = new FaceView(step.Face, layout.Design.Get(Identity.Handed).Value);
        var body = view.Map(layout.Outline).Bounds;
        var room = new Box2(frame.Min + new Vec2(MarginMm, FootMm), frame.Max - new Vec2(MarginMm, HeadMm));
        var one = Math.Ceiling(Math.Max(body.Width / room.Width, body.Height / room.Height));
        var middle = body.Center;
        var place = Placement.Moved(room.Center.X - (middle.X / one), room.Center.Y - (middle.Y / one));
        void Small(string part, Role role, Contour contour, Emphasis emphasis = Emphasis.Normal) =>
            board.Draw(part, role, WithoutSpecks(view.Map(contour).Scaled(1 / one).Placed(place)), emphasis);

        board.Box(Part, Role.Text, frame);
        Small(Part, Role.Centre, new Contour([new Vertex(new Point2(0, 4)), new Vertex(new Point2(0, layout.Outline.Bounds.Min.Y - 4))], isClosed: false));
        var around = step.Shown.IsEmpty ? Emphasis.Normal : Emphasis.Faint;
        Small(Part, Role.Mark, layout.Outline, around);
        Small(Part, Role.Mark, layout.Hole.Edge, around);
        foreach (var (name, line) in step.Shown)
        {
            Small($"{Part} {name}", Role.Mark, line);
        }

        Words(board, view, frame, NumberFormat.Whole((int)one));
    }

    // What is short at full size is a speck here.
    private static Contour WithoutSpecks(Contour contour)
    {
        var seen = contour.Vertices.Where((_, i) => i >= contour.Segments.Length || contour.Segments[i].Length > SpeckMm).ToList();
        return seen.Count < 2 ? contour : new Contour(seen, contour.IsClosed);
    }

    private static void Words(SheetBoard board, FaceView view, Box2 frame, string one)
    {
        var (left, right) = view.IsBassLeft ? ("bass", "treble") : ("treble", "bass");
        var head = frame.Max.Y - 5.5;
        board.Write(Part, left, new Point2(frame.Min.X + 2, head));
        board.Write(Part, $"{view.Word}, neck up", new Point2(frame.Center.X, head), alignment: Alignment.Centre);
        board.Write(Part, right, new Point2(frame.Max.X - 2, head), alignment: Alignment.Right);
        board.Write(Part, "NOT TO SCALE", new Point2(frame.Center.X, frame.Min.Y + 6.5), 3.5, Alignment.Centre);
        board.Write(Part, $"a key at about 1:{one}; never measure or cut it", new Point2(frame.Center.X, frame.Min.Y + 2), 2.3, Alignment.Centre);
    }
}
