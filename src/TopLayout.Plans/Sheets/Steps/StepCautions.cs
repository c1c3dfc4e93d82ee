using TopLayout.Drawing;
using TopLayout.Lutherie.Parts;

namespace TopLayout.Plans.Sheets.Steps;

/// <summary>The usual cautions of the steps, short.</summary>
internal static class StepCautions
{
    /// <summary>On every step.</summary>
    public const string Rules = "The rules of the place, of a school or of a licensed trade hold before this sheet.";

    /// <summary>Wherever wood is cut or sanded.</summary>
    public const string Dust = "Wood dust harms lungs, fine sanding most: extract it, wear a mask that seals; stop if skin or breath reacts.";

    /// <summary>Bending sides.</summary>
    public const string Heat = "A bending iron and its steam burn: gloves on, nothing near that catches fire, never left alone while hot.";

    /// <summary>Routing and cutting channels.</summary>
    public const string Router = "Unplug a router to change bits; shallow passes; clamp the work, hold no small part in the fingers.";

    /// <summary>The order of channel and hole.</summary>
    public const string Channel = "Every cut in scrap first. The channel before the hole, or the pivot loses its wood.";

    /// <summary>Rods that press braces on.</summary>
    public const string Rods = "Springy rods and blades fly when they slip: eyes covered, also those of bystanders.";

    /// <summary>Chisels.</summary>
    public const string Chisel = "Both hands behind the edge of a chisel; cut away from yourself.";

    /// <summary>Gluing, at the humidity that the design is laid out for.</summary>
    public static string Air(Layout layout) =>
        $"Glue at {Humidity(layout)}\u00a0% relative humidity ({StepTolerance.Humidity}), as the checks assume, and write the value down.";

    /// <summary>The design's humidity at gluing, percent.</summary>
    public static string Humidity(Layout layout) => NumberFormat.Trimmed(layout.Design[SeasonSection.GluedHumidity].Value, 0);

    /// <summary>Which face.</summary>
    public const string Inside = "Look for INSIDE before marking: from outside everything lies the other way round.";

    /// <summary>Placing a bridge.</summary>
    public const string Neck = "Measure the real neck: nut to fret 12 and as much again, then the compensation.";

    /// <summary>Where holes are drilled through bridge and top.</summary>
    public const string Drill = "Drill last, once the place is proved.";

    /// <summary>Where strings are tied to the bridge.</summary>
    public const string TieHoles = "Drill the tie block before the bridge is glued on: along the body, level with the top, none through the top.";

    /// <summary>Woods under protection.</summary>
    public const string Protected = "Some woods for bridges are protected: keep the papers, look into the list that holds today.";

    /// <summary>Strings before glue.</summary>
    public const string Strings = "No string under tension while glue, heat or braces are worked on.";

    /// <summary>Routing ledges for the binding.</summary>
    public const string Ledge = "Cutting the ledges: feed against the turning bit, hold the router with both hands, clamp the body so that it cannot tip.";
}
