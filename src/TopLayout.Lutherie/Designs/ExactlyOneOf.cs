using System.Collections.Immutable;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>Parameters of one section of which a design gives exactly one.</summary>
public sealed class ExactlyOneOf
{
    private readonly Func<SourcePlace, BodyType?, Bound>? _default;

    private ExactlyOneOf(ImmutableArray<Parameter> members, Func<SourcePlace, BodyType?, Bound>? fallback)
    {
        if (members.Length < 2 || members.Any(m => m.Section != members[0].Section || m.Need != ParameterNeed.Optional))
        {
            throw new ArgumentException("a group needs two or more optional parameters of one section");
        }

        (Members, _default) = (members, fallback);
    }

    /// <summary>The parameters, at least two, all optional and of one section.</summary>
    public ImmutableArray<Parameter> Members { get; }

    /// <summary>The section they stand in.</summary>
    public Section Section => Members[0].Section;

    /// <summary>The first member is assumed when none is written.</summary>
    public bool HasDefault => _default is not null;

    /// <summary>A group of which one must be written.</summary>
    public static ExactlyOneOf Required(params Parameter[] members) => new([.. members], null);

    /// <summary>A group in which a value is assumed for the first member when none is written.</summary>
    public static ExactlyOneOf Defaulted<T>(OptionalParameter<T> first, T value, params Parameter[] others)
        where T : notnull => new([first, .. others], (header, body) => first.Assumed(value, header, body));

    internal Bound? Default(SourcePlace header, BodyType? body) => _default?.Invoke(header, body);
}
