using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>All lines, points and label texts of one piece, as marks at its place on the sheet.</summary>
internal sealed class DrawnPiece
{
    private const double DrillRingMm = 5;
    private const double DrillDotMm = 1;

    // Where there is no allowance to cut into, a notch is a dot on the cut line.
    private const double NotchDotMm = 2;

    private const double TickMm = 2;

    // The sign stands well inside the room that the label leaves beside a fold.
    private const double FoldSignMm = 12;
    private const double FoldSignFrom = 0.12;

    // A piece on the bias is not turned, whatever the last bit of its grain says.
    private const double BiasMargin = 1e-6;

    private readonly Transform2D _place;

    private readonly Direction _right;

    /// <summary>Puts a piece on the sheet.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="leftMm">Where its left end stands.</param>
    /// <param name="topMm">Where its upper end stands.</param>
    /// <param name="sheets">What sheets of paper show of the drawing; none where it lies on one.</param>
    internal DrawnPiece(PatternPiece piece, double leftMm, double topMm, IReadOnlyList<BoundingBox> sheets)
    {
        Piece = piece;
        _right = RightOf(piece);
        Transform2D turn = Transform2D.RotationRaw(Point2D.Origin, _right);
        BoundingBox box = piece.CutLine.Transformed(turn).Bounds;
        _place = turn.Then(Transform2D.Translation(new Vector2D(leftMm - box.LeftMm, topMm - box.TopMm)));
        Bounds = new BoundingBox(leftMm, topMm - (box.TopMm - box.BottomMm), leftMm + (box.RightMm - box.LeftMm), topMm);
        IsInsideLeft = piece.SeamLine.SignedAreaMm2 > 0;
        AddEdges();
        AddDarts();
        AddNotches();
        foreach (InternalLine line in piece.InternalLines)
        {
            InternalLines.Add(Mark(line.Path, RoleOf(line.Kind)));
        }

        Grainlines.Add(Mark(Path(piece.Grainline), LineRole.Grain, null, ArrowEnds.Both));
        if (piece.Label is { } label)
        {
            AddLabel(OnOneSheet(label, sheets));
        }
    }

    internal PatternPiece Piece { get; }

    internal bool IsInsideLeft { get; }

    internal List<DrawingMark> CutLines { get; } = [];

    internal List<DrawingMark> SeamLines { get; } = [];

    internal List<DrawingMark> Folds { get; } = [];

    internal List<DrawingMark> Darts { get; } = [];

    internal List<DrawingMark> DrillHoles { get; } = [];

    internal List<DrawingMark> Notches { get; } = [];

    internal List<DrawingMark> Grainlines { get; } = [];

    internal List<DrawingMark> InternalLines { get; } = [];

    internal List<DrawingMark> Labels { get; } = [];

    /// <summary>Every mark, the lowest first.</summary>
    internal IEnumerable<List<DrawingMark>> All => [InternalLines, Grainlines, Folds, Darts, SeamLines, CutLines, DrillHoles, Notches, Labels];

    /// <summary>Whether a point of the sheet lies inside the seam line of the piece.</summary>
    internal bool IsInside(in Point2D point) => Piece.SeamLine.ContainmentOf(_place.Inverted().Apply(point)) == Containment.Inside;

    /// <summary>A line of the piece where it stands on the sheet.</summary>
    internal CurvePath Placed(CurvePath path) => path.Transformed(_place);

    /// <summary>The room that it takes.</summary>
    internal BoundingBox Bounds { get; }

    /// <summary>How wide and how high a piece stands on the sheet.</summary>
    internal static (double Width, double Height) SizeMm(PatternPiece piece)
    {
        BoundingBox box = piece.Bounds;
        double across = box.RightMm - box.LeftMm;
        double along = box.TopMm - box.BottomMm;
        return RightOf(piece) == Direction.Right ? (across, along) : (along, across);
    }

    // Where the piece's own right points on the sheet: up or down where its grain lies across, so that the label does not come to stand on its head.
    private static Direction RightOf(PatternPiece piece)
    {
        Direction grain = piece.Grainline.Direction;
        return Math.Abs(grain.X) <= Math.Abs(grain.Y) + BiasMargin ? Direction.Right
            : piece.Label is { } label && label.Reading == Direction.Up ? Direction.Down
            : Direction.Up;
    }

    private static LineRole RoleOf(InternalLineKind kind) => kind switch
    {
        InternalLineKind.Level => LineRole.Level,
        InternalLineKind.Fold => LineRole.Fold,
        InternalLineKind.Stitching => LineRole.Stitching,
        _ => LineRole.Placement,
    };

    private static CurvePath Path(in LineSegment line) => CurvePath.FromLine(line);

    private PathMark Mark(CurvePath path, LineRole role, MarkFacts? facts = null, ArrowEnds arrows = ArrowEnds.None) => new(Placed(path), role, facts, arrows);

    private void AddEdges()
    {
        PanelName name = Piece.Name;
        for (int i = 0; i < Piece.Edges.Count; i++)
        {
            PieceEdge edge = Piece.Edges[i];
            (edge.IsOnFold ? Folds : CutLines).Add(Mark(edge.CutLine, edge.IsOnFold ? LineRole.Fold : LineRole.Cut, MarkFacts.OfCut(name, edge.Name)));
            if (edge.CornerLine is { } corner)
            {
                CutLines.Add(Mark(corner, LineRole.Cut, MarkFacts.OfCutCorner(name, edge.Name)));
            }

            if (edge.IsOnFold)
            {
                AddFoldSign(edge);
                continue;
            }

            foreach (CurvePath stretch in Piece.Panel.Edges[i].Stretches)
            {
                SeamLines.Add(Mark(stretch, LineRole.Stitching, MarkFacts.OfSeam(name, edge.Name)));
            }
        }
    }

