using TopLayout.Geometry;
using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What is left of a lining between the pockets of two braces that end in it side by side.</summary>
public static class PocketCheck
{
    /// <summary>Less than this breaks out when the pockets are cut, mm: about a block of a kerfed lining. Common practice, no source.</summary>
    public const double UsualMm = 6;

    /// <summary>One finding for each sliver; where there is none, the narrowest piece between two pockets, if there are two.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var pieces = Pieces(layout).OrderBy(p => p.LeftMm).ToList();
        return pieces.TakeWhile((p, i) => i == 0 || p.LeftMm < UsualMm - Tolerances.TouchMm).Select(p => Finding(layout, p));
    }

    // Neighbours round the rim; two braces that meet in the lining have one pocket, with nothing between.
    private static IEnumerable<Piece> Pieces(Layout layout)
    {
        foreach (var half in BraceEnds.Of(layout).GroupBy(e => e.Side))
        {
            if (layout.Find($"{half.Key} lining") is not { } lining)
            {
                continue;
            }

            var ends = half.OrderBy(e => e.FromMm).ToList();
            foreach (var (one, next) in ends.Zip(ends.Skip(1)))
            {
                var (a, b) = (Pocket(one, lining), Pocket(next, lining));
                var left = Distances.Between(a, b);
                if (left > Tolerances.TouchMm && double.IsFinite(left))
                {
                    yield return new Piece(half.Key, one.Bar, next.Bar, left, Nearest(a, b));
                }
            }
        }
    }

    private static Region Pocket(BraceEnd end, Member lining) => end.Bar.Footprint.Intersect(lining.Footprint);

    // From corner to edge or edge to corner; between straight sides no way is shorter.
    private static (Point2, Point2) Nearest(Region a, Region b) => Ways(a, b).Concat(Ways(b, a)).MinBy(w => w.From.DistanceTo(w.To));

    private static IEnumerable<(Point2 From, Point2 To)> Ways(Region a, Region b) =>
        from corner in a.Edges.Select(e => e.Start)
        from loop in b.Loops
        select (corner, loop.ClosestTo(corner).Point);

    private static Finding Finding(Layout layout, Piece piece)
    {
        var isSliver = piece.LeftMm < UsualMm - Tolerances.TouchMm;
        return new Finding(
            Rules.LiningSliver,
            isSliver ? Severity.Note : Severity.Pass,
            $"{piece.One.Name} and {piece.Next.Name}, {piece.Side} lining",
            $"{Say.Mm(piece.LeftMm)} of the {piece.Side} lining are left between the pockets of {Say.The(piece.One.Name)} and {Say.TheLast(piece.Next.Name)}; "
            + $"{Say.Mm(UsualMm)} or more hold{(isSliver ? ", less breaks out" : "")}")
        {
            Measured = new Measurement(piece.LeftMm, "mm", UsualMm),
            Where = piece.Where,
            Place = piece.One.Places[0],
            OtherPlaces = [.. piece.Next.Places.Take(1).Append(layout.Design.PlaceOf(Rim.LiningWidth)).Where(p => p != piece.One.Places[0]).Distinct()],
            Cure = isSliver ? "move or turn one of the two until they stand further apart at the rim, end one short of the lining, or cut one pocket for both and fit a piece between them" : null,
        };
    }

    private readonly record struct Piece(string Side, Member One, Member Next, double LeftMm, (Point2 From, Point2 To) Where);
}
