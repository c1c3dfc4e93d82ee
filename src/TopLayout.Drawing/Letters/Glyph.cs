using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Letters;

/// <summary>The strokes of one character on a grid of a hundredth of the capital height, baseline at y = 0, and its share of the line.</summary>
internal sealed class Glyph
{
    /// <summary>A glyph with the room it takes: its ink runs from <paramref name="left"/> to <paramref name="advance"/> less the right margin.</summary>
    public Glyph(IEnumerable<Contour> strokes, double left, double advance)
    {
        (Strokes, Left, Advance) = ([.. strokes], left, advance);
        Ink = Box2.Around(Strokes.Select(s => s.Bounds));
    }

    /// <summary>Lines and arcs; none for a space.</summary>
    public ImmutableArray<Contour> Strokes { get; }

    /// <summary>How far the strokes are moved right of the place where the glyph starts.</summary>
    public double Left { get; }

    /// <summary>Distance to the place where the next glyph starts.</summary>
    public double Advance { get; }

    /// <summary>The box round the strokes; empty for a space.</summary>
    public Box2 Ink { get; }

    /// <summary>A glyph with margins by the shape of its sides, so that the white between letters looks even.</summary>
    public static Glyph Spaced(IEnumerable<Contour> strokes)
    {
        var list = strokes.ToList();
        var ink = Box2.Around(list.Select(s => s.Bounds));
        var (left, right) = SideMargins.Of(list);
        return new Glyph(list, left - ink.Min.X, left + ink.Width + right);
    }

    /// <summary>A glyph in a cell of fixed width, so that figures stand in columns.</summary>
    public static Glyph Cell(IEnumerable<Contour> strokes, double width, double margin) => new(strokes, margin, width + (2 * margin));
}
