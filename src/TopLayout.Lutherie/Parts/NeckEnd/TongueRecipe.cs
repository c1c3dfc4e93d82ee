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

    // A tip sharper than this is no tip, mm.
    private const double LeastTipMm = 2;

    // By so much less than what just fits is a hollow drawn, mm, so that a piece of flank is left.
    private const double HollowSpareMm = 0.5;

    /// <summary>Radius of the round tip, ρ, mm; the tongue exists only when it is positive. A round one is an arc of (b² + L²)/2L, from its chord and rise.</summary>
    public double TipRadius => IsRound
        ? ((RootHalf * RootHalf) + (Length * Length)) / (2 * Length)
        : ((RootHalf * Trig.Cos(Flank)) - (Length * Trig.Sin(Flank))) / (1 - Trig.Sin(Flank));

    /// <summary>
    /// True when it is one arc from side to side of its root: without a hollow, and so short for its width that the arc leaves the block at
    /// more than the flank's angle. That is so when L(1 + sin θ) ≤ b cos θ, as an arc of rise L over b leaves at 90° − 2·atan(L/b).
    /// </summary>
    public bool IsRound => Fillet == 0 && Length * (1 + Trig.Sin(Flank)) <= RootHalf * Trig.Cos(Flank);

    /// <summary>Half-width at the block's face, fillets counted, mm.</summary>
    public double FaceHalf => RootHalf + (Fillet * (1 - Trig.Sin(Flank)) / Trig.Cos(Flank));

    /// <summary>True when a straight piece of flank is left between fillet and tip.</summary>
    public bool HasFlank => !IsRound && TipRadius > Tolerances.ShortestMm && Length >= LeastLength;

    /// <summary>The length at which fillet and tip meet and no flank is left: (b cos θ + f (1 − sin θ))/(1 + sin θ), f the fillet, mm.</summary>
    public double LeastLength => ((RootHalf * Trig.Cos(Flank)) + (Fillet * (1 - Trig.Sin(Flank)))) / (1 + Trig.Sin(Flank));

    /// <summary>The largest flank angle that leaves a tip of the given radius: acos(ρ/M) − δ, M = hypot(b, L − ρ), δ = atan2(L − ρ, b).</summary>
    public Angle LargestFlank(double tipRadius)
    {
        var reach = Length - tipRadius;
        return Trig.Acos(tipRadius / new Vec2(RootHalf, reach).Length) - Trig.Atan2(reach, RootHalf);
    }

    /// <summary>
    /// The nearest tongue that can be drawn, with the same flank angle or more: itself when it can; too long for its width, a shorter one; too
    /// short for its hollows, one with smaller hollows, and where not even that leaves a flank, a round one without.
    /// </summary>
    public TongueRecipe Nearest()
    {
        if (HasFlank || IsRound)
        {
            return this;
        }

        var (sin, cos) = (Trig.Sin(Flank), Trig.Cos(Flank));

        // The largest tip, at the least length: (b cos θ − f sin θ (1 − sin θ))/cos² θ.
        var recipe = this;
        if ((RootHalf * cos) - (Fillet * sin * (1 - sin)) <= 2 * Tolerances.ShortestMm)
        {
            recipe = this with { Fillet = RootHalf * cos / (2 * sin * (1 - sin)) };
        }

        if (recipe.TipRadius <= Tolerances.ShortestMm)
        {
            var tip = Math.Min(LeastTipMm, ((RootHalf * cos) - (recipe.Fillet * sin * (1 - sin))) / (2 * cos * cos));
            return recipe with { Length = ((RootHalf * cos) - (tip * (1 - sin))) / sin };
        }

        var fits = ((recipe.Length * (1 + sin)) - (RootHalf * cos)) / (1 - sin);
        return recipe.HasFlank ? recipe : recipe with { Fillet = Math.Max(0, Math.Floor((fits - HollowSpareMm) * 10) / 10) };
    }

    /// <summary>The footprint, with the block's face at y = <paramref name="faceY"/> and the tip towards −y. Needs <see cref="HasFlank"/> or <see cref="IsRound"/>.</summary>
    public Region Build(double faceY) => IsRound ? Round(faceY) : WithFlanks(faceY);

    private Region Round(double faceY)
    {
        Point2 treble = new(RootHalf, faceY), bass = new(-RootHalf, faceY);
        var tip = Segment.Around(new Point2(0, faceY - Length + TipRadius), treble, bass, counterClockwise: false, Tip);
        return Region.Inside(Contour.Chain([tip, new Segment(bass, treble, 0, Root)], isClosed: true));
    }

    private Region WithFlanks(double faceY)
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

    /// <summary>
    /// The footprint of a tongue with straight sides along the centre line and a half-round tip; one arc from side to side of its root where it
    /// is shorter than its half-width.
    /// </summary>
    public static Region StraightRound(double half, double length, double faceY)
    {
        var side = Math.Max(0, length - half);
        if (side < Tolerances.ShortestMm)
        {
            return new TongueRecipe(half, Math.Min(length, half), Angle.Zero, 0).Round(faceY);
        }

        Point2 treble = new(half, faceY), trebleEnd = new(half, faceY - side);
        return Region.Inside(Contour.Chain(
            [
                new Segment(treble, trebleEnd, 0, FlankTreble),
                new Segment(trebleEnd, Mirrored(trebleEnd), -1, Tip),
                new Segment(Mirrored(trebleEnd), Mirrored(treble), 0, FlankBass),
                new Segment(Mirrored(treble), treble, 0, Root),
            ],
            isClosed: true));
    }

    private static Point2 Mirrored(Point2 p) => new(-p.X, p.Y);
}
