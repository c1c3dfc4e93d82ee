using TopLayout.Geometry;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets;

/// <summary>
/// One face of a layout for one hand. The layout is one master in outside coordinates of a right-handed instrument; this is the only
/// place that mirrors it, contours and anchors alike. Lettering comes after, so letters never mirror.
/// </summary>
public sealed class FaceView
{
    /// <summary>A face as the maker of that hand looks at it, neck up.</summary>
    public FaceView(TopFace face, Hand hand)
    {
        (Face, Hand) = (face, hand);
        Placement = (face == TopFace.Inside) != (hand == Hand.Left) ? Placement.MirroredAcrossY : Placement.Identity;
    }

    /// <summary>The face looked at.</summary>
    public TopFace Face { get; }

    /// <summary>The hand.</summary>
    public Hand Hand { get; }

    /// <summary>From layout to sheet coordinates.</summary>
    public Placement Placement { get; }

    /// <summary>True when bass lies at the sheet's left edge.</summary>
    public bool IsBassLeft => !Placement.Mirrored;

    /// <summary>The word in large letters on the sheet.</summary>
    public string Word => Face == TopFace.Outside ? "OUTSIDE" : "INSIDE";

    /// <summary>A place on the sheet.</summary>
    public Point2 Map(Point2 p) => Placement.Apply(p);

    /// <summary>A contour on the sheet.</summary>
    public Contour Map(Contour c) => c.Placed(Placement);
}
