using System.Collections.Generic;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>A bound for the cloth that a cut list needs: so much is enough, and a cutter who lays the pieces closer needs less. Immutable.</summary>
/// <remarks>The pieces lie in one layer, unfolded, the grain along the cloth and all the same way up, each in a box of its own; the boxes stand in simple
/// rows, the longest first, each in the first row with room. Nothing is added for shrinkage, for matching a print or for faults.</remarks>
public sealed class ClothEstimate
{
    private readonly ClothRow[] _rows;

    internal ClothEstimate(ClothName cloth, double widthMm, double lengthMm, double areaMm2, ClothRow[] rows)
    {
        Cloth = cloth;
        UsableWidth = Length.FromMillimeters(widthMm);
        UpperBound = Length.FromMillimeters(lengthMm);
        PieceArea = Area.FromSquareMillimeters(areaMm2);
        Covered = lengthMm == 0 ? Ratio.Zero : Ratio.FromDecimalFractions(areaMm2 / (lengthMm * widthMm));
        _rows = rows;
    }

    /// <summary>What is cut.</summary>
    public ClothName Cloth { get; }

    /// <summary>The width between the selvedges that the pieces may take.</summary>
    public Length UsableWidth { get; }

    /// <summary>So much of the length is enough.</summary>
    public Length UpperBound { get; }

    /// <summary>What the pieces cover together: no layout needs less than this.</summary>
    public Area PieceArea { get; }

    /// <summary>The part of the cloth that the pieces cover.</summary>
    public Ratio Covered { get; }

    /// <summary>The rows, from one end of the cloth to the other.</summary>
    public IReadOnlyList<ClothRow> Rows => _rows;

    /// <summary>How much cloth, at most.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Cloth}: at most {UpperBound.Millimeters:0.#} mm of {UsableWidth.Millimeters:0.#} mm usable");
}
