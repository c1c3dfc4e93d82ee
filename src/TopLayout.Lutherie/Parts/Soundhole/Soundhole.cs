using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>The round soundhole on the centre line.</summary>
public static class Soundhole
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Always("soundhole", "the round soundhole");

    /// <summary>Diameter.</summary>
    public static readonly Parameter<double> Diameter = Parameter.Length(
        Section, "diameter", "diameter", possible: (15, 200), usual: (55, 106), fallback: 100,
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

    /// <summary>The two ways to place it.</summary>
    public static readonly ExactlyOneOf Position = ExactlyOneOf.Defaulted(Gap, 5, FromNeckEdge);

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [Diameter, Gap, FromNeckEdge];

    /// <summary>The hole as read: placed from the neck edge, or behind the fretboard's end.</summary>
    public static Hole Read(Design design)
    {
        var radius = design[Diameter].Value / 2;
        var center = design.Find(FromNeckEdge)?.Value ?? (Fretboard.EndFromNeckEdge(design) + design.Find(Gap)!.Value.Value + radius);
        return new Hole(new Point2(0, -center), radius);
    }

    /// <summary>The hole; null, with the misfit said, when its centre does not lie inside the linings.</summary>
    internal static Hole? Build(Bench bench, Contour liningLine)
    {
        var hole = Read(bench.Design);
        if (!liningLine.Contains(hole.Center))
        {
            bench.Misfit(
                "soundhole",
                $"the hole, {Say.Mm(2 * hole.Radius)} across and centred {Say.Mm(-hole.Center.Y)} from the neck edge, has its centre outside the linings",
                "move it towards the middle of the body",
                bench.Design[Diameter].Place,
                bench.Design.Find(FromNeckEdge)?.Place ?? bench.Design[Scale.Length].Place);
            return null;
        }

        return hole;
    }
}

/// <summary>A round hole.</summary>
/// <param name="Center">Its centre in layout coordinates, mm.</param>
/// <param name="Radius">Its radius, mm.</param>
public readonly record struct Hole(Point2 Center, double Radius)
{
    /// <summary>Neck edge to the hole's edge nearest to the neck, mm.</summary>
    public double NearEdge => -Center.Y - Radius;

    /// <summary>Neck edge to the hole's edge nearest to the tail, mm.</summary>
    public double FarEdge => -Center.Y + Radius;

    /// <summary>Its edge.</summary>
    public Contour Edge => Contour.Circle(Center, Radius, "hole");
}
