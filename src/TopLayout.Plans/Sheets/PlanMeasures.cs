using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The running measures of a plan: widths at their stations on the left, places along the body on the right, all from the neck edge.</summary>
internal static class PlanMeasures
{
    private const double OffMm = 12;
    private const double OverMm = 8;
    private const double UnderMm = 11;

    /// <summary>Draws both ladders beside the body.</summary>
    public static void Draw(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        var along = new Ladder("places along the body", body.Max.X + OffMm, outward: 1);
        Widths(board, layout, view, body, along);
        along.Add(0, "0 neck edge, fret " + NumberFormat.Whole(layout.Frets.JoinFret));
        foreach (var (fromNeckEdge, what) in view.Face == TopFace.Outside ? OutsidePlaces(layout) : InsidePlaces(layout))
        {
            along.Add(-fromNeckEdge, $"{Text(layout, fromNeckEdge)} {what}");
        }

        PlateEdges.Ends(layout, (y, text) => along.Add(y, text));
        along.Add(body.Min.Y, $"{Text(layout, -body.Min.Y)} tail");
        along.Draw(board);
        if (view.Face == TopFace.Outside)
        {
            Bouts(board, layout, body);
        }
    }

    // The widths over the bouts, above and below the body, where both halves are alike.
    private static void Bouts(SheetBoard board, Layout layout, Box2 body)
    {
        var widths = BodyWidths.Of(layout.Outline).Where(w => w.Side is null).ToList();
        foreach (var (name, height) in (ReadOnlySpan<(string, double)>)[("upper bout", body.Max.Y + OverMm), ("lower bout", body.Min.Y - UnderMm)])
        {
            if (widths.FindIndex(w => w.Name == name) is >= 0 and var i)
            {
                var (half, at) = (widths[i].Half, -widths[i].FromNeckEdge);
                Dimension.Across(board, name, new Point2(-half, at), new Point2(half, at), height, LengthText.OnRuleWithUnit(2 * half, layout.Design.Units));
            }
        }
    }

    // A width of one half stands on that side.
    private static void Widths(SheetBoard board, Layout layout, FaceView view, Box2 body, Ladder right)
    {
        var widths = new Ladder("widths", body.Min.X - OffMm, outward: -1);
        foreach (var w in BodyWidths.Of(layout.Outline))
        {
            var what = w.Side is null ? $"{w.Name} {Text(layout, 2 * w.Half)}" : $"{w.Name}, {w.Side} {Text(layout, w.Half)}";
            var isLeft = w.Side is null || (w.Side == "bass") == view.IsBassLeft;
            (isLeft ? widths : right).Add(-w.FromNeckEdge, $"{what} at {Text(layout, w.FromNeckEdge)}", (isLeft ? -1 : 1) * (w.Half + 2));
        }

        widths.Draw(board, hasUpright: false);
    }

    private static IEnumerable<(double FromNeckEdge, string What)> OutsidePlaces(Layout layout)
    {
        var design = layout.Design;
        yield return (Fretboard.EndFromNeckEdge(design), "fretboard end");
        yield return (-layout.Hole.Center.Y, $"hole centre, {HoleSize(layout)}");
        yield return (Bridge.FrontFromNeckEdge(design), "bridge front");
        yield return (-layout.Saddle.Treble.Y, "saddle, treble string");
        yield return (-layout.Saddle.Bass.Y, "saddle, bass string");
        yield return (Bridge.RearFromNeckEdge(design), "bridge rear");
    }

    private static IEnumerable<(double FromNeckEdge, string What)> InsidePlaces(Layout layout)
    {
        var design = layout.Design;
        yield return (-Block.Neck.FaceY(design, layout.InsideOfSides), "neck block face");
        if (layout.Find(Tongue.Name) is { } tongue)
        {
            yield return (-tongue.Footprint.Bounds.Min.Y, "tongue tip");
        }

        if (layout.Find(FlatBrace.Name) is { } flat)
        {
            yield return (-flat.Footprint.Bounds.Center.Y, "flat brace, middle");
        }

        if (layout.Find(TransverseBrace.Name) is not null)
        {
            yield return (TransverseBrace.FromNeckEdge(design, layout.Hole), "transverse brace, middle");
        }

        yield return (-layout.Hole.Center.Y, $"hole centre, {HoleSize(layout)}");
        if (design.Has(XBrace.Section))
        {
            yield return (-XBrace.Crossing(design, layout.Hole).Y, $"X crossing, {LengthText.Of(design[XBrace.Angle].Value)}");
        }

        if (layout.Find(BridgePlate.Name) is { } plate)
        {
            yield return (-plate.Footprint.Bounds.Max.Y, "bridge plate front");
            yield return (-plate.Footprint.Bounds.Min.Y, "bridge plate rear");
        }

        yield return (-Block.Tail.FaceY(design, layout.InsideOfSides), "tail block face");
    }

    private static string HoleSize(Layout layout) => layout.Hole.Radius is { } radius
        ? $"dia {Text(layout, 2 * radius)}"
        : $"{Text(layout, 2 * layout.Hole.HalfWidth)} x {Text(layout, 2 * layout.Hole.HalfLength)}";

    private static string Text(Layout layout, double mm) => LengthText.OnRule(mm, layout.Design.Units);
}
