namespace TopLayout.Plans.Sheets;

/// <summary>The usual cautions, short, on sheets that are cut from.</summary>
internal static class Cautions
{
    /// <summary>The part they are drawn under.</summary>
    public const string Part = "cautions";

    /// <summary>For cutting wood with a saw, a router or a laser.</summary>
    public const string Cutting =
        "wood dust harms lungs: extract it; unplug a router to change bits; never leave a laser alone; follow their makers and local rules";
}
