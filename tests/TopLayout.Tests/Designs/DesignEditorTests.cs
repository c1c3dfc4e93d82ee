using System.Globalization;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;
using TopLayout.Tests.Parts;

namespace TopLayout.Tests.Designs;

/// <summary>One value changed in a text, and nothing else.</summary>
public class DesignEditorTests
{
    private const int Seed = 20261126;

    public static TheoryData<string> Texts => ["auditorium", "straight-tongue", "tapered-tongue", "auditorium, CRLF and mark", "inches"];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Set_AnyParameterToAnyLegalValue_ChangesThatAlone(string name)
    {
        var (text, random, done) = (TextOf(name), new Random(Seed), 0);
        for (var n = 0; n < 1000; n++)
        {
            var design = Read(text);
            var (setting, number) = Drawn(design, random);

            var edit = DesignEditor.Set(text, Parameters.Table, setting, number);

            var which = $"seed {Seed}, {name}, draw {n}: {setting}, number {number}";
            if (edit.Refusal is not null)
            {
                Assert.True(MayBeRefused(setting.Parameter), $"{which}: {edit.Refusal}");
                continue;
            }

            done++;
            Assert.True(text[..edit.From] == edit.Text![..edit.From], which);
            Assert.True(text[(edit.From + edit.Removed)..] == edit.Text[(edit.From + edit.Inserted.Length)..], which);
            var (before, after) = (Lines(design, setting, number), Lines(Read(edit.Text), setting, number));
            Assert.True(before.Others.SequenceEqual(after.Others), which);
            Assert.True(after.Own.SequenceEqual([setting.Canonical]), which);

            // Every third edit stays, so that edits stand on edits.
            text = n % 3 == 0 ? edit.Text : text;
        }

        Assert.True(done > 700, $"{name}: only {done} edits");
    }

    [Theory]
    [InlineData("units = \"mm\"\nscale.length = 645 # long\n", 650, "units = \"mm\"\nscale.length = 650 # long\n")]
    [InlineData("units = \"in\"\nscale.length = 25.5\n", 650, "units = \"in\"\nscale.length = 25.5905512\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25 1/2 in\"\n", 654.05, "units = \"mm\"\nscale.length = \"25 3/4 in\"\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25-1/2 in\"\n", 655.6375, "units = \"mm\"\nscale.length = \"25-13/16 in\"\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25 1/2 in\"\n", 660.4, "units = \"mm\"\nscale.length = \"26 in\"\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25 1/2 in\"\n", 650, "units = \"mm\"\nscale.length = \"25.5905512 in\"\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25 1/3 in\"\n", 651.933333333, "units = \"mm\"\nscale.length = \"25 2/3 in\"\n")]
    [InlineData("units = \"mm\"\nscale.length = '25 1/2\"'\n", 654.05, "units = \"mm\"\nscale.length = '25 3/4\"'\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25 1/2\\\"\"\n", 654.05, "units = \"mm\"\nscale.length = \"25 3/4\\\"\"\n")]
    [InlineData("units = \"in\"\nscale.length = \"64.5cm\"\n", 650.5, "units = \"in\"\nscale.length = \"65.05cm\"\n")]
    [InlineData("units = \"mm\"\nscale.length = 6.45e2\n", 645, "units = \"mm\"\nscale.length = 6.45e2\n")]
    [InlineData("units = \"mm\"\nscale.length = \"25.40 in\"\n", 645.16, "units = \"mm\"\nscale.length = \"25.40 in\"\n")]
    [InlineData("\uFEFFunits = \"mm\"\r\n[scale]\r\nlength=645# é\r\n", 650, "\uFEFFunits = \"mm\"\r\n[scale]\r\nlength=650# é\r\n")]
    public void Set_ALength_IsWrittenInTheStyleItHad(string text, double millimetres, string expected) =>
        Assert.Equal(expected, DesignEditor.Set(text, SampleTable.Table, SampleTable.ScaleLength.To(millimetres)).Text);

