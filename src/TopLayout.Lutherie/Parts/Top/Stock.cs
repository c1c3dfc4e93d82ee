using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>How a piece's long grain lies, as a design says it.</summary>
public enum GrainChoice
{
    /// <summary>With the grain of the top.</summary>
    Along,

    /// <summary>Across the grain of the top.</summary>
    Across,

    /// <summary>Through the depth of the rim.</summary>
    Upright,
}

/// <summary>The parameters that say what a part is made of: wood and sawing, and for some the grain.</summary>
public sealed class Stock
{
    /// <summary>Wood and sawing of a part whose grain its shape decides.</summary>
    public Stock(Section section, string wood, Sawing sawing)
    {
        Wood = Parameter.WoodKey(section, "wood", "wood, a key of the wood table or of a [[wood]] in this file", () => WoodTable.Keys, OwnWood.Key, wood);
        Sawing = SawingParameter(section, sawing);
        All = [Wood, Sawing];
    }

    /// <summary>The wood's key.</summary>
    public Parameter<string> Wood { get; }

    /// <summary>How it is sawn.</summary>
    public Parameter<Sawing> Sawing { get; }

    /// <summary>All of them.</summary>
    public IReadOnlyList<Parameter> All { get; }

    /// <summary>A key that says how a piece is sawn.</summary>
    public static Parameter<Sawing> SawingParameter(Section section, Sawing fallback) => Parameter.Choice(
        section,
        "sawing",
        "growth rings against the glued face: upright (quarter), along it (flat), or not known, then the worse case is taken",
        fallback,
        ("quarter", Woods.Sawing.Quarter),
        ("flat", Woods.Sawing.Flat),
        ("unknown", Woods.Sawing.Unknown));

    /// <summary>A key that says how a piece's grain lies.</summary>
    public static Parameter<GrainChoice> GrainParameter(Section section, GrainChoice fallback) => Parameter.Choice(
        section,
        "grain",
        "long grain against the top's: along, across, or upright through the rim's depth",
        fallback,
        ("along", GrainChoice.Along),
        ("across", GrainChoice.Across),
        ("upright", GrainChoice.Upright));

    /// <summary>The material as read.</summary>
    public Material Read(DesignSection section, GrainLie lie = GrainLie.InPlane) =>
        new(new WoodShelf(section.Design)[section[Wood]], lie, section.Get(Sawing).Value);

    /// <summary>The lie and direction that a choice of grain stands for.</summary>
    public static (GrainLie Lie, Angle Grain) Lying(GrainChoice choice) => choice switch
    {
        GrainChoice.Upright => (GrainLie.Upright, Angle.Zero),
        GrainChoice.Across => (GrainLie.InPlane, Angle.FromDegrees(90)),
        _ => (GrainLie.InPlane, Angle.Zero),
    };
}
