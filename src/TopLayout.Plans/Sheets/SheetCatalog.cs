using System.Collections.Immutable;
using TopLayout.Drawing;
using TopLayout.Plans.Sheets.Steps;

namespace TopLayout.Plans.Sheets;

/// <summary>A kind of sheet.</summary>
/// <param name="Name">What a maker asks for by; the file stem, or the folder of several.</param>
/// <param name="IsCutFile">True when it is meant to be cut, so that it is withheld when a check failed.</param>
/// <param name="Draw">The sheets; none when the design has nothing for them.</param>
public sealed record SheetEntry(string Name, bool IsCutFile, Func<ReviewedTop, IEnumerable<Sheet>> Draw)
{
    /// <summary>The folder they are written into; empty for the output folder itself.</summary>
    public string Folder { get; init; } = "";

    /// <summary>True when x = 0 is the centre line of the top, so that half of the sheet may be printed alone.</summary>
    public bool HasCentreLine { get; init; }

    /// <summary>The path of a sheet's file inside the output folder, without extension; always with '/'.</summary>
    public string PathOf(Sheet sheet) => Folder.Length == 0 ? sheet.Name : $"{Folder}/{sheet.Name}";
}

/// <summary>The written list of sheets, in the order they are drawn.</summary>
public static class SheetCatalog
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<SheetEntry> All { get; } =
    [
        new(PlanSheet.OutsideName, false, top => One(PlanSheet.Outside(top))) { HasCentreLine = true },
        new(PlanSheet.InsideName, false, top => One(PlanSheet.Inside(top))) { HasCentreLine = true },
        new("grain", false, top => One(GrainSheet.Draw(top))) { HasCentreLine = true },
        new("outline", false, top => One(OutlineSheet.Draw(top))) { HasCentreLine = true },
        new("half-template", true, HalfTemplateSheets.Draw),
        new("mould", true, top => One(MouldSheet.Draw(top))) { HasCentreLine = true },
        new("rosette", true, top => One(RosetteSheet.Draw(top))),
        new("rosette-enlarged", false, top => One(RosetteEnlargedSheet.Draw(top))),
        new("rosette-templates", true, top => One(RosetteTemplateSheet.Draw(top))),
        new("bridge-place", false, top => One(BridgeSheet.Draw(top))),
        new("tongue", true, top => One(TongueSheet.Draw(top))),
        new("parts", true, PartSheets.Draw) { Folder = "parts" },
        new("drill-points", false, top => One(DrillSheet.Draw(top))),
        new("steps", false, StepSheets.Draw) { Folder = "steps" },
        new("numbers", false, top => One(NumberSheet.Draw(top))),
    ];

    private static IEnumerable<Sheet> One(Sheet? sheet) => sheet is null ? [] : [sheet];
}
