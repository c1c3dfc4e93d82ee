using System.Collections.Frozen;
using System.Text;

namespace TopLayout.Drawing;

/// <summary>Text in the 95 printable signs that every reader shows: signs are spelled out, letters lose their accents.</summary>
public static class PlainAscii
{
    // The letters of U+00C0 to U+017F without their accents; a space stands where the table of signs decides.
    private const string Letters =
        "AAAAAA CEEEEIIII NOOOOO  UUUUY  aaaaaa ceeeeiiii nooooo  uuuuy y" +
        "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIi  JjKk LlLlLlL" +
        "lLlNnNnNn   OoOoOo  RrRrRrSsSsSsSsTtTtTtUuUuUuUuUuUuWwYyYZzZzZzs";

    private static readonly FrozenDictionary<char, string> Signs = new (char Sign, string Spelling)[]
    {
        ('°', " deg"), ('±', "+/-"), ('Ø', "dia "), ('⌀', "dia "), ('ø', "o"), ('×', "x"), ('÷', "/"), ('·', "*"), ('µ', "u"),
        ('½', " 1/2"), ('¼', " 1/4"), ('¾', " 3/4"), ('²', "2"), ('³', "3"), ('→', "->"), ('←', "<-"), ('Λ', "Lambda"),
        ('λ', "lambda"), ('θ', "theta"), ('Δ', "delta"), ('≤', "<="), ('≥', ">="), ('≈', "~"), ('–', "-"), ('—', "-"),
        ('−', "-"), ('…', "..."), ('‘', "'"), ('’', "'"), ('“', "\""), ('”', "\""), ('′', "'"), ('″', "\""), ('\u00a0', " "),
        ('\u202f', " "), ('Æ', "AE"), ('æ', "ae"), ('Œ', "OE"), ('œ', "oe"), ('ß', "ss"), ('Ð', "D"), ('ð', "d"), ('Þ', "Th"),
        ('þ', "th"), ('Ĳ', "IJ"), ('ĳ', "ij"), ('ĸ', "k"), ('Ŋ', "N"), ('ŋ', "n"), ('ŉ', "n"),
    }.ToFrozenDictionary(s => s.Sign, s => s.Spelling);

    /// <summary>The text in printable ASCII, runs of blanks made one; a sign without a spelling becomes '?'.</summary>
    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var (index, c) in text.Index())
        {
            var letterFollows = index + 1 < text.Length && char.IsLetter(text[index + 1]);
            foreach (var p in c == 'Ø' && letterFollows ? "O" : Spelled(c))
            {
                if (p != ' ' || (plain.Length > 0 && plain[^1] != ' '))
                {
                    plain.Append(p);
                }
            }
        }

        return plain.ToString().TrimEnd();
    }

    /// <summary>How one character is spelled; it may be a blank or nothing at all.</summary>
    internal static string Spelled(char c)
    {
        if (c is >= ' ' and <= '~')
        {
            return c.ToString();
        }

        if (Signs.TryGetValue(c, out var spelled))
        {
            return spelled;
        }

        var letter = c is >= '\u00c0' and <= '\u017f' ? Letters[c - '\u00c0'] : ' ';
        return letter != ' ' ? letter.ToString() : char.IsControl(c) ? " " : "?";
    }
}
