using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.CompilerServices;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>
/// Programs that read our files without sharing a line with us. On a desk where one is missing the test says so and ends; where
/// the environment says CI=true it fails.
/// </summary>
internal static class OutsideReader
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Has tests/readers/check-drawing read a drawing and demands that it finds nothing; what it said, null where it cannot run.</summary>
    public static string? CheckDrawing(ITestOutputHelper output, params string[] arguments)
    {
        if ((Missing("rsvg-convert", "--version") ?? Missing("/usr/bin/python3", "-c", "import ezdxf") ?? Missing("qpdf", "--version") ?? Missing("pdftoppm", "-v")) is { } missing)
        {
            Skip(output, missing);
            return null;
        }

        var (code, text) = Run("/usr/bin/python3", [Script("check-drawing"), .. arguments]);
        output.WriteLine(text);
        Assert.True(code == 0, text);
        return text;
    }

    /// <summary>The words of a PDF as poppler reads them, lines joined; null where it is not there.</summary>
    public static string? Words(ITestOutputHelper output, string file)
    {
        if (Missing("pdftotext", "-v") is { } missing)
        {
            Skip(output, missing);
            return null;
        }

        var (code, text) = Run("pdftotext", ["-raw", file, "-"]);
        Assert.True(code == 0, text);
        return text;
    }

    /// <summary>A picture of a PDF as chromium shows it; false where it is not installed, which is no fault: it is too large to ask for.</summary>
    public static bool BrowserPicture(ITestOutputHelper output, string file, string png)
    {
        if (Missing("chromium", "--version") is { } missing)
        {
            output.WriteLine($"skipped: {missing} is not there");
            return false;
        }

        var (code, text) = Run("/usr/bin/python3", [Script("browser-picture"), file, png]);
        Assert.True(code == 0 && File.Exists(png), text);
        return true;
    }

    /// <summary>What tests/readers/measure-dxf measures in DXF files, as JSON; null where it cannot run.</summary>
    public static string? MeasureDxf(ITestOutputHelper output, params string[] files)
    {
        if (Missing("/usr/bin/python3", "-c", "import ezdxf") is { } missing)
        {
            Skip(output, missing);
            return null;
        }

        var (code, text) = Run("/usr/bin/python3", [Script("measure-dxf"), .. files]);
        Assert.True(code == 0, text);
        return text;
    }

    /// <summary>Pages of a PDF as pictures without smoothing, as poppler draws them; null where it is not there.</summary>
    public static IReadOnlyList<Bitmap>? Rasters(ITestOutputHelper output, string file, int pixelsPerMm, string folder)
    {
        if (Missing("pdftoppm", "-v") is { } missing)
        {
            Skip(output, missing);
            return null;
        }

        Directory.CreateDirectory(folder);
        var dpi = (pixelsPerMm * 25.4).ToString(System.Globalization.CultureInfo.InvariantCulture);
        var (code, text) = Run("pdftoppm", ["-r", dpi, "-gray", "-aa", "no", "-aaVector", "no", file, Path.Combine(folder, "page")]);
        Assert.True(code == 0, text);
        return [.. Directory.EnumerateFiles(folder, "page*.pgm").Order(StringComparer.Ordinal).Select(Bitmap.Read)];
    }

    /// <summary>Has librsvg draw an SVG on white paper; false where it is not there.</summary>
    public static bool Picture(ITestOutputHelper output, string svg, string png, int dpi)
    {
        if (Missing("rsvg-convert", "--version") is { } missing)
        {
            Skip(output, missing);
            return false;
        }

        var dots = dpi.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var (code, text) = Run("rsvg-convert", ["-d", dots, "-p", dots, "-b", "white", svg, "-o", png]);
        Assert.True(code == 0, text);
        return true;
    }

    /// <summary>What ezdxf and the two readers in tests/readers/npm find in DXF files, as JSON of each; null where one cannot run.</summary>
    public static (string Ezdxf, string Npm)? CountDxf(ITestOutputHelper output, params string[] files)
    {
        if (Missing("/usr/bin/python3", "-c", "import ezdxf") is { } missing)
        {
            Skip(output, missing);
            return null;
        }

        if (Environment.GetEnvironmentVariable("TOPLAYOUT_NO_NPM") == "1")
        {
            output.WriteLine("skipped: the registry of npm could not be reached");
            return null;
        }

        if (Missing("node", Script("npm/count-dxf.mjs")) is { } reader)
        {
            Skip(output, reader, "npm ci --prefix tests/readers/npm");
            return null;
        }

        var (ezdxf, npm) = (Run("/usr/bin/python3", [Script("count-dxf"), .. files]), Run("node", [Script("npm/count-dxf.mjs"), .. files]));
        Assert.True(ezdxf.Code == 0, ezdxf.Text);
        Assert.True(npm.Code == 0, npm.Text);
        return (ezdxf.Text, npm.Text);
    }

    private static void Skip(ITestOutputHelper output, string missing, string cure = "apt-get install python3-ezdxf librsvg2-bin qpdf poppler-utils")
    {
        var message = $"skipped: {missing} is not there ({cure})";
        output.WriteLine(message);
        Assert.False(Environment.GetEnvironmentVariable("CI") == "true", message);
    }

    private static string? Missing(string program, params string[] arguments)
    {
        try
        {
            return Run(program, arguments).Code == 0 ? null : $"{program} {string.Join(' ', arguments)}";
        }
        catch (Win32Exception)
        {
            return program;
        }
    }

    private static (int Code, string Text) Run(string program, IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(Patience), $"{program} takes longer than {Patience}");
        return (process.ExitCode, text + errors.Result);
    }

    private static string Script(string name, [CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "readers", name);
}
