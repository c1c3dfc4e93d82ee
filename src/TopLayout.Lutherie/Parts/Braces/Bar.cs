using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>
/// A straight bar on its way to the top: where its axis runs and how it ends. Its grain runs along it. Its footprint is a strip between two
/// straight cuts, clipped to the inside of the sides: of several pieces the one that holds its stated place.
/// </summary>
internal sealed record Bar
{
    // Bars nearer to the centre line than this have a bass and a treble side, others a neck and a tail side: sine of 30 degrees.
    private const double AlongSine = 0.5;

    /// <summary>The member's name.</summary>
    public required string Name { get; init; }

    /// <summary>The stated place: a point of the axis between the ends.</summary>
    public required Point2 Through { get; init; }

    /// <summary>From the start to the end.</summary>
    public required Vec2 Along { get; init; }

    /// <summary>The end behind.</summary>
    public required BarEnd Start { get; init; }

    /// <summary>The end ahead.</summary>
    public required BarEnd End { get; init; }

    /// <summary>Names of members it is lapped with or notched over, besides those that hold its ends.</summary>
    public ImmutableHashSet<string> NotchedOver { get; init; } = [];

    /// <summary>Whether its sides are the neck and the tail side whatever its angle: others butt against them by that name.</summary>
    public bool HasNeckSide { get; init; }

    /// <summary>What sort of thing it is.</summary>
    public MemberKind Kind { get; init; } = MemberKind.Bar;

    /// <summary>The places that shaped it, the one to change first.</summary>
    public required ImmutableArray<SourcePlace> Places { get; init; }

    /// <summary>A straight side of a bar by its name; of several pieces the longest.</summary>
    public static Segment Side(Member bar, string side) => bar.Footprint.Outer.Segments.Where(s => s.Label == side).MaxBy(s => s.ChordLength);

    /// <summary>Adds the bar, or says why there is none.</summary>
    public void Add(Bench bench, BarRoom room, DesignSection section, BarStock stock)
    {
        var (left, right) = SideNames();
        var strip = BarStrip.About(Through, Along, section[stock.Width].Value, left, right);
        if (strip.Between(Start.Cut, End.Cut) is not { } whole || strip.Within(whole, room.Inside, Through, EndName) is not { } footprint)
        {
            bench.LeaveOut(Name, $"{Say.The(Name)} does not reach both of its ends inside the body", "move it, or turn it, until its axis crosses the body", Places);
            return;
        }

        foreach (var end in (ReadOnlySpan<BarEnd>)[Start, End])
        {
            BarEndFaults.Report(bench, this, end, whole, footprint);
        }

        bench.Add(new Member
        {
            Name = Name,
            Kind = Kind,
            Face = TopFace.Inside,
            Footprint = footprint,
            ThicknessMm = section[stock.Height].Value,
            Material = stock.Stock.Read(section),
            Grain = GrainOf.Direction(Along),
            JoinedWith = Start.JoinedWith.Union(End.JoinedWith).Union(NotchedOver),
            Places = Places,
        });
    }

    private string EndName(Segment edge) => (edge.PointAt(0.5) - Through).Dot(Along) < 0 ? Start.Label : End.Label;

    private (string Left, string Right) SideNames() => HasNeckSide || Math.Abs(Along.Unit.X) >= AlongSine
        ? Along.X < 0 ? ("tail side", "neck side") : ("neck side", "tail side")
        : Along.Y < 0 ? ("treble side", "bass side") : ("bass side", "treble side");
}
