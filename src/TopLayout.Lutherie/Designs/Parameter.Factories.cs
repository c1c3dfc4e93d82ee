using System.Collections.Immutable;
using Bounds = (double Low, double High);

namespace TopLayout.Lutherie.Designs;

/// <content>The factories. Without a fallback a parameter is required; <see cref="Parameter{T}.Optional"/> makes it optional.</content>
public abstract partial class Parameter
{
    /// <summary>A length; possible, usual and fallback in mm.</summary>
    public static Parameter<double> Length(
        Section section, string key, string meaning, Bounds possible, Bounds? usual = null, double? fallback = null, BodyValues? byBody = null) =>
        Plain(ParameterKind.Length, section, key, meaning, possible, usual, fallback, byBody);

    /// <summary>A list of lengths, each with its own place; possible, for each of them, in mm.</summary>
    public static Parameter<ImmutableArray<Sourced<double>>> Lengths(Section section, string key, string meaning, Bounds possible, int most) =>
        new(section, key, meaning, new LengthListKind(section, key, possible, most), ([], false));

    /// <summary>An angle; possible, usual and fallback in degrees.</summary>
    public static Parameter<Geometry.Angle> Angle(
        Section section, string key, string meaning, Bounds possible, Bounds? usual = null, double? fallback = null, BodyValues? byBody = null) =>
        new(section, key, meaning, new NumericKind<Geometry.Angle>(ParameterKind.Angle, possible, usual, byBody, Geometry.Angle.FromDegrees, a => a.Degrees),
            (Geometry.Angle.FromDegrees(fallback ?? 0), fallback.HasValue));

    /// <summary>A bare number, such as a fraction.</summary>
    public static Parameter<double> Number(
        Section section, string key, string meaning, Bounds possible, Bounds? usual = null, double? fallback = null, BodyValues? byBody = null) =>
        Plain(ParameterKind.Number, section, key, meaning, possible, usual, fallback, byBody);

    /// <summary>A percentage; 45 means 45 %.</summary>
    public static Parameter<double> Percent(
        Section section, string key, string meaning, Bounds possible, Bounds? usual = null, double? fallback = null) =>
        Plain(ParameterKind.Percent, section, key, meaning, possible, usual, fallback, null);

    /// <summary>A temperature in °C.</summary>
    public static Parameter<double> Temperature(
        Section section, string key, string meaning, Bounds possible, Bounds? usual = null, double? fallback = null) =>
        Plain(ParameterKind.Temperature, section, key, meaning, possible, usual, fallback, null);

    /// <summary>A whole number.</summary>
    public static Parameter<int> Count(
        Section section, string key, string meaning, (int Low, int High) possible, (int Low, int High)? usual = null, int? fallback = null, BodyValues? byBody = null) =>
        new(section, key, meaning, new NumericKind<int>(ParameterKind.Count, possible, usual, byBody, value => (int)value, value => value),
            (fallback ?? 0, fallback.HasValue));

    /// <summary>One of the words given, each standing for a value; required.</summary>
    public static Parameter<T> Choice<T>(Section section, string key, string meaning, params (string Word, T Value)[] words)
        where T : notnull => new(section, key, meaning, new ChoiceKind<T>([.. words]), (words[0].Value, false));

    /// <summary>One of the words given, each standing for a value.</summary>
    public static Parameter<T> Choice<T>(Section section, string key, string meaning, T fallback, params (string Word, T Value)[] words)
        where T : notnull => new(section, key, meaning, new ChoiceKind<T>([.. words]), (fallback, true));

    /// <summary>One member of an enumeration, written in small letters: <c>FlatSawn</c> is <c>"flat_sawn"</c>.</summary>
    public static Parameter<T> OneOf<T>(Section section, string key, string meaning, T? fallback = null)
        where T : struct, Enum => new(section, key, meaning, ChoiceKind<T>.OfEnum<T>(), (fallback ?? default, fallback.HasValue));

    /// <summary>Free text of one line, 1 to <paramref name="longest"/> characters.</summary>
    public static Parameter<string> Text(Section section, string key, string meaning, int longest = 80, string? fallback = null) =>
        new(section, key, meaning, new TextKind(longest), (fallback ?? "", fallback is not null));

    /// <summary>Text of one line that its part reads by a grammar of its own; required.</summary>
    public static Parameter<string> Phrase(Section section, string key, string meaning, string example, int longest = 120) =>
        new(section, key, meaning, new PhraseKind(longest, example), ("", false));

    /// <summary>
    /// The key of a wood: one of <paramref name="known"/>, or one the file itself defines through the text parameter
    /// <paramref name="definedBy"/> of a repeatable section.
    /// </summary>
    public static Parameter<string> WoodKey(
        Section section, string key, string meaning, Func<IEnumerable<string>> known, Parameter<string>? definedBy = null, string? fallback = null) =>
        new(section, key, meaning, new WoodKind(known, definedBy), (fallback ?? "", fallback is not null));

    /// <summary>The key of a wood that the file describes itself: none of <paramref name="known"/>, and none twice.</summary>
    public static Parameter<string> NewWoodKey(Section section, string key, string meaning, Func<IEnumerable<string>> known) =>
        new(section, key, meaning, new NewWoodKind(known), ("", false));

    private static Parameter<double> Plain(
        ParameterKind kind, Section section, string key, string meaning, Bounds possible, Bounds? usual, double? fallback, BodyValues? byBody) =>
        new(section, key, meaning, new NumericKind<double>(kind, possible, usual, byBody, value => value, value => value),
            (fallback ?? 0, fallback.HasValue));
}
