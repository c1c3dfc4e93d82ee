using TopLayout.Lutherie.Parts;

namespace TopLayout.Tests.Parts;

public class ScaleTests
{
    /// <summary>
    /// Twelve-tone equal temperament: string length halves in twelve equal ratios (2^(1/12) per fret; ISO 16:1975 fixes the pitch, the division is the
    /// textbook one). The values are worked by hand from S(2^(−n/12) − 2^(−k/12)) to a tenth of a mm.
    /// </summary>
    [Theory]
    [InlineData(645, 14, 20, 287.3, 84.2)]
    [InlineData(650, 12, 19, 325.0, 108.1)]
    [InlineData(432, 14, 14, 192.4, 0)]
    [InlineData(545, 14, 14, 242.8, 0)]
    public void Frets_WorkedScales_SaddleAndFretAgree(double scale, int join, int fret, double saddle, double fromNeckEdge)
    {
        var frets = new Frets(scale, join);

        Check.Near(saddle, frets.SaddleFromNeckEdge, 0.05, "saddle");
        Check.Near(fromNeckEdge, frets.FromNeckEdge(fret), 0.05, "fret");
        Check.Near(scale / 2, frets.FromNut(12), 1e-9, "the octave halves the string");
        Check.Near(frets.FromNut(fret), frets.NeckEdgeFromNut + frets.FromNeckEdge(fret), 1e-9, "nut to fret by way of the neck edge");
    }

    [Fact]
    public void Saddle_PresetAuditorium_BassEndIsSetBackFurther()
    {
        var layout = Built.Preset("auditorium");

        Check.Near(287.3 + 4.5, -layout.Saddle.Bass.Y, 0.05, "bass");
        Check.Near(287.3 + 2, -layout.Saddle.Treble.Y, 0.05, "treble");
        Check.Near(55, layout.Saddle.Treble.X - layout.Saddle.Bass.X, 1e-9, "spread");
    }
}
