using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The outline of a cleat.</summary>
public enum CleatShape
{
    /// <summary>Edges along and across the joint.</summary>
    Square,

    /// <summary>Standing on a corner, so that no edge lies along the grain.</summary>
    Diamond,
}

/// <summary>
/// Cleats on the centre joint, their grain across it: a row from one place to another. Where another part of the inside lies too near, the
/// next free millimetre is taken.
/// </summary>
public static class Cleats
{
    // A taken place is passed over in steps of this, mm.
    private const double StepMm = 1;

    private const string CleatName = "cleat ";

    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Optional("cleats", "small pieces over the centre joint, their grain across it");

    /// <summary>Wood and sawing.</summary>
    public static readonly Stock Stock = new(Section, "sitka_spruce", Sawing.Quarter);

    /// <summary>Which outline.</summary>
    public static readonly Parameter<CleatShape> Shape = Parameter.Choice(
        Section, "shape", "diamond: standing on a corner; or square", CleatShape.Diamond, ("diamond", CleatShape.Diamond), ("square", CleatShape.Square));

    /// <summary>Size across the joint.</summary>
    public static readonly Parameter<double> Across = Parameter.Length(
        Section, "across", "size across the joint, corner to corner for a diamond", possible: (5, 60), usual: (15, 30), fallback: 22);

    /// <summary>Size along the joint.</summary>
    public static readonly Parameter<double> Along = Parameter.Length(
        Section, "along", "size along the joint, corner to corner for a diamond", possible: (4, 60), usual: (8, 22), fallback: 18);

    /// <summary>From one to the next.</summary>
    public static readonly Parameter<double> Pitch = Parameter.Length(
        Section, "pitch", "from the middle of one to the middle of the next", possible: (10, 200), usual: (30, 70), fallback: 45);

    /// <summary>Clear space round each.</summary>
    public static readonly Parameter<double> Gap = Parameter.Length(
        Section, "gap", "least gap to any other part on the inside", possible: (0.5, 30), usual: (2, 6), fallback: 3);

    /// <summary>Thickness.</summary>
    public static readonly Parameter<double> Thickness = Parameter.Length(
        Section, "thickness", "thickness", possible: (0.3, 5), usual: (0.4, 2), fallback: 1.5);

    /// <summary>Where the row begins.</summary>
    public static readonly OptionalParameter<double> RowFrom = Parameter.Length(
        Section, "row_from", "from the neck edge to where the row begins; the rear of the bridge plate, or else of the bridge, when left out", possible: (0, 690)).Optional();

    /// <summary>Where the row ends.</summary>
    public static readonly OptionalParameter<double> RowTo = Parameter.Length(
        Section, "row_to", "from the neck edge to where the row ends; the tail block's face when left out", possible: (5, 700)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, Shape, Across, Along, Pitch, Gap, Thickness, RowFrom, RowTo];

    /// <summary>Whether a member is one of the cleats.</summary>
    public static bool IsCleat(Member member) => member.Name.StartsWith(CleatName, StringComparison.Ordinal);

    internal static void Build(Bench bench, BarRoom room)
    {
        var design = bench.Design;
        if (!design.Has(Section))
        {
            return;
        }

        var section = design.In(Section);
        var (from, to) = Row(bench, section, room);
        var places = Places(bench, section, room, from, to).ToList();
        if (places.Count == 0)
        {
            bench.LeaveOut(
                "cleats",
                $"no cleat {Say.Mm(section[Along].Value)} along the joint fits on the centre line from {Say.Mm(from)} to {Say.Mm(to)} from the neck edge",
                "make the cleats or their `gap` smaller, lengthen the row with `row_from` and `row_to`, or leave [cleats] out where a bar lies on the joint",
                section[Along].Place,
                section[Gap].Place);
        }

        foreach (var (footprint, number) in places.Select((p, i) => (p, i + 1)))
        {
            bench.Add(new Member
            {
                Name = $"{CleatName}{Say.Count(number)}",
                Kind = MemberKind.Plate,
                Face = TopFace.Inside,
                Footprint = footprint,
                ThicknessMm = section[Thickness].Value,
                Material = Stock.Read(section),
                Grain = Angle.FromDegrees(90),
                Places = [section.Get(Shape).Place, section[Along].Place, section[Across].Place, section[Pitch].Place],
            });
        }
    }

    private static (double From, double To) Row(Bench bench, DesignSection section, BarRoom room)
    {
        var design = bench.Design;
        var rear = design.Has(BridgePlate.Section) ? BridgePlate.RearFromNeckEdge(design) : Bridge.RearFromNeckEdge(design);
        return (section.Find(RowFrom)?.Value ?? rear, section.Find(RowTo)?.Value ?? -Block.Tail.FaceY(design, room.InsideOfSides));
    }

    private static IEnumerable<Region> Places(Bench bench, DesignSection section, BarRoom room, double from, double to)
    {
        var obstacles = bench.Members.Where(m => m.Face == TopFace.Inside).Select(m => m.Footprint).Append(room.Hole.Area).ToList();
        var margin = (section[Along].Value / 2) + section[Gap].Value;
        for (var at = from + margin; at <= to - margin + Tolerances.TouchMm;)
        {
            var cleat = Outline(section, at);
            var isFree = cleat.Outer.Vertices.All(v => room.LiningLine.Contains(v.Position))
                && !obstacles.Exists(o => IsNearer(cleat, o, section[Gap].Value - Tolerances.TouchMm));
            if (isFree)
            {
                yield return cleat;
            }

            at += isFree ? section[Pitch].Value : StepMm;
        }
    }

    private static bool IsNearer(Region cleat, Region other, double gap) => cleat.Bounds.Grown(gap).Overlaps(other.Bounds)
        && Distances.Between(cleat, other) < gap;

    private static Region Outline(DesignSection section, double fromNeckEdge)
    {
        var (a, b, y) = (section[Across].Value / 2, section[Along].Value / 2, -fromNeckEdge);
        return section.Get(Shape).Value == CleatShape.Square
            ? Loop((a, y - b, "treble end"), (a, y + b, "neck side"), (-a, y + b, "bass end"), (-a, y - b, "tail side"))
            : Loop((a, y, "neck side, treble"), (0, y + b, "neck side, bass"), (-a, y, "tail side, bass"), (0, y - b, "tail side, treble"));
    }

    private static Region Loop(params ReadOnlySpan<(double X, double Y, string Label)> corners)
    {
        var vertices = new List<Vertex>(corners.Length);
        foreach (var (x, y, label) in corners)
        {
            vertices.Add(new Vertex(new Point2(x, y), 0, label));
        }

        return Region.Inside(new Contour(vertices, isClosed: true));
    }
}
