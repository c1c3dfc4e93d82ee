using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>What the template of the bridge has besides its outline: the saddle's slot or line, the tie block and the holes through it.</summary>
internal static class BridgeTemplate
{
    /// <summary>Draws it; a line of words on each.</summary>
    public static IEnumerable<string> Besides(SheetBoard board, Layout layout, FaceView view)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        if (layout.FindMark(SaddleSlot.Name) is { } slot)
        {
            board.Draw(slot.Name, Role.Mark, view.Map(slot.Line));
            yield return $"{slot.Name}: {Of(layout.Design[SaddleSlot.Width].Value)} wide, {Of(layout.Design[SaddleSlot.Length].Value)} long, {Of(slot.ThicknessMm)} deep, "
                + $"front wall {Of(SaddleSlot.WallFromFront(layout.Design))} behind the front edge on the centre line";
        }

        else
        {
            var saddle = layout.Saddle;
            board.Line("saddle", Role.Mark, view.Map(saddle.Bass), view.Map(saddle.Treble));
            yield return $"saddle: the line between the outer strings, {Of(layout.Design[Bridge.FrontToSaddle].Value)} behind the front edge on the centre line; its slot is not in the design";
        }

        if (layout.FindMark(BridgePins.TieBlockName) is { Line.Bounds: var block })
        {
            // Its rear edge is the bridge's own.
            Point2[] open = [block.Min, new(block.Min.X, block.Max.Y), block.Max, new(block.Max.X, block.Min.Y)];
            board.Draw(BridgePins.TieBlockName, Role.Mark, view.Map(new Contour(open.Select(p => new Vertex(p)), isClosed: false)));
            yield return $"{BridgePins.TieBlockName}: {Of(block.Width)} long, {Of(block.Height)} from the rear edge";
        }

        if (layout.TieHoles is [var hole, ..] && TieBlockView.Across(layout) is { } across)
        {
            TieBlockView.Plan(board, layout, view);
            yield return $"dashed: {across}";
            yield return $"tie holes: dia {Of(hole.DiameterMm)}, middles {Of(hole.HeightMm)} above the top, drilled along the body, none through the top";
        }
    }
}
