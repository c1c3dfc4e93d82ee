using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>Where the saddle falls on the body, as a share of its length: scale and join fret may be right and yet put the bridge in a poor place.</summary>
public static class SaddlePlaceCheck
{
    /// <summary>Lowest usual share: octave mandolins and fourteen-fret bodies. From the usual scales and bodies; common practice, no source.</summary>
    public const double UsualLow = 0.53;

    /// <summary>Highest usual share: twelve-fret bodies. Common practice, no source.</summary>
    public const double UsualHigh = 0.69;

    /// <summary>One finding.</summary>
    public static IEnumerable<Finding> Of(Layout layout)
    {
        var length = layout.Outline.Bounds.Height;

        // To a tenth of a percent, as it is said.
        var share = Math.Round(layout.Frets.SaddleFromNeckEdge / length, 3);
        var isUsual = share is >= UsualLow and <= UsualHigh;
        yield return new Finding(
            Rules.SaddlePlace,
            isUsual ? Severity.Pass : Severity.Remark,
            "saddle",
            $"the saddle lies at {Say.Tenth(share * 100)} % of the body's length; usual is from {Say.Percent(UsualLow)} to {Say.Percent(UsualHigh)}")
        {
            Measured = new Measurement(share, "", share < UsualLow ? UsualLow : UsualHigh),
            Where = (layout.Saddle.Bass, layout.Saddle.Treble),
            Place = layout.Design[Scale.JoinFret].Place,
            OtherPlaces = [layout.Design[Scale.Length].Place, layout.Body.Place],
            Cure = isUsual ? null : "join the body at another fret, or change the scale or the body's length",
        };
    }
}