    [Theory]
    [InlineData("units = \"mm\"\nscale.length = 645\n", "units = \"mm\"\nscale.length = 645\n\n[soundhole]\ndiameter = 95\n")]
    [InlineData("units = \"mm\"\nscale.length = 645", "units = \"mm\"\nscale.length = 645\n\n[soundhole]\ndiameter = 95\n")]
    [InlineData("units = \"in\"\r\nscale.length = 25\r\n", "units = \"in\"\r\nscale.length = 25\r\n\r\n[soundhole]\r\ndiameter = 3.74015748\r\n")]
    [InlineData("units = \"mm\"\nscale.length = 645\nsoundhole = { }\n", "units = \"mm\"\nscale.length = 645\nsoundhole = { diameter = 95  }\n")]
    [InlineData(
        "units = \"mm\"\nscale.length = 645\nsoundhole = { position = 0.3 } # here\n",
        "units = \"mm\"\nscale.length = 645\nsoundhole = { position = 0.3, diameter = 95 } # here\n")]
    [InlineData(
        "units = \"mm\"\nsoundhole.position = 0.3\nscale.length = 645\n",
        "units = \"mm\"\nsoundhole.position = 0.3\nsoundhole.diameter = 95\nscale.length = 645\n")]
    [InlineData(
        "units = \"mm\"\nscale.length = 645\n[soundhole]   # the hole\n\n[season]\n",
        "units = \"mm\"\nscale.length = 645\n[soundhole]   # the hole\ndiameter = 95\n\n[season]\n")]
    [InlineData(
        "units = \"mm\"\nscale.length = 645\n[soundhole]\n  position = 0.3 # a note\n\n# about the season\n[season]\n",
        "units = \"mm\"\nscale.length = 645\n[soundhole]\n  position = 0.3 # a note\n  diameter = 95\n\n# about the season\n[season]\n")]
    [InlineData("units = \"mm\"\nscale.length = 645\n[soundhole]", "units = \"mm\"\nscale.length = 645\n[soundhole]\ndiameter = 95")]
    public void Set_AMissingKey_GoesAfterItsSectionsLastLine(string text, string expected) =>
        Assert.Equal(expected, DesignEditor.Set(text, SampleTable.Table, SampleTable.Diameter.To(95)).Text);

    [Fact]
    public void Set_WordsTextsAndCounts_KeepTheirQuotesAndPlace()
    {
        const string Text = SampleTable.Least + "[[tone_bar]]\nlength = 60\n[[tone_bar]]\nlength = 70\nsawn = 'flat'\n";

        Assert.Equal(
            Text.Replace("'flat'", "'quarter_sawn'", StringComparison.Ordinal),
            DesignEditor.Set(Text, SampleTable.Table, SampleTable.BarSawing.To(SampleTable.Sawing.QuarterSawn), 2).Text);
        Assert.Equal(Text.Replace("70", "75.5", StringComparison.Ordinal), DesignEditor.Set(Text, SampleTable.Table, SampleTable.BarLength.To(75.5), 2).Text);
        Assert.Equal(
            "units = \"mm\"\nname = \"a \\\"b\\\" \\\\ c\"\nscale.length = 645\n",
            DesignEditor.Set("units = \"mm\"\nscale.length = 645\n", SampleTable.Table, SampleTable.Name.To("a \"b\" \\ c")).Text);
    }

    [Fact]
    public void Set_TheOtherMemberOfAGroup_ReplacesTheAssumedOneOnly()
    {
        Assert.Equal(SampleTable.Least + "\n[x_brace]\ntarget = 30\n", DesignEditor.Set(SampleTable.Least, SampleTable.Table, SampleTable.XTarget.To(30)).Text);
        Assert.Equal(
            "`angle` and `target` say the same thing in different ways; only one may be written",
            DesignEditor.Set(SampleTable.Least + "x_brace.angle = 98\n", SampleTable.Table, SampleTable.XTarget.To(30)).Refusal);
    }

    [Fact]
    public void Set_WhatCannotBe_IsRefusedWithTheReason()
    {
        Assert.Equal("`diameter` must be from 10 to 200 mm; it is 500 mm", Refusal(SampleTable.Least, SampleTable.Diameter.To(500)));
        Assert.Equal(
            "it would change `flat_brace.width` too",
            Refusal("units = \"mm\"\nscale.length = \"645 mm\"\nflat_brace.width = 2\n", ParameterTable.Units.To(LengthUnit.Inch)));
        Assert.Equal("the design has no `[flat_brace]`; one key of it would add the whole part", Refusal(SampleTable.Least, SampleTable.FlatWidth.To(20)));
        Assert.Equal("the design has no `[[tone_bar]]` number 1", Refusal(SampleTable.Least, SampleTable.BarLength.To(60)));
        Assert.Equal("the design cannot be read as it is: `units` is missing from the top of the file", Refusal("scale.length = 645\n", SampleTable.Diameter.To(95)));
        Assert.NotEmpty(Refusal(SampleTable.Least, SampleTable.Diameter.To(double.NaN)));
    }

