using TopLayout.Geometry;

namespace TopLayout.Tests.Geometry;

/// <summary>
/// Mitred offsets against their definition: the rounded offset, and at each corner where the border spreads what lies between it and
/// the tip where the neighbours' tangents, moved by the offset, meet.
/// </summary>
public class MitreTests
{
    private const int Shapes = 2000;
    private const double ExactMm = 1e-7;
    private static readonly double[] Fractions = [0.02, 0.25, 0.5, 0.75, 0.98];

    /// <summary>
    /// A corner that is gone round: its vertex, the ends of the parallels about it, the tip (null where it is cut), and the lines drawn.
    /// </summary>
    private sealed record Spread(Point2 Vertex, Point2 From, Point2 To, Point2? Tip, params Segment[] Lines)
    {
        public bool HasShortLines => Lines.Any(l => l.ChordLength < Tolerances.ShortestMm);

        public double DistanceTo(Point2 p) => Lines.Min(l => l.DistanceTo(p));
    }

    private static (Region Area, double Offset) Make(Random random)
    {
        var area = random.Next(3) switch
        {
            0 => Region.Inside(RandomCurves.Loop(random)),
            1 => HardPairs.Blob(random).Subtract(HardPairs.Blob(random)),
            _ => HardPairs.Blob(random),
        };
        return area.IsEmpty ? Make(random) : (area, random.Pick(1, -1) * random.Between(0.1, 4));
    }

    // With φ the turn at the corner the tip lies at d/cos(φ/2) from it, on the bisector of the normals (right triangle corner, end, tip).
    private static List<Spread> Spreads(Region area, double mm, double limit)
    {
        var spreads = new List<Spread>();
        foreach (var loop in area.Loops)
        {
            for (var i = 0; i < loop.Segments.Length; i++)
            {
                var (a, b) = (loop.Segments[i], loop.Segments[(i + 1) % loop.Segments.Length]);
                var (out1, out2) = (-a.TangentAt(1).Left * Math.Sign(mm), -b.TangentAt(0).Left * Math.Sign(mm));
                var turn = Trig.Turn(out1, out2).Radians * Math.Sign(mm);
                if (turn > Tolerances.SmoothRadians)
                {
                    var (d, secant) = (Math.Abs(mm), 1 / Math.Cos(turn / 2));
                    Point2? tip = secant <= limit ? b.Start + ((out1 + out2).Unit * (d * secant)) : null;
                    var (from, to) = (b.Start + (out1 * d), b.Start + (out2 * d));
                    spreads.Add(tip is { } t
                        ? new Spread(b.Start, from, to, t, new Segment(from, t), new Segment(t, to))
                        : new Spread(b.Start, from, to, null, new Segment(from, to)));
                }
            }
        }

        return spreads;
    }

    private static double Distance(Region area, Point2 p) => area.Loops.Min(l => l.DistanceTo(p));

    // Of areas whose tips are long enough to stay; the rest have an edge that fell under the shortest length where two edges meet.
    private static void Inexact(int found, int of) =>
        Assert.True(found <= of / 125, $"{found} of {of} borders are off by more than {ExactMm}");

    // At the largest limit no corner here is cut: no point is nearer than the offset; none off a tip is farther.
    [Fact]
    public void Border_WhereNothingIsCut_LiesAtTheOffsetButForItsTips()
    {
        var inexact = 0;
        Trials.Run(Shapes, random =>
        {
            var (area, mm) = Make(random);
            var spreads = Spreads(area, mm, Corner.LargestMitreLimit);
            var offset = area.Offset(mm, Corner.Mitre(Corner.LargestMitreLimit));
            Assert.Null(RegionValidity.FirstFault(offset));
            var (near, far) = (0.0, 0.0);
            foreach (var p in offset.Edges.SelectMany(e => Fractions.Select(e.PointAt)))
            {
                var beyond = Distance(area, p) - Math.Abs(mm);
                near = Math.Max(near, -beyond);
                far = Math.Max(far, Math.Min(Math.Abs(beyond), spreads.Select(s => s.DistanceTo(p)).DefaultIfEmpty(double.MaxValue).Min()));
            }

            inexact += Math.Max(near, far) > ExactMm && !spreads.Exists(s => s.HasShortLines) ? 1 : 0;
            Check.Near(0, near, Tolerances.ShortestMm, "nearer than the offset");
            Check.Near(0, far, Tolerances.ShortestMm, "off the parallels and the tips");
        });
        Inexact(inexact, Shapes);
    }

