using System.Collections.Immutable;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The ways to describe an outline, of which a design has exactly one, and what may be done to any of them: a cutaway, a ledge.</summary>
public static class OutlineForms
{
    private static readonly ImmutableArray<(Section Section, IEnumerable<Parameter> Parameters, Func<Bench, BodyHalves?> Build)> Forms =
    [
        (Outline.Section, Outline.All, Outline.Build),
        (Teardrop.Section, Teardrop.All, Teardrop.Build),
        (ArcChain.Section, ArcChain.All, ArcChain.Build),
        (MeasuredBody.Section, MeasuredBody.All, MeasuredBody.Build),
    ];

    /// <summary>Exactly one of the forms; the recipe when none is written.</summary>
    public static readonly ExactlyOneOfSections Group =
        ExactlyOneOfSections.Defaulted(Forms[0].Section, [.. Forms.Skip(1).Select(f => f.Section)]);

    /// <summary>The sections, in the order help shows them.</summary>
    public static IEnumerable<Section> Sections => [.. Forms.Select(f => f.Section), Cutaway.Section, Ledge.Section];

    /// <summary>All of their parameters.</summary>
    public static IEnumerable<Parameter> All => [.. Forms.SelectMany(f => f.Parameters), .. Cutaway.All, .. Ledge.All];

    /// <summary>The outline; null, with misfits said, when it cannot be drawn.</summary>
    internal static BodyOutline? Build(Bench bench)
    {
        if (Forms.First(f => bench.Design.Has(f.Section)).Build(bench) is not { } halves || Cutaway.Cut(bench, halves) is not { } cut)
        {
            return null;
        }

        var edge = cut.Whole();
        if (RegionValidity.FirstFault(Region.Inside(edge)) is { Kind: not RegionFaultKind.ShortSegment } fault)
        {
            bench.Misfit(
                "outline",
                $"the outline crosses itself {Findings.Say.Mm(-fault.At.Y)} from the neck edge, {Findings.Say.Mm(Math.Abs(fault.At.X))} from the centre line",
                "look for a number that is out of its row, or for two that were changed over",
                halves.Place);
            return null;
        }

        return Ledge.PlateEdge(bench, edge) is not { } plate ? null : new BodyOutline
        {
            Edge = edge,
            PlateEdge = plate,
            Residuals = halves.Residuals,
            Place = halves.Place,
        };
    }
}
