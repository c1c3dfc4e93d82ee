using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Parts;

/// <summary>Free bars: anywhere, given by a point and an angle, or by two points; a point in numbers or in trade words.</summary>
public static class FreeBars
{
    /// <summary>The section.</summary>
    public static readonly Section Section = Section.Repeatable("bar", "a bar anywhere: by a point and an angle, or by two points; a point in numbers or in words", most: 20_000);

    /// <summary>What it is made of.</summary>
    public static readonly BarStock Stock = new(Section, usualWidth: (4, 13), 6, usualHeight: (3, 20), 9);

    /// <summary>The point, along the body.</summary>
    public static readonly OptionalParameter<double> FromNeckEdge = Parameter.Length(
        Section, "from_neck_edge", "a point of the axis: from the neck edge", possible: (5, 690)).Optional();

    /// <summary>The point, in words.</summary>
    public static readonly OptionalParameter<string> From = Parameter.Phrase(
        Section,
        "from",
        "the point in words: a distance `above` or `below` a landmark or another bar, `at` it, or `against` another bar, to butt against it; then, if "
        + "not on the centre line, how far to the bass or the treble",
        AnchorPhrase.Example).Optional();

    /// <summary>The two ways to say where it begins.</summary>
    public static readonly ExactlyOneOf Start = ExactlyOneOf.Required(FromNeckEdge, From);

    /// <summary>The point, across the body.</summary>
    public static readonly Parameter<double> Across = Parameter.Length(
        Section, "across", "the same point: from the centre line, + on the treble side", possible: (-300, 300), fallback: 0);

    /// <summary>Angle to the centre line.</summary>
    public static readonly OptionalParameter<Angle> Angle = Parameter.Angle(
        Section, "angle", "angle to the centre line, + when its end towards the tail leans to the treble side", possible: (-90, 90)).Optional();

    /// <summary>The second point, along the body.</summary>
    public static readonly OptionalParameter<double> ToNeckEdge = Parameter.Length(
        Section, "end_from_neck_edge", "a second point of the axis: from the neck edge", possible: (5, 690)).Optional();

    /// <summary>The second point, in words.</summary>
    public static readonly OptionalParameter<string> To = Parameter.Phrase(
        Section, "to", "a second point in words, like `from`", AnchorPhrase.Example).Optional();

    /// <summary>The three ways to say how it runs.</summary>
    public static readonly ExactlyOneOf Course = ExactlyOneOf.Required(Angle, ToNeckEdge, To);

    /// <summary>The second point, across the body.</summary>
    public static readonly Parameter<double> ToAcross = Parameter.Length(
        Section, "end_across", "the second point: from the centre line, + on the treble side", possible: (-300, 300), fallback: 0);

    /// <summary>How it ends.</summary>
    public static readonly Parameter<BarEnds> Ends = BarEnd.Choice(Section, BarEnds.Lining);

    /// <summary>Length of a floating bar.</summary>
    public static readonly OptionalParameter<double> Length = Parameter.Length(
        Section, "length", "length of a floating bar given by an angle; the point is its middle, or its beginning where it butts against a bar", possible: (10, 600)).Optional();

    /// <summary>All of them.</summary>
    public static IEnumerable<Parameter> All => [.. Stock.All, FromNeckEdge, From, Across, Angle, ToNeckEdge, To, ToAcross, Ends, Length];

    internal static void Build(Bench bench, BarRoom room)
    {
        foreach (var section in FreeBarOrder.Of(bench))
        {
            Build(bench, room, section);
        }
    }

    /// <summary>Name of the member.</summary>
    internal static string NameOf(int number) => $"bar {Say.Count(number)}";

    private static void Build(Bench bench, BarRoom room, DesignSection section)
    {
        var name = NameOf(section.Number);
        var (start, course) = (section.Find(FromNeckEdge)?.Place ?? section.PlaceOf(From), CoursePlace(section));
        if (Point(bench, room, section, name, From, FromNeckEdge, Across) is not { } point)
        {
            return;
        }

        var to = section.Find(Angle) is null ? Point(bench, room, section, name, To, ToNeckEdge, ToAcross) : null;
        if (to is null && section.Find(Angle) is null)
        {
            return;
        }

        var isFloating = section.Get(Ends).Value == BarEnds.Floating;
        var length = section.Find(Length);
        if (length.HasValue != (isFloating && to is null))
        {
            SayLength(bench, section, name, length?.Place);
            return;
        }

        if (to?.At.DistanceTo(point.At) < Tolerances.ShortestMm)
        {
            SayTooClose(bench, name, point, to, course, start);
            return;
        }

        // What butts against a bar begins at that bar's side and not on its axis.
        var along = to is { } t ? (t.At - point.At).Unit : Leaning(section.Find(Angle)!.Value.Value);
        var (from, until) = (Reached(point, along, along), to is { } second ? Reached(second, along, -along) : null);
        if (from is null || (to is not null && (until is null || (until.Value - from.Value).Dot(along) < section[Stock.Width].Value)))
        {
            SayTooClose(bench, name, point, to, course, start);
            return;
        }

        var run = Run(from.Value, until, along, length?.Value, point.Holder is not null);
        new Bar
        {
            Name = name,
            Through = run.From.MidpointTo(run.Until),
            Along = along,
            Start = End(point, along, run.From, isFloating, Labels(along).First),
            End = End(to ?? default, -along, run.Until, isFloating, Labels(along).Last),
            Places = section.Find(From).HasValue ? [start, course] : [start, section[Across].Place, course],
        }.Add(bench, room, section, Stock);
    }