    [Fact]
    public void Set_BodyOfADesignThatLeavesValuesOut_IsRefused() => Assert.Equal(
        "it would change `bridge.depth` too",
        DesignEditor.Set("name = \"n\"\nunits = \"mm\"\nscale.length = 645\n", Parameters.Table, Body.Type.To(BodyType.TenorUkulele)).Refusal);

    private static string Refusal(string text, Setting setting) => DesignEditor.Set(text, SampleTable.Table, setting).Refusal!;

    private static bool MayBeRefused(Parameter parameter) =>
        parameter == ParameterTable.Units || parameter == Body.Type || parameter == OwnWood.Key || Parameters.Table.Groups.Any(g => g.Members.Contains(parameter));

    private static string TextOf(string name) => name switch
    {
        "auditorium, CRLF and mark" => "\uFEFF" + Built.PresetText("auditorium").Replace("\n", "\r\n", StringComparison.Ordinal),
        "inches" => "name = 'n'\nunits = \"in\"\nscale.length = 25.4\noutline = { length = '19 3/4\"', lower_width = \"15 5/8 in\" }\nlining.width = \"1/4 in\"\n"
            + "[soundhole] # é\n\tdiameter = \"4-1/16 in\"\n[[wood]]\nkey = \"plum\"\nname = \"plum\"\nsource = \"garden\"\n[tongue]\nwood = 'plum'",
        _ => Built.PresetText(name),
    };

    private static Design Read(string text)
    {
        var reading = DesignReader.Read(text, "t.toml", Parameters.Table);
        Assert.True(reading.Design is not null, SampleTable.Printed(reading));
        return reading.Design;
    }

    private static (List<string> Own, List<string> Others) Lines(Design design, Setting setting, int number)
    {
        var section = setting.Parameter.Section;
        var own = section.IsRoot ? $"{setting.Parameter.Key} = "
            : section.Presence == SectionPresence.Repeatable ? string.Create(CultureInfo.InvariantCulture, $"{section.Key}.{number:00}.{setting.Parameter.Key} = ")
            : $"{setting.Parameter.Path} = ";
        var siblings = Parameters.Table.Groups.Where(g => g.Members.Contains(setting.Parameter)).SelectMany(g => g.Members).Select(m => $"{m.Path} = ").ToList();
        return (
            [.. design.Resolved.Where(l => l.StartsWith(own, StringComparison.Ordinal)).Select(l => l[own.Length..])],
            [.. design.Resolved.Where(l => !l.StartsWith(own, StringComparison.Ordinal) && !siblings.Any(s => l.StartsWith(s, StringComparison.Ordinal)))]);
    }

    private static (Setting Setting, int Number) Drawn(Design design, Random random)
    {
        var parameters = Parameters.Table.Parameters.Where(p => design.Has(p.Section)).ToList();
        var parameter = parameters[random.Next(parameters.Count)];
        var canonical = parameter.Kind switch
        {
            ParameterKind.Choice => parameter.Words[random.Next(parameter.Words.Count)],
            ParameterKind.Wood => WoodTable.All[random.Next(WoodTable.All.Length)].Key,
            ParameterKind.Text => new[] { "A", "b \"c\"", "d'e", "f # g", "\\h", "é" }[random.Next(6)],
            ParameterKind.Count => random.Next((int)parameter.Possible!.Value.Low, (int)parameter.Possible.Value.High + 1).ToString(CultureInfo.InvariantCulture),
            _ => Number(parameter.Possible!.Value, random),
        };
        return (parameter.Parse(canonical)!, random.Next(1, design.Each(parameter.Section).Length + 1));
    }

    // Some whole, some in 32nds of an inch, some with every decimal.
    private static string Number((double Low, double High) range, Random random)
    {
        var value = range.Low + ((range.High - range.Low) * random.NextDouble());
        value = random.Next(3) switch
        {
            0 => Math.Round(value),
            1 => Math.Round(value / 25.4 * 32) / 32 * 25.4,
            _ => value,
        };
        return Math.Clamp(Math.Round(value, 6), range.Low, range.High).ToString(CultureInfo.InvariantCulture);
    }
}
