using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>A panel as the points that shape it, in a fixed order, and back.</summary>
internal static class PanelPoints
{
    // A thousandth of a degree: what was drawn without a corner.
    private const double SmoothRad = 2e-5;

    internal static Point2D[] Read(Panel panel)
    {
        var points = new List<Point2D>();
        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            foreach (CurvePath stretch in edge.StretchesRaw)
            {
                points.Add(stretch.Start);
                foreach (PathSegment segment in stretch.SegmentsRaw)
                {
                    if (segment.Kind == PathSegmentKind.Cubic)
                    {
                        points.Add(segment.CubicRaw.StartControl);
                        points.Add(segment.CubicRaw.EndControl);
                    }

                    points.Add(segment.End);
                }
            }

            foreach (Dart dart in edge.DartsRaw)
            {
                points.Add(dart.Apex);
            }
        }

        foreach (InsideDart dart in panel.Features.InsideDarts)
        {
            points.AddRange(dart.Corners());
        }

        foreach (Landmark landmark in panel.Features.Landmarks)
        {
            points.Add(landmark.Position);
        }

        points.Add(panel.Grainline.Start);
        points.Add(panel.Grainline.End);
        return points.ToArray();
    }

    /// <summary>A panel made like another, of other points. Notches keep their part of the edge.</summary>
    /// <param name="like">The other panel.</param>
    /// <param name="points">In the order in which they are read.</param>
    /// <param name="isSmooth">Whether a curve that ran on from a straight line without a corner runs on from it again: a line turns when its ends move apart, and the curve's handle turns with it.</param>
    internal static Panel Write(Panel like, Point2D[] points, bool isSmooth)
    {
        int next = 0;
        var edges = new PanelEdge[like.EdgesRaw.Length];
        for (int e = 0; e < edges.Length; e++)
        {
            PanelEdge edge = like.EdgesRaw[e];
            var stretches = new CurvePath[edge.StretchesRaw.Length];
            for (int s = 0; s < stretches.Length; s++)
            {
                var segments = new PathSegment[edge.StretchesRaw[s].SegmentsRaw.Length];
                Point2D at = points[next++];
                for (int i = 0; i < segments.Length; i++)
                {
                    if (edge.StretchesRaw[s].SegmentsRaw[i].Kind == PathSegmentKind.Cubic)
                    {
                        segments[i] = PathSegment.FromCubic(new CubicBezier(at, points[next], points[next + 1], points[next + 2]));
                        next += 2;
                    }
                    else
                    {
                        segments[i] = PathSegment.FromLine(new LineSegment(at, points[next]));
                    }

                    at = points[next++];
                }

                if (isSmooth)
                {
                    KeepSmooth(edge.StretchesRaw[s].SegmentsRaw, segments);
                }

                stretches[s] = CurvePath.Trusted(segments, isClosed: false);
            }

            DartShape[] darts = edge.Shapes();
            for (int d = 0; d < darts.Length; d++)
            {
                darts[d] = darts[d] with { Apex = points[next++], StartLeg = stretches[d].End, EndLeg = stretches[d + 1].Start };
            }

            edges[e] = new PanelEdge(edge.Name, edge.Role, stretches, darts);
        }

        InsideDart[] inside = Array.ConvertAll(like.Features.InsideDarts, _ =>
        {
            next += 4;
            return new InsideDart(points[next - 4], points[next - 2], points[next - 3], points[next - 1]);
        });
        Landmark[] landmarks = Array.ConvertAll(like.Features.Landmarks, landmark => landmark.At(points[next++]));
        var grain = new LineSegment(points[next], points[next + 1]);
        var panel = new Panel(like.Name, edges, new PanelFeatures(grain, [], landmarks, inside));
        Notch[] notches = Array.ConvertAll(like.Features.Notches, notch =>
        {
            PanelEdge edge = panel.FindEdge(notch.Edge);
            return new Notch(notch.Edge, notch.Position, notch.FromStartMm * (edge.SewnLengthMm() / like.FindEdge(notch.Edge).SewnLengthMm()), notch.Count).On(edge);
        });
        return new Panel(like.Name, edges, panel.Features with { Notches = notches });
    }

    private static void KeepSmooth(PathSegment[] like, PathSegment[] segments)
    {
        for (int i = 0; i + 1 < segments.Length; i++)
        {
            if (Math.Abs(like[i].EndDirection.TurnRadTo(like[i + 1].StartDirection)) > SmoothRad)
            {
                continue;
            }

            if (segments[i].Kind == PathSegmentKind.Line && segments[i + 1].Kind == PathSegmentKind.Cubic)
            {
                CubicBezier curve = segments[i + 1].CubicRaw;
                Point2D control = curve.Start + segments[i].EndDirection.TimesMm(curve.Start.DistanceMm(curve.StartControl));
                segments[i + 1] = PathSegment.FromCubic(new CubicBezier(curve.Start, control, curve.EndControl, curve.End));
            }
            else if (segments[i].Kind == PathSegmentKind.Cubic && segments[i + 1].Kind == PathSegmentKind.Line)
            {
                CubicBezier curve = segments[i].CubicRaw;
                Point2D control = curve.End - segments[i + 1].StartDirection.TimesMm(curve.End.DistanceMm(curve.EndControl));
                segments[i] = PathSegment.FromCubic(new CubicBezier(curve.Start, curve.StartControl, control, curve.End));
            }
        }
    }

    internal static Panel Checked(Panel panel, string step)
    {
        panel.RefuseCrossedOutline(step);
        return panel;
    }
}
