using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>
/// The strips that are bent for the sides: the outline from one meant corner to the next, as nobody bends wood round a corner. The straight
/// piece at the heel, before the first corner, is the neck block's and told as a flat.
/// </summary>
internal static class SideStrips
{
    // A corner that turns by less than this is bent over. Common practice, no source.
    private static readonly Angle LeastCorner = Angle.FromDegrees(5);

    private static readonly (string Word, int Side)[] Halves = [("bass", -1), ("treble", 1)];

    /// <summary>Rows of what and value: flats at the neck, then strips without allowance.</summary>
    public static IEnumerable<IReadOnlyList<Cell>> Of(Layout layout)
    {
        var isEven = OutlineNumbers.IsEven(layout);
        foreach (var (word, side) in Halves.Skip(isEven ? 1 : 0))
        {
            var pieces = Pieces(BodyWidths.Half(layout.Outline, side));
            var hasFlat = pieces.Count > 1 && pieces[0].All(s => !s.IsArc);
            if (hasFlat)
            {
                var half = Length(pieces[0]);
                yield return isEven ? ["neck flat, corner to corner", 2 * half] : [$"neck flat, centre line to the {word} corner", half];
            }

            if (!hasFlat && pieces[0] is [{ IsArc: false } heel, ..])
            {
                yield return isEven ? ["neck flat, shoulder to shoulder", 2 * heel.Length] : [$"neck flat, centre line to the {word} shoulder", heel.Length];
            }

            var strips = pieces.Skip(hasFlat ? 1 : 0).ToList();
            var corner = layout.Design.Has(Cutaway.Section) ? "point" : "corner";
            foreach (var (i, strip) in strips.Index())
            {
                var (from, to) = (i > 0 ? corner : hasFlat ? "neck corner" : "centre line at the neck", i < strips.Count - 1 ? corner : "tail");
                yield return [$"{(isEven ? "one" : word)} side strip, {from} to {to}, without allowance", Length(strip)];
            }
        }
    }

    private static double Length(IEnumerable<Segment> piece) => piece.Sum(s => s.Length);

    private static List<List<Segment>> Pieces(IReadOnlyList<Segment> half)
    {
        var pieces = new List<List<Segment>> { new() };
        foreach (var (i, segment) in half.Index())
        {
            if (i > 0 && IsCorner(half[i - 1].TangentAt(1), segment.TangentAt(0)))
            {
                pieces.Add([]);
            }

            pieces[^1].Add(segment);
        }

        return pieces;
    }

    private static bool IsCorner(Vec2 before, Vec2 after) => before.Dot(after) < Trig.Cos(LeastCorner);
}