    [Theory]
    [InlineData(0.9)]
    [InlineData(1001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Limit_OutsideItsRange_IsRefused(double limit) => Assert.Throws<ArgumentOutOfRangeException>(() => Corner.Mitre(limit));

    // A cut corner comes nearer than the offset; but nothing is farther than the limit says.
    [Fact]
    public void Border_WithALimit_StaysWithinIt()
    {
        var inexact = 0;
        Trials.Run(Shapes, random =>
        {
            var (area, mm) = Make(random);
            var limit = random.Between(1, 3);
            var spreads = Spreads(area, mm, limit);
            var reach = 0.0;
            foreach (var p in area.Offset(mm, Corner.Mitre(limit)).Edges.SelectMany(e => Fractions.Append(0).Select(e.PointAt)))
            {
                reach = Math.Max(reach, Distance(area, p) - (limit * Math.Abs(mm)));
            }

            inexact += reach > ExactMm && !spreads.Exists(s => s.HasShortLines) ? 1 : 0;
            Check.Near(0, reach, Tolerances.ShortestMm, "beyond the limit");
        });
        Inexact(inexact, Shapes);
    }

    // What the rounded offset reaches the mitred one reaches, and what it reaches beyond lies before a tip.
    [Fact]
    public void Points_InTheMitredOffset_AreNearOrBeforeATip() => Trials.Run(Shapes, random =>
    {
        var (area, mm) = Make(random);
        var tips = Spreads(area, mm, Corner.LargestMitreLimit).Select(s => Contour.Polygon(s.Vertex, s.From, s.Tip!.Value, s.To)).ToList();
        var offset = area.Offset(mm, Corner.Mitre(Corner.LargestMitreLimit));
        for (var k = 0; k < 30; k++)
        {
            var p = area.Edges.ElementAtOrDefault(random.Next(Math.Max(1, area.Edges.Count()))).PointAt(random.NextDouble())
                + new Vec2(random.Between(-3, 3) * mm, random.Between(-3, 3) * mm);
            var depth = Distance(area, p) * (area.Contains(p) ? -1 : 1);
            if (Math.Abs(depth - mm) < 2 * Tolerances.ShortestMm || tips.Exists(t => t.DistanceTo(p) < 2 * Tolerances.ShortestMm))
            {
                continue;
            }

            var (isNear, isBeforeTip) = (Math.Abs(depth) < Math.Abs(mm) || depth > 0 == mm < 0, tips.Exists(t => t.Contains(p)));
            Assert.True(offset.Contains(p) == (mm > 0 ? isNear || isBeforeTip : !isNear && !isBeforeTip), $"offset {mm}, depth {depth}, at {p}, before a tip: {isBeforeTip}");
        }
    });

    // The offset is swept: by every edge along its normals, also through the centre of an arc tighter than the offset, and by every
    // corner where the border spreads, up to its tip or its cut.
    [Fact]
    public void Points_WithALimit_AreThoseSwept() => Trials.Run(Shapes, random =>
    {
        var (area, mm) = Make(random);
        var limit = random.Between(1, 3);
        var corners = Spreads(area, mm, limit).Select(s => s.Tip is { } tip
            ? Contour.Polygon(s.Vertex, s.From, tip, s.To)
            : Contour.Polygon(s.Vertex, s.From, s.To)).ToList();
        var offset = area.Offset(mm, Corner.Mitre(limit));
        for (var k = 0; k < 30; k++)
        {
            var p = area.Edges.ElementAt(random.Next(area.Edges.Count())).PointAt(random.NextDouble())
                + new Vec2(random.Between(-3, 3) * mm, random.Between(-3, 3) * mm);
            var (swept, clear) = (false, double.PositiveInfinity);
            foreach (var e in area.Edges)
            {
                var (isSwept, margin) = Sweep(e, p, mm);
                swept |= isSwept;
                clear = Math.Min(clear, margin);
            }

            swept |= corners.Exists(c => c.Contains(p));
            clear = Math.Min(clear, corners.Select(c => c.DistanceTo(p)).Append(Distance(area, p)).Min());
            if (clear > 2 * Tolerances.ShortestMm)
            {
                var expected = mm > 0 ? area.Contains(p) || swept : area.Contains(p) && !swept;
                Assert.True(offset.Contains(p) == expected, $"offset {mm}, limit {limit:F3}, at {p}: swept {swept}");
            }
        }
    });

    // A crescent hole between two arcs over one chord of 2 mm: the inner one turns by 60 degrees about (0, √3) with a radius of 2 mm. Moved
    // 4 mm, it sweeps on through its centre, in a sector that nothing else sweeps: the tips turn by nearly half a turn and are cut there.
    [Fact]
    public void Arc_TighterThanTheOffset_SweepsOnThroughItsCenter()
    {
        var (left, right, inner, outer) = (new Point2(-1, 0), new Point2(1, 0), Math.Tan(Math.PI / 12), 0.3);
        var hole = new Contour([new Vertex(left, inner), new Vertex(right, -outer)], isClosed: true);
        var area = Region.Between(Contour.Rectangle(new Box2(new Point2(-40, -40), new Point2(40, 40))), hole);

        var offset = area.Offset(-4, Corner.Mitre(1));

        Assert.False(offset.Contains(new Point2(0, Math.Sqrt(3) + 1.5)), "1.5 mm beyond the centre, between the last normals");
        Assert.True(offset.Contains(new Point2(0, Math.Sqrt(3) + 2.1)), "beyond the parallel");
        Assert.True(offset.Contains(new Point2(1.9, Math.Sqrt(3) + 0.5)), "beside the last normal, within 4 mm");
    }

    // Whether a normal of the edge, of the offset's length and on its side, passes a point; and how far the point is from where that changes.
    private static (bool IsSwept, double Margin) Sweep(Segment edge, Point2 p, double mm)
    {
        var side = -Math.Sign(mm);
        var ends = new[] { (edge.Start, edge.TangentAt(0)), (edge.End, edge.TangentAt(1)) };
        var margin = ends.Min(e => new Segment(e.Item1, e.Item1 + (e.Item2.Left * -mm)).DistanceTo(p));
        if (!edge.IsArc)
        {
            var (along, left) = ((p - edge.Start).Dot(edge.TangentAt(0)), edge.TangentAt(0).Cross(p - edge.Start) * side);
            var inside = along > 0 && along < edge.Length;
            return (inside && left > 0 && left < Math.Abs(mm), inside ? Math.Min(margin, Math.Abs(left - Math.Abs(mm))) : margin);
        }

        var (q, r) = (p - edge.Center, edge.Radius);
        var inward = Math.Sign(edge.Bulge) == side;
        (bool IsSwept, double Margin) Along(Vec2 direction, double depth)
        {
            var foot = edge.Center + (direction * r);
            var isOn = edge.DistanceTo(foot) < Tolerances.TouchMm;
            return (isOn && depth > 0 && depth < Math.Abs(mm), isOn ? Math.Abs(depth - Math.Abs(mm)) : double.PositiveInfinity);
        }

        var near = Along(q.Unit, inward ? r - q.Length : q.Length - r);
        var across = inward ? Along(-q.Unit, r + q.Length) : (IsSwept: false, Margin: double.PositiveInfinity);
        return (near.IsSwept || across.IsSwept, Math.Min(margin, Math.Min(near.Margin, across.Margin)));
    }
}