    // A bracket beside the fold, its arrows upon it.
    private void AddFoldSign(PieceEdge edge)
    {
        CurvePath fold = edge.SeamLine;
        Direction along = fold.StartDirection;
        Vector2D inward = (IsInsideLeft ? along.TurnedLeft : along.TurnedRight).TimesMm(FoldSignMm);
        Point2D from = fold.Start + along.TimesMm(FoldSignFrom * fold.LengthMm);
        Point2D to = fold.Start + along.TimesMm((1 - FoldSignFrom) * fold.LengthMm);
        CurvePath sign = CurvePath.From(from).LineTo(from + inward).LineTo(to + inward).LineTo(to);
        Folds.Add(Mark(sign, LineRole.FoldSign, null, ArrowEnds.Both));
    }

    private void AddDarts()
    {
        // Those of the edges first, in order around the piece, as the piece has them; those inside have neither edge nor cap.
        Dart[] onEdges = [.. Piece.Panel.Edges.SelectMany(edge => edge.Darts)];
        for (int i = 0; i < Piece.Darts.Count; i++)
        {
            PieceDart dart = Piece.Darts[i];
            for (int leg = 0; leg < dart.Legs.Count; leg++)
            {
                MarkFacts? facts = dart.Name is { } name ? MarkFacts.OfDartLeg(Piece.Name, name, Piece.Panel.WordFor(name.Edge, leg == 0 ? Toward.Start : Toward.End)) : null;
                Darts.Add(Mark(Path(dart.Legs[leg]), LineRole.DartLeg, facts));
            }

            Darts.Add(Mark(Path(dart.FoldLine), LineRole.Fold));
            if (dart.PressArrow is { } arrow)
            {
                Darts.Add(Mark(Path(arrow), LineRole.PressArrow, null, ArrowEnds.End));
            }

            if (dart.SeamCap is { } cap)
            {
                Darts.Add(Mark(cap, LineRole.Stitching, MarkFacts.OfDartCap(Piece.Name, onEdges[i].Name, Piece.Panel.WordFor(onEdges[i].Name.Edge, onEdges[i].PressedToward))));
            }

            foreach (Point2D hole in dart.DrillHoles)
            {
                Point2D at = _place.Apply(hole);
                DrillHoles.Add(new PathMark(Ring(at, DrillRingMm / 2), LineRole.DrillHole));
                DrillHoles.Add(new PointMark(at, DrillDotMm, Ink.Strong));
            }
        }
    }

    private static CurvePath Ring(in Point2D centre, double radiusMm)
        => CurvePath.FromArc(new CircularArc(centre.XMm, centre.YMm, radiusMm, 0, 2 * Math.PI)).Closed();

    private void AddNotches()
    {
        // The end of a fold without an allowance is the corner of the piece: that needs no mark.
        foreach (LineSegment cut in Piece.Notches.SelectMany(notch => notch.Cuts.Where(cut => notch.Kind != NotchKind.Fold || cut.LengthMm > 0)))
        {
            Notches.Add(cut.LengthMm > 0 ? Mark(Path(cut), LineRole.Notch) : new PointMark(_place.Apply(cut.Start), NotchDotMm, Ink.Strong));
        }
    }

    // Where it would lie across sheets and another place of the piece does not, it stands there.
    private LabelBlock OnOneSheet(LabelBlock label, IReadOnlyList<BoundingBox> sheets)
    {
        Transform2D back = _place.Inverted();
        BoundingBox[] onPiece = [.. sheets.Where(sheet => sheet.Overlaps(Bounds)).Select(sheet => BoundingBox.Around(back.Apply(sheet.LowerLeft), back.Apply(sheet.UpperRight)))];
        bool isWhole = onPiece.Length == 0 || Array.Exists(onPiece, sheet => sheet.Contains(label.Bounds.LowerLeft) && sheet.Contains(label.Bounds.UpperRight));
        return isWhole || LabelSearch.Place(Piece, Piece.LabelText!, onPiece) is not { } other || IsOnItsHead(other) ? label : other;
    }

    private bool IsOnItsHead(LabelBlock label) => Math.Abs(label.Reading.AngleRad + _right.AngleRad) > (Math.PI / 2) + BiasMargin;

    private void AddLabel(LabelBlock label)
    {
        double reading = label.Reading.AngleRad + _right.AngleRad;
        for (int i = 0; i < label.Lines.Count; i++)
        {
            LabelLine line = label.Lines[i];
            TextWeight weight = i == 0 ? TextWeight.Bold : TextWeight.Regular;
            Labels.Add(new TextMark(line.Text, _place.Apply(line.Start), line.SizeMm, reading, TextAlignment.Start, weight, Ink.Strong));
        }

        LineSegment bar = label.ScaleCheck;
        Vector2D tick = bar.Direction.TurnedLeft.TimesMm(TickMm / 2);
        Labels.Add(Mark(Path(bar), LineRole.TestSquare));
        Labels.Add(Mark(Path(new LineSegment(bar.Start - tick, bar.Start + tick)), LineRole.TestSquare));
        Labels.Add(Mark(Path(new LineSegment(bar.End - tick, bar.End + tick)), LineRole.TestSquare));
    }
}
