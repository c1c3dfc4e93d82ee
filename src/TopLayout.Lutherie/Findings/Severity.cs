namespace TopLayout.Lutherie.Findings;

/// <summary>How much a finding matters, from least to most.</summary>
public enum Severity
{
    /// <summary>Measured, and within its limit.</summary>
    Pass,

    /// <summary>Outside usual practice; says nothing about right or wrong.</summary>
    Remark,

    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Worth changing; the program still exits 0.</summary>
    Warning,

    /// <summary>A failed check; the program exits 1.</summary>
    Fail,

    /// <summary>The design cannot be read or built; the program exits 2.</summary>
    Error,
}
