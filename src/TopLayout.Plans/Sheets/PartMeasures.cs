using TopLayout.Drawing;
using TopLayout.Geometry;
using TopLayout.Lutherie.Designs;
using TopLayout.Lutherie.Parts;
using TopLayout.Lutherie.Woods;

namespace TopLayout.Plans.Sheets;

/// <summary>What the template of a part says: its sizes, its stuff, and where each piece goes.</summary>
internal static class PartMeasures
{
    /// <summary>Its sizes, from the neck end down, each with its height on the sheet, mm; at the front and the rear edge where they differ.</summary>
    public static IEnumerable<(double Y, string Text)> Sizes(Member member, LengthUnit units)
    {
        string Of(double mm) => LengthText.WithUnit(mm, units);
        var (outer, box) = (member.Footprint.Outer, member.Footprint.Bounds);
        if (member.Footprint.Loops.Length == 2)
        {
            var inner = member.Footprint.Loops[1];
            var (outside, inside) = (FullCircle.Of(outer), FullCircle.Of(inner));
            yield return (box.Max.Y, outside is { } o ? $"outside diameter {Of(2 * o.RadiusMm)}" : $"outside {Of(box.Width)} x {Of(box.Height)}");
            yield return (inner.Bounds.Max.Y, inside is { } i ? $"inside diameter {Of(2 * i.RadiusMm)}" : $"inside {Of(inner.Bounds.Width)} x {Of(inner.Bounds.Height)}");
        }
        else if (Widths(outer) is var (front, rear) && Math.Abs(front - rear) > Tolerances.ShortestMm)
        {
            yield return (box.Max.Y, $"front edge {Of(front)} wide");
            yield return (box.Center.Y, $"{Of(box.Height)} from front to rear edge");
            yield return (box.Min.Y, $"rear edge {Of(rear)} wide");
        }
        else
        {
            yield return (box.Center.Y, $"{Of(box.Width)} x {Of(box.Height)}");
        }
    }

    /// <summary>How thick it is, of what, and how that is sawn where the design says so: "1.5 mm thick, Sitka spruce, quarter-sawn".</summary>
    public static string Stuff(Member member, LengthUnit units)
    {
        var material = member.Material!;
        var thick = LengthText.WithUnit(member.ThicknessMm, units) + (member.Kind == MemberKind.Block ? " deep, through the rim" : " thick");
        return material.Sawing switch
        {
            Sawing.Quarter => $"{thick}, {material.Wood.Name}, quarter-sawn",
            Sawing.Flat => $"{thick}, {material.Wood.Name}, flat-sawn",
            _ => $"{thick}, {material.Wood.Name}",
        };
    }

    /// <summary>Where one piece lies along the body and across it, by its ends, or by its middle where it is round.</summary>
    public static string Place(Member member, LengthUnit units)
    {
        string Of(double mm) => LengthText.WithUnit(mm, units);
        var box = member.Footprint.Bounds;
        if (FullCircle.Of(member.Footprint.Outer) is { } circle)
        {
            return $"centre {Of(-circle.Center.Y)} from neck edge, {Across(circle.Center.X, units)}";
        }

        return $"{LengthText.Of(-box.Max.Y, units)} to {Of(-box.Min.Y)} from neck edge, {Across(box.Min.X, box.Max.X, units)}";
    }

    private static string Across(double x, LengthUnit units) =>
        Math.Abs(x) <= Tolerances.ShortestMm ? "on the centre line" : $"{LengthText.Of(Math.Abs(x), units)} to {Side(x)} of the centre line";

    private static string Across(double from, double to, LengthUnit units)
    {
        string Of(double mm) => LengthText.Of(Math.Abs(mm), units);
        var (near, far) = Math.Abs(from) <= Math.Abs(to) ? (from, to) : (to, from);
        return Math.Abs(from + to) <= Tolerances.ShortestMm ? "middle on the centre line"
            : from * to < 0 ? $"{Of(from)} to bass and {Of(to)} to treble of the centre line"
            : $"{Of(near)} to {Of(far)} to {Side(far)} of the centre line";
    }

    private static string Side(double x) => x < 0 ? "bass" : "treble";

    // At the neck end and at the tail end of a part of four straight sides; null for another.
    private static (double Front, double Rear)? Widths(Contour outer)
    {
        var (box, level) = (outer.Bounds, outer.Segments.Where(s => !s.IsArc && Math.Abs(s.Start.Y - s.End.Y) <= Tolerances.TouchMm).ToList());
        double? At(double y) => level.Where(s => Math.Abs(s.Start.Y - y) <= Tolerances.TouchMm).Select(s => (double?)s.Length).FirstOrDefault();
        return outer.Segments.Length == 4 && At(box.Max.Y) is { } front && At(box.Min.Y) is { } rear ? (front, rear) : null;
    }
}
