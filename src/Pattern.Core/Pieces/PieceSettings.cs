using System.Linq;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>Everything that a caller said about a piece.</summary>
internal sealed record PieceSettings
{
    internal static PieceSettings Default { get; } = new();

    internal PanelName? Name { get; init; }

    internal double DefaultMm { get; init; }

    internal (EdgeName Edge, double Mm)[] Allowances { get; init; } = [];

    internal (EdgeName Across, EdgeName Along, Corner Corner)[] Corners { get; init; } = [];

    internal EdgeName? Fold { get; init; }

    internal bool IsUnfolded { get; init; }

    internal PieceLabel? Label { get; init; }

    internal TapeStep? Tape { get; init; }

    internal CutCount[] Cuts { get; init; } = [];

    internal InternalLine[] InternalLines { get; init; } = [];

    internal (EdgeName Edge, double Mm)[] AllowancesWith(EdgeName edge, double mm) => [.. Allowances.Where(a => a.Edge != edge), (edge, mm)];

    /// <summary>What was said of an edge, or of the edge that it is the mirror image of, or of all edges.</summary>
    internal double AllowanceMm(EdgeName edge)
    {
        double? own = Said(edge);
        return own ?? (PanelUnfolding.TryFindOriginal(edge, out EdgeName original) ? Said(original) : null) ?? DefaultMm;
    }

    private double? Said(EdgeName edge)
    {
        foreach ((EdgeName said, double mm) in Allowances)
        {
            if (said == edge)
            {
                return mm;
            }
        }

        return null;
    }
}
