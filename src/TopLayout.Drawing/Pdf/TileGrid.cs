using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Pdf;

/// <summary>One page's window on a drawing.</summary>
/// <param name="Row">From the top, from 0.</param>
/// <param name="Column">From the left, from 0.</param>
/// <param name="Window">What it shows, in sheet coordinates, mm; neighbours overlap.</param>
internal readonly record struct Tile(int Row, int Column, Box2 Window)
{
    /// <summary>Row letter and column number: "B2".</summary>
    public string Name => NameOf(Row, Column);

    /// <summary>The name of the tile at a place.</summary>
    public static string NameOf(int row, int column) => $"{(char)('A' + (row % 26))}{(row >= 26 ? NumberFormat.Whole(row / 26) + "-" : "")}{NumberFormat.Whole(column + 1)}";
}

/// <summary>
/// A drawing cut into windows on one grid over the whole of it, so that no error adds up from page to page. Windows stand a whole number of mm
/// apart and overlap; the joint between two runs down the middle of the overlap.
/// </summary>
internal sealed class TileGrid
{
    /// <summary>From each edge of the paper to the window, mm: home printers leave up to 6.7 mm blank, and the bars need room.</summary>
    public const double MarginMm = 14;

    /// <summary>The least two neighbours show in common, mm.</summary>
    public const double OverlapMm = 10;

    // A joint keeps this off what should stay whole, mm.
    private const double BesideMm = 2;

    // Half the width of the thickest line, and some more, mm.
    private const double LineMm = 1;

    private TileGrid(Sheet sheet, Box2 shown, InkMap ink, double widthMm, double heightMm)
    {
        (WidthMm, HeightMm, Shown) = (widthMm, heightMm, shown);
        var (wide, high) = (widthMm - (2 * MarginMm), heightMm - (2 * MarginMm));
        (StepX, StepY) = (Math.Floor(wide - OverlapMm), Math.Floor(high - OverlapMm));
        Columns = Math.Max(1, (int)Math.Ceiling((shown.Width - (wide - StepX)) / StepX));
        Rows = Math.Max(1, (int)Math.Ceiling((shown.Height - (high - StepY)) / StepY));

        // The drawing stands in the middle of the grid, whole mm from its own corner, or beside it where that takes fewer pages or cuts less.
        var size = new Vec2((StepX * (Columns - 1)) + wide, (StepY * (Rows - 1)) + high);
        var corner = new Point2(shown.Min.X + Math.Floor((shown.Width - size.X) / 2), shown.Max.Y + Math.Ceiling((size.Y - shown.Height) / 2));
        corner += Aside(sheet, ink, corner);
        Bounds = new Box2(new Point2(corner.X, corner.Y - size.Y), new Point2(corner.X + size.X, corner.Y));
        Tiles = [.. At(corner).Where(t => Trim(t) is var trim && trim.Overlaps(shown) && ink.Any(trim) && HasInk(sheet, trim.Common(shown)))];
    }

    /// <summary>Width of the paper as it lies, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Height of the paper as it lies, mm.</summary>
    public double HeightMm { get; }

    /// <summary>From one column to the next, whole mm.</summary>
    public double StepX { get; }

    /// <summary>From one row to the next, whole mm.</summary>
    public double StepY { get; }

    /// <summary>Columns, with those whose tiles are all empty.</summary>
    public int Columns { get; }

    /// <summary>Rows.</summary>
    public int Rows { get; }

    /// <summary>All windows together, in sheet coordinates, mm.</summary>
    public Box2 Bounds { get; }

    /// <summary>The tiles with something on them, row by row.</summary>
    public ImmutableArray<Tile> Tiles { get; }

    /// <summary>The part of the sheet that is shown, in sheet coordinates, mm.</summary>
    public Box2 Shown { get; }

    /// <summary>The grid on upright or on lying paper, whichever needs fewer pages; upright where they are equal.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="shown">The part of the sheet to show, in sheet coordinates, mm; all that is drawn, and a line's width round it, when left out.</param>
    public static TileGrid Of(Sheet sheet, Paper paper, Box2? shown = null)
    {
        var box = shown ?? Around(sheet);
        var ink = new InkMap(sheet, box);
        var (upright, lying) = (new TileGrid(sheet, box, ink, paper.ShortMm, paper.LongMm), new TileGrid(sheet, box, ink, paper.LongMm, paper.ShortMm));
        return lying.Tiles.Length < upright.Tiles.Length ? lying : upright;
    }

    /// <summary>The box round all that is drawn, and a line's width more, its sides whole mm from the sheet's corner; in sheet coordinates, mm.</summary>
    public static Box2 Around(Sheet sheet)
    {
        var (box, corner) = (sheet.Extents.Grown(LineMm), sheet.Page.Min);
        return new Box2(
            new Point2(corner.X + Math.Floor(box.Min.X - corner.X), corner.Y + Math.Floor(box.Min.Y - corner.Y)),
            new Point2(corner.X + Math.Ceiling(box.Max.X - corner.X), corner.Y + Math.Ceiling(box.Max.Y - corner.Y)));
    }

