using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>All lines and points of a block, as marks.</summary>
internal sealed class BlockMarks
{
    private const double NotchMm = 7;
    private const double BetweenNotchesMm = 5;
    private const double LandmarkMm = 1.6;

    internal BlockMarks(Block block, BlockLayout layout, IEnumerable<BlockAlternative> alternatives)
    {
        foreach (BlockLine line in layout.Lines)
        {
            (line.Role == ConstructionRole.Level ? Levels : Construction).Add(new PathMark(line.Path, RoleOf(line.Role)));
        }

        foreach (Landmark landmark in layout.Landmarks)
        {
            Landmarks.Add(new PointMark(landmark.Position, LandmarkMm, Ink.Middle));
        }

        foreach (Panel panel in layout.Panels)
        {
            AddPanel(panel, block.TimesOf(panel.Name));
        }

        foreach (BlockAlternative alternative in alternatives)
        {
            Add(alternative, layout);
        }
    }

    internal List<DrawingMark> Seams { get; } = [];

    internal List<DrawingMark> Darts { get; } = [];

    internal List<DrawingMark> Notches { get; } = [];

    internal List<DrawingMark> Grainlines { get; } = [];

    internal List<DrawingMark> Construction { get; } = [];

    internal List<DrawingMark> Levels { get; } = [];

    internal List<DrawingMark> Alternatives { get; } = [];

    /// <summary>The lines of each alternative that could be drafted, for its name.</summary>
    internal List<(string Name, PathMark[] Lines)> DrawnAlternatives { get; } = [];

    internal List<DrawingMark> Landmarks { get; } = [];

    /// <summary>What is not drawn because this body cannot have it, and why; a sentence each.</summary>
    internal List<string> LeftOut { get; } = [];

    /// <summary>Whether the inside of a panel lies to the left of its edges.</summary>
    internal static Side InsideOf(Panel panel) => panel.SeamOutline().SignedAreaMm2 > 0 ? Side.Left : Side.Right;

    private static LineRole RoleOf(ConstructionRole role) => role switch
    {
        ConstructionRole.Frame => LineRole.Frame,
        ConstructionRole.Level => LineRole.Level,
        ConstructionRole.HandDrawn => LineRole.HandDrawn,
        _ => LineRole.Construction,
    };

    private void AddPanel(Panel panel, int times)
    {
        foreach (PanelEdge edge in panel.Edges)
        {
            foreach (CurvePath stretch in edge.Stretches)
            {
                Seams.Add(new PathMark(stretch, LineRole.Seam, MarkFacts.OfSeam(panel.Name, edge.Name, times)));
            }
        }

        foreach (Dart dart in panel.Darts)
        {
            AddDart(panel, dart);
        }

        foreach (InsideDart dart in panel.InsideDarts)
        {
            AddInsideDart(dart);
        }

        foreach (Notch notch in panel.Notches)
        {
            AddNotch(panel, notch);
        }

        Grainlines.Add(new PathMark(CurvePath.FromLine(panel.Grainline), LineRole.Grain, null, ArrowEnds.Both));
    }

    private void AddDart(Panel panel, Dart dart)
    {
        string WordFor(Toward way) => panel.WordFor(dart.Name.Edge, way);
        Darts.Add(new PathMark(Line(dart.StartLeg, dart.Apex), LineRole.DartLeg, MarkFacts.OfDartLeg(panel.Name, dart.Name, WordFor(Toward.Start))));
        Darts.Add(new PathMark(Line(dart.EndLeg, dart.Apex), LineRole.DartLeg, MarkFacts.OfDartLeg(panel.Name, dart.Name, WordFor(Toward.End))));
        Darts.Add(new PathMark(CurvePath.FromLine(dart.PressArrow), LineRole.PressArrow, null, ArrowEnds.End));
        CurvePath cap;
        try
        {
            cap = dart.Cap;
        }
        catch (ConstructionException refusal)
        {
            LeftOut.Add(FormattableString.Invariant($"The cap of {panel.Name} {dart.Name} cannot be drawn. {refusal.Message}"));
            return;
        }

        Darts.Add(new PathMark(cap, LineRole.DartCap, MarkFacts.OfDartCap(panel.Name, dart.Name, WordFor(dart.PressedToward))));
        Darts.Add(new PathMark(Line(dart.Apex, FoldOf(dart, cap)), LineRole.Fold));
    }

    // Four legs between both points, and the fold from point to point.
    private void AddInsideDart(InsideDart dart)
    {
        Point2D[] corners = dart.Corners();
        for (int i = 0; i < corners.Length; i++)
        {
            Darts.Add(new PathMark(Line(corners[i], corners[(i + 1) % corners.Length]), LineRole.DartLeg));
        }

        Darts.Add(new PathMark(Line(dart.FirstApex, dart.SecondApex), LineRole.Fold));
    }

    private void AddNotch(Panel panel, Notch notch)
    {
        // On the stretch that it stands on, beyond the darts before it.
        CurvePath[] stretches = panel.FindEdge(notch.Edge).StretchesRaw;
        double alongMm = notch.FromStartMm;
        int stretch = 0;
        while (stretch < stretches.Length - 1 && alongMm > stretches[stretch].LengthMm)
        {
            alongMm -= stretches[stretch++].LengthMm;
        }

        CurvePath edge = stretches[stretch];
        int index = edge.Locate(alongMm, out double t);
        Direction along = edge.SegmentsRaw[index].DirectionAtRaw(t);
        Direction inward = InsideOf(panel) == Side.Left ? along.TurnedLeft : along.TurnedRight;
        for (int i = 0; i < notch.Count; i++)
        {
            Point2D foot = notch.Position + along.TimesMm((i - ((notch.Count - 1) / 2.0)) * BetweenNotchesMm);
            Notches.Add(new PathMark(Line(foot, foot + inward.TimesMm(NotchMm)), LineRole.Notch));
        }
    }

    private void Add(BlockAlternative alternative, BlockLayout layout)
    {
        Block drafted;
        try
        {
            drafted = alternative.Draft();
        }
        catch (ConstructionException refusal)
        {
            LeftOut.Add(FormattableString.Invariant($"The {alternative.Name} cannot be drawn. {refusal.Message}"));
            return;
        }

        PathMark[] lines =
        [
            .. from panel in drafted.Panels
               from edge in layout.Beside(panel).Edges
               where alternative.Edges.Count == 0 || alternative.Edges.Contains(edge.Name)
               from stretch in edge.Stretches
               select new PathMark(stretch, LineRole.Alternative),
        ];
        Alternatives.AddRange(lines);
        DrawnAlternatives.Add((alternative.Name, lines));
    }

    // The cap runs from leg to leg over the fold: its corner on the line that halves the dart.
    private static Point2D FoldOf(Dart dart, CurvePath cap)
    {
        Vector2D half = dart.MiddleOfIntake - dart.Apex;
        Point2D nearest = cap.Start;
        double least = double.PositiveInfinity;
        foreach (PathSegment segment in cap.SegmentsRaw)
        {
            double away = Math.Abs(half.CrossMm2(segment.End - dart.Apex));
            if (away < least)
            {
                least = away;
                nearest = segment.End;
            }
        }

        return nearest;
    }

    private static CurvePath Line(in Point2D from, in Point2D to) => CurvePath.FromLine(new LineSegment(from, to));
}
