using TopLayout.Drawing;
using TopLayout.Drawing.Labels;
using TopLayout.Geometry;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// A sheet being drawn: geometry first, then fixed lettering, then labels that find their own place among both.
/// </summary>
internal sealed class SheetBoard
{
    /// <summary>Height of ordinary lettering, mm.</summary>
    public const double TextMm = 2.8;

    private const double HatchMm = 4;
    private const double HatchOffLettersMm = 0.9;

    private readonly List<Shape> _shapes = [];
    private readonly List<(string Part, Region Area, Angle Direction)> _hatched = [];
    private readonly List<LabelRequest> _requests = [];
    private readonly List<Box2> _whole = [];

    /// <summary>The box round what is drawn so far, mm.</summary>
    public Box2 Extents => Box2.Around(_shapes.Select(s => s.Bounds));

    /// <summary>The ways in which lines are drawn so far.</summary>
    public IReadOnlySet<(Role Role, Emphasis Emphasis)> Lines => _shapes.OfType<ContourShape>().Select(s => (s.Role, s.Emphasis)).ToHashSet();

    /// <summary>Whether a part has something drawn so far.</summary>
    public bool Has(string part) => _shapes.Exists(s => s.Part == part);

    /// <summary>Whether something is to be hatched.</summary>
    public bool HasHatching => _hatched.Count > 0;

    /// <summary>Draws a contour.</summary>
    public void Draw(string part, Role role, Contour contour, Emphasis emphasis = Emphasis.Normal) =>
        _shapes.Add(new ContourShape(part, role, contour, emphasis));

    /// <summary>Draws a sample of the way in which a role is drawn; it is words, whatever it looks like.</summary>
    public void Sample(string part, Role looksLike, Emphasis emphasis, Point2 from, Point2 to) =>
        _shapes.Add(new ContourShape(part, Role.Text, new Contour([new Vertex(from), new Vertex(to)], isClosed: false), emphasis) { LooksLike = looksLike });

    /// <summary>Draws a straight line.</summary>
    public void Line(string part, Role role, Point2 from, Point2 to, Emphasis emphasis = Emphasis.Normal) =>
        Draw(part, role, new Contour([new Vertex(from), new Vertex(to)], isClosed: false), emphasis);

    /// <summary>Draws a closed rectangle.</summary>
    public void Box(string part, Role role, Box2 box) =>
        Draw(part, role, Contour.Rectangle(box));

    /// <summary>Writes a line of text at a fixed place.</summary>
    public LabelShape Write(
        string part, string text, Point2 anchor, double heightMm = TextMm, Alignment alignment = Alignment.Left, Angle rotation = default, Role role = Role.Text, Emphasis emphasis = Emphasis.Normal)
    {
        var label = new LabelShape(part, role, text, anchor, heightMm, alignment, rotation, emphasis);
        _shapes.Add(label);
        return label;
    }

    /// <summary>True when no line drawn so far meets a frame, axes and lines behind left out of account when they may break.</summary>
    public bool IsFree(TurnedBox frame, bool breaksLines)
    {
        var bounds = frame.Bounds;
        return !_shapes.OfType<ContourShape>().Any(s => !(breaksLines && BrokenLines.MayBreak(s)) && s.Bounds.Overlaps(bounds) && s.Contour.Segments.Any(frame.Meets));
    }

    /// <summary>True when no line drawn so far meets a level frame, mm.</summary>
    public bool IsFree(Box2 frame) => IsFree(TurnedBox.Around(frame.Center, frame, Angle.Zero), breaksLines: false);

    /// <summary>How many lines of other parts drawn so far a straight line runs over.</summary>
    public int Crossed(Segment line, string part) => _shapes.OfType<ContourShape>().Where(s => s.Part != part && s.Bounds.Overlaps(line.Bounds()))
        .Sum(s => s.Contour.Segments.Count(e => Intersections.Of(e, line).Count > 0));

    /// <summary>Asks that a print in pages shows what lies in a box on one of them or not at all, mm.</summary>
    public void KeepWhole(Box2 box) => _whole.Add(box);

    /// <summary>Asks for a label near what it names.</summary>
    public void Name(LabelRequest request) => _requests.Add(request);

    /// <summary>Hatches an area as soon as all labels have their place, round them and where nothing is hatched already.</summary>
    public void Hatch(string part, Region area, Angle direction) => _hatched.Add((part, area, direction));

    /// <summary>The finished sheet: labels placed, areas hatched, page fitted round all with a margin, mm.</summary>
    public Sheet Finish(string name, string title, string description, double marginMm = 10)
    {
        var placed = LabelPlacer.Place(_shapes, _requests, Extents.Grown(4));
        var frames = placed.Shapes.OfType<LabelShape>().Select(l => l.Frame.Grown(l.HeightMm * LabelPlacer.ClearancePerHeight)).ToList();
        return Sheet.Around(name, title, description, [.. Strokes(placed.Shapes), .. BrokenLines.Of(_shapes, frames), .. placed.Shapes], marginMm, [.. _whole], [TitleBlock.Part, Legend.Part]);
    }

    private List<Shape> Strokes(IEnumerable<Shape> placed)
    {
        var (strokes, free) = (new List<Shape>(), new List<Contour>());
        if (HasHatching)
        {
            free.AddRange(_shapes.Concat(placed).OfType<LabelShape>().Select(l => l.Frame.Grown(HatchOffLettersMm).ToContour()));
        }

        foreach (var (part, area, direction) in _hatched)
        {
            strokes.AddRange(Hatching.Strokes(area, direction, HatchMm, free).Select(s => new ContourShape(part, Role.Hatch, s)));
            free.AddRange(area.Loops);
        }

        return strokes;
    }
}
