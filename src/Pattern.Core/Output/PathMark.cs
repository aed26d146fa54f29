using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>A line on a drawing.</summary>
public sealed class PathMark : DrawingMark
{
    private const double HeadLengthMm = 8;
    private const double HeadSlimness = 4.2;

    // A line shorter than its heads would vanish below them.
    private const double HeadPartOfLine = 0.3;

    // A press arrow is short, and its head says all.
    private const double PressHeadPartOfLine = 0.45;

    internal PathMark(CurvePath path, LineRole role, MarkFacts? facts = null, ArrowEnds arrows = ArrowEnds.None)
    {
        Path = path;
        Role = role;
        Facts = facts;
        Arrows = arrows;
    }

    /// <summary>Where the line runs.</summary>
    public CurvePath Path { get; }

    /// <summary>What it is for, and how it is drawn.</summary>
    public LineRole Role { get; }

    /// <summary>Which part of a panel it is; null for every line that is not sewn.</summary>
    public MarkFacts? Facts { get; }

    /// <summary>Which ends carry an arrow head.</summary>
    public ArrowEnds Arrows { get; }

    /// <inheritdoc/>
    public override BoundingBox Bounds
    {
        get
        {
            BoundingBox box = Path.Bounds;
            foreach (CurvePath head in ArrowHeads())
            {
                box = box.Union(head.Bounds);
            }

            return box;
        }
    }

    /// <summary>Makes a line.</summary>
    /// <param name="path">Where it runs.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="facts">Which part of a panel it is, or null.</param>
    /// <param name="arrows">Which ends carry an arrow head.</param>
    public static PathMark Of(CurvePath path, LineRole role, MarkFacts? facts = null, ArrowEnds arrows = ArrowEnds.None)
        => new(Guard.NotNull(path, nameof(path)), Guard.NotNull(role, nameof(role)), facts, (ArrowEnds)Guard.Choice((int)arrows, 4, nameof(arrows)));

    /// <summary>The heads of the arrows: closed triangles to be filled, their tips at the ends of the line.</summary>
    [Pure]
    public IReadOnlyList<CurvePath> ArrowHeads()
    {
        var heads = new List<CurvePath>(2);
        if (Arrows is ArrowEnds.Start or ArrowEnds.Both)
        {
            heads.Add(Head(Path.Start, Path.StartDirection.Reversed));
        }

        if (Arrows is ArrowEnds.End or ArrowEnds.Both)
        {
            heads.Add(Head(Path.End, Path.EndDirection));
        }

        return heads;
    }

    private CurvePath Head(Point2D tip, Direction heading)
    {
        double lengthMm = Math.Min(HeadLengthMm, (Role == LineRole.PressArrow ? PressHeadPartOfLine : HeadPartOfLine) * Path.LengthMm);
        double halfWidthMm = lengthMm / HeadSlimness;
        Point2D foot = tip + heading.TimesMm(-lengthMm);
        return CurvePath.From(tip)
            .LineTo(foot + heading.TurnedLeft.TimesMm(halfWidthMm))
            .LineTo(foot + heading.TurnedRight.TimesMm(halfWidthMm))
            .Closed();
    }

    /// <summary>Role and path.</summary>
    public override string ToString()
        => Role + ": " + Path;
}
