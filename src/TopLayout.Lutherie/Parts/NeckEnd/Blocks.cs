using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>A block inside one end of the rim: its parameters and its footprint, the same at neck and tail.</summary>
public sealed class Block
{
    /// <summary>The block at the neck.</summary>
    public static readonly Block Neck = new(
        "neck_block",
        "neck block",
        "mahogany_true",
        width: (30, 200, 75, 100, 90, BodyValues.Of(steel: (90, 75, 100), classical: (90, 75, 100), tenorUkulele: (50, 40, 60))),
        length: (10, 120, 25, 65, 45, BodyValues.Of(steel: (42, 40, 65), classical: (45, 40, 65), tenorUkulele: (25, 25, 40), octaveMandolin: 35)),
        depth: BodyValues.Of(
            parlour: (88, 80, 95), classical: (92, 85, 100), concert: (92, 85, 100), auditorium: (95, 85, 102),
            squareShouldered: (103, 98, 108), jumbo: (103, 95, 110), tenorUkulele: (66, 60, 72), octaveMandolin: (70, 60, 80)),
        towardsTail: -1);

    /// <summary>The block at the tail.</summary>
    public static readonly Block Tail = new(
        "tail_block",
        "tail block",
        "mahogany_true",
        width: (20, 200, 35, 100, 80, BodyValues.Of(steel: (80, 70, 100), classical: (80, 70, 100), tenorUkulele: (45, 35, 55))),
        length: (5, 80, 10, 25, 18, BodyValues.Of(steel: (18, 15, 25), classical: (18, 15, 25), tenorUkulele: (12, 10, 15))),
        depth: BodyValues.Of(
            parlour: (96, 88, 105), classical: (98, 90, 106), concert: (105, 98, 112), auditorium: (110, 100, 118),
            squareShouldered: (120, 115, 126), jumbo: (120, 115, 128), tenorUkulele: (73, 66, 80), octaveMandolin: (82, 70, 95)),
        towardsTail: 1);

    private readonly int _towardsTail;

    private Block(
        string key,
        string name,
        string wood,
        (double Low, double High, double UsualLow, double UsualHigh, double Fallback, BodyValues ByBody) width,
        (double Low, double High, double UsualLow, double UsualHigh, double Fallback, BodyValues ByBody) length,
        BodyValues depth,
        int towardsTail)
    {
        (Name, _towardsTail) = (name, towardsTail);
        Section = Section.Always(key, $"the {name}");
        Stock = new Stock(Section, wood, Sawing.Unknown);
        Grain = Stock.GrainParameter(Section, GrainChoice.Upright);
        Width = Parameter.Length(
            Section, "width", "width across the body", (width.Low, width.High), (width.UsualLow, width.UsualHigh), width.Fallback, width.ByBody);
        Length = Parameter.Length(
            Section, "length", "from the inside of the sides along the body", (length.Low, length.High), (length.UsualLow, length.UsualHigh), length.Fallback, length.ByBody);
        Depth = Parameter.Length(Section, "depth", "depth through the rim", possible: (15, 150), usual: (60, 126), fallback: 95, byBody: depth);
    }

    /// <summary>The member's name.</summary>
    public string Name { get; }

    /// <summary>The section.</summary>
    public Section Section { get; }

    /// <summary>Wood and sawing.</summary>
    public Stock Stock { get; }

    /// <summary>How the grain lies.</summary>
    public Parameter<GrainChoice> Grain { get; }

    /// <summary>Width across the body.</summary>
    public Parameter<double> Width { get; }

    /// <summary>Length along the body.</summary>
    public Parameter<double> Length { get; }

    /// <summary>Depth through the rim.</summary>
    public Parameter<double> Depth { get; }

    /// <summary>All of them.</summary>
    public IEnumerable<Parameter> All => [.. Stock.All, Grain, Width, Length, Depth];

    /// <summary>Name of the edge across the body that faces the sound chamber.</summary>
    public const string FaceEdge = "face";

