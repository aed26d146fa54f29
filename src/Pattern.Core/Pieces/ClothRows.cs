using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Lays the pieces of one cloth in simple rows.</summary>
internal static class ClothRows
{
    internal static ClothEstimate Lay(IEnumerable<PatternPiece> pieces, ClothName cloth, double widthMm)
    {
        var boxes = new List<(PanelName Name, double WidthMm, double LengthMm)>();
        double area = 0;
        foreach (PatternPiece piece in pieces)
        {
            foreach (CutCount cut in piece.Cuts.Where(cut => cut.Cloth == cloth))
            {
                PatternPiece whole = piece.FoldLine is null ? piece : piece.Unfolded();
                BoundingBox box = AlongGrain(whole).Bounds;
                double across = box.RightMm - box.LeftMm;
                if (across > widthMm)
                {
                    throw new ConstructionException(DiagnosticCode.PieceWiderThanCloth, piece.Name, Length.FromMillimeters(across), Length.FromMillimeters(widthMm))
                    {
                        Step = "laying pieces on the cloth",
                        Landmark = piece.Name.Text,
                        Measured = Length.FromMillimeters(across),
                        Allowed = Length.FromMillimeters(widthMm),
                    };
                }

                area += cut.Count * Math.Abs(whole.CutLine.SignedAreaMm2);
                boxes.AddRange(Enumerable.Repeat((piece.Name, across, box.TopMm - box.BottomMm), cut.Count));
            }
        }

        return Rows(boxes, cloth, widthMm, area);
    }

    // The longest first, each into the first row that has room: a sort that keeps the order of equals, so that the same set gives the same rows.
    private static ClothEstimate Rows(List<(PanelName Name, double WidthMm, double LengthMm)> boxes, ClothName cloth, double widthMm, double areaMm2)
    {
        var rows = new List<(List<PanelName> Names, double WidthMm, double LengthMm)>();
        foreach ((PanelName name, double across, double along) in boxes.OrderByDescending(box => box.LengthMm))
        {
            int row = rows.FindIndex(r => r.WidthMm + across <= widthMm);
            if (row < 0)
            {
                rows.Add(([name], across, along));
                continue;
            }

            rows[row].Names.Add(name);
            rows[row] = (rows[row].Names, rows[row].WidthMm + across, rows[row].LengthMm);
        }

        return new ClothEstimate(
            cloth, widthMm, rows.Sum(r => r.LengthMm), areaMm2, [.. rows.Select(r => new ClothRow([.. r.Names], r.LengthMm, r.WidthMm))]);
    }

    private static CurvePath AlongGrain(PatternPiece piece)
    {
        Direction grain = piece.Grainline.Direction;
        return grain == Direction.Up || grain == Direction.Down
            ? piece.CutLine
            : piece.CutLine.Transformed(Transform2D.RotationRaw(piece.Grainline.Start, Direction.FromRadians(grain.TurnRadTo(Direction.Up))));
    }
}
