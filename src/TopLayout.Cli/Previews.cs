using System.CommandLine;
using System.Globalization;
using TopLayout.Plans;
using TopLayout.Plans.Sheets;
using TopLayout.Preview;

namespace TopLayout.Cli;

/// <summary>The option <c>--preview</c>: pictures of the sheets, and one of all of them.</summary>
internal static class Previews
{
    private const double UsualDpi = 96;
    private const double LeastDpi = 20;
    private const double MostDpi = 400;

    /// <summary>Room for the pictures that are painted at once; one is painted in any case.</summary>
    private const long MostBytes = 1L << 29;

    private const string Plans = "Plans and numbers";
    private const string Templates = "Templates to cut";
    private const string Parts = "Flat parts";
    private const string Steps = "Steps of the work";
    private const string Withheld = " - a check failed: templates are left out, --cut-anyway writes them";

    /// <summary>The file that shows all sheets.</summary>
    public const string ContactSheetName = "contact-sheet.png";

    /// <summary>What keeps this machine from painting, in a sentence; null when nothing does.</summary>
    public static string? Problem { get; } = NativePart.Loads
        ? null
        : "no previews were written: the library that paints them (libSkiaSharp) cannot be loaded on this machine; everything else is there";

    /// <summary>The option; 96 dots per inch when no number is given.</summary>
    public static Option<double?> Option() => new("--preview")
    {
        Description = "also write every sheet as a picture (PNG), at 96 dots per inch or as many as given, and contact-sheet.png with all of them; stands after the design",
        HelpName = "dpi",
        Arity = ArgumentArity.ZeroOrOne,
        CustomParser = result =>
        {
            if (result.Tokens.Count == 0)
            {
                return UsualDpi;
            }

            var given = result.Tokens[0].Value;
            if (double.TryParse(given, NumberStyles.Float, CultureInfo.InvariantCulture, out var dpi) && dpi is >= LeastDpi and <= MostDpi)
            {
                return dpi;
            }

            result.AddError($"`--preview` takes dots per inch from 20 to 400, or nothing; it is `{given}`");
            return null;
        },
    };

    /// <summary>The pictures of the sheets; none when none are asked for, or when this machine cannot paint.</summary>
    public static IReadOnlyList<OutputFile> Of(IReadOnlyList<DrawnSheet> sheets, double? dpi, bool isWithheld, Action<string, int, int> begins)
    {
        if (dpi is not { } dots || Problem is not null || sheets.Count == 0)
        {
            return [];
        }

        var kinds = ByKind(sheets).Select((k, i) => i == 0 && isWithheld ? (k.Heading + Withheld, k.Sheets) : k).ToList();
        List<(string Name, Action<Stream> Paint)> pictures = [(ContactSheetName, s => ContactSheet.Write(kinds, s))];
        pictures.AddRange(sheets.Select(d => (d.Path + ".png", (Action<Stream>)(s => PngWriter.Write(d.Sheet, s, dots)))));
        var most = Math.Max(1, (int)(MostBytes / sheets.Max(d => PngWriter.Bytes(d.Sheet, dots))));
        return SideBySide.Each(pictures, p => OutputFile.Written(p.Name, p.Paint), (p, n) => begins(p.Name, n, pictures.Count), most);
    }

    // Plans, what is cut by, parts, steps: each in the order drawn.
    private static IEnumerable<(string Heading, IReadOnlyList<Drawing.Sheet> Sheets)> ByKind(IReadOnlyList<DrawnSheet> sheets) =>
        ((string[])[Plans, Templates, Parts, Steps]).Select(k => (k, Sheets: (IReadOnlyList<Drawing.Sheet>)[.. sheets.Where(d => KindOf(d.Path) == k).Select(d => d.Sheet)])).Where(k => k.Sheets.Count > 0);

    private static string KindOf(string path)
    {
        var entry = SheetCatalog.All.Where(e => e.Folder.Length > 0 ? path.StartsWith(e.Folder + "/", StringComparison.Ordinal) : path.StartsWith(e.Name, StringComparison.Ordinal)).MaxBy(e => e.Name.Length)!;
        return entry.Folder switch
        {
            "parts" => Parts,
            "steps" => Steps,
            _ => entry.IsCutFile ? Templates : Plans,
        };
    }
}
