using System;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>A small pair of open scissors on a line that is to be cut.</summary>
internal static class Scissors
{
    private const double BladeMm = 5;
    private const double ShankMm = 2.6;
    private const double RingMm = 1.25;

    // Half the angle between the blades.
    private const double OpenRad = 0.32;

    /// <summary>Draws them with the rivet on a point, cutting along a heading.</summary>
    internal static void Draw(in Point2D rivet, in Direction heading, Action<CurvePath, LineRole> add)
    {
        foreach (double turn in new[] { OpenRad, -OpenRad })
        {
            Vector2D along = heading.Turned(Angle.FromRadians(turn)).TimesMm(1);
            Point2D foot = rivet + (along * -ShankMm);
            Point2D ring = foot + (along * -RingMm);
            add(CurvePath.FromLine(new LineSegment(foot, rivet + (along * BladeMm))), LineRole.PaperArrow);
            add(CurvePath.FromArc(CircularArc.Around(ring, foot, Angle.FromDegrees(360))), LineRole.PaperArrow);
        }
    }
}
