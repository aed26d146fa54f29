using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>What of a dart is marked on a piece. Immutable.</summary>
public sealed class PieceDart
{
    private readonly LineSegment[] _legs;
    private readonly Point2D[] _drillHoles;

    internal PieceDart(DartName? name, LineSegment[] legs, LineSegment foldLine, Point2D[] drillHoles, CurvePath? seamCap, CurvePath? cutCap, LineSegment? pressArrow)
    {
        Name = name;
        _legs = legs;
        FoldLine = foldLine;
        _drillHoles = drillHoles;
        SeamCap = seamCap;
        CutCap = cutCap;
        PressArrow = pressArrow;
    }

    /// <summary>The dart; null for a double-pointed one inside the piece, which has no edge.</summary>
    public DartName? Name { get; }

    /// <summary>The lines that are stitched to each other, each from the seam line or the widest place to an apex: first the one nearer the start of the edge.
    /// Two, or four for a double-pointed dart.</summary>
    public IReadOnlyList<LineSegment> Legs => _legs;

    /// <summary>Where the dart is folded: from the apex out to the cut line, or from apex to apex.</summary>
    public LineSegment FoldLine { get; }

    /// <summary>Where the drill goes through, short of each apex so that stitching covers the hole.</summary>
    public IReadOnlyList<Point2D> DrillHoles => _drillHoles;

    /// <summary>The seam line across the intake, from the start leg over the fold to the end leg; null for a double-pointed dart.</summary>
    public CurvePath? SeamCap { get; }

    /// <summary>The cut line across the intake; folded and sewn, it lies under the cut line beside it. Null for a double-pointed dart.</summary>
    public CurvePath? CutCap { get; }

    /// <summary>The sign for the way that the dart is pressed: a short line across the intake, its end the tip of the arrow. Null for a double-pointed dart.</summary>
    public LineSegment? PressArrow { get; }

    /// <summary>Which dart it is.</summary>
    public override string ToString()
        => Name is { } name ? name.ToString() : "dart inside the piece";
}
