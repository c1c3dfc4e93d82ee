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

    private TileGrid(Sheet sheet, Box2 page, double widthMm, double heightMm)
    {
        (WidthMm, HeightMm, Shown) = (widthMm, heightMm, page);
        var (wide, high) = (widthMm - (2 * MarginMm), heightMm - (2 * MarginMm));
        (StepX, StepY) = (Math.Floor(wide - OverlapMm), Math.Floor(high - OverlapMm));
        Columns = Math.Max(1, (int)Math.Ceiling((page.Width - (wide - StepX)) / StepX));
        Rows = Math.Max(1, (int)Math.Ceiling((page.Height - (high - StepY)) / StepY));

        // The drawing stands in the middle of the grid, whole mm from its own corner.
        var left = page.Min.X + Math.Floor((page.Width - (StepX * (Columns - 1)) - wide) / 2);
        var top = page.Max.Y + Math.Ceiling(((StepY * (Rows - 1)) + high - page.Height) / 2);
        left += Aside(page.Min.X - left, n => Enumerable.Range(1, Columns - 1).Any(c => IsCutAcross(sheet, left + n + (c * StepX) + (OverlapX / 2))));
        top += Aside(top - page.Max.Y, n => Enumerable.Range(1, Rows - 1).Any(r => IsCutAlong(sheet, top + n - (r * StepY) - (OverlapY / 2))));
        var all = ImmutableArray.CreateBuilder<Tile>();
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var corner = new Point2(left + (column * StepX), top - (row * StepY));
                var window = new Box2(new Point2(corner.X, corner.Y - high), new Point2(corner.X + wide, corner.Y));
                if (page.Overlaps(window) && HasInk(sheet, window.Common(page)))
                {
                    all.Add(new Tile(row, column, window));
                }
            }
        }

        Tiles = all.ToImmutable();
        Bounds = new Box2(new Point2(left, top - (StepY * (Rows - 1)) - high), new Point2(left + (StepX * (Columns - 1)) + wide, top));
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
    /// <param name="shown">The part of the sheet to show, in sheet coordinates, mm; the whole page when left out.</param>
    public static TileGrid Of(Sheet sheet, Paper paper, Box2? shown = null)
    {
        var page = shown ?? sheet.Page;
        var (upright, lying) = (new TileGrid(sheet, page, paper.ShortMm, paper.LongMm), new TileGrid(sheet, page, paper.LongMm, paper.ShortMm));
        return lying.Tiles.Length < upright.Tiles.Length ? lying : upright;
    }

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

    // The least shift, whole mm, within what is spare on either side, that cuts nothing; no shift where none does.
    private static double Aside(double spareMm, Func<double, bool> cuts) =>
        Enumerable.Range(0, (int)Math.Max(0, spareMm) + 1).SelectMany(n => new double[] { n, -n }).Where(n => !cuts(n)).FirstOrDefault();

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
