using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>One of a written list of words.</summary>
internal sealed class ChoiceKind<T>(ImmutableArray<(string Word, T Value)> words) : ValueKind<T>
    where T : notnull
{
    public override ParameterKind Kind => ParameterKind.Choice;

    public static ChoiceKind<TEnum> OfEnum<TEnum>()
        where TEnum : struct, Enum =>
        new([.. Enum.GetValues<TEnum>().Select(value => (ValueText.SnakeCase(value.ToString()), value))]);

    public override IReadOnlyList<string> Words { get; } = [.. words.Select(w => w.Word)];

    public override string AllowedText(LengthUnit unit) => ValueText.AnyOf(Words);

    public override T Example(LengthUnit unit, BodyType? body) => words[0].Value;

    public override string Shown(T value, LengthUnit unit) => $"`{Canonical(value)}`";

    public override string Written(T value, LengthUnit unit) => ValueText.Quoted(Canonical(value));

    public override string Canonical(T value) => words.First(w => w.Value.Equals(value)).Word;

    public override bool TryParse(string canonical, out T value)
    {
        value = words.FirstOrDefault(w => w.Word == canonical, words[0]).Value;
        return Words.Contains(canonical, StringComparer.Ordinal);
    }

    protected override bool IsLegal(T value) => words.Any(w => w.Value.Equals(value));

    protected override bool TryRead(Parameter parameter, RawEntry entry, ReadingContext context, out T value)
    {
        value = words[0].Value;
        if (!WordReading.TryText(parameter, entry, context, out var text))
        {
            return false;
        }

        var found = words.Where(w => w.Word == text).ToList();
        if (found.Count > 0)
        {
            value = found[0].Value;
            return true;
        }

        var near = Spelling.Nearest(text, Words);
        context.Error(
            Rules.UnknownWord,
            parameter.Path,
            $"`{parameter.Key}` must be {AllowedText(context.Shown)}; it is `{ValueText.Quotable(text)}`",
            entry.Place,
            near is null ? "write one of these words" : $"did you mean `{parameter.Key} = {ValueText.Quoted(near)}`?");
        return false;
    }
}
