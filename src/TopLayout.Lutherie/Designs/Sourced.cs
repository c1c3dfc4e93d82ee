using TopLayout.Lutherie.Findings;

namespace TopLayout.Lutherie.Designs;

/// <summary>A value and the place in the design file that sets it.</summary>
/// <param name="Value">The value; lengths in mm.</param>
/// <param name="Place">Where the value is written; for a default the header of its section, or the first line of the file.</param>
/// <param name="IsDefault">Whether the file leaves it out.</param>
public readonly record struct Sourced<T>(T Value, SourcePlace Place, bool IsDefault);
