using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Reports;

/// <summary>A notch of a brace where it crosses another part.</summary>
/// <param name="Bar">The brace that is notched.</param>
/// <param name="DepthMm">How deep, mm.</param>
/// <param name="Face">The face of the brace it is cut into: "free" or "glued".</param>
/// <param name="Over">What it crosses.</param>
internal sealed record Notch(Member Bar, double DepthMm, string Face, string Over);

/// <summary>
/// Where braces are notched: the legs of the X by half their height each, one from its free face, the other from its glued face; struts over the
/// bridge plate by the plate's thickness, from their glued face. Common practice, no source; which leg is which does not matter, so long as
/// the one notched from its free face is glued on first.
/// </summary>
internal static class Notches
{
    private const string Free = "free";
    private const string Glued = "glued";

    /// <summary>All of them, in building order.</summary>
    public static IReadOnlyList<Notch> Of(Layout layout) => [.. layout.Members.Where(m => m.Kind == MemberKind.Bar).SelectMany(b => Of(layout, b))];

    /// <summary>Rows of what, depth and how, for the bench.</summary>
    public static IEnumerable<(string What, double DepthMm, string How)> Rows(Layout layout)
    {
        var all = Of(layout);
        if (all.FirstOrDefault(n => n.Face == Free) is { } first && all.FirstOrDefault(n => n.Bar.Name == first.Over) is { } second)
        {
            yield return ("X legs where they cross: half-lap, each", first.DepthMm, $"{first.Bar.Name} from its free face, glued on first; {second.Bar.Name} from its glued face, over it");
        }

        var overPlate = all.Where(n => n.Over == BridgePlate.Name).ToList();
        if (overPlate.Count > 0)
        {
            yield return ("notch over the bridge plate", overPlate[0].DepthMm, $"in the glued face of {Names(overPlate)}, from the plate's front to its rear edge");
        }
    }

    /// <summary>The notch as the table of braces says it; empty when the brace has none.</summary>
    public static string Words(Layout layout, Member bar) => string.Join("; ", Of(layout, bar).Select(n =>
        LengthText.WithUnit(n.DepthMm, layout.Design.Units) is var depth && n.Over == BridgePlate.Name ? $"{depth} deep over the bridge plate" : $"half-lap, {depth} deep, from its {n.Face} face"));

    private static IEnumerable<Notch> Of(Layout layout, Member bar)
    {
        var legs = (Bass: layout.Find(XBrace.BassLeg), Treble: layout.Find(XBrace.TrebleLeg));
        if (legs is ({ } bass, { } treble) && (bar == bass || bar == treble) && IsOver(bass, treble))
        {
            yield return new Notch(bar, bar.ThicknessMm / 2, bar == bass ? Free : Glued, bar == bass ? treble.Name : bass.Name);
        }

        if (bar.JoinedWith.Contains(BridgePlate.Name) && layout.Find(BridgePlate.Name) is { } plate && IsOver(bar, plate))
        {
            yield return new Notch(bar, plate.ThicknessMm, Glued, plate.Name);
        }
    }

    private static bool IsOver(Member a, Member b) => a.Footprint.Bounds.Overlaps(b.Footprint.Bounds) && a.Footprint.Intersect(b.Footprint).Area > LeastMm2;

    // Less is a touch, mm².
    private const double LeastMm2 = 0.01;

    // "fan struts 2 to 6": they are numbered on from side to side, and the middle ones lie over the plate.
    private static string Names(List<Notch> notches)
    {
        var (first, last) = (notches[0].Bar.Name, notches[^1].Bar.Name);
        var number = first.LastIndexOf(' ') + 1;
        return notches.Count == 1 ? first : $"{first[..(number - 1)]}s {first[number..]} to {last[number..]}";
    }
}
