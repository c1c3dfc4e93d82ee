namespace TopLayout.Lutherie.Mechanics;

/// <summary>A piece as the band meets it.</summary>
internal sealed class BandEdge(EdgePiece piece)
{
    private readonly MonotoneEdge _edge = new(piece.Edge);

    public EdgePiece Piece => piece;

    public ref readonly MonotoneEdge Edge => ref _edge;

    public bool IsSupported { get; } = piece.IsSupported;

    /// <summary>What it covers along the grain at most within the interval the scan is at.</summary>
    public Stretch Reach { get; set; }

    /// <summary>The stretch within w of a grain line that comes so near.</summary>
    public Stretch StretchAt(double x, double w) => StretchOver(x - w, x + w);

    /// <summary>The stretch between two grain lines.</summary>
    public Stretch StretchOver(double from, double to)
    {
        var (low, high) = _edge.Within(from, to);
        return new Stretch(low, high);
    }
}
