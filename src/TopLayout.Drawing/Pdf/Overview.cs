using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>
/// The first page of a print in pages: what to do, the whole drawing small with the tiles over it and their names, and at full size the parts of
/// the sheet that the tiles leave out.
/// </summary>
internal sealed class Overview
{
    private const string Part = "overview";
    private const double MarginMm = TileGrid.MarginMm;
    private const double LineMm = 5;
    private const double TextMm = 2.8;
    private const double NameMm = 6;

    // From the map to what stands beside or below it; from a frame to what it holds.
    private const double GapMm = 6;
    private const double FrameMm = 4;

    private readonly TiledSheet _tiled;
    private readonly TileGrid _grid;
    private readonly Ruler _ruler;
    private readonly List<string> _lines;
    private readonly List<Shape> _apart;
    private readonly Vec2 _apartShift;
    private readonly double _apartScale;

    /// <param name="tiled">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="ruler">What the bars are whole on.</param>
    /// <param name="corrected">How the print is corrected, in words.</param>
    public Overview(TiledSheet tiled, Paper paper, Ruler ruler, string corrected)
    {
        (_tiled, _grid, _ruler) = (tiled, tiled.Grid, ruler);
        _lines = [.. Lines(paper, corrected)];
        _apart = [.. Framed()];
        var room = new Box2(new Point2(MarginMm, MarginMm), new Point2(_grid.WidthMm - MarginMm, _grid.HeightMm - MarginMm - (_lines.Count * LineMm) - 2));
        var box = Box2.Around(_apart.Select(s => s.Bounds));
        var map = room;
        if (_apart.Count > 0)
        {
            // True size, but for words too long for the page, and then without what must be true; on the left at the foot, or on the right at the head, where that leaves the larger map.
            _apartScale = Math.Min(1, room.Width / box.Width);
            if (_apartScale < 1)
            {
                _apart.RemoveAll(s => tiled.IsWhole(s));
            }

            var (width, height) = (box.Width * _apartScale, box.Height * _apartScale);
            var above = room with { Min = new Point2(room.Min.X, room.Min.Y + height + GapMm) };
            var beside = room with { Max = new Point2(room.Max.X - width - GapMm, room.Max.Y) };
            var isBelow = Scale(above) >= Scale(beside);
            map = isBelow ? above : beside;
            _apartShift = (isBelow ? room.Min : new Point2(room.Max.X - width, room.Max.Y - height)) - (new Point2(0, 0) + ((box.Min - new Point2(0, 0)) * _apartScale));
        }

        MapScale = Scale(map);
        MapShift = new Vec2(map.Center.X - (MapScale * _grid.Bounds.Center.X), map.Max.Y - (MapScale * _grid.Bounds.Max.Y));
    }

    /// <summary>The map's size, 1 for true size.</summary>
    public double MapScale { get; }

    /// <summary>From the map's coordinates to the page's, mm.</summary>
    public Vec2 MapShift { get; }

    /// <summary>From the sheet's coordinates to the page's for what stands apart at true size, mm; null where it had to be made smaller or there is none.</summary>
    public Vec2? ApartShift => _apartScale == 1 ? _apartShift : null;

    /// <summary>Lines, letters and bars, in mm from the paper's lower left corner.</summary>
    public IEnumerable<Shape> Furniture()
    {
        Point2 At(Point2 p) => new((p.X * MapScale) + MapShift.X, (p.Y * MapScale) + MapShift.Y);
        foreach (var tile in _grid.Tiles)
        {
            var trim = _grid.Trim(tile);
            var (a, b) = (At(trim.Min), At(trim.Max));
            yield return new ContourShape(Part, Role.Dimension, Contour.Rectangle(new Box2(a, b)));
            yield return new LabelShape(Part, Role.Dimension, tile.Name, a.MidpointTo(b) - new Vec2(0, NameMm / 2), NameMm, Alignment.Centre);
        }

        foreach (var (i, line) in _lines.Index())
        {
            yield return new LabelShape(Part, Role.Text, line, new Point2(MarginMm, _grid.HeightMm - MarginMm - ((i + 1) * LineMm) + 2), TextMm);
        }

        foreach (var shape in ScaleBars.Of(_grid.WidthMm, _grid.HeightMm, _ruler))
        {
            yield return shape;
        }
    }

    /// <summary>Draws what stands apart.</summary>
    public void DrawApart(PdfContent content)
    {
        if (_apart.Count == 0)
        {
            return;
        }

        content.Save().Place(_apartShift, _apartScale, _apartScale);
        foreach (var shape in _apart)
        {
            content.Draw(shape);
        }

        content.Restore();
    }

    private IEnumerable<string> Lines(Paper paper, string corrected)
    {
        var tiles = _grid.Tiles.Length;
        yield return $"Overview: {_tiled.Drawing.Title}";
        yield return $"{NumberFormat.Whole(tiles)} page{(tiles > 1 ? "s" : "")} of {paper.Name} after this one. The map is not to scale; the bars are.";
        if (!_tiled.Apart.IsEmpty)
        {
            var parts = _tiled.Apart.Select(s => s.Part).Distinct().OrderDescending(StringComparer.Ordinal).ToList();
            yield return $"On this page alone, not on the others: {string.Join(", ", parts)}.";
        }

        yield return "Print at actual size, 100 %, not fitted to the page, on one side only.";
        yield return $"Check with a ruler that the bars measure {Bar(_grid.WidthMm)} and {Bar(_grid.HeightMm)}, on this page and the last.";
        if (tiles > 1)
        {
            yield return "Cut along a joint, lay it over its neighbour, cross on cross; tape, and measure the whole again.";
        }

        yield return $"{char.ToUpperInvariant(corrected[0])}{corrected[1..]}.";
    }

    // A frame round all else of a part is as wide as the sheet was: here it is drawn anew round what it holds.
    private IEnumerable<Shape> Framed()
    {
        foreach (var part in _tiled.Apart.GroupBy(s => s.Part))
        {
            var all = Box2.Around(part.Select(s => s.Bounds));
            var frame = part.OfType<ContourShape>().FirstOrDefault(s => s.Contour.IsClosed && s.Bounds == all);
            var held = part.Where(s => s != frame).ToList();
            foreach (var shape in held)
            {
                yield return shape;
            }

            if (frame is not null && held.Count > 0)
            {
                var inner = Box2.Around(held.Select(s => s.Bounds));
                var right = Math.Min(all.Max.X, inner.Max.X + FrameMm);
                yield return new ContourShape(frame.Part, frame.Role, Contour.Rectangle(all with { Max = new Point2(right, all.Max.Y) }), frame.Emphasis);
            }
        }
    }

    private double Scale(Box2 room) => Math.Max(0, Math.Min(room.Width / _grid.Bounds.Width, room.Height / _grid.Bounds.Height));

    private string Bar(double sideMm) => ScaleBars.Said(ScaleBars.LengthOn(sideMm, _ruler), _ruler);
}
