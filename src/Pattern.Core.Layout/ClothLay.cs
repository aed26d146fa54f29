using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Layout;

/// <summary>Pieces laid on cloth: where each lies, and how much cloth that takes. Immutable.</summary>
/// <remarks>Nothing is added for shrinkage, for matching a print or for faults.</remarks>
public sealed class ClothLay
{
    private readonly LaidPiece[] _pieces;

    internal ClothLay(Cloth cloth, LaidPiece[] pieces, double lengthMm, double boundMm, double areaMm2, IReadOnlyList<string> spares, int moves)
    {
        Cloth = cloth;
        _pieces = pieces;
        Pieces = Array.AsReadOnly(pieces);
        LengthMm = lengthMm;
        LowerBound = Length.FromMillimeters(Math.Min(boundMm, lengthMm));
        PieceArea = Area.FromSquareMillimeters(areaMm2);
        Efficiency = Ratio.FromDecimalFractions(areaMm2 / (lengthMm * cloth.UsableWidthMm));
        Spares = spares;
        Moves = moves;
    }

    /// <summary>What they are laid on.</summary>
    public Cloth Cloth { get; }

    /// <summary>Every copy, in the order of the pieces.</summary>
    public IReadOnlyList<LaidPiece> Pieces { get; }

    /// <summary>How much cloth it takes, along the cloth.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>No lay of these pieces on this cloth is shorter: the greatest of their areas over the usable width, the longest of them, and what those wider than half of it take of its
    /// middle line, which each of them crosses.</summary>
    /// <remarks>The lay may be as short as it can be and still be longer than this.</remarks>
    public Length LowerBound { get; }

    /// <summary>What the pieces cover together; on folded cloth, of one layer.</summary>
    public Area PieceArea { get; }

    /// <summary>The part of the usable width, over the length, that the pieces cover.</summary>
    public Ratio Efficiency { get; }

    /// <summary>What folded cloth cuts without being asked to: for each, the name of the piece that is needed once less than it is cut.</summary>
    public IReadOnlyList<string> Spares { get; }

    /// <summary>How often a piece was moved to find it.</summary>
    public int Moves { get; }

    internal double LengthMm { get; }

    /// <summary>Draws the cloth with the pieces on it, at full size; the length runs to the right.</summary>
    [System.Diagnostics.Contracts.Pure]
    public Drawing Draw() => LayDrawing.Of(this);

    /// <summary>Writes the places as comma-separated text: <c>piece,copy,x,y,rotation_deg</c> and a line for each copy.</summary>
    /// <remarks>Each corner of a piece is turned counter-clockwise, from x towards y, about the origin of the piece's own coordinates, then moved by x and y. Where the name ends in
    /// "mirrored", x went to the other side before the turn. The cloth lies at 0 to its usable width in y, and from 0 in x.</remarks>
    /// <param name="unit">The unit of x and y.</param>
    [System.Diagnostics.Contracts.Pure]
    public string ToCsv(LengthUnit unit)
    {
        double unitsPerMm = CurvePath.UnitsPerMm(unit);
        var text = new StringBuilder("piece,copy,x,y,rotation_deg\n");
        foreach (LaidPiece piece in _pieces)
        {
            Point2D origin = piece.Place.Apply(Point2D.Origin);
            text.Append(Cell(piece.Name)).Append(',').Append(piece.Copy.ToString(CultureInfo.InvariantCulture))
                .Append(',').Append(Number(unitsPerMm * origin.XMm))
                .Append(',').Append(Number(unitsPerMm * origin.YMm))
                .Append(',').Append(Number(piece.Turn.Degrees)).Append('\n');
        }

        return text.ToString();
    }

    // Nine decimals are finer than what counts as touching.
    private static string Number(double value) => (Math.Round(value, 9) + 0.0).ToString("0.#########", CultureInfo.InvariantCulture);

    private static string Cell(string text) => text.IndexOfAny([',', '"']) < 0 ? text : "\"" + text.Replace("\"", "\"\"") + "\"";

    /// <summary>How much cloth it takes, and how much of that the pieces cover.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{Pieces.Count} pieces on {LengthMm:0.#} mm of {Cloth}, {Efficiency.Percent:0.#} % covered");
}
