using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Tests.Mechanics;

/// <summary>
/// The verdicts the model was set to give, worked once by an independent prototype that sampled edges every 0.5 mm: Λ, M and verdict
/// of usual parts. Where only the geometry was printed in words, it is stated beside the case.
/// </summary>
public class VerdictTests
{
    private static readonly Angle Deg10 = Angle.FromDegrees(10);

    public static readonly TheoryData<string, double, double, double, Severity> Cases = new()
    {
        // Name, Λ, M and its tolerance (printed; where the prototype's width or sawing is not known, as it came out here), verdict.
        { "straight 60x90, maple flat", 84, .55, .006, Severity.Fail },
        { "straight 60x90, maple quarter", 84, .29, .006, Severity.Warning },
        { "straight, brace at 57", 41, .55, .006, Severity.Warning },
        { "straight, braces at 35 and 65", 19, .55, .006, Severity.Pass },
        { "straight sides, round tip", 87, .55, .03, Severity.Fail },
        { "half-ellipse 65x105", 55, .51, .006, Severity.Warning },
        { "tongue 10", 35.4, .44, .03, Severity.Warning },
        { "tongue 13", 27.4, .40, .03, Severity.Pass },
        { "tongue 15", 24.5, .51, .03, Severity.Pass },
        { "tongue 28", 14, .55, .03, Severity.Pass },
        { "patch R 10, spruce 2", 18.59, .089, .001, Severity.Pass },
        { "patch R 25, spruce 2.5", 32.79, .233, .001, Severity.Note },
        { "patch R 25, maple flat 3", 32.79, .84, .03, Severity.Warning },
        { "plate, square ends", 40, .4, .03, Severity.Warning },
        { "plate, ends at 20", 16.48, .4, .03, Severity.Pass },
        { "plate, ends under the X", 0, .4, .03, Severity.Pass },
        { "plate, 62 mm ends", 62, .4, .03, Severity.Warning },
        { "X-brace at 45", 14.16, .01, .015, Severity.Pass },
        { "transverse brace", 8, .34, .035, Severity.Pass },
        { "tone bar at 55", 12.4, .02, .03, Severity.Pass },
        { "fan brace at 8", 48.3, 0, .006, Severity.Pass },
        { "bar along the grain", 220, .01, .01, Severity.Pass },
        { "fretboard, nothing under it", 85, .50, .006, Severity.Fail },
        { "fretboard, block and flat brace", 27, .50, .006, Severity.Pass },
        { "soundhole ring R 70", 56.91, .10, .006, Severity.Note },
        { "diamond cleat", 17, .08, .03, Severity.Pass },
        { "square cleat", 20, .14, .03, Severity.Pass },
        { "seam strip 14x300", 300, .08, .03, Severity.Note },
        { "lining at R 80", 60.79, .01, .01, Severity.Pass },
        { "lining at R 60", 52.31, .01, .01, Severity.Pass },
        { "block side 40, maple flat", 40, .26, .02, Severity.Note },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Verdict_UsualParts_IsThatOfTheModel(string name, double length, double index, double within, Severity severity)
    {
        var (found, load, verdict) = Judge(name);

        Check.Near(length, found, 0.5, name + " length");
        Check.Near(index, load.Mismatch!.Index, within, name + " M");
        Assert.Equal(severity, verdict.Severity);
    }

    private static (double, MemberLoad, RunVerdict) Judge(string name)
    {
        var (member, others) = Case(name);
        return Members.Judge(member, others, name == "fretboard, nothing under it" ? null : Members.Rim);
    }

    private static (Member Member, Member[] Others) Case(string name) => name switch
    {
        "straight 60x90, maple flat" => (Tongue(Shapes.Rectangle(60, 90)), []),
        "straight 60x90, maple quarter" => (Tongue(Shapes.Rectangle(60, 90), Sawing.Quarter), []),
        "straight, brace at 57" => (Tongue(Shapes.Rectangle(60, 90), joinedWith: "brace -57"), [Members.BraceAt(-57)]),
        "straight, braces at 35 and 65" =>
            (Tongue(Shapes.Rectangle(60, 90), joinedWith: ["brace -35", "brace -65"]), [Members.BraceAt(-35), Members.BraceAt(-65)]),
        "straight sides, round tip" => (Tongue(Shapes.HalfRoundTongue(30, Angle.Zero, 75)), []),
        "half-ellipse 65x105" => (Tongue(Shapes.HalfEllipse(65, 105)), []),
        "tongue 10" => (Tongue(Shapes.HalfRoundTongue(16, Deg10, 79.4)), []),
        "tongue 13" => (Tongue(Shapes.HalfRoundTongue(12, Angle.FromDegrees(13), 78)), []),
        "tongue 15" => (Tongue(Shapes.HalfRoundTongue(16, Angle.FromDegrees(15), 90)), []),
        "tongue 28" => (Tongue(Shapes.HalfRoundTongue(11, Angle.FromDegrees(28), 65)), []),
        "patch R 10, spruce 2" => (Patch(10, 2, "sitka_spruce", Sawing.Quarter), []),
        "patch R 25, spruce 2.5" => (Patch(25, 2.5, "sitka_spruce", Sawing.Quarter), []),
        "patch R 25, maple flat 3" => (Patch(25, 3, "sugar_maple", Sawing.Flat), []),
        "plate, square ends" => (Plate(Shapes.Rectangle(180, 40, -90, -300)), []),
        "plate, ends at 20" => (Plate(SkewEnds(180, 40)), []),
        "plate, ends under the X" => (Plate(Shapes.Rectangle(180, 40, -90, -300), "leg left", "leg right"), [Leg("leg left", -1), Leg("leg right", 1)]),
        "plate, 62 mm ends" => (Plate(Shapes.Rectangle(180, 62, -90, -300)), []),
        "X-brace at 45" => (Bar(45, 8, 300, 15), []),
        "transverse brace" => (Bar(90, 8, 240, 15), []),
        "tone bar at 55" => (Bar(55, 8, 160, 12), []),
        "fan brace at 8" => (Bar(8, 5, 200, 5), []),
        "bar along the grain" => (Bar(0, 6, 220, 8), []),
        "fretboard, nothing under it" => (Fretboard(), []),
        "fretboard, block and flat brace" => (Fretboard(), [NeckBlock(), FlatBrace()]),
        "soundhole ring R 70" => (Ring(70, 18, 2), []),
        "diamond cleat" => (Bar(45, 20, 20, 2, MemberKind.Plate, grain: 0), []),
        "square cleat" => (Bar(0, 20, 20, 2, MemberKind.Plate), []),
        "seam strip 14x300" => (Bar(0, 14, 300, 2, MemberKind.Plate, grain: 90), []),
        "lining at R 80" => (Lining(80), []),
        "lining at R 60" => (Lining(60), []),
        "block side 40, maple flat" => (Members.Make("block", MemberKind.Block, Shapes.Rectangle(60, 40, 0, -300), 40, "sugar_maple", Sawing.Flat), []),
        _ => throw new ArgumentException(name),
    };

    private static Member Tongue(Region footprint, Sawing sawing = Sawing.Flat, params string[] joinedWith) =>
        Members.Make("tongue", MemberKind.Tongue, footprint, 8, "sugar_maple", sawing, joinedWith: joinedWith);

    private static Member Patch(double radius, double thickness, string wood, Sawing sawing) => Members.Make(
        "patch", MemberKind.Plate, Region.Inside(Contour.Circle(new Point2(0, -200), radius)), thickness, wood, sawing);

    private static Member Plate(Region footprint, params string[] joinedWith) => Members.Make(
        "plate", MemberKind.Plate, Unrooted(footprint), 2.5, "sugar_maple", Sawing.Quarter, grain: 90, joinedWith: joinedWith);

    private static Region Unrooted(Region footprint) => Region.Inside(footprint.Outer.Labelled("edge"));

    private static Region SkewEnds(double width, double height) => Region.Inside(Contour.Polygon(
        new Point2(-width / 2, -300),
        new Point2(width / 2, -300),
        new Point2((width / 2) - (height * Trig.Tan(Angle.FromDegrees(20))), -300 + height),
        new Point2((-width / 2) + (height * Trig.Tan(Angle.FromDegrees(20))), -300 + height)));

    // A leg of the X at 45° over the whole end of the plate: 40 mm of end need 28 mm of leg beside it, so it lies on both ends' middles
    // and is 45 mm wide, as where two legs and their cap meet.
    private static Member Leg(string name, int side) => Members.Make(
        name, MemberKind.Bar, Shapes.Bar(new Point2((side * 90) - 80, -280 - (side * 80)), new Point2((side * 90) + 80, -280 + (side * 80)), 45),
        15, "sitka_spruce", grain: -45 * side);

    private static Member Bar(
        double degrees, double width, double length, double height, MemberKind kind = MemberKind.Bar, double grain = double.NaN)
    {
        var (middle, half) = (new Point2(0, -250), GrainAngle.Direction(Angle.FromDegrees(degrees)) * (length / 2));
        return Members.Make(
            "bar", kind, Shapes.Bar(middle - half, middle + half, width), height, "sitka_spruce", grain: double.IsNaN(grain) ? degrees : grain);
    }

    // Dense hardwood, flat-sawn: E₂ 900.9, G₂ 277.2, C 0.00274; half-width 28.
    private static Member Fretboard()
    {
        var maple = WoodTable.Find("sugar_maple")!;
        var board = Members.Make(
            "fretboard", MemberKind.Fretboard, Shapes.Rectangle(56, 85), 6, "sugar_maple", Sawing.Flat, face: TopFace.Outside);
        var dense = maple with { MovementTangential = maple.MovementTangential!.Value with { Value = 0.00274 } };
        return new Member
        {
            Name = board.Name,
            Kind = board.Kind,
            Face = board.Face,
            Footprint = board.Footprint,
            ThicknessMm = board.ThicknessMm,
            Material = new Material(dense, GrainLie.InPlane, Sawing.Flat),
            Grain = board.Grain,
            UngluedEdges = board.UngluedEdges,
            Places = [],
        };
    }

    private static Member NeckBlock() => Members.Make("neck block", MemberKind.Block, Shapes.Rectangle(80, 25), 60, "mahogany_true");

    private static Member FlatBrace() =>
        Members.Make("flat brace", MemberKind.Plate, Unrooted(Shapes.Rectangle(120, 20, -60, -84)), 3, "sitka_spruce", grain: 90);

    private static Member Ring(double radius, double width, double thickness) => Members.Make(
        "ring",
        MemberKind.Plate,
        Region.Between(
            Contour.Circle(new Point2(0, -150), radius), Contour.Circle(new Point2(0, -150), radius - width)),
        thickness,
        "sitka_spruce");

    // Only its inner edge is a glued edge to judge; the kerfed strip acts over half its width.
    private static Member Lining(double radius)
    {
        var center = new Point2(0, -250);
        var ring = Region.Between(Contour.Circle(center, radius + 6).Labelled("outer"), Contour.Circle(center, radius).Labelled("inner"));
        return new Member
        {
            Name = "lining",
            Kind = MemberKind.Lining,
            Face = TopFace.Inside,
            Footprint = ring,
            ThicknessMm = 6,
            Material = new Material(WoodTable.Find("sitka_spruce")!, GrainLie.InPlane, Sawing.Quarter),
            Grain = Angle.Zero,
            UngluedEdges = ["outer"],
            ActingHalfWidthMm = 3,
            Places = [],
        };
    }
}
