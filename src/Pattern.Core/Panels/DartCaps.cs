using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>The cut edge across a dart's intake.</summary>
/// <remarks>Fold the dart as it will be pressed and cut along the trued seam line through all layers; unfolded, that edge is the seam line on
/// the pressed side mirrored over the near leg, and that again over the fold line.</remarks>
internal static class DartCaps
{
    /// <summary>Folds the cap of a dart.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="seam">The seam line that the dart is pressed onto, neighbouring darts closed: it ends at the start leg, or begins at the end leg.</param>
    /// <param name="fromStart">Whether it is pressed towards the start of the edge.</param>
    /// <returns>From the start leg over the fold to the end leg.</returns>
    internal static CurvePath Fold(in DartShape dart, CurvePath seam, bool fromStart)
    {
        Point2D nearLeg = fromStart ? dart.StartLeg : dart.EndLeg;
        Direction leg = dart.Apex.DirectionTo(nearLeg);
        Direction foldLine = dart.Apex.DirectionTo(dart.StartLeg.MidpointTo(dart.EndLeg));

        // Folded over the near leg, the fold line lies over the cloth half the wedge away from it.
        Transform2D overLeg = Transform2D.Mirror(Line.From(dart.Apex, leg));
        Line folded = Line.From(dart.Apex, foldLine.Transformed(overLeg));
        CurvePath pressedOn = fromStart ? seam.Reversed() : seam;
        if (!TryCutAt(pressedOn, folded, out List<PathSegment> under))
        {
            throw new ConstructionException(DiagnosticCode.DartWiderThanStretch, dart.Apex, Length.FromMillimeters((dart.EndLeg - dart.StartLeg).LengthMm))
            {
                Step = "folding a dart",
                Measured = Length.FromMillimeters((dart.EndLeg - dart.StartLeg).LengthMm),
                Allowed = Length.FromMillimeters(2 * seam.LengthMm),
            };
        }

        // From the near leg to the fold, and on from the fold to the far leg: one half is the other, mirrored over the fold line.
        Transform2D overFold = Transform2D.Mirror(Line.From(dart.Apex, foldLine));
        var cap = new PathSegment[2 * under.Count];
        for (int i = 0; i < under.Count; i++)
        {
            PathSegment near = under[i].TransformedRaw(overLeg);
            cap[i] = near;
            cap[cap.Length - 1 - i] = near.TransformedRaw(overFold).Reversed();
        }

        CurvePath path = CurvePath.Trusted(cap, isClosed: false);
        return fromStart ? path : path.Reversed();
    }

    // What of a path, from its start, lies before it first crosses a line.
    private static bool TryCutAt(CurvePath path, Line line, out List<PathSegment> before)
    {
        before = new List<PathSegment>(2);
        foreach (PathSegment segment in path.SegmentsRaw)
        {
            LineIntersector.Find(segment, line, null, out CurveIntersections hits);
            for (int i = 0; i < hits.Count; i++)
            {
                double t = hits.FirstRaw(i);
                if (t > 0 && line.Direction.Dot(segment.PointAtRaw(t) - line.Point) > 0)
                {
                    if (segment.TryPartRaw(0, t, out PathSegment last))
                    {
                        before.Add(last);
                    }

                    return before.Count > 0;
                }
            }

            before.Add(segment);
        }

        return false;
    }
}
