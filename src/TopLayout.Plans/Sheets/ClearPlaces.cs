using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>Places for words near what they name, their middles, mm, where no line runs so close that it seems to run through the letters.</summary>
internal static class ClearPlaces
{
    /// <summary>White round the letters, mm.</summary>
    public const double OffLinesMm = 1;

    private const double AsideMm = 0.6;

    /// <summary>Beside a line, outside a closed one or within it.</summary>
    public static IEnumerable<Point2> Beside(SheetBoard board, string words, Point2 at, Vec2 inward)
    {
        var half = HalfFrame(words);
        return ((Vec2[])[-inward, inward]).Select(way => at + (way * ((Math.Abs(way.X) * half.X) + (Math.Abs(way.Y) * half.Y)))).Where(m => IsFree(board, m, half));
    }

    /// <summary>Round a tick, clear of it.</summary>
    public static IEnumerable<Point2> Round(SheetBoard board, string words, Point2 at)
    {
        var half = HalfFrame(words);
        (int X, int Y)[] ways = [(1, 0), (1, 1), (1, -1), (-1, 0), (-1, 1), (-1, -1), (0, 1), (0, -1)];
        return ways.Select(w => at + new Vec2(w.X * (half.X + AsideMm), w.Y * (half.Y + AsideMm))).Where(m => IsFree(board, m, half));
    }

    /// <summary>Half the width and height of words with the white round them, mm.</summary>
    public static Vec2 HalfFrame(string words)
    {
        var box = Lettering.Measure(words, SheetBoard.TextMm);
        return new Vec2((box.Width / 2) + OffLinesMm, (box.Height / 2) + OffLinesMm);
    }

    /// <summary>True when no line drawn so far meets the frame round a middle.</summary>
    public static bool IsFree(SheetBoard board, Point2 middle, Vec2 half) => board.IsFree(new Box2(middle - half, middle + half));
}
