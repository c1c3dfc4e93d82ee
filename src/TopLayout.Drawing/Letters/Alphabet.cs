using System.Collections.Frozen;
using TopLayout.Geometry;

namespace TopLayout.Drawing.Letters;

/// <summary>Every character that can be written, drawn by us: capitals 100 high, small letters 68, descenders to −30.</summary>
internal static class Alphabet
{
    private const double FigureWidth = 56;
    private const double FigureMargin = 11;
    private const double SpaceAdvance = 42;

    /// <summary>Stands for a character that is not in the alphabet: a box.</summary>
    public static readonly Glyph Missing = Glyph.Spaced(StrokeNotation.Read("0,0 60,0 60,100 0,100 0,0"));

    private static readonly FrozenDictionary<char, Glyph> Glyphs = All().ToFrozenDictionary();

    /// <summary>The glyph of a character, or of the one it is written like; null when the alphabet has neither.</summary>
    public static Glyph? Find(char character) => Glyphs.GetValueOrDefault(character switch
    {
        '\u00a0' or '\u202f' => ' ',
        '‘' or '’' or '′' => '\'',
        '“' or '”' or '″' => '"',
        '—' => '–',
        '⌀' => 'Ø',
        _ => character,
    });

    private static IEnumerable<KeyValuePair<char, Glyph>> All()
    {
        yield return new(' ', new Glyph([], 0, SpaceAdvance));
        foreach (var (character, notation) in Strokes.Figures)
        {
            yield return new(character, Glyph.Cell(StrokeNotation.Read(notation), FigureWidth, FigureMargin));
        }

        foreach (var (character, notation) in Strokes.Capitals.Concat(Strokes.SmallLetters).Concat(Strokes.Signs))
        {
            yield return new(character, Glyph.Spaced(StrokeNotation.Read(notation)));
        }

        foreach (var (character, top, bottom) in ((char, char, char)[])[('½', '1', '2'), ('¼', '1', '4'), ('¾', '3', '4')])
        {
            yield return new(character, Glyph.Spaced(Fraction(top, bottom)));
        }

        foreach (var (character, figure) in ((char, char)[])[('²', '2'), ('³', '3')])
        {
            yield return new(character, Glyph.Spaced(Small(figure, new Vec2(0, 45))));
        }

        foreach (var (character, plain, mark) in Accents.All())
        {
            yield return new(character, Accented(plain, mark));
        }
    }

    // The mark stands over the middle of the letter and takes no room of its own.
    private static Glyph Accented(char plain, string mark)
    {
        var capital = Strokes.Capitals.TryGetValue(plain, out var notation);
        var letter = Glyph.Spaced(StrokeNotation.Read(capital ? notation! : Strokes.SmallLetters[plain == 'i' ? 'ı' : plain]));
        var lift = Placement.Moved(letter.Ink.Center.X, capital ? Accents.CapitalLift : 0);
        return new Glyph([.. letter.Strokes, .. StrokeNotation.Read(mark).Select(s => s.Placed(lift))], letter.Left, letter.Advance);
    }

    private static IEnumerable<Contour> Fraction(char top, char bottom) =>
    [
        .. Small(top, new Vec2(0, 45)),
        .. StrokeNotation.Read("22,0 58,100"),
        .. Small(bottom, new Vec2(50, 0)),
    ];

    private static IEnumerable<Contour> Small(char figure, Vec2 shift) =>
        StrokeNotation.Read(Strokes.Figures[figure]).Select(s => s.Scaled(0.55).Placed(Placement.Moved(shift.X, shift.Y)));
}
