using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>What a hole looks like.</summary>
public enum HoleShape
{
    /// <summary>A circle.</summary>
    Round,

    /// <summary>An oval of four arcs.</summary>
    Oval,

    /// <summary>A straight side and a bow.</summary>
    D,
}

/// <summary>What the liner is made of.</summary>
public enum LinerStuff
{
    /// <summary>A strip of wood.</summary>
    Wood,

    /// <summary>A strip of plastic sheet.</summary>
    Sheet,

    /// <summary>A strip of fibre, as hard paper.</summary>
    Fibre,
}

/// <summary>The soundhole: round, oval or D-shaped, on the centre line or beside it.</summary>
public static class Soundhole
{
    /// <summary>The label of its edge.</summary>
    public const string EdgeLabel = "hole";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("soundhole", "the soundhole");

    /// <summary>Diameter.</summary>
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Section, "diameter", "diameter of a round hole; width across the body of an oval or a D", possible: (15, 200), usual: (55, 106), fallback: 100,
        byBody: BodyValues.Of(
            parlour: (92, 85, 96), classical: (86, 82, 90), concert: (96, 90, 100), auditorium: (100, 96, 104),
            squareShouldered: (101, 98, 104), jumbo: (102, 100, 106), tenorUkulele: (60, 55, 66),
            octaveMandolin: (90, 80, 102)));

    /// <summary>Gap behind the fretboard's end.</summary>
    public static readonly OptionalParameter<double> Gap = Parameter.Length(
        Section, "behind_fretboard", "from the fretboard's end to the hole's edge", possible: (-40, 120), usual: (0, 8),
        byBody: BodyValues.Of(steel: (5, 3, 8), classical: (0, -6, 2), tenorUkulele: (10, 5, 20))).Optional();

    /// <summary>Centre from the neck edge.</summary>
    public static readonly OptionalParameter<double> FromNeckEdge = Parameter.Length(
        Section, "from_neck_edge", "from the neck edge to the hole's centre", possible: (40, 400), usual: (80, 160),
        byBody: BodyValues.Of(
            parlour: (138, 155), classical: (145, 158), concert: (135, 150), auditorium: (142, 155),
            squareShouldered: (142, 152), jumbo: (144, 156), tenorUkulele: (80, 95), octaveMandolin: (110, 130))).Optional();

    /// <summary>Shape.</summary>
    public static readonly Parameter<HoleShape> Shape = Parameter.Choice(
        Section, "shape", "round, oval, or d: a straight side and a bow", HoleShape.Round, ("round", HoleShape.Round), ("oval", HoleShape.Oval), ("d", HoleShape.D));

    /// <summary>Length along the body, of a hole that is not round.</summary>
    public static readonly OptionalParameter<double> Length = Parameter.Length(
        Section, "length", "length along the body of an oval or a D", possible: (15, 250), usual: (40, 130)).Optional();

    /// <summary>Where the straight side of a D lies.</summary>
    public static readonly Parameter<bool> StraightTowardNeck = Parameter.Choice(
        Section, "straight_side", "which end of a D its straight side is: neck or tail", true, ("neck", true), ("tail", false));

    /// <summary>Radius of the corners of a D.</summary>
    public static readonly Parameter<double> CornerRadius = Parameter.Length(
        Section, "corner_radius", "radius of the two corners of a D", possible: (1, 60), usual: (4, 20), fallback: 8);

    /// <summary>Sideways.</summary>
    public static readonly Parameter<double> TowardTreble = Parameter.Length(
        Section, "toward_treble", "from the centre line to the hole's centre; negative towards the bass side", possible: (-150, 150), usual: (-60, 60), fallback: 0);

    /// <summary>The strip glued round its inside.</summary>
    public static readonly Parameter<double> Liner = Parameter.Length(
        Section, "liner", "thickness of a strip bent round inside the hole's edge; 0 for none", possible: (0, 5), usual: (0, 2), fallback: 0);

    /// <summary>What the liner is of.</summary>
    public static readonly OptionalParameter<LinerStuff> LinerOf = Parameter.Choice(
        Section, "liner_of", "what the liner is of; wood when left out", ("wood", LinerStuff.Wood), ("sheet", LinerStuff.Sheet), ("fibre", LinerStuff.Fibre)).Optional();

    /// <summary>The lap of the liner's joint.</summary>
    public static readonly OptionalParameter<double> LinerLap = Parameter.Length(
        Section, "liner_lap", "how far the liner's ends lap at their joint; they butt when left out", possible: (0, 80), usual: (5, 25)).Optional();

    /// <summary>The two ways to place it.</summary>
    public static readonly ExactlyOneOf Position = ExactlyOneOf.Defaulted(Gap, 5, FromNeckEdge);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Diameter, Shape, Length, StraightTowardNeck, CornerRadius, Gap, FromNeckEdge, TowardTreble, Liner, LinerOf, LinerLap];

    /// <summary>Its length along the body, mm; the diameter of a round one.</summary>
    public static double LengthAlong(Design design) => design.Find(Length)?.Value ?? design[Diameter].Value;

    /// <summary>The hole as read; null where the corners of a D do not fit.</summary>
    public static Hole? Read(Design design)
    {
        var (halfAcross, along) = (design[Diameter].Value / 2, LengthAlong(design));
        var fromNeckEdge = design.Find(FromNeckEdge)?.Value ?? (Fretboard.EndFromNeckEdge(design) + design.Find(Gap)!.Value.Value + (along / 2));
        var center = new Point2(design[TowardTreble].Value, -fromNeckEdge);
        var towardNeck = design.Get(StraightTowardNeck).Value;
        return design.Get(Shape).Value switch
        {
            HoleShape.Round => new Hole(Contour.Circle(center, halfAcross, EdgeLabel)),
            HoleShape.Oval => new Hole(HoleShapes.Oval(center, halfAcross, along / 2, EdgeLabel)),
            _ => HoleShapes.D(
                center + (Vec2.UnitY * (towardNeck ? along / 2 : -along / 2)), halfAcross, along, towardNeck, design[CornerRadius].Value, EdgeLabel) is { } edge
                ? new Hole(edge)
                : null,
        };
    }

    /// <summary>The hole; null, with the misfit said, when its shape cannot be drawn or its centre does not lie inside the linings.</summary>
    internal static Hole? Build(Bench bench, Contour liningLine)
    {
        var design = bench.Design;
        if (!IsShapeSaid(bench) || !IsLinerSaid(bench))
        {
            return null;
        }

        if (Read(design) is not { } hole)
        {
            var most = Math.Floor(Math.Min(design[Diameter].Value, LengthAlong(design)) * 5) / 10;
            bench.Misfit(
                "soundhole",
                $"corners of radius {Say.Mm(design[CornerRadius].Value)} do not fit a D {Say.Mm(design[Diameter].Value)} across and {Say.Mm(LengthAlong(design))} long",
                $"make `corner_radius` {Say.Mm(most)} or less, or the hole larger",
                design[CornerRadius].Place,
                design[Diameter].Place);
            return null;
        }

        if (!liningLine.Contains(hole.Center))
        {
            bench.Misfit(
                "soundhole",
                $"the hole, {Size(design)} and centred {Say.Mm(-hole.Center.Y)} from the neck edge, has its centre outside the linings",
                "move it towards the middle of the body",
                design[Diameter].Place,
                design.Find(FromNeckEdge)?.Place ?? design[Scale.Length].Place);
            return null;
        }

        return hole;
    }

    /// <summary>The inner face of the liner; null when there is none. The possible values leave every hole open.</summary>
    internal static Contour? LinerLine(Design design, Hole hole) => design[Liner].Value > 0 ? hole.LineInside(design[Liner].Value, "liner") : null;

    private static string Size(Design design) => design.Get(Shape).Value == HoleShape.Round
        ? $"{Say.Mm(design[Diameter].Value)} across"
        : $"{Say.Mm(design[Diameter].Value)} across, {Say.Mm(LengthAlong(design))} long";

    private static bool IsLinerSaid(Bench bench)
    {
        var design = bench.Design;
        if (design[Liner].Value > 0 || (design.Find(LinerOf)?.Place ?? design.Find(LinerLap)?.Place) is not { } stray)
        {
            return true;
        }

        bench.Misfit("soundhole", "it is said what the liner is of, or how it laps, and there is no liner", "add `liner`, its thickness, or leave that out", stray, design[Liner].Place);
        return false;
    }

    private static bool IsShapeSaid(Bench bench)
    {
        var design = bench.Design;
        var (shape, length) = (design.Get(Shape), design.Find(Length));
        if (shape.Value == HoleShape.Round == !length.HasValue)
        {
            return true;
        }

        bench.Misfit(
            "soundhole",
            length.HasValue ? "a round hole has a diameter, and this one has a `length` besides" : "a hole that is not round has a `length` along the body, and none is written",
            length.HasValue ? "leave `length` out, or say `shape = \"oval\"` or `shape = \"d\"`" : "add `length`, or say `shape = \"round\"`",
            length?.Place ?? shape.Place,
            shape.Place);
        return false;
    }
}
