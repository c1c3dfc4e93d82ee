using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>One step of the work, as its sheet tells it.</summary>
/// <param name="Name">File stem.</param>
/// <param name="Title">A few words.</param>
/// <param name="Does">What the step does, in a sentence.</param>
/// <param name="Face">The face looked at in the key drawing.</param>
/// <param name="Shown">What the key drawing shows besides the outline and the hole, in layout coordinates.</param>
/// <param name="Rows">The numbers to work to.</param>
/// <param name="Cautions">The usual cautions, a sentence each.</param>
internal sealed record Step(
    string Name, string Title, string Does, TopFace Face, ImmutableArray<(string Name, Contour Line)> Shown, ImmutableArray<StepRow> Rows, ImmutableArray<string> Cautions)
{
    /// <summary>Tables of many parts alike, a row each; those without rows are left out.</summary>
    public ImmutableArray<StepGrid> Grids { get; init; } = [];

    /// <summary>All tables of the page, in order.</summary>
    /// <param name="isTight">Whether their rows stand closer.</param>
    public IEnumerable<StepTable> Tables(bool isTight) =>
        [.. Rows.IsEmpty ? (StepTable[])[] : [StepTable.Of(Rows, isTight)], .. Grids.Where(g => !g.Rows.IsEmpty).Select(g => StepTable.Of(g, isTight))];
}

/// <summary>A number to work to: what it is, its value with its unit, the tolerance that matters, and a remark, may be empty.</summary>
internal readonly record struct StepRow(string What, string Value, string Tolerance, string Remark = "");

/// <summary>Numbers of parts alike: a heading with its tolerance over every column, and for every part its name and as many values.</summary>
internal sealed record StepGrid(ImmutableArray<string> Headings, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>Whether what was made is written under each value; settings and stock have no such boxes.</summary>
    public bool HasBoxes { get; init; } = true;
}
