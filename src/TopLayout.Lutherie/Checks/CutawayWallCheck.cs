using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What a cutaway's wall leaves beside it: the fretboard on the top, and a neck block that carries it.</summary>
public static class CutawayWallCheck
{
    /// <summary>Block past the fretboard's edge, mm, below which it is remarked on. Common practice, no source.</summary>
    public const double UsualMm = 3;

    /// <summary>One finding: the room between the wall's inside and the fretboard's edge at the wall's end; none without a cutaway.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var design = layout.Design;
        if (!design.Has(Cutaway.Section))
        {
            yield break;
        }

        var (wall, side) = (design[Cutaway.WallFromCentre], design[Rim.SideThickness].Value);
        var beside = Math.Min(design[Cutaway.WallLength].Value, Fretboard.EndFromNeckEdge(design));
        var board = Fretboard.HalfWidthAt(design, beside);
        var (inside, block) = (wall.Value - side, design[Block.Neck.Width]);
        var left = inside - board;
        var severity = left < 0 ? Severity.Fail : left < UsualMm ? Severity.Remark : Severity.Pass;
        var isCut = inside < block.Value / 2;
        yield return new Finding(
            Rules.CutawayWall,
            severity,
            "cutaway",
            left < 0
                ? $"inside its wall, {Say.Mm(inside)} from the centre line, the neck block ends {Say.Mm(-left)} short of the fretboard's edge"
                : $"inside its wall {Say.Mm(left)} of the neck block is left past the fretboard's edge"
                    + (isCut ? $"; the block is cut to {Say.Mm(inside)} from the centre line on the treble side" : ""))
        {
            Measured = new Measurement(left, "mm", left < 0 ? 0 : UsualMm),
            Place = wall.Place,
            OtherPlaces = [block.Place, design[Fretboard.JoinWidth].Place],
            Cure = severity == Severity.Pass ? null : $"set `wall_from_centre` to {Say.Mm(Math.Ceiling((board + side + UsualMm) * 10) / 10)} or more",
        };
    }
}
