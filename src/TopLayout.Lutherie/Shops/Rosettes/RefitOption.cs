using System.Collections.Immutable;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Shops.Rosettes;

/// <summary>What is thought of a way to refit a ring, best first.</summary>
public enum RefitVerdict
{
    /// <summary>Sound as it stands.</summary>
    Recommended,

    /// <summary>It can be done, with something that shows or wants work.</summary>
    Workable,

    /// <summary>Not with these numbers.</summary>
    Refused,
}

/// <summary>One change of the design: a value, and in which of several sections alike.</summary>
public readonly record struct RefitChange(Setting Setting, int Number = 1);

/// <summary>One way to put a ring round another hole, weighed.</summary>
/// <param name="Key">Its word on the command line.</param>
/// <param name="Title">What is done.</param>
/// <param name="Verdict">What is thought of it.</param>
/// <param name="Reason">Why, with the number that decided; in lower case, without a full stop.</param>
/// <param name="Cost">What has to be done for it.</param>
public sealed record RefitOption(string Key, string Title, RefitVerdict Verdict, string Reason, string Cost)
{
    /// <summary>Inner radius of the ring in its new place, mm.</summary>
    public double InnerMm { get; init; }

    /// <summary>Outer radius of the ring in its new place, mm.</summary>
    public double OuterMm { get; init; }

    /// <summary>Hole's edge to the ring, mm.</summary>
    public double MarginMm { get; init; }

    /// <summary>How much ring is missing (+) or too much (−) once round, mm; 0 where it fits.</summary>
    public double ResidueMm { get; init; }

    /// <summary>Where that is made up.</summary>
    public string ResidueWhere { get; init; } = "";

    /// <summary>How many filler lines it lays inside the ring.</summary>
    public int Fillers { get; init; }

    /// <summary>How many tiles the ring has then; null when it has none, or as many as before.</summary>
    public int? Tiles { get; init; }

    /// <summary>By how much the channel must be wider than for a round ring, mm.</summary>
    public double RoomMm { get; init; }

    /// <summary>What it changes in the design, besides the hole.</summary>
    public ImmutableArray<RefitChange> Changes { get; init; } = [];
}
