using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>A straight bar on its way to the top: where its axis runs and how it ends. Its grain runs along it.</summary>
internal sealed record Bar
{
    // Bars nearer to the centre line than this have a bass and a treble side, others a neck and a tail side: sine of 30 degrees.
    private const double AlongSine = 0.5;

    /// <summary>The member's name.</summary>
    public required string Name { get; init; }

    /// <summary>A point of the axis between the ends.</summary>
    public required Point2 Through { get; init; }

    /// <summary>From the start to the end.</summary>
    public required Vec2 Along { get; init; }

    /// <summary>The end behind.</summary>
    public required BarEnd Start { get; init; }

    /// <summary>The end ahead.</summary>
    public required BarEnd End { get; init; }

    /// <summary>Names of members it is lapped with or notched over, besides those that hold its ends.</summary>
    public ImmutableHashSet<string> NotchedOver { get; init; } = [];

    /// <summary>The places that shaped it, the one to change first.</summary>
    public required ImmutableArray<SourcePlace> Places { get; init; }

    /// <summary>A straight side of a bar by its name.</summary>
    public static Segment Side(Member bar, string side) => bar.Footprint.Outer.Segments.First(s => s.Label == side);

    /// <summary>Adds the bar, or says why it does not fit.</summary>
    public void Add(Bench bench, BarRoom room, DesignSection section, BarStock stock)
    {
        var (left, right) = SideNames();
        var halfWidth = Along.Unit.Left * (section[stock.Width].Value / 2);
        var isInBody = room.InsideOfSides.Contains(Through + halfWidth) && room.InsideOfSides.Contains(Through - halfWidth);
        var footprint = isInBody
            ? Batten.Parallel(Through, Along, section[stock.Width].Value, left, right, new BattenEnd(Start.Stop, Start.Label), new BattenEnd(End.Stop, End.Label))
            : null;
        if (footprint is not null && IsMisfit(bench, room, footprint))
        {
            return;
        }

        bench.AddOrMisfit(footprint, Name, Places[0], region => new Member
        {
            Name = Name,
            Kind = MemberKind.Bar,
            Face = TopFace.Inside,
            Footprint = region,
            ThicknessMm = section[stock.Height].Value,
            Material = stock.Stock.Read(section),
            Grain = GrainOf.Direction(Along),
            JoinedWith = Start.JoinedWith.Union(End.JoinedWith).Union(NotchedOver),
            Places = Places,
        });
    }

    private bool IsMisfit(Bench bench, BarRoom room, Region footprint)
    {
        var toHole = room.Hole.ClearanceOf(footprint);
        if (toHole < -Tolerances.TouchMm)
        {
            bench.Misfit(
                Name,
                $"the {Name} reaches {Say.Mm(-toHole)} over the hole's edge",
                $"move it {Say.Mm(Math.Ceiling(-10 * toHole) / 10)} or more away from the hole, or make the hole smaller",
                [.. Places, bench.Design[Soundhole.Diameter].Place]);
            return true;
        }

        if (PassesLining(room, footprint))
        {
            bench.Misfit(
                Name,
                $"the {Name} reaches the lining, and is not let into it",
                "shorten it, or move it towards the middle of the body",
                [.. Places, bench.Design[Rim.LiningWidth].Place]);
            return true;
        }

        return false;
    }

    // A long side crosses the lining's line once for each end that is let in, and no more.
    private bool PassesLining(BarRoom room, Region footprint)
    {
        var letIn = (Start.IsInLining ? 1 : 0) + (End.IsInLining ? 1 : 0);
        var (left, right) = SideNames();
        return footprint.Edges.Where(e => e.Label == left || e.Label == right).Any(e => room.LiningLine.Crossings(e).Count > letIn)
            || (letIn == 0 && !room.LiningLine.Contains(footprint.Outer.Vertices[0].Position));
    }

    private (string Left, string Right) SideNames() => Math.Abs(Along.Unit.X) >= AlongSine
        ? Along.X < 0 ? ("tail side", "neck side") : ("neck side", "tail side")
        : Along.Y < 0 ? ("treble side", "bass side") : ("bass side", "treble side");
}
