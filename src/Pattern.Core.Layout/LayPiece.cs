using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Layout;

/// <summary>A piece as it is laid on cloth: its outline, and how often. Immutable.</summary>
/// <remarks>Pieces of a <see cref="PieceSet"/> are made into these by <see cref="ClothLaying"/>; this is the door for outlines from elsewhere. Their x axis is the grain.</remarks>
public sealed class LayPiece
{
    internal const int MostCorners = 500;
    internal const int MostCopies = 500;

    // Less than this is no piece of cloth, and more lies on no table.
    private const double LeastAreaMm2 = 0.01;
    private const double MostCoordinateMm = 1_000_000;

    private LayPiece(string name, int count, CurvePath cutLine, bool isExact)
    {
        Name = name;
        Count = count;
        CutLine = cutLine;
        IsExact = isExact;
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>How often it is laid as it is drawn.</summary>
    public int Count { get; }

    /// <summary>How often its mirror image is laid besides.</summary>
    public int MirroredCount { get; private init; }

    /// <summary>The line to cut along, in the piece's own coordinates.</summary>
    public CurvePath CutLine { get; }

    /// <summary>Whether the outline is all straight lines, and so is laid to touch.</summary>
    internal bool IsExact { get; }

    /// <summary>The turn that brings its grain onto the x axis.</summary>
    internal double ToGrainRad { get; private init; }

    /// <summary>The edge that lies on the fold of the cloth, or null.</summary>
    internal LineSegment? Fold { get; private init; }

    /// <summary>Where its grain is marked, or null.</summary>
    internal LineSegment? Grainline { get; private init; }

    /// <summary>Makes a piece of an outline.</summary>
    /// <param name="name">1 to 60 printable characters.</param>
    /// <param name="count">How often it is laid, never turned over: 1 to 500.</param>
    /// <param name="outline">Its corners in order, clockwise or not, the first not repeated: 3 to 500. x runs along the grain.</param>
    /// <exception cref="ArgumentException">The name cannot be printed, the count or the number of corners is outside its range, or the outline meets itself or has no area.</exception>
    public static LayPiece Of(string name, int count, params Point2D[] outline)
    {
        string checkedName = PieceText.Checked(name, nameof(name));
        _ = Guard.InRange(count, 1, MostCopies, nameof(count));
        _ = Guard.InRange(Guard.NotNull(outline, nameof(outline)).Length, 3, MostCorners, nameof(outline));
        return TryMake(checkedName, count, outline, out LayPiece? piece, out string? fault) ? piece : throw new ArgumentException(fault, nameof(outline));
    }

    /// <summary>Reads pieces from comma-separated text: a line of column names, <c>piece,quantity,vertex,x,y</c>, then a line for each corner, piece after piece.</summary>
    /// <remarks><c>quantity</c> is how often the piece is laid, the same in all its lines; <c>vertex</c> counts from 1. Numbers have a decimal point. Blank lines are skipped. At most
    /// 500 pieces are laid together, each with 3 to 500 corners.</remarks>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit of x and y.</param>
    /// <exception cref="FormatException">The text is not of that form. The message names line and column.</exception>
    public static IReadOnlyList<LayPiece> FromCsv(string text, LengthUnit unit) => new LayTableReader(Guard.NotNull(text, nameof(text)), unit).Read();

    /// <summary>Makes a piece of corners, or says what is wrong with them.</summary>
    internal static bool TryMake(string name, int count, Point2D[] outline, [NotNullWhen(true)] out LayPiece? piece, [NotNullWhen(false)] out string? fault)
    {
        piece = null;
        foreach (Point2D corner in outline)
        {
            // Written so that NaN is refused too.
            if (!(Math.Abs(corner.XMm) <= MostCoordinateMm && Math.Abs(corner.YMm) <= MostCoordinateMm))
            {
                fault = MessageRegistry.Format(DiagnosticCode.LayOutlineTooFar, name, Length.FromMillimeters(MostCoordinateMm));
                return false;
            }
        }

        Outline polygon = Outline.Of([.. outline.Select(corner => corner.XMm)], [.. outline.Select(corner => corner.YMm)]);
        if (polygon.FindCrossing() is >= 0 and var side)
        {
            fault = MessageRegistry.Format(DiagnosticCode.LayOutlineCrosses, name, new Point2D(polygon.X[side], polygon.Y[side]));
            return false;
        }

        if (polygon.AreaMm2 < LeastAreaMm2)
        {
            fault = MessageRegistry.Format(DiagnosticCode.LayOutlineTooSmall, name, Area.FromSquareMillimeters(LeastAreaMm2));
            return false;
        }

        CurvePath path = CurvePath.From(outline[0]).LineTo(outline[1]);
        foreach (Point2D corner in outline.Skip(2))
        {
            path = path.LineTo(corner);
        }

        fault = null;
        piece = new LayPiece(name, count, path.Closed(), isExact: true);
        return true;
    }

    /// <summary>Makes what is laid of a piece of a garment.</summary>
    /// <param name="piece">The piece, on the fold or not, as it is laid.</param>
    /// <param name="count">How often as it is drawn; together with the mirror images, which may be none, at least once.</param>
    /// <param name="mirroredCount">How often its mirror image.</param>
    internal static LayPiece From(PatternPiece piece, int count, int mirroredCount)
        => new(piece.Name.Text, count, piece.CutLine, isExact: false)
        {
            MirroredCount = mirroredCount,
            ToGrainRad = piece.Grainline.Direction.TurnRadTo(Direction.Right),
            Fold = piece.FoldLine,
            Grainline = piece.Grainline,
        };

    /// <summary>The name, and how often it is laid.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{Name}, {Count} and {MirroredCount} mirrored");
}
