using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>What stands on a tile besides the drawing: joints, crosses shared with its neighbours, its name and theirs, and the bars.</summary>
internal sealed class TileFurniture(TileGrid grid, string title, string correction, bool isHalf, Ruler ruler)
{
    private const string Part = "tile";
    private const double ArmMm = 4;
    private const double RingMm = 2;
    private const double TextMm = 2.2;
    private const double NameMm = 4;

    /// <summary>The lines and letters of a tile, in mm from the paper's lower left corner.</summary>
    public IEnumerable<Shape> Of(Tile tile) => [.. Joints(tile), .. Crosses(tile), .. Fold(tile), .. Names(tile), .. ScaleBars.Of(grid.WidthMm, grid.HeightMm, ruler)];

    /// <summary>From sheet coordinates to the paper's, for a tile.</summary>
    public static Vec2 Shift(Tile tile) => new Point2(TileGrid.MarginMm, TileGrid.MarginMm) - tile.Window.Min;

    private IEnumerable<Shape> Joints(Tile tile)
    {
        var w = tile.Window;
        foreach (var x in grid.JointsX(tile))
        {
            yield return Line(tile, new Point2(x, w.Min.Y), new Point2(x, w.Max.Y), Emphasis.Faint);
        }

        foreach (var y in grid.JointsY(tile))
        {
            yield return Line(tile, new Point2(w.Min.X, y), new Point2(w.Max.X, y), Emphasis.Faint);
        }
    }

    // On every joint where it meets another, and in its middle.
    private IEnumerable<Shape> Crosses(Tile tile)
    {
        var (xs, ys) = (grid.JointsX(tile).ToList(), grid.JointsY(tile).ToList());
        var (middle, places) = (tile.Window.Center, new List<Point2>());
        places.AddRange(xs.SelectMany(x => ys.Append(middle.Y).Select(y => new Point2(x, y))));
        places.AddRange(ys.Select(y => new Point2(middle.X, y)));
        foreach (var p in places)
        {
            yield return Line(tile, p - new Vec2(ArmMm, 0), p + new Vec2(ArmMm, 0), Emphasis.Normal);
            yield return Line(tile, p - new Vec2(0, ArmMm), p + new Vec2(0, ArmMm), Emphasis.Normal);
            yield return new ContourShape(Part, Role.Text, Contour.Circle(p + Shift(tile), RingMm));
        }
    }

    // A half plan is folded on the centre line, or turned over along it.
    private IEnumerable<Shape> Fold(Tile tile)
    {
        if (isHalf && tile.Window.Min.X < 0 && tile.Window.Max.X > 0)
        {
            var (foot, head) = (new Point2(0, tile.Window.Min.Y), new Point2(0, tile.Window.Max.Y));
            yield return Line(tile, foot, head, Emphasis.Normal);
            yield return Label("fold here, on the centre line", new Point2(0, tile.Window.Center.Y) + Shift(tile) + new Vec2(-1.2, 0), TextMm, Alignment.Centre, 90);
        }
    }

    private IEnumerable<Shape> Names(Tile tile)
    {
        var (width, height) = (grid.WidthMm, grid.HeightMm);
        var top = height - TileGrid.MarginMm + 2;
        yield return Label(tile.Name, new Point2(TileGrid.MarginMm, top), NameMm, Alignment.Left, 0);
        yield return Label($"{title}: print at actual size, 100 %; {correction}", new Point2(width - TileGrid.MarginMm, top), TextMm, Alignment.Right, 0);
        foreach (var (row, column, at, degrees) in ((int, int, Point2, double)[])[
            (-1, 0, new Point2(width / 2, top + 4), 0),
            (1, 0, new Point2(width / 2, TileGrid.MarginMm - TextMm - 1.2), 0),
            (0, -1, new Point2(TileGrid.MarginMm - 1.2, height / 2), 90),
            (0, 1, new Point2(width - TileGrid.MarginMm + 3.6, height / 2), 90)])
        {
            if (grid.Tiles.Any(t => t.Row == tile.Row + row && t.Column == tile.Column + column))
            {
                yield return Label($"joins {Tile.NameOf(tile.Row + row, tile.Column + column)}", at, TextMm, Alignment.Centre, degrees);
            }
        }
    }

    private static LabelShape Label(string text, Point2 at, double height, Alignment alignment, double degrees) =>
        new(Part, Role.Text, text, at, height, alignment, Angle.FromDegrees(degrees));

    private static ContourShape Line(Tile tile, Point2 from, Point2 to, Emphasis emphasis) =>
        new(Part, Role.Text, new Contour([new Vertex(from + Shift(tile)), new Vertex(to + Shift(tile))], isClosed: false), emphasis);
}
