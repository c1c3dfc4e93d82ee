using TopLayout.Geometry;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// The outline of a tongue: a flank at a fixed angle to the centre line on each side, a hollow fillet at the root, a round tip
/// tangent to both flanks. No edge of it lies nearer to the grain than the flank angle. Derived for this project: the tip circle of
/// radius ρ touches the flank y = b − x·tan θ when ρ = (b cos θ − L sin θ)/(1 − sin θ).
/// </summary>
/// <param name="RootHalf">Half-width where the flanks would meet the block's face without a fillet, b, mm.</param>
/// <param name="Length">From the block's face to the tip, L, mm.</param>
/// <param name="Flank">Angle of the flanks to the centre line, θ, in (0°, 90°).</param>
/// <param name="Fillet">Radius of the hollow at the root, mm, ≥ 0.</param>
public sealed record TongueRecipe(double RootHalf, double Length, Angle Flank, double Fillet)
{
    /// <summary>Name of the edge on the bass side.</summary>
    public const string FlankBass = "bass flank";

    /// <summary>Name of the edge on the treble side.</summary>
    public const string FlankTreble = "treble flank";

    /// <summary>Name of the edge at the end.</summary>
    public const string Tip = "tip";

    /// <summary>Name of the line where it leaves the block; no glued edge.</summary>
    public const string Root = "root";

    /// <summary>Name of the hollows at the root.</summary>
    public const string Hollow = "root hollow";

    /// <summary>Radius of the round tip, ρ, mm; the tongue exists only when it is positive.</summary>
    public double TipRadius => ((RootHalf * Trig.Cos(Flank)) - (Length * Trig.Sin(Flank))) / (1 - Trig.Sin(Flank));

    /// <summary>Half-width at the block's face, fillets counted, mm.</summary>
    public double FaceHalf => RootHalf + (Fillet * (1 - Trig.Sin(Flank)) / Trig.Cos(Flank));

    /// <summary>True when a straight piece of flank is left between fillet and tip.</summary>
    public bool HasFlank => TipRadius > Tolerances.ShortestMm && Length >= LeastLength;

    /// <summary>The length at which fillet and tip meet and no flank is left: (b cos θ + f (1 − sin θ))/(1 + sin θ), f the fillet, mm.</summary>
    public double LeastLength => ((RootHalf * Trig.Cos(Flank)) + (Fillet * (1 - Trig.Sin(Flank)))) / (1 + Trig.Sin(Flank));

    /// <summary>The largest flank angle that leaves a tip of the given radius: acos(ρ/M) − δ, M = hypot(b, L − ρ), δ = atan2(L − ρ, b).</summary>
    public Angle LargestFlank(double tipRadius)
    {
        var reach = Length - tipRadius;
        return Trig.Acos(tipRadius / new Vec2(RootHalf, reach).Length) - Trig.Atan2(reach, RootHalf);
    }

    /// <summary>The footprint, with the block's face at y = <paramref name="faceY"/> and the tip towards −y. Needs <see cref="HasFlank"/>.</summary>
    public Region Build(double faceY)
    {
        var (sin, cos) = (Trig.Sin(Flank), Trig.Cos(Flank));
        var face = new Point2(FaceHalf, faceY);
        var flankStart = new Point2(FaceHalf - (Fillet * cos), faceY - (Fillet * (1 - sin)));
        var flankEnd = new Point2(TipRadius * cos, faceY - (Length - TipRadius + (TipRadius * sin)));
        var along = new Vec2(-sin, -cos);
        var treble = new List<Segment>();
        if (Fillet > 0)
        {
            treble.Add(Segment.Leaving(face, -Vec2.UnitX, flankStart, Hollow));
        }

        treble.Add(new Segment(flankStart, flankEnd, 0, FlankTreble));
        var bass = treble.Select(s => s.Placed(Placement.MirroredAcrossY).Reversed()).Reverse()
            .Select(s => s.Label == FlankTreble ? s with { Label = FlankBass } : s);
        var tip = Segment.Leaving(flankEnd, along, Mirrored(flankEnd), Tip);
        return Region.Inside(Contour.Chain([.. treble, tip, .. bass, new Segment(Mirrored(face), face, 0, Root)], isClosed: true));
    }

    /// <summary>The footprint of a tongue with straight sides along the centre line and a square end.</summary>
    public static Region Straight(double half, double length, double faceY)
    {
        Point2 treble = new(half, faceY), trebleEnd = new(half, faceY - length);
        return Region.Inside(Contour.Chain(
            [
                new Segment(treble, trebleEnd, 0, FlankTreble),
                new Segment(trebleEnd, Mirrored(trebleEnd), 0, Tip),
                new Segment(Mirrored(trebleEnd), Mirrored(treble), 0, FlankBass),
                new Segment(Mirrored(treble), treble, 0, Root),
            ],
            isClosed: true));
    }

    private static Point2 Mirrored(Point2 p) => new(-p.X, p.Y);
}
