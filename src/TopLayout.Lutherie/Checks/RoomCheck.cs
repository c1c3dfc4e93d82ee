using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Whether each part lies where there is something for it to lie on: what is inside on the top within the sides, bridge, channel and hole within the linings, the tongue on its block.</summary>
public static class RoomCheck
{
    /// <summary>One finding for each part that is out, or one pass.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var found = HoleOut(layout).Concat(MembersOut(layout)).Concat(TongueOut(layout)).ToList();
        return found.Count > 0
            ? found
            : [new Finding(Rules.OutsideItsRoom, Severity.Pass, "all parts", "every part lies within the sides, and the hole, its channel and the bridge within the linings") { Measured = new Measurement(0, "mm", 0) }];
    }

    private static IEnumerable<Finding> HoleOut(Layout layout)
    {
        var diameter = layout.Design[Soundhole.Diameter].Place;
        if (Past(Region.Inside(layout.Hole.Edge), layout.LiningLine) is var (past, at))
        {
            yield return new Finding(Rules.OutsideItsRoom, Severity.Fail, "soundhole", $"the soundhole reaches {Say.Mm(past)} into the linings")
            {
                Measured = new Measurement(past, "mm", 0),
                Where = at,
                Place = diameter,
                OtherPlaces = [layout.Design[Rim.LiningWidth].Place],
                Cure = $"make it {Say.Mm(Up(2 * past))} or more smaller across, or move it {Say.Mm(Up(past))} or more towards the middle of the body",
            };
        }
    }

    private static IEnumerable<Finding> MembersOut(Layout layout)
    {
        foreach (var member in layout.Members.Where(m => m.Kind is not (MemberKind.Lining or MemberKind.Block or MemberKind.Fretboard)))
        {
            var isOutside = member.Face == TopFace.Outside;
            if (Past(member.Footprint, isOutside ? layout.LiningLine : layout.InsideOfSides) is var (past, at))
            {
                yield return new Finding(
                    Rules.OutsideItsRoom,
                    Severity.Fail,
                    member.Name,
                    $"{Say.The(member.Name)} reaches {Say.Mm(past)} {(isOutside ? "over the linings" : "past the inside of the sides")}")
                {
                    Measured = new Measurement(past, "mm", 0),
                    Where = at,
                    Place = member.Places[0],
                    OtherPlaces = [.. member.Places.Skip(1).Append(layout.Body.Place).Distinct().Where(p => p != member.Places[0])],
                    Cure = $"move it {Say.Mm(Up(past))} or more towards the middle of the body, or make it smaller",
                };
            }
        }
    }

    private static IEnumerable<Finding> TongueOut(Layout layout)
    {
        if (layout.Find(Tongue.Name) is not { } tongue || layout.Find(Block.Neck.Name) is not { } block)
        {
            yield break;
        }

        var (root, face) = (WidthOf(tongue, TongueRecipe.Root), WidthOf(block, Block.FaceEdge));
        if (root <= face + Tolerances.TouchMm)
        {
            yield break;
        }

        var design = layout.Design;
        var edge = tongue.Footprint.Outer.Segments.First(s => s.Label == TongueRecipe.Root);
        yield return new Finding(
            Rules.OutsideItsRoom,
            Severity.Fail,
            tongue.Name,
            $"at its root the tongue is {Say.Mm(root)} wide, hollows included, and the neck block's face only {Say.Mm(face)}")
        {
            Measured = new Measurement(root, "mm", face),
            Where = (edge.Start, edge.End),
            Place = design.PlaceOf(Tongue.RootWidth),
            OtherPlaces = [design.PlaceOf(Block.Neck.Width)],
            Cure = $"narrow `root_width` of the tongue by {Say.Mm(Up(root - face))} or more, or widen the neck block by as much",
        };
    }

    private static double WidthOf(Member member, string label) =>
        member.Footprint.Outer.Segments.Where(s => s.Label == label).Sum(s => s.ChordLength);

    // How far a footprint reaches past a line, at its corners and the middles of its arcs, and the stretch of it that does; null when it does not.
    private static (double Past, (Point2 From, Point2 To) At)? Past(Region footprint, Contour line)
    {
        if (footprint.Edges.All(e => line.Contains(e.Start) && line.DistanceTo(e.Start) > Tolerances.TouchMm && line.Crossings(e).Count == 0))
        {
            return null;
        }

        var beyond = footprint.Subtract(Region.Inside(line)).Edges.ToList();
        var farthest = beyond.SelectMany(e => new[] { e.Start, e.PointAt(0.5) }).Select(line.DistanceTo).DefaultIfEmpty(0).Max();
        if (farthest <= Tolerances.ShortestMm)
        {
            return null;
        }

        var longest = beyond.MaxBy(e => e.ChordLength);
        return (farthest, (longest.Start, longest.End));
    }

    private static double Up(double mm) => Math.Ceiling(mm * 10) / 10;
}
