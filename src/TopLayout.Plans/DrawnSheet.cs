using TopLayout.Drawing;

namespace TopLayout.Plans;

/// <summary>A sheet that is drawn, and where its files go.</summary>
/// <param name="Path">Path inside the output folder, without extension; always with '/'.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="HasCentreLine">True when x = 0 is the centre line of the top, so that half of the sheet may be printed alone.</param>
public sealed record DrawnSheet(string Path, Sheet Sheet, bool HasCentreLine);
