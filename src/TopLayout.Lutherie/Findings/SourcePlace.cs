namespace TopLayout.Lutherie.Findings;

/// <summary>A place in a design file. Lines and columns count from 1, in characters.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Line">Line, ≥ 1.</param>
/// <param name="Column">Column, ≥ 1.</param>
/// <param name="Length">Characters from there, ≥ 0.</param>
public readonly record struct SourcePlace(string File, int Line, int Column, int Length);
