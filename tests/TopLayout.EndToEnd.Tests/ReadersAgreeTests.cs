using System.Text.Json;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// Three readers that share no line with us or each other (ezdxf, and the npm packages dxf and dxf-parser) find the same entities, layers and
/// extents in every sheet, at every level of DXF.
/// </summary>
public class ReadersAgreeTests(ITestOutputHelper output)
{
    public static TheoryData<string, string, string> Drawings => new()
    {
        { "tapered-tongue", "r12", "mm" },
        { "tapered-tongue", "r2000", "in" },
        { "classical", "r2000", "mm" },
        { "classical", "lines-and-arcs", "mm" },
        { "jumbo", "r12", "in" },
    };

    [Theory]
    [MemberData(nameof(Drawings))]
    public void Dxf_OfEverySheet_IsTheSameToThreeReaders(string preset, string level, string unit)
    {
        using var desk = new Desk();
        var folder = desk.At("plans");
        Toplayout.Run("draw", Toplayout.PresetFile(preset), "--out", folder, "--dxf", level, "--dxf-unit", unit, "--quiet");
        string[] files = [.. Directory.EnumerateFiles(folder, "*.dxf", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
        Assert.True(files.Length > 4);
        if (OutsideReader.CountDxf(output, files) is not var (ezdxf, npm))
        {
            return;
        }

        using var one = JsonDocument.Parse(ezdxf);
        using var two = JsonDocument.Parse(npm);
        foreach (var file in files)
        {
            var first = one.RootElement.GetProperty(file);
            foreach (var reader in two.RootElement.GetProperty(file).EnumerateObject())
            {
                var what = $"{reader.Name}, {Path.GetFileName(file)}";
                Assert.Equal(Counts(first), Counts(reader.Value));
                Assert.Equal(Texts(first, "layers"), Texts(reader.Value, "layers"));
                foreach (var (a, b) in Numbers(first).Zip(Numbers(reader.Value)))
                {
                    // ezdxf's box is that of chords, no farther off than 1e-4 of a unit.
                    Assert.True(Math.Abs(a - b) < 2e-4, $"{what}: {a} and {b}");
                }
            }
        }
    }

    private static SortedDictionary<string, int> Counts(JsonElement found) => new(
        found.GetProperty("entities").EnumerateObject().ToDictionary(e => e.Name, e => e.Value.GetInt32()), StringComparer.Ordinal);

    private static IEnumerable<string> Texts(JsonElement found, string key) => found.GetProperty(key).EnumerateArray().Select(e => e.GetString()!).Order(StringComparer.Ordinal);

    private static IEnumerable<double> Numbers(JsonElement found) => found.GetProperty("box").EnumerateArray().Select(e => e.GetDouble());
}
