using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Drawing;

/// <summary>
/// One drawing at true size: mm, y up, any origin. Shapes stand in the order in which they are drawn, first at the bottom. A wall
/// that two recesses share, given twice, is drawn once: on <see cref="Role.Cut"/> and on <see cref="Role.Pocket"/> the first of
/// equal contours stays, whatever part it belongs to; on the other roles the first of each part. Equal labels are written once.
/// </summary>
public sealed class Sheet
{
    /// <summary>A sheet whose page is known.</summary>
    /// <param name="name">File stem: letters, digits, '-' and '_'.</param>
    /// <param name="title">One line, in plain words.</param>
    /// <param name="description">A sentence or two for those who cannot see the drawing.</param>
    /// <param name="page">The paper, in sheet coordinates, mm; not empty.</param>
    /// <param name="shapes">What is drawn.</param>
    /// <exception cref="ArgumentException">A blank title, a name that is no file stem, or a page without area.</exception>
    public Sheet(string name, string title, string description, Box2 page, IEnumerable<Shape> shapes)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        if (name.Length == 0 || !name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
        {
            throw new ArgumentException("a name holds letters, digits, '-' and '_' only", nameof(name));
        }

        if (!(page.Width > 0 && page.Height > 0) || !page.Min.IsFinite || !page.Max.IsFinite)
        {
            throw new ArgumentException("a page has an area", nameof(page));
        }

        (Name, Title, Description, Page) = (name, title, description, page);
        var drawn = new HashSet<SharedWall>();
        Shapes = [.. shapes.Distinct().Where(s => s is not ContourShape c || drawn.Add(new SharedWall(c)))];
        Layers = Layer.Of(Shapes);
    }

    /// <summary>File stem: letters, digits, '-' and '_'.</summary>
    public string Name { get; }

    /// <summary>One line, in plain words.</summary>
    public string Title { get; }

    /// <summary>A sentence or two for those who cannot see the drawing.</summary>
    public string Description { get; }

    /// <summary>The paper, in sheet coordinates, mm.</summary>
    public Box2 Page { get; }

    /// <summary>Boxes, mm, whose contents are of use only in one piece: a print in pages shows them on one of its pages or not at all.</summary>
    public ImmutableArray<Box2> Whole { get; init; } = [];

    /// <summary>Parts that explain the drawing and need not stand beside it: a print in pages may gather them, whole, on its first page.</summary>
    public ImmutableArray<string> Apart { get; init; } = [];

    /// <summary>What is drawn, in order, each wall once.</summary>
    public ImmutableArray<Shape> Shapes { get; }

    /// <summary>The same shapes by part and role, in the order in which each pair first appears.</summary>
    public ImmutableArray<Layer> Layers { get; }

    /// <summary>The smallest box round all shapes, letters included, mm; empty when nothing is drawn.</summary>
    public Box2 Extents => Box2.Around(Shapes.Select(s => s.Bounds));

    /// <summary>The same sheet without some shapes.</summary>
    public Sheet Without(Func<Shape, bool> isLeftOut) => new(Name, Title, Description, Page, Shapes.Where(s => !isLeftOut(s))) { Whole = Whole, Apart = Apart };

    /// <summary>A sheet whose page is the box round its shapes and a margin, mm, &gt; 0, made up to whole mm.</summary>
    public static Sheet Around(
        string name, string title, string description, IEnumerable<Shape> shapes, double marginMm = 10, IEnumerable<Box2>? whole = null, IEnumerable<string>? apart = null)
    {
        var list = shapes.ToList();
        var box = Box2.Around(list.Select(s => s.Bounds)).Grown(marginMm);
        var (x, y) = ((Math.Ceiling(box.Width) - box.Width) / 2, (Math.Ceiling(box.Height) - box.Height) / 2);
        return new Sheet(name, title, description, new Box2(box.Min - new Vec2(x, y), box.Max + new Vec2(x, y)), list) { Whole = [.. whole ?? []], Apart = [.. apart ?? []] };
    }
}
