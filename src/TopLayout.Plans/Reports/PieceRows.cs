using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;
using TopLayout.Plans.Sheets;

namespace TopLayout.Plans.Reports;

/// <summary>A part on the top, or several alike, as a table tells it: box in layout coordinates, mm.</summary>
internal sealed record PieceRow(string Name, string Face, string Wood, double ThicknessMm, Box2 Bounds, double AreaMm2)
{
    /// <summary>What its box does not tell: widths, diameters, how many.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Where it lies along the body, in words with their unit, where that is more than from and to.</summary>
    public string? Along { get; init; }

    /// <summary>Where it lies across, in words with their unit, where that is more than its two edges.</summary>
    public string? Across { get; init; }
}

/// <summary>The parts of a top for the table of parts and the steps.</summary>
internal static class PieceRows
{
    /// <summary>All parts; merged, the cleats stand in one row, and so do the linings where they are alike.</summary>
    public static IReadOnlyList<PieceRow> Of(Layout layout, bool isMerged)
    {
        var rows = new List<PieceRow>();
        var cleats = layout.Members.Where(Cleats.IsCleat).ToList();
        var linings = layout.Members.Where(m => m.Kind == MemberKind.Lining).ToList();
        var areLiningsAlike = linings is [var a, var b] && Math.Abs(a.Footprint.Area - b.Footprint.Area) < Tolerances.ShortestMm && OutlineNumbers.IsEven(layout);
        foreach (var member in layout.Members)
        {
            if (isMerged && cleats.Count > 1 && Cleats.IsCleat(member))
            {
                rows.AddRange(member == cleats[0] ? [Row(layout, cleats)] : []);
            }
            else if (isMerged && areLiningsAlike && member.Kind == MemberKind.Lining)
            {
                rows.AddRange(member == linings[0] ? [LiningRow(layout, linings)] : []);
            }
            else
            {
                rows.Add(Row(layout, member));
            }
        }

        rows.AddRange(layout.Marks.Where(m => m.Material is not null).Select(m => Row(layout, m)));
        return rows;
    }

    /// <summary>The face of what is glued to braces and not to the top.</summary>
    public const string OnBraces = "on the braces";

    private static PieceRow Row(Layout layout, Member m) => Described(layout, m, new PieceRow(
        m.Name, m.Face == TopFace.Inside ? "inside" : "outside", m.Material?.Wood.Name ?? "(cut into the top)", m.ThicknessMm, m.Footprint.Bounds, layout.GluedArea(m).Area));

    private static PieceRow Row(Layout layout, PlanMark m) =>
        new(m.Name, OnBraces, m.Material!.Wood.Name, m.ThicknessMm, m.Line.Bounds, 0) { Remark = $"{Fine(layout, m.Line.Bounds.Width)} square, over the crossing: glued to the legs, not to the top" };

    private static PieceRow Row(Layout layout, List<Member> cleats)
    {
        var (first, boxes) = (cleats[0], cleats.ConvertAll(c => c.Footprint.Bounds));
        var section = layout.Design.In(Cleats.Section);
        var middles = $"middles at {string.Join(", ", boxes.Select(b => OnRule(layout, -b.Center.Y)))}";
        var shape = section.Get(Cleats.Shape).Value == CleatShape.Diamond ? "diamonds" : "squares";
        return new PieceRow(PartNames.Of(cleats), "inside", first.Material!.Wood.Name, first.ThicknessMm, Box2.Around(boxes), cleats.Sum(c => c.Footprint.Area))
        {
            Remark = $"{Say.Count(cleats.Count)} alike, {shape} {Bare(layout, section[Cleats.Across].Value)} across and {Fine(layout, section[Cleats.Along].Value)} along; {middles}",
            Along = $"{OnRule(layout, section[Cleats.Along].Value)} long; {middles} {LengthText.Word(layout.Design.Units)}",
        };
    }

    private static PieceRow LiningRow(Layout layout, List<Member> linings) =>
        Row(layout, linings[0]) with
        {
            Name = "linings, bass and treble alike",
            Bounds = Box2.Around(linings.Select(l => l.Footprint.Bounds)),
            AreaMm2 = linings.Sum(l => l.Footprint.Area),
        };

    private static PieceRow Described(Layout layout, Member member, PieceRow row)
    {
        var design = layout.Design;
        if (member.Kind == MemberKind.Lining)
        {
            return row with { Remark = $"{Fine(layout, design[Rim.LiningWidth].Value)} wide on the glued edge" };
        }

        if (member.Name == BridgePlate.Name)
        {
            var (front, rear) = (EdgeLength(member, "front edge"), EdgeLength(member, "rear edge"));
            return Math.Abs(front - rear) < Tolerances.ShortestMm
                ? row
                : row with
                {
                    Remark = $"{Fine(layout, front)} wide at the front edge, {Fine(layout, rear)} at the rear",
                    Across = $"front edge ±{OnRule(layout, front / 2)}, rear ±{OnRule(layout, rear / 2)} {LengthText.Word(design.Units)}",
                };
        }

        if (member.Name == HoleReinforcement.Name && layout.Hole.Radius is { } radius)
        {
            var section = design.In(HoleReinforcement.Section);
            var inside = 2 * (radius + section[HoleReinforcement.Inset].Value);
            var outside = inside + (2 * section[HoleReinforcement.Width].Value);
            return row with
            {
                Remark = $"ring, {LengthText.Of(outside, design.Units)} outside, {LengthText.Of(inside, design.Units)} inside, centre {LengthText.WithUnit(-layout.Hole.Center.Y, design.Units)}",
                Along = $"ring, centre {OnRule(layout, -layout.Hole.Center.Y)} {LengthText.Word(design.Units)}",
                Across = $"{OnRule(layout, outside)} outside, {OnRule(layout, inside)} {LengthText.Word(design.Units)} inside",
            };
        }

        return row;
    }

    private static double EdgeLength(Member member, string label) => member.Footprint.Edges.Where(e => e.Label == label).Sum(e => e.Length);

    // Laid out by rule: inches without their thousandths.
    private static string OnRule(Layout layout, double mm) => layout.Design.Units == LengthUnit.Inch ? LengthText.OnRule(mm, LengthUnit.Inch) : Bare(layout, mm);

    private static string Bare(Layout layout, double mm) => CellText.Of(mm, layout.Design.Units);

    private static string Fine(Layout layout, double mm) => $"{Bare(layout, mm)} {LengthText.Word(layout.Design.Units)}";
}
