using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Pieces that lie side by side across the cloth. Immutable.</summary>
public sealed class ClothRow
{
    private readonly PanelName[] _pieces;

    internal ClothRow(PanelName[] pieces, double lengthMm, double widthMm)
    {
        _pieces = pieces;
        Length = Length.FromMillimeters(lengthMm);
        Width = Length.FromMillimeters(widthMm);
    }

    /// <summary>The pieces, side by side; one that is cut twice stands here twice.</summary>
    public IReadOnlyList<PanelName> Pieces => _pieces;

    /// <summary>How much of the length of the cloth the row takes.</summary>
    public Length Length { get; }

    /// <summary>How much of its width.</summary>
    public Length Width { get; }

    /// <summary>The pieces side by side.</summary>
    public override string ToString()
        => string.Join(", ", _pieces.Select(piece => piece.Text)) + System.FormattableString.Invariant($": {Length.Millimeters:0.#} mm of {Width.Millimeters:0.#} mm wide");
}
