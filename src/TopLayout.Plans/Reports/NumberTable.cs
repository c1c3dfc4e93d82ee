using System.Collections.Immutable;
using TopLayout.Geometry;

namespace TopLayout.Plans.Reports;

/// <summary>A value in a table of the report: it knows its unit, so each format prints it its own way.</summary>
public abstract record Cell
{
    private Cell()
    {
    }

    /// <summary>Words.</summary>
    public sealed record Words(string Text) : Cell;

    /// <summary>A length, mm.</summary>
    public sealed record Length(double Mm) : Cell;

    /// <summary>An area, mm².</summary>
    public sealed record Area(double SquareMm) : Cell;

    /// <summary>An angle.</summary>
    public sealed record Turn(Angle Angle) : Cell;

    /// <summary>A whole number.</summary>
    public sealed record Number(int Value) : Cell;

    /// <summary>Text as a cell.</summary>
    public static implicit operator Cell(string text) => new Words(text);

    /// <summary>A length in mm as a cell.</summary>
    public static implicit operator Cell(double mm) => new Length(mm);

    /// <summary>An angle as a cell.</summary>
    public static implicit operator Cell(Angle angle) => new Turn(angle);
}

/// <summary>A column: the key in JSON, and the heading in print.</summary>
/// <param name="Key">Lower case, words joined by '_'.</param>
/// <param name="Heading">In plain words.</param>
public readonly record struct Column(string Key, string Heading);

/// <summary>One table of numbers that a maker carries to the bench.</summary>
public sealed class NumberTable(string key, string title, IEnumerable<Column> columns, IEnumerable<IReadOnlyList<Cell>> rows)
{
    /// <summary>Its key in JSON.</summary>
    public string Key { get; } = key;

    /// <summary>Its heading in print.</summary>
    public string Title { get; } = title;

    /// <summary>The columns.</summary>
    public ImmutableArray<Column> Columns { get; } = [.. columns];

    /// <summary>The rows; each has a cell for every column.</summary>
    public ImmutableArray<IReadOnlyList<Cell>> Rows { get; } = [.. rows];
}
