using SkiaSharp;
using Xunit.Abstractions;

namespace TopLayout.EndToEnd.Tests;

/// <summary>Pictures of the sheets, beside those that librsvg makes of the same sheets' SVG.</summary>
public class PreviewTests(ITestOutputHelper output)
{
    private const int Dpi = 150;

    // Whatever is darker than the palest grey of smoothing.
    private const byte Paper = 240;

    [Fact]
    public void Preview_OfASheet_IsThePictureThatLibrsvgMakesOfItsSvg()
    {
        using var desk = new Desk();
        var run = Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", desk.At("plans"), "--only", "inside-plan", "--only", "rosette", "--only", "steps", "--preview", $"{Dpi}");

        Assert.Equal(0, run.Code);
        foreach (var sheet in (string[])["inside-plan", "rosette", "steps/3-bracing"])
        {
            var file = Path.Combine(desk.At("plans"), sheet);
            if (!OutsideReader.Picture(output, file + ".svg", desk.At("stranger.png"), Dpi))
            {
                return;
            }

            using var ours = SKBitmap.Decode(file + ".png");
            using var theirs = SKBitmap.Decode(desk.At("stranger.png"));
            Assert.True(Math.Abs(ours.Width - theirs.Width) <= 1 && Math.Abs(ours.Height - theirs.Height) <= 1, $"{sheet}: {ours.Width} x {ours.Height}, {theirs.Width} x {theirs.Height}");
            var (there, here) = (ShareNear(ours, theirs), ShareNear(theirs, ours));
            output.WriteLine($"{sheet}: {there:P3} of our ink is theirs, {here:P3} of theirs is ours");
            Assert.True(there >= 0.99 && here >= 0.99, $"{sheet}: {there:P2}, {here:P2}");
        }
    }

    [Fact]
    public void Preview_IsListedWithTheOtherFilesAndGoesWhenNotAskedFor()
    {
        using var desk = new Desk();
        var (design, folder) = (Toplayout.PresetFile("auditorium"), desk.At("plans"));

        Assert.Equal(0, Toplayout.Run("draw", design, "--out", folder, "--only", "rosette", "--preview").Code);
        Assert.Contains("contact-sheet.png", File.ReadAllText(Path.Combine(folder, "toplayout.files.json")), StringComparison.Ordinal);
        Assert.Equal(["contact-sheet.png", "rosette.png"], Toplayout.Contents(folder).Keys.Where(n => n.EndsWith(".png", StringComparison.Ordinal)));

        // A single sheet leaves the rest of the same design; all of them are all there is.
        Assert.Equal(0, Toplayout.Run("draw", design, "--out", folder, "--only", "rosette").Code);
        Assert.Contains("rosette.png", Toplayout.Contents(folder).Keys);
        Assert.Equal(0, Toplayout.Run("draw", design, "--out", folder).Code);
        Assert.DoesNotContain(Toplayout.Contents(folder).Keys, n => n.EndsWith(".png", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5")]
    [InlineData("1e9")]
    [InlineData("NaN")]
    [InlineData("fine")]
    public void Preview_WithDotsThatCannotBe_SaysWhatIsAllowed(string dpi)
    {
        using var desk = new Desk();
        var run = Toplayout.Run("draw", Toplayout.PresetFile("auditorium"), "--out", desk.At("plans"), "--preview", dpi);

        Assert.Equal(2, run.Code);
        Assert.Contains($"`--preview` takes dots per inch from 20 to 400, or nothing; it is `{dpi}`", run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.At("plans")));
    }

    /// <summary>The program without its native part, as on a machine it was not built for.</summary>
    [Fact]
    public void Preview_WithoutTheNativePart_SaysSoAndWritesTheRest()
    {
        using var desk = new Desk();
        var program = Directory.CreateDirectory(desk.At("program")).FullName;
        foreach (var file in Directory.EnumerateFiles(AppContext.BaseDirectory).Where(f => Path.GetExtension(f) is ".dll" or ".json"))
        {
            File.Copy(file, Path.Combine(program, Path.GetFileName(file)));
        }

        var run = Toplayout.RunFrom(program, "draw", Toplayout.PresetFile("auditorium"), "--out", desk.At("plans"), "--only", "rosette", "--preview");

        Assert.Equal(0, run.Code);
        Assert.Contains("no previews were written: the library that paints them (libSkiaSharp) cannot be loaded", run.Errors, StringComparison.Ordinal);
        Assert.Equal(["rosette-tiles.pdf", "rosette.dxf", "rosette.pdf", "rosette.svg", "toplayout.files.json"], Toplayout.Contents(desk.At("plans")).Keys);
    }

    // The share of the ink of one picture that lies within a pixel of ink of the other.
    private static double ShareNear(SKBitmap of, SKBitmap other)
    {
        var (ink, near) = (0, 0);
        for (var y = 0; y < of.Height; y++)
        {
            for (var x = 0; x < of.Width; x++)
            {
                if (IsInk(of, x, y))
                {
                    ink++;
                    near += IsNearInk(other, x, y) ? 1 : 0;
                }
            }
        }

        return ink == 0 ? 0 : (double)near / ink;
    }

    private static bool IsNearInk(SKBitmap picture, int x, int y) =>
        Enumerable.Range(-1, 3).Any(dy => Enumerable.Range(-1, 3).Any(dx => IsInk(picture, x + dx, y + dy)));

    private static bool IsInk(SKBitmap picture, int x, int y)
    {
        if (x < 0 || y < 0 || x >= picture.Width || y >= picture.Height)
        {
            return false;
        }

        var colour = picture.GetPixel(x, y);
        return Math.Min(colour.Red, Math.Min(colour.Green, colour.Blue)) < Paper;
    }
}
