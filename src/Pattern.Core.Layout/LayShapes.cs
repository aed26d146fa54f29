using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>Makes the shapes of pieces: each turned every way in which it may lie on a cloth.</summary>
internal sealed class LayShapes
{
    /// <summary>How far the straight lines that stand for a curve keep to it.</summary>
    internal const double FlatMm = 0.05;

    // So much a fold may lie off the grain, measured at its ends, and an outline beyond its fold: the rounding of a draft.
    private const double FoldMm = 0.1;
    private const double SameMm = 1e-6;
    private const double FullTurnRad = 2 * Math.PI;

    private readonly Cloth _cloth;
    private readonly List<LayShape> _shapes = [];
    private readonly List<int[]> _copies = [];

    internal LayShapes(IReadOnlyList<LayPiece> pieces, Cloth cloth)
    {
        _cloth = cloth;
        for (int i = 0; i < pieces.Count; i++)
        {
            LayPiece piece = pieces[i];
            int[] asDrawn = piece.Count > 0 ? Add(piece, i, isMirrored: false) : [];
            _copies.AddRange(Enumerable.Repeat(asDrawn, piece.Count));
            int[] mirrored = piece.MirroredCount > 0 ? Add(piece, i, isMirrored: true) : [];
            _copies.AddRange(Enumerable.Repeat(mirrored, piece.MirroredCount));
        }
    }

    internal LayShape[] Shapes => [.. _shapes];

    internal int[][] Copies => [.. _copies];

    /// <summary>From a piece's own coordinates to its shape, by exact numbers for whole quarters of a turn.</summary>
    internal static Transform2D Turned(bool isMirrored, double turnRad)
    {
        double quarters = turnRad / (Math.PI / 2);
        int quarter = (int)Math.Round(quarters);
        Direction turn = Math.Abs(quarters - quarter) < 1e-12
            ? (quarter & 3) switch { 0 => Direction.Right, 1 => Direction.Up, 2 => Direction.Left, _ => Direction.Down }
            : Direction.FromRadians(turnRad);
        Transform2D rotation = Transform2D.RotationRaw(Point2D.Origin, turn);
        return isMirrored ? Transform2D.Mirror(Line.Vertical(Point2D.Origin)).Then(rotation) : rotation;
    }

    private int[] Add(LayPiece piece, int index, bool isMirrored)
    {
        var its = new List<int>();
        double narrowest = double.MaxValue;
        foreach ((bool over, double turnRad) in Ways(piece, isMirrored))
        {
            LayShape shape = Make(piece, index, over, turnRad);
            narrowest = Math.Min(narrowest, shape.Outline.AcrossMm);
            if (shape.Outline.AcrossMm <= _cloth.UsableWidthMm && !its.Exists(other => _shapes[other].Outline.IsShifted(shape.Outline, SameMm)))
            {
                its.Add(_shapes.Count);
                _shapes.Add(shape);
            }
        }

        if (its.Count > 0)
        {
            return [.. its];
        }

        Length measured = Length.FromMillimeters(narrowest);
        throw new ConstructionException(DiagnosticCode.PieceWiderThanCloth, piece.Name, measured, _cloth.UsableWidth)
        {
            Step = "laying pieces on the cloth",
            Landmark = piece.Name,
            Measured = measured,
            Allowed = _cloth.UsableWidth,
        };
    }

    private IEnumerable<(bool IsMirrored, double TurnRad)> Ways(LayPiece piece, bool isMirrored)
    {
        foreach (Angle turn in _cloth.Turns)
        {
            if (piece.Fold is { } fold)
            {
                yield return OnFold(piece, fold, turn.Radians);
                continue;
            }

            // Of two layers, face to face, either may be the one that is drawn on.
            bool[] faces = _cloth.IsFolded ? [isMirrored, !isMirrored] : [isMirrored];
            foreach (bool over in faces)
            {
                double grainRad = ToGrain(piece, over);
                yield return (over, Normal(grainRad + turn.Radians));
                if (_cloth.GrainRad > 0)
                {
                    yield return (over, Normal(grainRad + turn.Radians - _cloth.GrainRad));
                    yield return (over, Normal(grainRad + turn.Radians + _cloth.GrainRad));
                }
            }
        }
    }

    // A grain that points at the angle a points at pi - a when x goes to the other side.
    private static double ToGrain(LayPiece piece, bool isMirrored) => isMirrored ? -(Math.PI + piece.ToGrainRad) : piece.ToGrainRad;

    // Whichever side of the piece the fold is on, it comes to lie at the bottom, with the piece above it.
    private static (bool IsMirrored, double TurnRad) OnFold(LayPiece piece, in LineSegment fold, double turnRad)
    {
        foreach (bool over in new[] { false, true })
        {
            double turn = Normal(ToGrain(piece, over) + turnRad);
            Transform2D turned = Turned(over, turn);
            double start = turned.Apply(fold.Start).YMm;
            double end = turned.Apply(fold.End).YMm;
            double bottom = piece.CutLine.Transformed(turned).Bounds.BottomMm;
            if (Math.Abs(start - end) <= FoldMm && Math.Max(start, end) - bottom <= FoldMm)
            {
                return (over, turn);
            }
        }

        throw new ConstructionException(DiagnosticCode.LayFoldOffGrain, piece.Name) { Step = "laying pieces on the cloth", Landmark = piece.Name };
    }

    private static LayShape Make(LayPiece piece, int index, bool isMirrored, double turnRad)
    {
        Transform2D turned = Turned(isMirrored, turnRad);
        Point2D[] corners = piece.CutLine.Flatten(Length.FromMillimeters(FlatMm));
        double[] x = new double[corners.Length - 1];
        double[] y = new double[corners.Length - 1];
        for (int i = 0; i < x.Length; i++)
        {
            Point2D corner = turned.Apply(corners[i]);
            (x[i], y[i]) = (corner.XMm, corner.YMm);
        }

        Outline flat = Outline.Of(x, y);
        Outline outline = flat;
        if (!piece.IsExact)
        {
            BoundingBox box = piece.CutLine.Transformed(turned).Bounds;
            outline = OutlineGrowth.Simplified(flat).Within(box.LeftMm, box.RightMm, box.BottomMm, box.TopMm);
        }

        return new LayShape(index, isMirrored, turnRad, flat, outline, Math.Abs(piece.CutLine.SignedAreaMm2), piece.Fold is not null);
    }

    private static double Normal(double turnRad)
    {
        double rest = turnRad % FullTurnRad;
        rest = rest < 0 ? rest + FullTurnRad : rest;
        return FullTurnRad - rest < 1e-12 ? 0 : rest;
    }
}
