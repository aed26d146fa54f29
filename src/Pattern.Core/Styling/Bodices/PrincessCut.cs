using System;
using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>A panel cut in two along two darts; both edges rounded over the points that they pointed at, and notched where the rounding begins and ends.</summary>
internal static class PrincessCut
{
    // Common practice, no source: the ease lies within 5 cm of the point, to both sides, and a woven cloth takes 6 mm there.
    private const double ReachMm = 50;
    private const double MostEaseMm = 6;

    // A seam that is rounded off over less than half of that has a corner to the eye.
    private const double LeastShare = 0.5;

    // What of a leg, or of the way between two points, is left straight.
    private const double LegShare = 0.8;
    private const double LinkShare = 0.45;

    /// <summary>Cuts the panel.</summary>
    /// <returns>The part with the centre, the other part, and how much longer the edge of the first is between the notches.</returns>
    internal static (Panel Centre, Panel Side, double EaseMm) Apart(DesignDraft work, Panel panel, DartName upper, DartName waist, PanelName centre, PanelName side, string point, int notches)
    {
        PanelPair parts;
        try
        {
            parts = panel.TurnDartsIntoSeam(upper, waist, PrincessDesign.Seam, centre, side);
        }
        catch (ConstructionException refusal)
        {
            throw work.Refusal("The seam would leave the panel or cross a dart. " + refusal.Message);
        }

        // Rounded off over half the way, half as much has to be eased.
        double share = 1;
        (Panel centrePanel, double centreMm) = Rounded(parts.Before, notches, share);
        (Panel sidePanel, double sideMm) = Rounded(parts.Beyond, notches, share);
        if (Math.Abs(centreMm - sideMm) > MostEaseMm)
        {
            share = Math.Max(LeastShare, 0.99 * MostEaseMm / Math.Abs(centreMm - sideMm));
            (centrePanel, centreMm) = Rounded(parts.Before, notches, share);
            (sidePanel, sideMm) = Rounded(parts.Beyond, notches, share);
        }

        double easeMm = centreMm - sideMm;
        if (Math.Abs(easeMm) > MostEaseMm)
        {
            throw work.Refusal(FormattableString.Invariant(
                $"On the {panel.Name} {Math.Abs(easeMm):0.#} mm would have to be eased between the notches, and {MostEaseMm:0} mm is the most that cloth takes within 5 cm of the point. Let a part of the bust dart stand: draft the block with a shorter front, or begin the seam at the shoulder, where it bends less."));
        }

        work.Sheet.Note("Cut the {0} apart along both darts, from leg to leg through the {1}: {2} and {3}.", panel.Name.Text, point, centre.Text, side.Text);
        work.Sheet.Note(
            "Notch both edges {1} before and behind the {0}, and round them off between: over {4} to either side. There the {2} is longer by {3}, which is eased in.",
            point,
            WorkedLength.GivenMm(null, ReachMm),
            easeMm >= 0 ? centre.Text : side.Text,
            WorkedLength.GivenMm("ease", Math.Abs(easeMm)),
            WorkedLength.GivenMm(null, share * ReachMm));
        return (centrePanel, sidePanel, easeMm);
    }

    // The edge runs straight along the legs of what were darts; between its notches, one curve over each corner.
    private static (Panel Panel, double BetweenMm) Rounded(Panel panel, int notches, double share)
    {
        PanelEdge edge = panel.FindEdge(PrincessDesign.Seam);
        PathSegment[] lines = edge.StretchesRaw[0].SegmentsRaw;
        var rounded = new List<PathSegment>();
        Point2D at = lines[0].Start;
        double firstMm = 0;
        double lastMm = 0;
        double totalMm = 0;
        for (int i = 0; i + 1 < lines.Length; i++)
        {
            // Both edges have legs and links of the same lengths, so both are rounded as far.
            double reachMm = Math.Min(ReachMm, Math.Min(MostOf(lines, i), MostOf(lines, i + 1)));
            Point2D begin = lines[i].End - lines[i].EndDirection.TimesMm(share * reachMm);
            Point2D end = lines[i].End + lines[i + 1].StartDirection.TimesMm(share * reachMm);
            var straight = PathSegment.FromLine(new LineSegment(at, begin));
            var curve = PathSegment.FromCubic(CubicBezier.InOneSweep(begin, lines[i].EndDirection, end, lines[i + 1].StartDirection));
            rounded.Add(straight);
            rounded.Add(curve);
            firstMm = i == 0 ? straight.LengthMm() - ((1 - share) * reachMm) : firstMm;
            totalMm += straight.LengthMm() + curve.LengthMm();
            lastMm = totalMm + ((1 - share) * reachMm);
            at = end;
        }

        rounded.Add(PathSegment.FromLine(new LineSegment(at, lines[lines.Length - 1].End)));
        PanelEdge[] edges = [.. panel.EdgesRaw];
        var now = new PanelEdge(edge.Name, edge.Role, CurvePath.Trusted([.. rounded], isClosed: false));
        edges[panel.IndexOf(edge.Name)] = now;
        Notch[] marks =
        [
            .. panel.Notches,
            new Notch(edge.Name, now.PointAtSewnMm(firstMm), firstMm, notches),
            new Notch(edge.Name, now.PointAtSewnMm(lastMm), lastMm, notches),
        ];
        return (panel.WithEdges(edges, panel.Features with { Notches = marks }, "rounding a seam over a point"), lastMm - firstMm);
    }

    private static double MostOf(PathSegment[] lines, int index)
        => lines[index].LengthMm() * (index == 0 || index == lines.Length - 1 ? LegShare : LinkShare);
}
