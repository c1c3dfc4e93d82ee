using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>Which hand the player frets with the neck in.</summary>
public enum Hand
{
    /// <summary>Right-handed: bass on the left seen from outside, neck up.</summary>
    Right,

    /// <summary>Left-handed: the mirror of it.</summary>
    Left,
}

/// <summary>What the design is called and for which hand it is.</summary>
public static class Identity
{
    /// <summary>Name on every sheet.</summary>
    public static readonly Parameter<string> Name = Parameter.Text(Section.Root, "name", "name of the design, on every sheet");

    /// <summary>Revision on every sheet.</summary>
    public static readonly Parameter<string> Revision =
        Parameter.Text(Section.Root, "revision", "revision, on every sheet", longest: 12, fallback: "A");

    /// <summary>Handedness.</summary>
    public static readonly Parameter<Hand> Handed = Parameter.Choice(
        Section.Root, "handed", "right or left: a left-handed top is drawn mirrored", Hand.Right, ("right", Hand.Right), ("left", Hand.Left));

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Name, Body.Type, Revision, Handed];
}
