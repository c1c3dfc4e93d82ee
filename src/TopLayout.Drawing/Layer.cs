using System.Collections.Immutable;
using System.Text;

namespace TopLayout.Drawing;

/// <summary>The shapes of one part and role, under a name that every format takes.</summary>
public sealed class Layer
{
    private const int MaxLength = 30;

    private Layer(string name, string part, Role role, IEnumerable<Shape> shapes)
    {
        (Name, Part, Role, Shapes) = (name, part, role, [.. shapes]);
    }

    /// <summary>PART_ROLE: [A-Z][A-Z0-9_]{0,29}, unique on its sheet.</summary>
    public string Name { get; }

    /// <summary>The part in plain words.</summary>
    public string Part { get; }

    /// <summary>What the shapes are for.</summary>
    public Role Role { get; }

    /// <summary>The shapes in the order of the sheet.</summary>
    public ImmutableArray<Shape> Shapes { get; }

    /// <summary>Part and role for people: "slot 2, pocket".</summary>
    public string Title => $"{Part}, {Word(Role)}";

    /// <summary>The layers of shapes in the order in which part and role first appear; a long or clashing name is cut and numbered.</summary>
    public static ImmutableArray<Layer> Of(IEnumerable<Shape> shapes)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return [.. shapes.GroupBy(s => (s.Part, s.Role)).Select(g => new Layer(Free(g.Key.Part, g.Key.Role, taken), g.Key.Part, g.Key.Role, g))];
    }

    private static string Free(string part, Role role, HashSet<string> taken)
    {
        var (stem, suffix) = (Stem(part), "_" + Upper(Word(role)));
        for (var n = 1; ; n++)
        {
            var tail = n == 1 ? suffix : "_" + NumberFormat.Whole(n) + suffix;
            var name = stem[..Math.Min(stem.Length, MaxLength - tail.Length)].TrimEnd('_') + tail;
            if (taken.Add(name))
            {
                return name;
            }
        }
    }

    // Letters and digits in capitals, one underscore for everything between them, a letter first.
    private static string Stem(string part)
    {
        var stem = new StringBuilder();
        foreach (var c in Upper(PlainAscii.Of(part)))
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                stem.Append(c);
            }
            else if (stem.Length > 0 && stem[^1] != '_')
            {
                stem.Append('_');
            }
        }

        var text = stem.ToString().TrimEnd('_');
        return text.Length > 0 && char.IsAsciiLetter(text[0]) ? text : "PART_" + text;
    }

    private static string Word(Role role) => role.ToString().ToLowerInvariant();

    private static string Upper(string text) => text.ToUpperInvariant();
}