    /// <summary>The line of the block's face, y in layout coordinates, mm: from where the centre line meets the inside of the sides.</summary>
    public double FaceY(Design design, Contour insideOfSides)
    {
        var ends = insideOfSides.Crossings(BarStrip.Line(default, Vec2.UnitY, ""));
        var (tail, neck) = ends.Count > 0 ? (ends[0].Point.Y, ends[^1].Point.Y) : (insideOfSides.Bounds.Min.Y, insideOfSides.Bounds.Max.Y);
        return (_towardsTail < 0 ? neck : tail) + (_towardsTail * design[Length].Value);
    }

    /// <summary>Where the lining makes room for the block: across its width, from its face outwards; from the lining's line where that lies deeper than a short block's face.</summary>
    internal Box2 Gap(Design design, Contour insideOfSides, Contour liningLine)
    {
        var half = design[Width].Value / 2;
        var outer = insideOfSides.Bounds.Grown(1);
        if (_towardsTail < 0)
        {
            // On the treble side a cutaway may take the lining's line far down.
            var depths = Ends(liningLine, -half).Concat(Ends(liningLine, 0)).Where(y => y > outer.Center.Y);
            return new Box2(new Point2(-half, depths.Append(FaceY(design, insideOfSides)).Min()), new Point2(half, outer.Max.Y));
        }

        var heights = Ends(liningLine, -half).Concat(Ends(liningLine, 0)).Concat(Ends(liningLine, half)).Where(y => y < outer.Center.Y);
        return new Box2(new Point2(-half, outer.Min.Y), new Point2(half, heights.Append(FaceY(design, insideOfSides)).Max()));
    }

    private static IEnumerable<double> Ends(Contour line, double x) => line.Crossings(BarStrip.Line(new Point2(x, 0), Vec2.UnitY, "")).Select(c => c.Point.Y);

    internal void Build(Bench bench, Contour insideOfSides)
    {
        var design = bench.Design;
        var section = design.In(Section);
        var face = new Point2(0, FaceY(design, insideOfSides));
        var toFace = Vec2.UnitY * _towardsTail;
        var (left, right) = _towardsTail < 0 ? ("treble side", "bass side") : ("bass side", "treble side");
        var strip = BarStrip.About(face, toFace, section[Width].Value, left, right);
        var whole = strip.Between(null, BarStrip.Line(face, Vec2.UnitX, FaceEdge))!;
        var inside = Region.Inside(insideOfSides.Labelled(BarStrip.RimEdge));
        if (strip.Within(whole, inside, face - (toFace * Tolerances.ShortestMm), _ => "rim", needsBothSides: false) is not { } footprint)
        {
            bench.LeaveOut(Name, $"{Say.The(Name)} has no place inside the sides", "narrow or shorten it", section[Width].Place, section[Length].Place);
            return;
        }

        SayIfNarrower(bench, footprint, section[Width]);
        var (lie, grain) = Stock.Lying(section.Get(Grain).Value);
        bench.Add(new Member
        {
            Name = Name,
            Kind = MemberKind.Block,
            Face = TopFace.Inside,
            Footprint = footprint,
            ThicknessMm = section[Depth].Value,
            Material = Stock.Read(section, lie),
            Grain = grain,
            UngluedEdges = ["rim"],
            Places = [section[Width].Place, section[Length].Place, section.Get(Grain).Place, section.Get(Stock.Sawing).Place],
        });
    }

    // Beside a cutaway the block's corner is cut away on purpose; on the other side the body is as wide as it is.
    private void SayIfNarrower(Bench bench, Region footprint, Sourced<double> width)
    {
        var lost = (width.Value / 2) + footprint.Bounds.Min.X;
        if (lost > Tolerances.ShortestMm)
        {
            bench.Fault(
                Rules.DrawnOtherwise,
                Severity.Fail,
                Name,
                $"the body is too narrow for the {Name}, {Say.Mm(width.Value)} wide: on the bass side it is cut off {Say.Mm(-footprint.Bounds.Min.X)} from the centre line",
                $"make its `width` {Say.Mm(Math.Floor(-20 * footprint.Bounds.Min.X) / 10)} or less, and leave room for the linings",
                new Measurement(lost, "mm", 0),
                null,
                width.Place);
        }
    }
}
