using System.Collections.Immutable;
using TopLayout.Drawing;

namespace TopLayout.Plans.Sheets;

/// <summary>A kind of sheet.</summary>
/// <param name="Name">File stem.</param>
/// <param name="IsCutFile">True when it is meant to be cut, so that it is withheld when a check failed.</param>
/// <param name="Draw">The sheet; null when the design has nothing for it.</param>
public sealed record SheetEntry(string Name, bool IsCutFile, Func<ReviewedTop, Sheet?> Draw);

/// <summary>The written list of sheets, in the order they are drawn.</summary>
public static class SheetCatalog
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<SheetEntry> All { get; } =
    [
        new("outside-plan", false, PlanSheet.Outside),
        new("inside-plan", false, PlanSheet.Inside),
        new("tongue", true, TongueSheet.Draw),
    ];
}