    /// <summary>Whether one page shows a box, mm, in one piece.</summary>
    public bool ShowsWhole(Box2 box) => Tiles.Any(t => Trim(t) is var trim && trim.Contains(box.Min) && trim.Contains(box.Max));

    /// <summary>Where the joints with the left and right neighbours lie, those there are.</summary>
    public IEnumerable<double> JointsX(Tile tile)
    {
        if (tile.Column > 0)
        {
            yield return tile.Window.Min.X + (OverlapX / 2);
        }

        if (tile.Column < Columns - 1)
        {
            yield return tile.Window.Max.X - (OverlapX / 2);
        }
    }

    /// <summary>Where the joints with the neighbours above and below lie, those there are.</summary>
    public IEnumerable<double> JointsY(Tile tile)
    {
        if (tile.Row > 0)
        {
            yield return tile.Window.Max.Y - (OverlapY / 2);
        }

        if (tile.Row < Rows - 1)
        {
            yield return tile.Window.Min.Y + (OverlapY / 2);
        }
    }

    /// <summary>The part of a tile that no neighbour shows better: up to its joints.</summary>
    public Box2 Trim(Tile tile)
    {
        var w = tile.Window;
        return new Box2(
            new Point2(tile.Column > 0 ? w.Min.X + (OverlapX / 2) : w.Min.X, tile.Row < Rows - 1 ? w.Min.Y + (OverlapY / 2) : w.Min.Y),
            new Point2(tile.Column < Columns - 1 ? w.Max.X - (OverlapX / 2) : w.Max.X, tile.Row > 0 ? w.Max.Y - (OverlapY / 2) : w.Max.Y));
    }

    private IEnumerable<Tile> At(Point2 corner) =>
        from row in Enumerable.Range(0, Rows)
        from column in Enumerable.Range(0, Columns)
        let at = new Point2(corner.X + (column * StepX), corner.Y - (row * StepY))
        select new Tile(row, column, new Box2(new Point2(at.X, at.Y - HeightMm + (2 * MarginMm)), new Point2(at.X + WidthMm - (2 * MarginMm), at.Y)));

    // Within what is spare on either side, in whole mm: the shift with the fewest pages, then the one that cuts least of what should stay whole, then the least.
    private Vec2 Aside(Sheet sheet, InkMap ink, Point2 corner)
    {
        var (spareX, spareY) = ((int)Math.Max(0, Shown.Min.X - corner.X), (int)Math.Max(0, corner.Y - Shown.Max.Y));
        var cutAcross = Cuts(spareX, n => Enumerable.Range(1, Columns - 1).Count(c => IsCutAcross(sheet, corner.X + n + (c * StepX) + (OverlapX / 2))));
        var cutAlong = Cuts(spareY, n => Enumerable.Range(1, Rows - 1).Count(r => IsCutAlong(sheet, corner.Y + n - (r * StepY) - (OverlapY / 2))));
        var tiles = At(corner).Select(Trim).ToList();
        var (best, least) = (default(Vec2), (int.MaxValue, int.MaxValue, int.MaxValue));
        for (var x = -spareX; x <= spareX; x++)
        {
            for (var y = -spareY; y <= spareY; y++)
            {
                var shift = new Vec2(x, y);
                var pages = tiles.Count == 1 ? 1 : tiles.Count(t => ink.Any(new Box2(t.Min + shift, t.Max + shift)));
                var cost = (pages, cutAcross[x + spareX] + cutAlong[y + spareY], Math.Abs(x) + Math.Abs(y));
                if (cost.CompareTo(least) < 0)
                {
                    (best, least) = (shift, cost);
                }
            }
        }

        return best;
    }

    private static int[] Cuts(int spareMm, Func<int, int> cuts) => [.. Enumerable.Range(-spareMm, (2 * spareMm) + 1).Select(cuts)];

    private static bool IsCutAcross(Sheet sheet, double x) => sheet.Whole.Any(b => b.Min.X - BesideMm < x && x < b.Max.X + BesideMm);

    private static bool IsCutAlong(Sheet sheet, double y) => sheet.Whole.Any(b => b.Min.Y - BesideMm < y && y < b.Max.Y + BesideMm);

    private double OverlapX => WidthMm - (2 * MarginMm) - StepX;

    private double OverlapY => HeightMm - (2 * MarginMm) - StepY;

    private static bool HasInk(Sheet sheet, Box2 window) => sheet.Shapes.Any(s => s.Bounds.Overlaps(window) && s.Lines.Any(c => c.Segments.Any(e => Touches(e, window))));

    private static bool Touches(Segment segment, Box2 window)
    {
        if (!segment.Bounds().Overlaps(window))
        {
            return false;
        }

        return window.Contains(segment.Start)
            || window.Contains(segment.End)
            || Contour.Rectangle(window).Segments.Any(side => Intersections.Of(segment, side).Count > 0);
    }
}