    // By an angle a floating bar lies evenly about its point, or runs on from the bar it butts against; by two points it runs from the one to the other.
    private static (Point2 From, Point2 Until) Run(Point2 from, Point2? until, Vec2 along, double? length, bool isHeld) =>
        length is not { } mm ? (from, until ?? from)
        : isHeld ? (from, from + (along * mm))
        : (from - (along * (mm / 2)), from + (along * (mm / 2)));

    private static BarEnd End(BarAnchor anchor, Vec2 away, Point2 at, bool isFloating, string label) =>
        anchor.Holder is { } holder ? BarEnd.Against(holder, new BarAxis(holder).SideFacing(away).Label!, label)
        : isFloating ? BarEnd.Free(at, away, label)
        : BarEnd.InLining(label);

    // Where the bar's axis leaves what it butts against; null where the two run alike.
    private static Point2? Reached(BarAnchor anchor, Vec2 along, Vec2 away)
    {
        if (anchor.Holder is not { } holder)
        {
            return anchor.At;
        }

        var side = new BarAxis(holder).SideFacing(away);
        return Intersections.Of(BarStrip.Line(anchor.At, along, ""), BarStrip.Line(side.Start, side.TangentAt(0), "")) is [var met] ? met.Point : null;
    }

    private static (string First, string Last) Labels(Vec2 along) => Math.Abs(along.X) >= 0.5
        ? along.X < 0 ? ("treble end", "bass end") : ("bass end", "treble end")
        : along.Y < 0 ? ("neck end", "tail end") : ("tail end", "neck end");

    private static void SayTooClose(Bench bench, string name, BarAnchor point, BarAnchor? to, SourcePlace course, SourcePlace start)
    {
        var holder = point.Holder ?? to?.Holder;
        bench.LeaveOut(
            name,
            holder is null
                ? $"the two points of {Say.The(name)} are {Say.Mm(to!.Value.At.DistanceTo(point.At))} apart, less than its width"
                : $"{Say.The(name)} finds no room to run off from {Say.The(holder.Name)} that it butts against",
            holder is null ? "set them further apart, or give one point and `angle`" : $"set its points further apart, or turn it across {Say.TheLast(holder.Name)}",
            course,
            start);
    }

    private static SourcePlace CoursePlace(DesignSection section) =>
        section.Find(Angle)?.Place ?? section.Find(ToNeckEdge)?.Place ?? section.PlaceOf(To);

    // One of its points; null, with the finding said, where words do not tell one.
    private static BarAnchor? Point(
        Bench bench, BarRoom room, DesignSection section, string name, OptionalParameter<string> words, OptionalParameter<double> fromNeckEdge, Parameter<double> across)
    {
        if (section.Find(fromNeckEdge) is { } number)
        {
            return new BarAnchor(new Point2(section[across].Value, -number.Value), null);
        }

        var said = section.Find(words)!.Value;
        if (!section[across].IsDefault)
        {
            bench.LeaveOut(
                name,
                $"`{words.Key}` of {Say.The(name)} says a place in words, and `{across.Key}` says one besides",
                $"leave `{across.Key}` out and add `, {Say.Tenth(Math.Abs(section[across].Value))} mm to the {(section[across].Value < 0 ? "bass" : "treble")}` to `{words.Key}`",
                section[across].Place,
                said.Place);
            return null;
        }

        return new BarAnchors(bench, section, name, words, said).Find(room);
    }

    private static Vec2 Leaning(Angle angle) => new(Trig.Sin(angle), -Trig.Cos(angle));

    private static void SayLength(Bench bench, DesignSection section, string name, SourcePlace? length)
    {
        var ends = section.Get(Ends).Place;
        bench.LeaveOut(
            name,
            length is null ? $"{Say.The(name)} floats, and nothing says how long it is" : $"{Say.The(name)} has a length, and its ends are said in another way besides",
            length is null
                ? "add `length`, give a second point with `end_from_neck_edge` and `end_across`, or let it into the linings with `ends = \"lining\"`"
                : "leave `length` out, or give one point, `angle` and `ends = \"floating\"`",
            length ?? ends,
            ends);
    }
}
