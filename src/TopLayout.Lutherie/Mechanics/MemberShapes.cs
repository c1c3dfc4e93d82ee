using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Mechanics;

/// <summary>The shapes of all members, and which of them lie near a place: columns across the top, each with the members that reach into it.</summary>
internal sealed class MemberShapes
{
    private const double ColumnMm = 25;

    private readonly Dictionary<int, List<int>> _columns = [];

    public MemberShapes(IEnumerable<Member> members)
        : this(members.Select(m => new MemberShape(m)))
    {
    }

    public MemberShapes(IEnumerable<MemberShape> shapes)
    {
        All = [.. shapes];
        for (var i = 0; i < All.Length; i++)
        {
            for (var column = Column(All[i].Bounds.Min.X); column <= Column(All[i].Bounds.Max.X); column++)
            {
                (_columns.TryGetValue(column, out var list) ? list : _columns[column] = []).Add(i);
            }
        }
    }

    public MemberShape[] All { get; }

    /// <summary>The members whose box may meet another, in their order.</summary>
    public IEnumerable<MemberShape> Near(Box2 box)
    {
        var (first, last) = (Column(box.Min.X), Column(box.Max.X));
        if ((last - first) * 2 >= _columns.Count)
        {
            return All;
        }

        var found = new List<int>();
        for (var column = first; column <= last; column++)
        {
            foreach (var i in _columns.TryGetValue(column, out var list) ? list : [])
            {
                if (All[i].Bounds.Overlaps(box))
                {
                    found.Add(i);
                }
            }
        }

        found.Sort();
        var near = new List<MemberShape>(found.Count);
        for (var k = 0; k < found.Count; k++)
        {
            if (k == 0 || found[k] != found[k - 1])
            {
                near.Add(All[found[k]]);
            }
        }

        return near;
    }

    private static int Column(double x) => (int)Math.Floor(x / ColumnMm);
}
