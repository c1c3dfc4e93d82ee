using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>The walls of all channels, each once: one that two channels share belongs to the inner of them.</summary>
internal static class ChannelWalls
{
    /// <summary>The walls from the hole outward, in layout coordinates, with the channel they belong to.</summary>
    public static IEnumerable<(Member Channel, Contour Wall)> Of(Layout layout)
    {
        var drawn = new List<Box2>();
        foreach (var channel in layout.Members.Where(m => m.Kind == MemberKind.Channel))
        {
            foreach (var wall in channel.Footprint.Loops)
            {
                // Walls run round one centre, so that two of one size are one.
                var box = wall.Bounds;
                if (!drawn.Exists(d => Math.Abs(d.Width - box.Width) <= Tolerances.TouchMm))
                {
                    drawn.Add(box);
                    yield return (channel, wall);
                }
            }
        }
    }
}
