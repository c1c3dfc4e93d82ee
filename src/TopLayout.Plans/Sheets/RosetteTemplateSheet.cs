using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// Templates for the rosette at full size: the disc of the hole and the rings of the channels, nested round one centre so that every circle is
/// cut once, and a row of tile blanks of every row of tiles.
/// </summary>
internal static class RosetteTemplateSheet
{
    private const double ApartMm = 2;
    private const double RowMm = 110;
    private const int MostTiles = 10;

    /// <summary>The sheet; null without a channel round a round hole.</summary>
    public static Sheet? Draw(ReviewedTop top)
    {
        var layout = top.Layout;
        var channels = Rosette.Channels(layout.Design, layout.Hole.Radius);
        if (channels.Length == 0 || layout.Hole.Radius is not { } hole)
        {
            return null;
        }

        var board = new SheetBoard();
        Nest(board, layout, channels, hole);
        foreach (var (ring, tile) in TileJoints.Rows(layout))
        {
            Blanks(board, layout, ring, tile);
        }

        var drawn = board.Extents;
        board.Write(Cautions.Part, Cautions.Cutting, new Point2(drawn.Min.X, drawn.Min.Y - 8));
        var what = TileJoints.Rows(layout).Any() ? "disc, rings and tiles" : channels.Any(c => c.Rings.Any()) ? "disc and rings" : "disc of the hole, walls of the channel";
        TitleBlock.Draw(board, top, $"Rosette: {what}, full size", "cut to the middle of the line", new Point2(drawn.Min.X, drawn.Min.Y - 13), board.Extents.Width);
        return board.Finish("rosette-templates", $"Rosette templates - {layout.Design[Identity.Name].Value}", $"The templates of the rosette at full size, to cut out: {what}.");
    }

    private static void Nest(SheetBoard board, Layout layout, IReadOnlyList<RingChannel> channels, double hole)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var ladder = new Ladder("ring measures", hole + channels[^1].OuterMm + 8, outward: 1);
        var pin = layout.Design[Rosette.Pin].Value / 2;
        board.Draw("pivot hole", Role.Cut, Contour.Circle(new Point2(0, 0), pin));
        ladder.Add(0, $"pivot hole: diameter {Of(2 * pin)}");
        board.Draw("soundhole disc", Role.Cut, Contour.Circle(new Point2(0, 0), hole));
        ladder.Add(-hole, $"disc of the hole: radius {Of(hole)}");
        foreach (var (i, channel) in channels.Index())
        {
            var name = channels.Count == 1 ? "channel" : $"channel {NumberFormat.Whole(i + 1)}";
            if (i == 0 || channels[i - 1].OuterMm != channel.InnerMm)
            {
                board.Draw($"{Rosette.NameOf(i, channels.Count)} ring", Role.Cut, Contour.Circle(new Point2(0, 0), hole + channel.InnerMm));
                ladder.Add(-(hole + channel.InnerMm), $"{name}, hole-side wall: radius {Of(hole + channel.InnerMm)}");
            }

            board.Draw($"{Rosette.NameOf(i, channels.Count)} ring", Role.Cut, Contour.Circle(new Point2(0, 0), hole + channel.OuterMm));
            ladder.Add(-(hole + channel.OuterMm), $"{name}, outer wall: radius {Of(hole + channel.OuterMm)}");
        }

        board.Line("centre line", Role.Centre, new Point2(0, hole - 4), new Point2(0, 4 - hole));
        ladder.Draw(board);
    }

    // Point up and point down by turns where they taper, as they come out of a strip with the least waste.
    private static void Blanks(SheetBoard board, Layout layout, Ring ring, Tile tile)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var part = $"{ring.Name} template";
        var step = ((tile.InnerWidthMm + tile.OuterWidthMm) / 2) + ApartMm;
        var count = Math.Clamp((int)(RowMm / step), 1, Math.Min(MostTiles, tile.Row.Count));
        var foot = board.Extents.Min.Y - 8 - tile.DepthMm;
        var first = new Point2(board.Extents.Min.X + (tile.OuterWidthMm / 2), foot);
        for (var i = 0; i < count; i++)
        {
            var (low, high) = i % 2 == 0 ? (tile.InnerWidthMm, tile.OuterWidthMm) : (tile.OuterWidthMm, tile.InnerWidthMm);
            var middle = first + new Vec2(i * step, 0);
            Point2 At(double across, double up) => middle + new Vec2(across, up);
            board.Draw(part, Role.Cut, Contour.Polygon(At(-low / 2, 0), At(low / 2, 0), At(high / 2, tile.DepthMm), At(-high / 2, tile.DepthMm)));
        }

        var cut = tile.Row.Shape == TileShape.Wedge
            ? $"saw {NumberFormat.Trimmed(tile.HalfTurn.Degrees, 2)}° off square on each side"
            : $"straight, gap {NumberFormat.Trimmed(tile.OuterGapMm, 2)} mm outside";
        board.Write(part, $"{ring.Name}: make {NumberFormat.Whole(tile.Row.Count)}{Woods(ring)}, {cut}", new Point2(board.Extents.Min.X, foot - 5));
        board.Write(
            part,
            $"blank {Of(tile.InnerWidthMm)} inside, {Of(tile.OuterWidthMm)} outside, {Of(tile.DepthMm)} deep; corners stand {NumberFormat.Trimmed(tile.StandOffMm, 2)} mm off the inner wall",
            new Point2(board.Extents.Min.X, foot - 10));
    }

    private static string Woods(Ring ring) => ring.SecondWood is null ? "" : $", {NumberFormat.Whole(ring.Tiles!.Count / 2)} of each wood";
}
