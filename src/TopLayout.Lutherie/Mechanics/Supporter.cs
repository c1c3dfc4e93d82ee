using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>A member that may support the edges of another, and the three conditions under which it does.</summary>
internal sealed class Supporter(MemberShape shape, TopGrain grain, Calibration calibration)
{
    private double? _meanWidthMm;

    /// <summary>The member.</summary>
    public Member Member => shape.Member;

    /// <summary>Its edges.</summary>
    public EdgeSet Outline => shape.Outline;

    private bool IsBlock => Member.Kind == MemberKind.Block;

    /// <summary>True when a point lies within reach of the member.</summary>
    public bool Reaches(Point2 p) => shape.IsWithin(p, calibration.SupportReachMm + Tolerances.TouchMm);

    /// <summary>
    /// True when the member crosses an edge at a point: its long grain stands well across the top's (or it is a thick block), and it
    /// goes on far enough on both sides of the edge, measured square to the edge while travelling along its own grain; a block is
    /// measured along the edge's normal.
    /// </summary>
    /// <param name="p">A point of the edge within reach.</param>
    /// <param name="normal">The unit normal of the edge there.</param>
    /// <param name="topGrain">The top's grain there.</param>
    public bool Crosses(Point2 p, Vec2 normal, Angle topGrain)
    {
        if (!StandsAcross(Member, topGrain, calibration))
        {
            return false;
        }

        var along = IsBlock ? normal : GrainAngle.Direction(Member.Grain);
        var beyond = IsBlock ? calibration.BlockContinuesBeyondMm : calibration.ContinuesBeyondMm;
        var square = Math.Abs(along.Dot(normal));
        if (square < Tolerances.SmoothRadians)
        {
            return false;
        }

        var from = NearestPoint(p);
        var reach = (beyond / square) - Tolerances.TouchMm;
        return GoesOn(from, along, reach) && GoesOn(from, -along, reach);
    }

    /// <summary>True when the member is high, or flat but wide along the top's grain, or spans the whole edge.</summary>
    public bool IsStiff(Segment edge) =>
        Member.ThicknessMm >= calibration.SupportHeightMm
        || (Member.ThicknessMm >= calibration.FlatSupportHeightMm && (_meanWidthMm ??= MeanWidthAlongGrain()) >= calibration.FlatSupportWidthMm)
        || Spans(edge);

    /// <summary>True for a thick block, and for a member whose long grain lies in the plane and stands well across the top's.</summary>
    public static bool StandsAcross(Member member, Angle topGrain, Calibration calibration) =>
        (member.Kind == MemberKind.Block && member.ThicknessMm >= calibration.SupportingBlockThicknessMm)
        || (member.Material?.Lie != GrainLie.Upright && GrainAngle.Between(member.Grain, topGrain) >= calibration.SupportLeastAngle);

    private double MeanWidthAlongGrain()
    {
        var footprint = Member.Footprint;
        var inFrame = footprint.Placed(new Placement(default, -grain.Under(footprint), false));
        return inFrame.Area / inFrame.Bounds.Width;
    }

    private bool Spans(Segment edge)
    {
        var cuts = new List<double> { 0, 1 };
        Cuts.AtReach(edge, shape.Outline, calibration.SupportReachMm, cuts);
        Cuts.Order(cuts);
        for (var i = 1; i < cuts.Count; i++)
        {
            if (!Reaches(edge.PointAt((cuts[i - 1] + cuts[i]) / 2)))
            {
                return false;
            }
        }

        return true;
    }

    private Point2 NearestPoint(Point2 p)
    {
        if (shape.Contains(p))
        {
            return p;
        }

        var (nearest, distance) = (default(Segment), double.PositiveInfinity);
        foreach (var edge in shape.Outline.Edges)
        {
            if (edge.DistanceTo(p) is var own && own < distance)
            {
                (nearest, distance) = (edge, own);
            }
        }

        return nearest.PointAt(nearest.NearestFraction(p));
    }

    // A cut across the direction of travel, a reach to either side, still meets the member: so it has not ended before, though it may
    // taper or bend.
    private bool GoesOn(Point2 from, Vec2 along, double distance)
    {
        var middle = from + (along * distance);
        var aside = along.Left * calibration.SupportReachMm;
        var cut = new Segment(middle - aside, middle + aside);
        return shape.Contains(middle) || shape.Outline.Meets(cut);
    }
}
