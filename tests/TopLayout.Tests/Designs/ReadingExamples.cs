namespace TopLayout.Tests.Designs;

/// <summary>For each rule of reading: a text that breaks it, what is then printed to the letter, and a near text that is free of findings.</summary>
internal static class ReadingExamples
{
    public static readonly (string Code, string Fails, string Printed, string Passes)[] All =
    [
        ("TL0001", "units = mm\n", """
            a.toml:1:9: error TL0001: `mm` is not in quotes
              hint: write `units = "mm"`
            """, SampleTable.Least),
        ("TL0002", "\n# only a comment\n", """
            a.toml:1:1: error TL0002: the file holds no key and no section
              hint: begin with `units = "mm"`
            """, SampleTable.Least),
        ("TL0003", "# " + new string('-', 1_000_000), """
            a.toml:1:1: error TL0003: `a.toml` has 1000002 characters; at most 1000000 are read
              hint: name a design file
            """, SampleTable.Least + "# " + new string('-', 900_000)),
        ("TL0004", SampleTable.Least + "[sondhole]\ndiameter = 98\n", """
            a.toml:3:1: error TL0004: there is no section `[sondhole]`
              hint: did you mean `[soundhole]`?
            """, SampleTable.Least + "[soundhole]\ndiameter = 98\n"),
        ("TL0005", SampleTable.Least + "[soundhole]\n  diametr = 98\n", """
            a.toml:4:3: error TL0005: `[soundhole]` has no key `diametr`
              hint: did you mean `diameter`?
            """, SampleTable.Least + "[soundhole]\n  diameter = 98\n"),
        ("TL0006", SampleTable.Least + "[soundhole]\ndiameter = 98\n\ndiameter = 100\n", """
            a.toml:6:1: error TL0006: `diameter` is written twice
              also: a.toml:4:1
              hint: delete one of the two
            """, SampleTable.Least + "[soundhole]\ndiameter = 98\n\n# diameter = 100\n"),
        ("TL0007", "units = \"mm\"\nscale.length = 645\nsoundhole = 98\n", """
            a.toml:3:1: error TL0007: `soundhole` is a section; it is given the number `98`
              hint: write `[soundhole]`, and below it keys such as `diameter = 98`
            """, "units = \"mm\"\nscale.length = 645\nsoundhole = { diameter = 98 }\n"),
        ("TL0008", SampleTable.Least + "[tone_bar]\nlength = 60\n", """
            a.toml:3:1: error TL0008: `tone_bar` may stand several times, so it needs double brackets; it is written `[tone_bar]`
              hint: write `[[tone_bar]]`
            """, SampleTable.Least + "[[tone_bar]]\nlength = 60\n"),
        ("TL0009", SampleTable.Least + Bars(5), """
            a.toml:9:1: error TL0009: `[[tone_bar]]` may stand at most 3 times; this is one more
              hint: delete the ones that are not meant
            """, SampleTable.Least + Bars(3)),
        ("TL1001", "units = \"mm\"\n[scale]\nbody_fret = 12\n", """
            a.toml:2:1: error TL1001: `length` is missing from `[scale]`
              hint: add a line such as `length = 635` below `[scale]`
            """, "units = \"mm\"\n[scale]\nbody_fret = 12\nlength = 635\n"),
        ("TL1002", SampleTable.Least + "[soundhole]\ndiameter = 4\n", """
            a.toml:4:12: error TL1002: `diameter` must be from 10 to 200 mm; it is 4 mm
              hint: did you mean `diameter = "4 in"`?
            """, SampleTable.Least + "[soundhole]\ndiameter = \"4 in\"\n"),
        ("TL1003", SampleTable.Least + "[x_brace]\nangle = \"98\"\n", """
            a.toml:4:9: error TL1003: `angle` must be an angle in degrees, a number; it is the text `98`
              hint: write for example `angle = 98`
            """, SampleTable.Least + "[x_brace]\nangle = 98\n"),
        ("TL1004", SampleTable.Least + "[soundhole]\ndiameter = \"100\"\n", """
            a.toml:4:12: error TL1004: `diameter` must be a length; `100` has no unit
              hint: write a number and `mm`, `cm` or `in`, for example `diameter = "98 mm"`
            """, SampleTable.Least + "[soundhole]\ndiameter = \"100 mm\"\n"),
        ("TL1005", SampleTable.Least + "[[tone_bar]]\nlength = 60\nsawn = \"quarter\"\n", """
            a.toml:5:8: error TL1005: `sawn` must be `flat` or `quarter_sawn`; it is `quarter`
              hint: did you mean `sawn = "quarter_sawn"`?
            """, SampleTable.Least + "[[tone_bar]]\nlength = 60\nsawn = \"quarter_sawn\"\n"),
        ("TL1006", SampleTable.Least + "[x_brace]\nwood = \"sitka_spurce\"\n", """
            a.toml:4:8: error TL1006: `wood` names the wood `sitka_spurce`, which is not known
              hint: did you mean `wood = "sitka_spruce"`?
            """, SampleTable.Least + "[x_brace]\nwood = \"loft_spruce\"\n[[wood]]\nkey = \"loft_spruce\"\n"),
        ("TL1007", SampleTable.Least + "[x_brace]\ntarget = 30\nangle = 98\n", """
            a.toml:5:1: error TL1007: `target` and `angle` say the same thing in different ways; only one may be written
              also: a.toml:4:1
              hint: delete all but one of these lines
            """, SampleTable.Least + "[x_brace]\ntarget = 30\n"),
        ("TL1008", SampleTable.Least + "[cutaway]\n", """
            a.toml:3:1: error TL1008: `[cutaway]` needs `depth` or `radius`
              hint: add one line, such as `depth = 60`
            """, SampleTable.Least + "[cutaway]\nradius = 40\n"),
        ("TL1009", SampleTable.Least + "[soundhole]\ndiameter = -inf\n", """
            a.toml:4:12: error TL1009: `diameter` must be a finite number; it is `-inf`
              hint: write for example `diameter = 98`
            """, SampleTable.Least + "[soundhole]\ndiameter = 9.8e1\n"),
        ("TL1010", SampleTable.Least + "[soundhole]\ndiameter = 120\n", """
            a.toml:4:12: remark TL1010: `diameter` is 120 mm; usual is from 80 to 110 mm
            """, SampleTable.Least + "[soundhole]\ndiameter = 110\n"),
        ("TL1011", "name = \"a name too long for a title block\"\n" + SampleTable.Least, """
            a.toml:1:8: error TL1011: `name` must be one line of 1 to 30 characters; it has 33
              hint: write a short text on one line
            """, "name = \"a name\"\n" + SampleTable.Least),
        ("TL1012", SampleTable.Least + "[[wood]]\nkey = \"Maple\"\n[[wood]]\nkey = \"oak\"\n[[wood]]\nkey = \"oak\"\n", """
            a.toml:4:7: error TL1012: the wood `Maple` is described here, and the built-in table already has it
              hint: give it a key of its own, such as "my_Maple"
            a.toml:8:7: error TL1012: the wood `oak` is described twice
              also: a.toml:6:7
              hint: give it a key of its own, such as "my_oak"
            """, SampleTable.Least + "[[wood]]\nkey = \"my_maple\"\n[[wood]]\nkey = \"oak\"\n"),
    ];

    private static string Bars(int count) => string.Concat(Enumerable.Repeat("[[tone_bar]]\nlength = 60\n", count));
}
