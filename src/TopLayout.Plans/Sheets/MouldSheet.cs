using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The mould that holds the sides: its inside is the outline, its outside a block that can be sawn apart on the centre line.</summary>
internal static class MouldSheet
{
    // Stuff left all round: enough for bolts and cramps. Common practice, no source.
    private const double WallMm = 50;

    /// <summary>The sheet.</summary>
    public static Sheet Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        var board = new SheetBoard();
        var view = new FaceView(TopFace.Outside, layout.Design.Get(Identity.Handed).Value);
        var outline = view.Map(layout.Outline);
        var block = outline.Bounds.Grown(WallMm);
        board.Draw("mould inside", Role.Cut, outline);
        board.Box("mould outside", Role.Cut, block);
        board.Line("centre line", Role.Centre, new Point2(0, block.Max.Y + 6), new Point2(0, block.Min.Y - 6));
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);

        // Where the body is widest, small ones have room for words.
        var place = new Point2(6, -BodyWidths.Of(layout.Outline).MaxBy(w => w.Half).FromNeckEdge);
        board.Write("notes", "waste", place, 5);
        foreach (var (i, note) in ((string[])["inside line: outer face of the sides,", $"all round {Of(outline.Length)};", "cut to the middle of the line,", "saw apart on the centre line"]).Index())
        {
            board.Write("notes", note, place - new Vec2(0, 8 + (5 * i)));
        }

        if (layout.Design.Has(Cutaway.Section) && layout.Design.Get(Cutaway.Shape).Value == CutawayShape.Pointed)
        {
            board.Write("notes", "saw the mould's block behind the point loose too: it comes straight off there", new Point2(block.Min.X, block.Min.Y - 8));
        }

        FaceMarks.Draw(board, view, block);
        board.Write(Cautions.Part, Cautions.Cutting, new Point2(block.Min.X, block.Min.Y - 13));
        TitleBlock.Draw(board, top, $"Mould, {Of(block.Width)} x {Of(block.Height)}, full size", FaceMarks.Reading(view), new Point2(block.Min.X, block.Min.Y - 18), block.Width);
        return board.Finish("mould", $"Mould - {layout.Design[Identity.Name].Value}", "The mould for the sides at full size: cut inside and outside.");
    }
}
