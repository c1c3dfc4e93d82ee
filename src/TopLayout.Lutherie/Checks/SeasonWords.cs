using TopLayout.Lutherie.Findings;
using TopLayout.Lutherie.Mechanics;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Lutherie.Checks;

/// <summary>What the season does to the wood, in words: how far the top moves, and what a season that does not dry it does.</summary>
internal static class SeasonWords
{
    // Less is no movement to speak of, mm.
    private const double LeastMm = 0.05;

    /// <summary>The note for a season in which nothing dries.</summary>
    public static IEnumerable<Finding> NoDrying(GrainScene scene)
    {
        if (scene.Season.MoistureLossPercent <= 0)
        {
            var design = scene.Layout.Design;
            yield return new Finding(
                Rules.SeasonDoesNotDry,
                Severity.Note,
                "season",
                $"the air in use, {GrainWords.Percent(scene.Season.UsedHumidityPercent)}, is no drier than the air at gluing, "
                    + $"{GrainWords.Percent(scene.Season.GluedHumidityPercent)}: the grain check judges drying only, and no edge here; "
                    + Wetter(scene))
            {
                Place = design[SeasonSection.UsedHumidity].Place,
                OtherPlaces = [design[SeasonSection.GluedHumidity].Place],
                Cure = "set `used_humidity` to the driest air the instrument will meet for weeks",
            };
        }
    }

    /// <summary>"the free top would shrink by 3.3 mm over its 396 mm of width"; null where the wood's movement is not known.</summary>
    public static string? TopMoves(GrainScene scene)
    {
        var top = WoodCases.WithMovement(scene.Layout.Top.Wood);
        if ((scene.Layout.Top.Sawing == Woods.Sawing.Flat ? top.MovementTangential : top.MovementRadial) is not { } perPercent)
        {
            return null;
        }

        var width = scene.Layout.Outline.Bounds.Width;
        var growth = Movement.Growth(width, perPercent.Value, -scene.Season.MoistureLossPercent);
        return $"the top by itself would {(growth < 0 ? "shrink" : "grow")} by {Say.TwoDigits(Math.Abs(growth))} mm over its {Say.Mm(Math.Round(width, 1))} of width";
    }

    private static string Wetter(GrainScene scene)
    {
        if (scene.Season.MoistureLossPercent == 0)
        {
            return "nothing moves";
        }

        var curled = scene.Members
            .Where(m => scene.Loads[m.Name].Mismatch is not null)
            .Select(m => (m.Name, Sagitta: Math.Abs(scene.Loads[m.Name].Mismatch!.Steady.SagittaMm)))
            .MaxBy(m => m.Sagitta);
        var curl = curled.Sagitta < LeastMm ? "" : $", and {Say.The(curled.Name)} would curl it by {Say.TwoDigits(curled.Sagitta)} mm over its width";
        return $"{TopMoves(scene) ?? "how far the top moves is not known"}{curl}";
    }
}
