using TopLayout.Lutherie.Designs;

namespace TopLayout.Lutherie.Parts;

/// <summary>The written list of everything a design file may say, in the order help shows it.</summary>
public static class Parameters
{
    /// <summary>The table.</summary>
    public static ParameterTable Table { get; } = new(
        sections:
        [
            Scale.Section, Fretboard.Section, .. OutlineForms.Sections, Plate.Section, Rim.Sides, Rim.Lining, Binding.Section, Soundhole.Section, Rosette.Section, Rings.Section,
            XBrace.Section, XCap.Section, Bridge.Section, SaddleSlot.Section, BridgePlate.Section, Block.Neck.Section, Tongue.Section, TrussRod.Section, Block.Tail.Section,
            TransverseBrace.Section, FlatBrace.Section, ToneBars.Section, LadderBars.Section, SoundholeBraces.Section, FingerBraces.Section,
            Fan.Section, ClosingBars.Section, FreeBars.Section, HoleReinforcement.Section, Cleats.Section, LocatingPins.Section, SeasonSection.Section,
            Limits.Section, OwnWood.Section,
        ],
        parameters:
        [
            .. Identity.All, .. Scale.All, .. Fretboard.All, .. OutlineForms.All, .. Plate.All, .. Rim.All, .. Binding.All, .. Soundhole.All, .. Rosette.All, .. Rings.All,
            .. XBrace.All, .. XCap.All, .. Bridge.All, .. SaddleSlot.All, .. BridgePlate.All, .. Block.Neck.All, .. Tongue.All, .. TrussRod.All, .. Block.Tail.All,
            .. TransverseBrace.All, .. FlatBrace.All, .. ToneBars.All, .. LadderBars.All, .. SoundholeBraces.All, .. FingerBraces.All,
            .. Fan.All, .. ClosingBars.All, .. FreeBars.All, .. HoleReinforcement.All, .. Cleats.All, .. LocatingPins.All, .. SeasonSection.All,
            .. Limits.All, .. OwnWood.All,
        ],
        groups: [MeasuredBody.Stations, Soundhole.Position, XBrace.Position, LadderBars.Position, Fan.HeadLine, FreeBars.Start, FreeBars.Course],
        sectionGroups: [OutlineForms.Group]);
}
