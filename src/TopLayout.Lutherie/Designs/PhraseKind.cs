namespace TopLayout.Lutherie.Designs;

/// <summary>Text with a grammar of its own, which its part reads; help shows an example of it.</summary>
internal sealed class PhraseKind(int longest, string example) : TextKind(longest)
{
    private readonly int _longest = longest;

    public override string AllowedText(LengthUnit unit) => $"a phrase of up to {ValueText.Number(_longest, 0)} characters";

    public override string Example(LengthUnit unit, BodyType? body) => example;
}
