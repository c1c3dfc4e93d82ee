using TopLayout.Drawing.Dxf;
using TopLayout.Plans;
using TopLayout.Plans.Reports;

namespace TopLayout.EndToEnd.Tests;

/// <summary>DXF of a design drawn without the program round it, in less time than a run takes; that both write the same bytes is tested with the samples.</summary>
internal static class DrawnDxf
{
    /// <summary>Writes sheets, templates of a failed top too, into a folder; all sheets where none is named.</summary>
    public static IReadOnlyList<string> Write(ReviewedTop top, string folder, DxfOptions options, params string[] only)
    {
        var sheets = Pipeline.Sheets(top, new DrawOptions { CutAnyway = true, Only = [.. only] }).ToList();
        return [.. sheets.Select(s =>
        {
            var file = Path.Combine(folder, s.Path + ".dxf");
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            using var stream = File.Create(file);
            DxfWriter.Write(s.Sheet, stream, options);
            return file;
        })];
    }

    /// <summary>Writes sheets and the report of a design file.</summary>
    public static IReadOnlyList<string> WriteWithReport(string design, string folder, params string[] only)
    {
        var top = Pipeline.Check(File.ReadAllText(design), design).Top!;
        var files = Write(top, folder, default, only);
        File.WriteAllBytes(Path.Combine(folder, "report.json"), JsonReport.Write(top));
        return files;
    }
}
