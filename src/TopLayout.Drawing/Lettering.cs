using TopLayout.Drawing.Letters;
using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>
/// Single-stroke letters of our own: lines and arcs, no font needed. Heights are those of a capital, mm; small letters rise to
/// 0.68 of it, descenders reach 0.3 below the baseline. A character that the alphabet lacks is a box.
/// </summary>
public static class Lettering
{
    private const double GridPerHeight = 100;

    /// <summary>True when the alphabet has the character.</summary>
    public static bool Has(char character) => Alphabet.Find(character) is not null;

    /// <summary>
    /// The box round the letters of a text written from the origin to the right, mm: in x the room it takes on its line, in y the
    /// height of its strokes; the capital height for blanks.
    /// </summary>
    public static Box2 Measure(string text, double heightMm)
    {
        var (scale, advance, bottom, top) = (heightMm / GridPerHeight, 0.0, double.PositiveInfinity, double.NegativeInfinity);
        foreach (var character in text)
        {
            var glyph = GlyphOf(character);
            (advance, bottom, top) = (advance + glyph.Advance, Math.Min(bottom, glyph.Ink.Min.Y), Math.Max(top, glyph.Ink.Max.Y));
        }

        (bottom, top) = bottom > top ? (0, GridPerHeight) : (bottom, top);
        return new Box2(new Point2(0, bottom * scale), new Point2(advance * scale, top * scale));
    }

    /// <summary>The strokes of a text: its baseline starts, is centred or ends at the anchor and runs in the direction of the rotation.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="anchor">On the baseline, mm.</param>
    /// <param name="heightMm">Height of a capital, mm, &gt; 0.</param>
    /// <param name="rotation">Direction of the baseline from +x.</param>
    /// <param name="alignment">Which end stands at the anchor.</param>
    public static IReadOnlyList<Contour> Strokes(
        string text, Point2 anchor, double heightMm, Angle rotation = default, Alignment alignment = Alignment.Left)
    {
        var placement = Placement(Measure(text, heightMm), anchor, rotation, alignment);
        var scale = heightMm / GridPerHeight;
        var strokes = new List<Contour>();
        var start = 0.0;
        foreach (var glyph in text.Select(GlyphOf))
        {
            strokes.AddRange(glyph.Strokes.Select(s => Written(s, start + glyph.Left, scale, placement)));
            start += glyph.Advance;
        }

        return strokes;
    }

    /// <summary>The move from a text written from the origin to the right, to its place.</summary>
    internal static Placement Placement(Box2 letters, Point2 anchor, Angle rotation, Alignment alignment)
    {
        var back = letters.Width * alignment switch { Alignment.Left => 0, Alignment.Centre => 0.5, _ => 1 };
        var turn = new Placement(default, rotation, false);
        return turn with { Shift = anchor - new Point2(0, 0) - turn.Apply(new Vec2(back, 0)) };
    }

    private static Glyph GlyphOf(char character) => Alphabet.Find(character) ?? Alphabet.Missing;

    private static Contour Written(Contour stroke, double shift, double scale, Placement placement) => new(
        stroke.Vertices.Select(v => v with { Position = placement.Apply(new Point2((v.Position.X + shift) * scale, v.Position.Y * scale)) }),
        stroke.IsClosed);
}
