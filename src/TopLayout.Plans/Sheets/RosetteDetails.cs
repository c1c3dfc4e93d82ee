using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Shops.Rosettes;

namespace TopLayout.Plans.Sheets;

/// <summary>Under the rosette: a section through its channels, enlarged, and a row of its tiles at full size.</summary>
internal static class RosetteDetails
{
    private const string SectionPart = "section";
    private const int Enlarged = 5;
    private const double BeyondMm = 5;
    private const int MostTiles = 5;

    /// <summary>Draws both below what is there; nothing without a channel.</summary>
    public static void Draw(SheetBoard board, Layout layout)
    {
        var channels = Rosette.Channels(layout.Design, layout.Hole.Radius);
        if (channels.Length == 0)
        {
            return;
        }

        Section(board, layout, channels);
        if (layout.Hole.Radius is not { } hole)
        {
            return;
        }

        foreach (var ring in channels.SelectMany(c => c.Rings).Where(r => r.Tiles is not null))
        {
            Tiles(board, layout, ring, hole);
        }
    }

    private static void Section(SheetBoard board, Layout layout, IReadOnlyList<RingChannel> channels)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var (top, depth) = (layout.Top.ThicknessMm, layout.Design[Rosette.Depth].Value);
        var corner = new Point2(board.Extents.Min.X, board.Extents.Min.Y - 8);
        Point2 At(double x, double y) => new(corner.X + (x * Enlarged), corner.Y - (y * Enlarged));
        var deep = Math.Min(depth, top);
        var outside = channels.SelectMany(c => new[] { At(c.InnerMm, 0), At(c.InnerMm, deep), At(c.OuterMm, deep), At(c.OuterMm, 0) });
        var far = channels[^1].OuterMm + BeyondMm;
        board.Draw(SectionPart, Role.Dimension, new Contour([.. new[] { At(far, top), At(0, top), At(0, 0) }.Concat(outside).Append(At(far, 0)).Select(p => new Vertex(p))], isClosed: false));
        foreach (var ring in channels.SelectMany(c => c.Rings.Skip(1)))
        {
            board.Line(SectionPart, Role.Dimension, At(ring.InnerMm, 0), At(ring.InnerMm, deep));
        }

        board.Write(SectionPart, "hole", At(0, 0) + new Vec2(1, 2), role: Role.Dimension);
        board.Write(
            SectionPart,
            $"section, {NumberFormat.Whole(Enlarged)} times full size: {Of(depth)} deep, floor {Of(top - depth)}",
            At(0, top) - new Vec2(0, 5),
            role: Role.Dimension);
    }

    private static void Tiles(SheetBoard board, Layout layout, Ring ring, double hole)
    {
        string Of(double mm) => LengthText.WithUnit(mm, layout.Design.Units);
        var tile = new Tile(ring.Tiles!, hole + ring.InnerMm, hole + ring.OuterMm);
        var step = tile.OuterWidthMm + 2;
        var first = new Point2(board.Extents.Min.X + (tile.OuterWidthMm / 2), board.Extents.Min.Y - 6 - tile.DepthMm);
        for (var i = 0; i < Math.Min(MostTiles, tile.Row.Count); i++)
        {
            var middle = first + new Vec2(i * step, 0);
            Point2 At(double across, double up) => middle + new Vec2(across, up);
            board.Draw($"{ring.Name} template", Role.Mark, new Contour(
                [
                    new(At(-tile.InnerWidthMm / 2, 0)), new(At(tile.InnerWidthMm / 2, 0)), new(At(tile.OuterWidthMm / 2, tile.DepthMm)), new(At(-tile.OuterWidthMm / 2, tile.DepthMm)),
                ],
                isClosed: true));
        }

        var cut = tile.Row.Shape == TileShape.Wedge
            ? $"{NumberFormat.Trimmed(tile.HalfTurn.Degrees, 2)}° off square on each side"
            : $"straight, gap {NumberFormat.Trimmed(tile.OuterGapMm, 2)} mm outside";
        board.Write(
            $"{ring.Name} template",
            $"{ring.Name}: {NumberFormat.Whole(tile.Row.Count)}, {Of(tile.InnerWidthMm)} inside, {Of(tile.OuterWidthMm)} outside, {Of(tile.DepthMm)} deep, {cut}",
            new Point2(board.Extents.Min.X, first.Y - 5));
    }
}
