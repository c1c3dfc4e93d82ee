using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>Where the bridge and the saddle go, at full size, with every distance that places them.</summary>
internal static class BridgeSheet
{
    /// <summary>The sheet; null when the layout has no bridge.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        if (layout.Find(Bridge.Name) is not { } bridge)
        {
            return null;
        }

        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var outline = view.Map(bridge.Footprint.Outer);
        board.Draw(Bridge.Name, Role.Mark, outline);
        GlueAreas.Draw(board, layout, bridge, view);
        Fittings.Draw(board, layout, view, layout.DrillPoints.Where(p => BridgePins.IsPin(p) || bridge.Footprint.Contains(p.At)));
        PinNumbers(board, layout, view);
        TieBlockView.Plan(board, layout, view);
        board.Line("saddle", Role.Mark, view.Map(layout.Saddle.Bass), view.Map(layout.Saddle.Treble));
        var theory = view.Map(new Point2(0, -layout.Frets.SaddleFromNeckEdge)).Y;
        board.Line("theoretical saddle", Role.Centre, new Point2(outline.Bounds.Min.X, theory), new Point2(outline.Bounds.Max.X, theory));
        var body = outline.Bounds;
        board.Line("centre line", Role.Centre, new Point2(0, body.Max.Y + 5), new Point2(0, body.Min.Y - 6));
        FaceMarks.Draw(board, view, body);
        Measures(board, layout, view, body);
        TieBlockView.FromTail(board, layout, bridge, view, body);
        var drawn = board.Extents;
        board.Write(
            Cautions.Part, "place it by the real neck: measure from the nut, or nut to fret 12 and the same again, then the compensation", new Point2(drawn.Min.X, drawn.Min.Y - 7));
        var foot = TitleBlock.Draw(board, top, "Bridge and saddle: where they go, full size", FaceMarks.Reading(view), new Point2(drawn.Min.X, drawn.Min.Y - 12), board.Extents.Width);
        Legend.Draw(board, new Point2(drawn.Min.X, foot - 4));
        return board.Finish("bridge-place", $"Place of the bridge - {layout.Design[Identity.Name].Value}", "Where the bridge and the saddle stand on the top, at full size.");
    }

    private static void Measures(SheetBoard board, Layout layout, FaceView view, Box2 body)
    {
        var (design, nut) = (layout.Design, layout.Frets.NeckEdgeFromNut);
        string Of(double mm) => LengthText.WithUnit(mm, design.Units);
        string Both(double fromNeckEdge) => $"{Of(fromNeckEdge)} from neck edge, {Of(nut + fromNeckEdge)} from nut";
        var ladder = new Ladder("bridge measures", body.Max.X + 8, outward: 1);
        ladder.Add(body.Max.Y, $"front edge {Both(-body.Max.Y)}; {Of(body.Width)} long");
        ladder.Add(view.Map(new Point2(0, -layout.Frets.SaddleFromNeckEdge)).Y, $"theoretical saddle {Both(layout.Frets.SaddleFromNeckEdge)}");
        ladder.Add(view.Map(layout.Saddle.Treble).Y, $"outer treble string {Both(-layout.Saddle.Treble.Y)}, {Of(layout.Saddle.Treble.X)} from the centre line");
        ladder.Add(view.Map(layout.Saddle.Bass).Y, $"outer bass string {Both(-layout.Saddle.Bass.Y)}, {Of(-layout.Saddle.Bass.X)} from the centre line");
        if (layout.FindMark(SaddleSlot.Name) is { } slot)
        {
            ladder.Add(
                body.Max.Y - SaddleSlot.WallFromFront(design),
                $"slot {Of(design[SaddleSlot.Width].Value)} x {Of(design[SaddleSlot.Length].Value)}, {Of(slot.ThicknessMm)} deep; front wall behind the front edge: "
                + $"{Of(body.Max.Y - slot.Line.Vertices[0].Position.Y)} at the bass end, {Of(body.Max.Y - slot.Line.Vertices[^1].Position.Y)} at the treble");
        }

        if (layout.FindMark(BridgePins.TieBlockName)?.Line.Bounds is { } tie)
        {
            ladder.Add(tie.Center.Y, $"tie block {Of(tie.Height)} x {Of(tie.Width)}, its front edge {Of(body.Max.Y - tie.Max.Y)} behind the bridge's");
        }

        if (TieBlockView.Across(layout) is { } holes)
        {
            ladder.Add(layout.TieHoles[0].To.Y, holes);
        }

        Locating(ladder, layout, body, Both);

        Pins(ladder, layout, Both);
        ladder.Add(body.Min.Y, $"rear edge {Both(-body.Min.Y)}");
        ladder.Draw(board);
    }

    // Every pin its number, behind it, and the outer ones the side they stand on.
    private static void PinNumbers(SheetBoard board, Layout layout, FaceView view)
    {
        var pins = layout.DrillPoints.Where(BridgePins.IsPin).ToList();
        foreach (var (i, pin) in pins.Index().Where(_ => pins.Count > 1))
        {
            var (at, number) = (view.Map(pin.At), NumberFormat.Whole(pins.Count - i));
            var isLeft = at.X < 0;
            var side = i == 0 ? "bass" : i == pins.Count - 1 ? "treble" : "";
            var words = side.Length == 0 ? number : isLeft ? $"{side} {number}" : $"{number} {side}";
            var outward = (Lettering.Measure(words, SheetBoard.TextMm).Width - Lettering.Measure(number, SheetBoard.TextMm).Width) / 2;
            var behind = new Vec2(isLeft ? -outward : outward, -(pin.RadiusMm + Fittings.CrossMm + SheetBoard.TextMm));
            board.Name(new LabelRequest(pin.Name, Role.Text, words, SheetBoard.TextMm, at) { Preferred = [at + behind, new Point2(at.X + behind.X, at.Y - behind.Y)], Priority = 1 });
        }
    }

    // The outer pins from the centre line and from the saddle at their strings, and how far the pins stand apart.
    private static void Pins(Ladder ladder, Layout layout, Func<double, string> both)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var pins = layout.DrillPoints.Where(BridgePins.IsPin).OrderBy(p => p.At.X).ToList();
        void Outer(string side, DrillPoint pin, Point2 saddle) => ladder.Add(
            pin.At.Y, $"outer {side} pin {Of(saddle.Y - pin.At.Y)} behind the saddle there, {Of(Math.Abs(pin.At.X))} from the centre line; {both(-pin.At.Y)}");
        if (pins.Count > 1)
        {
            Outer("treble", pins[^1], layout.Saddle.Treble);
            ladder.Add(
                (pins[0].At.Y + pins[^1].At.Y) / 2,
                $"{NumberFormat.Whole(pins.Count)} pins, each {Of((pins[^1].At.X - pins[0].At.X) / (pins.Count - 1))} across from the next, on a straight line; holes {Of(pins[0].DiameterMm)}");
            Outer("bass", pins[0], layout.Saddle.Bass);
        }
        else if (pins is [var only])
        {
            ladder.Add(only.At.Y, $"pin on the centre line, {both(-only.At.Y)}, hole {Of(only.DiameterMm)}");
        }
    }

    // Pins that only hold the bridge while the glue is wet, those at one height in one line.
    private static void Locating(Ladder ladder, Layout layout, Box2 body, Func<double, string> both)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        foreach (var row in layout.DrillPoints.Where(p => !BridgePins.IsPin(p) && body.Contains(p.At)).GroupBy(p => p.At.Y))
        {
            var (first, count) = (row.First(), row.Count());
            ladder.Add(first.At.Y, $"locating pin{(count > 1 ? "s" : "")} {both(-first.At.Y)}, {Of(Math.Abs(first.At.X))} {(count > 1 ? "to each side" : "off the centre line")}, hole {Of(first.DiameterMm)}");
        }
    }
}
