using System.Globalization;
using System.Text;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Parts;

/// <summary>Design texts drawn from the ranges of the table of parameters: the same for the same seed on every machine.</summary>
internal sealed class RandomDesigns(int seed, bool usual)
{
    // Shares of the keys that are written: with nearly all of them few designs are free of contradictions.
    private static readonly double[] Densities = [0.05, 0.2, 0.5, 0.9];

    // A top has a few kinds of bracing, not all: these are drawn one time in eight.
    private static readonly Section[] Seldom =
    [
        LadderBars.Section, SoundholeBraces.Section, FingerBraces.Section, Fan.Section, ClosingBars.Section, FreeBars.Section,
        HoleReinforcement.Section, Cleats.Section, Cutaway.Section, Ledge.Section,
    ];

    // Rings lie in a rosette round a round hole and take the place of its width.
    private static readonly Parameter[] WithoutRings = [Rosette.Width, Soundhole.Shape, Soundhole.Length];

    private static readonly string[] Phrases =
    [
        "25 mm below the soundhole edge, 60 mm to the treble", "at the crossing", "3/4 in above the bridge front, 40 mm to the bass", "at the lower bout, 90 mm to the bass",
        "10 mm below the transverse brace", "5 mm below the bridge plate, 3 cm to the treble", "30 mm above the tail edge",
        "against the X leg, treble, 90 mm to the treble", "against the upper transverse brace, 70 mm to the bass", "against the bar 2, 250 mm from the neck edge",
        "12 mm below the tail of the tone bar 1", "20 mm below bar 1, 40 mm to the bass",
    ];

    private readonly Random _random = new(seed);
    private readonly string[] _woods = [.. WoodTable.Keys];
    private bool _hasRings;

    /// <summary>The next design's text. Usual ranges are those of its kind of body; a key without one is left to its default.</summary>
    public string Next()
    {
        var body = _random.Next(9) is var drawn and < 8 ? (BodyType)drawn : (BodyType?)null;
        var density = Densities[_random.Next(Densities.Length)];
        var text = new StringBuilder("name = \"drawn\"\nunits = \"mm\"\n");
        if (body is { } type)
        {
            text.Append(CultureInfo.InvariantCulture, $"body = \"{Body.Word(type)}\"\n");
        }

        var left = LeftOut();
        foreach (var section in Parameters.Table.Sections.Where(s => !s.IsRoot && s != OwnWood.Section && !left.Contains(s)))
        {
            for (var n = Count(section); n > 0; n--)
            {
                // A ring of which nearly every key is written contradicts itself; it is left out.
                if (Filled(section, body, density) is var filled && (filled.Length > 0 || section != Rings.Section))
                {
                    text.Append(section.Header).Append('\n').Append(filled);
                }
            }
        }

        return text.ToString();
    }

    // Half of the designs have their body's outline, most have no part without the one it hangs on: else few would get past either.
    private HashSet<Section> LeftOut()
    {
        var left = new HashSet<Section>(Parameters.Table.SectionGroups.SelectMany(g => g.Members));
        if (_random.Next(2) == 0)
        {
            var form = Form();
            left.Remove(form);
            if (form == Teardrop.Section)
            {
                // Mostly rounded, and a rounded horn runs into a waist.
                left.Add(Cutaway.Section);
            }
        }

        _hasRings = _random.Next(8) == 0;
        if (!_hasRings)
        {
            left.Add(Rings.Section);
        }

        if (_random.Next(3) == 0)
        {
            left.UnionWith([XBrace.Section, BridgePlate.Section, ToneBars.Section]);
        }

        if (_random.Next(3) == 0)
        {
            left.UnionWith([TransverseBrace.Section, FlatBrace.Section]);
        }

        return left;
    }

    // Mostly the recipe. Arcs and measured halves are lists that only make sense as a whole: they are drawn where they are tested.
    private Section Form() => _random.Next(6) == 0 ? Teardrop.Section : Outline.Section;

    private Parameter OneOf(ExactlyOneOf group) => group.Members[_random.Next(group.Members.Length)];

    private int Count(Section section) => section.Presence switch
    {
        _ when Seldom.Contains(section) => _random.Next(8) == 0 ? 1 : 0,
        _ when section == Rosette.Section && _hasRings => 1,
        _ when section == ArcChain.Section => 2 + _random.Next(6),
        SectionPresence.Always => 1,
        SectionPresence.Optional => _random.Next(8) == 0 ? 0 : 1,
        _ => _random.Next(3),
    };

    // One section in twenty may contradict itself; for the others a maker's own care is taken to hold.
    private string Filled(Section section, BodyType? body, double density)
    {
        var mayContradict = _random.Next(20) == 0;
        for (var tries = 0; tries < 200; tries++)
        {
            var text = new StringBuilder();
            Fill(section, body, density, text);
            if (mayContradict || Coherence.Holds(section, body, text.ToString()))
            {
                return text.ToString();
            }
        }

        return "";
    }

    private void Fill(Section section, BodyType? body, double density, StringBuilder text)
    {
        var groups = Parameters.Table.Groups.Where(g => g.Section == section).Select(g => (Group: g, Kept: OneOf(g))).ToList();
        var left = groups.SelectMany(g => g.Group.Members.Where(m => m != g.Kept)).ToHashSet();
        var needed = groups.Where(g => !g.Group.HasDefault).Select(g => g.Kept).ToHashSet();
        foreach (var parameter in Parameters.Table.Of(section).Where(p => !left.Contains(p) && !(_hasRings && WithoutRings.Contains(p))))
        {
            var isNeeded = parameter.Need == ParameterNeed.Required || needed.Contains(parameter);
            if ((isNeeded || _random.NextDouble() < density) && Value(parameter, body, isNeeded) is { } value)
            {
                text.Append(CultureInfo.InvariantCulture, $"{parameter.Key} = {value}\n");
            }
        }
    }

    // Where practice sets no range, a key that must be written is drawn from the possible one.
    private string? Value(Parameter parameter, BodyType? body, bool isNeeded) => parameter.Kind switch
    {
        ParameterKind.Choice => Quoted([.. parameter.Words]),
        ParameterKind.Wood => Quoted(_woods),
        ParameterKind.Text when parameter == FreeBars.From || parameter == FreeBars.To => Quoted(Phrases),
        ParameterKind.Text => null,
        ParameterKind.Lengths => $"[{string.Join(", ", Enumerable.Range(0, 8 + _random.Next(9)).Select(_ => Number(parameter, parameter.Possible!.Value)))}]",
        _ => (usual ? parameter.UsualFor(body) ?? (isNeeded ? parameter.Possible : null) : parameter.Possible) is { } range
            ? Number(parameter, range)
            : null,
    };

    private string Quoted(string[] words) => $"\"{words[_random.Next(words.Length)]}\"";

    private string Number(Parameter parameter, (double Low, double High) range)
    {
        var value = _random.Next(10) switch
        {
            0 => range.Low,
            1 => range.High,
            _ => range.Low + ((range.High - range.Low) * _random.NextDouble()),
        };
        return parameter.Kind == ParameterKind.Count
            ? ((int)Math.Round(value)).ToString(CultureInfo.InvariantCulture)
            : Math.Clamp(Math.Round(value, 4), range.Low, range.High).ToString("0.0###", CultureInfo.InvariantCulture);
    }
}
