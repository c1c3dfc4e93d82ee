namespace TopLayout.Lutherie.Designs;

/// <summary>Kinds of bodies, by their trade words.</summary>
public enum BodyType
{
    /// <summary>Small, twelve frets to the body.</summary>
    Parlour,

    /// <summary>For nylon strings.</summary>
    Classical,

    /// <summary>Between parlour and auditorium.</summary>
    Concert,

    /// <summary>Wide lower bout, narrow waist.</summary>
    Auditorium,

    /// <summary>Broad shoulders, hardly waisted.</summary>
    SquareShouldered,

    /// <summary>The widest.</summary>
    Jumbo,

    /// <summary>A ukulele of tenor size.</summary>
    TenorUkulele,

    /// <summary>A flat-top octave mandolin with a waist.</summary>
    OctaveMandolin,
}

/// <summary>The key that says what kind of body a design has, and the words for it.</summary>
public static class Body
{
    private static readonly (string Word, BodyType Value)[] Words =
    [
        ("parlour", BodyType.Parlour), ("classical", BodyType.Classical), ("concert", BodyType.Concert), ("auditorium", BodyType.Auditorium),
        ("square-shouldered", BodyType.SquareShouldered), ("jumbo", BodyType.Jumbo), ("tenor-ukulele", BodyType.TenorUkulele),
        ("octave-mandolin", BodyType.OctaveMandolin),
    ];

    /// <summary>The kind of body; without it the general defaults and usual ranges hold.</summary>
    public static readonly OptionalParameter<BodyType> Type = Parameter.Choice(
        Section.Root, "body", "kind of body: sets what is not written, and what is usual; without it the general values hold", Words).Optional();

    /// <summary>Every kind, in the order help shows them.</summary>
    public static IEnumerable<BodyType> All => Words.Select(w => w.Value);

    /// <summary>Its word in a design file: "octave-mandolin".</summary>
    public static string Word(BodyType body) => Words.First(w => w.Value == body).Word;

    /// <summary>As a sentence names it: "an octave mandolin body".</summary>
    public static string Phrase(BodyType body)
    {
        var name = body is BodyType.TenorUkulele or BodyType.OctaveMandolin ? Word(body).Replace('-', ' ') : Word(body);
        return $"{(name[0] is 'a' or 'o' ? "an" : "a")} {name} body";
    }
}
