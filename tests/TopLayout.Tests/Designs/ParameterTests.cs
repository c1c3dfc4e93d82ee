using TopLayout.Lutherie.Designs;

namespace TopLayout.Tests.Designs;

public class ParameterTests
{
    [Fact]
    public void AllowedText_OfEachKind_CarriesItsUnit()
    {
        Assert.Equal("from 10 to 200 mm", SampleTable.Diameter.AllowedText());
        Assert.Equal("from 0.394 to 7.874 in", SampleTable.Diameter.AllowedText(LengthUnit.Inch));
        Assert.Equal("from 60 to 130°", SampleTable.XAngle.AllowedText());
        Assert.Equal("from 0 to 1", SampleTable.Position.AllowedText());
        Assert.Equal("from 5 to 95 %", SampleTable.Humidity.AllowedText());
        Assert.Equal("from -10 to 50 °C", SampleTable.Warmth.AllowedText());
        Assert.Equal("from 10 to 18", SampleTable.BodyFret.AllowedText());
        Assert.Equal("`flat` or `quarter_sawn`", SampleTable.BarSawing.AllowedText());
        Assert.Equal("one line of 1 to 30 characters", SampleTable.Name.AllowedText());
        Assert.Equal("the key of a wood", SampleTable.XWood.AllowedText());
    }

    [Fact]
    public void Texts_OfALength_FollowTheUnit()
    {
        Assert.Equal("soundhole.diameter", SampleTable.Diameter.Path);
        Assert.Equal("from 80 to 110 mm", SampleTable.Diameter.UsualText());
        Assert.Equal("98 mm", SampleTable.Diameter.DefaultText());
        Assert.Equal("3.8583 in", SampleTable.Diameter.DefaultText(LengthUnit.Inch));
        Assert.Equal("diameter = 98", SampleTable.Diameter.ExampleLine());
        Assert.Equal("diameter = 3.86", SampleTable.Diameter.ExampleLine(LengthUnit.Inch));
        Assert.Equal("diameter = 4.3125", SampleTable.Diameter.Line(109.5375, LengthUnit.Inch));
        Assert.Null(SampleTable.ScaleLength.DefaultText());
    }

    [Fact]
    public void Need_ComesFromDefaultAndOptional()
    {
        Assert.Equal(ParameterNeed.Required, SampleTable.ScaleLength.Need);
        Assert.Equal(ParameterNeed.Defaulted, SampleTable.Diameter.Need);
        Assert.Equal(ParameterNeed.Optional, SampleTable.XTarget.Need);
        Assert.Throws<InvalidOperationException>(() => SampleTable.Diameter.Optional());
    }

    [Fact]
    public void ExampleLine_OfEveryParameter_IsReadWithoutFinding() => Assert.All(
        SampleTable.Table.Parameters.Where(p => p.Section.Presence == SectionPresence.Always && p.Need != ParameterNeed.Optional),
        parameter => Assert.All(
            [LengthUnit.Millimetre, LengthUnit.Inch],
            unit =>
            {
                var others = SampleTable.Table.Parameters.Where(p => p.Need == ParameterNeed.Required && p.Section.Presence == SectionPresence.Always && p != parameter);
                var lines = others.Append(parameter).Select(p => p.Section.IsRoot ? Line(p, unit) : $"{p.Section.Key}.{Line(p, unit)}");
                SampleTable.FindsNothing(string.Join("\n", lines));
            }));

    [Fact]
    public void Table_Misused_Throws()
    {
        Assert.Throws<ArgumentException>(() => Parameter.Length(SampleTable.Soundhole, "x", "x", possible: (10, 20), fallback: 5));
        Assert.Throws<ArgumentException>(() => new ParameterTable([SampleTable.Scale], [SampleTable.Diameter]));
        Assert.Throws<ArgumentException>(() => new ParameterTable([SampleTable.Scale, SampleTable.Scale], []));
        Assert.Throws<ArgumentException>(() => new ParameterTable([SampleTable.Scale], [SampleTable.ScaleLength, SampleTable.ScaleLength]));
        Assert.Throws<ArgumentException>(() => ExactlyOneOf.Required(SampleTable.XTarget, SampleTable.Diameter));
        Assert.Throws<ArgumentException>(() => new ParameterTable([SampleTable.XBrace], [], [ExactlyOneOf.Required(SampleTable.XTarget, SampleTable.XAngle)]));
    }

    private static string Line(Parameter parameter, LengthUnit unit) => parameter == ParameterTable.Units
        ? ParameterTable.Units.Line(unit)
        : parameter.ExampleLine(unit);
}
