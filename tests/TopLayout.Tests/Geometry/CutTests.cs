using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>Splitting an area by a path, and clipping a path to an area.</summary>
public class CutTests
{
    private static readonly Region Ring = Region.Between(Contour.Circle(default, 10, "outer"), Contour.Circle(default, 4, "inner"));

    [Fact]
    public void Split_RingByALine_GivesTwoHalvesThatNameTheCut()
    {
        var halves = Ring.Split(Line(-20, 0, 20, 0));

        Assert.Equal(2, halves.Count);
        Assert.All(halves, h => Check.Near(Math.PI * (100 - 16) / 2, h.Area, 1e-10, "half"));
        Assert.All(halves, h => Assert.Equal(2, h.Edges.Count(e => e.Label == "cut")));
        Assert.True(halves[0].Bounds.Center.Y < halves[1].Bounds.Center.Y);
    }

    [Fact]
    public void Split_ByACutThatDoesNotReachThrough_LeavesNoTrace()
    {
        var same = Assert.Single(Ring.Split(Line(0, 0, 8, 1)));

        SameLoops.Assert(Ring, same, 1e-12);
    }

    [Fact]
    public void Split_ByAClosedCut_GivesTheIslandAndTheRest()
    {
        var parts = HardPairs.Disc(0, 0, 10).Split(Contour.Circle(new Point2(2, 1), 3, "cut"));

        Assert.Equal([91 * Math.PI, 9 * Math.PI], parts.Select(p => Math.Round(p.Area, 9)).Select(a => Math.Round(a / Math.PI, 6) * Math.PI));
    }

    [Fact]
    public void Split_AtRandom_KeepsTheAreaAndStaysValid() => Trials.Run(3000, random =>
    {
        var (area, _) = HardPairs.Make(random.Pick("general", "full circles", "hole touches outline"), random);
        var box = area.Bounds;
        var cut = new Contour(
            Enumerable.Range(0, random.Next(2, 5)).Select(_ => new Vertex(
                new Point2(random.Between(box.Min.X - 5, box.Max.X + 5), random.Between(box.Min.Y - 5, box.Max.Y + 5)), random.Pick(0, 0.3, -1, 0.8), "cut")),
            isClosed: random.Next(3) == 0);

        var parts = area.Split(cut);

        Assert.All(parts, p => Assert.Null(RegionValidity.FirstFault(p)));
        Assert.All(parts, p => Assert.Single(p.Parts));
        Check.Near(area.Area, parts.Sum(p => p.Area), Tolerances.ShortestMm * (area.Edges.Sum(e => e.Length) + cut.Length), "sum of parts");
    });

    [Fact]
    public void Clip_LineAcrossARing_GivesTwoPieces()
    {
        var pieces = Ring.Clip(Line(-20, 0, 20, 0));

        Assert.Equal([(-10.0, -4.0), (4.0, 10.0)], pieces.Select(p => (Math.Round(p.Vertices[0].Position.X, 9), Math.Round(p.Vertices[^1].Position.X, 9))));
        Assert.All(pieces, p => Assert.Equal("cut", p.Segments[0].Label));
    }

    [Fact]
    public void Clip_LineAlongTheBorder_CountsAsInside()
    {
        var piece = Assert.Single(HardPairs.Rectangle(0, 0, 10, 5).Clip(Line(-3, 5, 6, 5)));

        Check.Near(6, piece.Length, 1e-12, "along the border");
        Assert.Equal("cut", piece.Segments[0].Label);
    }

    [Fact]
    public void Clip_ClosedPath_ComesBackClosedOrInOnePieceAcrossItsStart()
    {
        Assert.True(Assert.Single(HardPairs.Disc(0, 0, 10).Clip(Contour.Circle(new Point2(1, 1), 3))).IsClosed);
        var arc = Assert.Single(HardPairs.Rectangle(0, -9, 9, 9).Clip(Contour.Circle(default, 5)));
        Check.Near(5 * Math.PI, arc.Length, 1e-9, "half circle through its first vertex");
    }

    [Fact]
    public void Clip_AtRandom_KeepsWhatSamplesSay() => Trials.Run(3000, random =>
    {
        var (area, _) = HardPairs.Make(random.Pick("general", "full circles", "hole touches outline"), random);
        var box = area.Bounds;
        var path = new Contour(
            Enumerable.Range(0, random.Next(2, 5)).Select(_ => new Vertex(
                new Point2(random.Between(box.Min.X - 5, box.Max.X + 5), random.Between(box.Min.Y - 5, box.Max.Y + 5)), random.Pick(0, 0.3, -1, 0.8), "cut")),
            isClosed: false);

        var inside = area.Clip(path);
        var outside = HardPairs.Rectangle(box.Min.X - 50, box.Min.Y - 50, box.Max.X + 50, box.Max.Y + 50).Subtract(area).Clip(path);

        Check.Near(path.Length, inside.Concat(outside).Sum(p => p.Length), 10 * Tolerances.ShortestMm, "inside and outside");
        Assert.All(inside.SelectMany(p => p.Segments), s => Assert.True(area.DistanceTo(s.PointAt(0.5)) < Tolerances.ShortestMm));
    });

    private static Contour Line(double x0, double y0, double x1, double y1) =>
        new([new Vertex(new Point2(x0, y0), 0, "cut"), new Vertex(new Point2(x1, y1))], isClosed: false);
}
