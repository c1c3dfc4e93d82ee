using TopLayout.Drawing;
using TopLayout.Geometry;

namespace TopLayout.Tests.Drawing;

public class LetteringTests
{
    private const string Promised =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 .,:;-–−+±=/()[]°'\"%×Ø<>#&*_!?½¼¾→Λθ·"
        + "@$^~{}|\\≤≥←Δ²³ÄÖÜäöüßéèçÇñåøšž’“”—⌀";

    [Fact]
    public void Has_EveryPromisedCharacter() => Assert.Equal("", string.Concat(Promised.Where(c => !Lettering.Has(c))));

    [Fact]
    public void Strokes_MissingCharacter_IsABox()
    {
        var box = Assert.Single(Lettering.Strokes("\u2603", new Point2(0, 0), 10));

        Assert.False(Lettering.Has('\u2603'));
        Assert.True(box.IsClosed);
        Assert.Equal(4, box.Segments.Length);
    }

    [Fact]
    public void Measure_EveryCharacter_HoldsItsStrokes()
    {
        foreach (var c in Promised.Where(c => c != ' '))
        {
            var text = $"{c}";
            var strokes = Box2.Around(Lettering.Strokes(text, new Point2(0, 0), 2.5).Select(s => s.Bounds));
            Assert.True(Lettering.Measure(text, 2.5).Grown(1e-9).Union(strokes) == Lettering.Measure(text, 2.5).Grown(1e-9), text);
        }
    }

    [Theory]
    [InlineData('H', 0, 100)]
    [InlineData('O', 0, 100)]
    [InlineData('8', 0, 100)]
    [InlineData('x', 0, 68)]
    [InlineData('o', 0, 68)]
    [InlineData('p', -30, 68)]
    [InlineData('g', -30, 68)]
    [InlineData('d', 0, 100)]
    public void Measure_Letter_StandsOnTheGridOfHeights(char letter, double bottom, double top)
    {
        var box = Lettering.Measure($"{letter}", 100);

        Check.Near(bottom, box.Min.Y, 1e-9, "bottom");
        Check.Near(top, box.Max.Y, 1e-9, "top");
    }

    [Fact]
    public void Measure_Figures_AllTakeTheSameRoom()
    {
        Assert.Single("0123456789".Select(c => Lettering.Measure($"{c}", 3).Width).Distinct());
    }

    [Fact]
    public void Measure_TwiceTheHeight_IsTwiceAsWide()
    {
        Check.Near(2 * Lettering.Measure("Wave 12½", 2.5).Width, Lettering.Measure("Wave 12½", 5).Width, 1e-9);
    }

    [Fact]
    public void Strokes_RoundLetters_AreClosedLoops()
    {
        Assert.All("Oo08°", c => Assert.Contains(Lettering.Strokes($"{c}", new Point2(0, 0), 10), s => s.IsClosed));
    }

    [Fact]
    public void Strokes_EveryCurve_RunsOnWithoutAKink()
    {
        foreach (var c in "COSUcoes0689")
        {
            foreach (var stroke in Lettering.Strokes($"{c}", new Point2(0, 0), 100))
            {
                var joints = stroke.Segments.Zip(stroke.Segments.Skip(1)).Where(p => p.First.IsArc && p.Second.IsArc);
                Assert.All(joints, p => Check.Near(1, p.First.TangentAt(1).Dot(p.Second.TangentAt(0)), 1e-3, $"{c} at {p.First.End}"));
            }
        }
    }

    [Fact]
    public void Strokes_EveryPiece_CanBeWrittenAtTwoAndAHalfMillimetres()
    {
        foreach (var stroke in Lettering.Strokes(Promised, new Point2(0, 0), 2.5))
        {
            Assert.All(stroke.Segments, s => Assert.True(s.Length >= Tolerances.ShortestMm, $"{s}"));
        }
    }

    [Fact]
    public void Strokes_LettersOfOneWord_DoNotTouch()
    {
        var text = "AVATAR Type 10½ rffjg LT (WAY)";
        for (var i = 1; i < text.Length; i++)
        {
            var before = Ink(text[..i]);
            var after = Ink(text[..(i + 1)]).Skip(before.Count).ToList();
            Assert.All(after, a => Assert.DoesNotContain(before, b => a.Segments.Any(s => b.Segments.Any(t => Intersections.Of(s, t).Count > 0))));
        }

        static IReadOnlyList<Contour> Ink(string part) => Lettering.Strokes(part, new Point2(0, 0), 5);
    }

    [Theory]
    [InlineData(Alignment.Left, 0)]
    [InlineData(Alignment.Centre, 0.5)]
    [InlineData(Alignment.Right, 1)]
    public void Frame_Alignment_PutsTheAnchorAtItsEnd(Alignment alignment, double share)
    {
        var label = new LabelShape("a", Role.Text, "Hamburg", new Point2(50, 20), 5, alignment, Angle.FromDegrees(90));

        var width = Lettering.Measure("Hamburg", 5).Width;
        Check.Near(20 - (share * width), label.BaselineStart.Y, 1e-9, "start along the baseline");
        Check.Near(50, label.BaselineStart.X, 1e-9, "baseline");
        Check.Near(width, label.Frame.Bounds.Height, 1e-9, "turned width");
    }

    [Fact]
    public void Lines_TurnedLabel_LieInItsFrame()
    {
        var label = new LabelShape("a", Role.Text, "(gjpqy) Ø98", new Point2(7, -3), 4, Alignment.Right, Angle.FromDegrees(37));

        var frame = label.Frame.Grown(1e-6);
        Assert.All(label.Lines.SelectMany(l => l.Vertices), v => Assert.True(frame.Holds(v.Position)));
    }

    [Theory]
    [InlineData("Ø98 × 4½ mm ± 0.5°", "dia 98 x 4 1/2 mm +/- 0.5 deg")]
    [InlineData("Ø 98", "dia 98")]
    [InlineData("Λ = 12 – θ → 3", "Lambda = 12 - theta -> 3")]
    [InlineData("Ørsted, Flügel, Łódź, façade", "Orsted, Flugel, Lodz, facade")]
    [InlineData("“quoted” ’s", "\"quoted\" 's")]
    [InlineData("½ of ☃", "1/2 of ?")]
    public void PlainAscii_Signs_AreSpelledOut(string text, string plain) => Assert.Equal(plain, PlainAscii.Of(text));
}
