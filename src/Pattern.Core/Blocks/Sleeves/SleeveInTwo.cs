using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>A sleeve cut in two, an upper and an under sleeve, both bent forward at the elbow.</summary>
/// <remarks>Its seams meet the armhole at the first notch of each side, so that the under sleeve has no ease at the head. Under and upper sleeve bend by one angle about their front seams; the upper one
/// is wider, so its back seam comes out longer: that is what is eased in at the elbow, as asked for.</remarks>
internal static class SleeveInTwo
{
    internal static readonly PanelName Top = PanelName.Of("top sleeve");
    internal static readonly PanelName Under = PanelName.Of("under sleeve");
    internal static readonly EdgeName FrontSeam = EdgeName.Of("front seam");
    internal static readonly EdgeName BackSeam = EdgeName.Of("back seam");

    // A top sleeve that is hardly wider than the under one would have to bend by too much to get its ease.
    private const double LeastWider = 1.2;

    // Between both panels on the sheet.
    private const double BesideMm = 40;

    /// <summary>How the two are sewn to each other, the ease of the back seam between its elbow notches.</summary>
    internal static SeamPlan Plan(Length ease) => SeamPlan.Of(
        Seam.Between(EdgeOf.Panel(Top, FrontSeam), EdgeOf.Panel(Under, FrontSeam)).Named("front seam"),
        Seam.Between(EdgeOf.Panel(Top, BackSeam), EdgeOf.Panel(Under, BackSeam)).WithEaseBetween(ease, SeamMark.Notch(1), SeamMark.Notch(2)).Named("back seam"));

    internal static (Panel Top, Panel Under) Cut(SleeveDraft draft, BlockDraft block, Panel panel)
    {
        WorkedLength ease = WorkedLength.GivenMm("elbow ease", draft.Options.ElbowMm ?? draft.Customs.TwoPieceEaseMm);
        double backMm = draft.Armhole.BackHalf.Notches[0].FromSideMm;
        double frontMm = draft.BackHeadMm + draft.FrontHeadMm - draft.Armhole.FrontHalf.Notches[0].FromSideMm;
        PanelEdge head = panel.FindEdge(EdgeName.SleeveHead);
        Point2D back = head.PointAtSewnMm(backMm);
        Point2D front = head.PointAtSewnMm(frontMm);
        double lowerMm = draft.LowerWidthMm;
        double backShare = back.XMm / draft.WidthMm;
        double frontShare = front.XMm / draft.WidthMm;

        // The lower edge runs from front to back.
        PanelPair first = panel.CutApart(EdgeName.SleeveHead.At(Mm(backMm)), draft.LowerEdge.At(Mm(lowerMm * (1 - backShare))), BackSeam, PanelName.Of("back part"), PanelName.Of("rest"));
        PanelPair second = first.Beyond.CutApart(EdgeName.SleeveHead.At(Mm(frontMm - backMm)), draft.LowerEdge.At(Mm(lowerMm * (1 - frontShare))), FrontSeam, Top, PanelName.Of("front part"));
        Panel under = Upright(draft, first.Before.JoinedTo(EdgeName.BackUnderarm, second.Beyond, EdgeName.FrontUnderarm, Under), first.Before.FindEdge(EdgeName.BackUnderarm));
        Panel top = second.Before;
        SayCut(draft, block.Sheet, backMm);

        double backElbow = ElbowShare(draft, back);
        double frontElbow = ElbowShare(draft, front);
        double topMm = WidthAtElbow(top, frontElbow, backElbow);
        double underMm = WidthAtElbow(under, frontElbow, backElbow);
        if (topMm < LeastWider * underMm)
        {
            throw block.Refusal("The first notches lie so far up the head that the top sleeve would hardly be wider than the under sleeve. Set them lower.", Mm(topMm), Mm(LeastWider * underMm));
        }

        double perWidth = ease.ValueMm / (topMm - underMm);
        block.Sheet.Note(
            "Bend both forward: cut each along its elbow line up to the front seam, but not through, and swing its lower part until the cut stands open at the back seam, the top sleeve by {0}, the under sleeve by {1}. "
            + "Draw all seams again in smooth curves, and the lower edge of the under sleeve straight from corner to corner.",
            WorkedLength.DrawnMm(null, perWidth * topMm),
            WorkedLength.DrawnMm(null, perWidth * underMm));
        under = Redrawn(draft.LowerEdge, Straight, Redrawn(BackSeam, OneSweep, Bent(under, perWidth * underMm, frontElbow, backElbow)));
        top = Bent(top, perWidth * topMm, frontElbow, backElbow);
        double underSeamMm = under.FindEdge(BackSeam).SewnLengthMm();
        top = top.TrueEdge(BackSeam, new EdgeTruing { ClosedLength = Mm(underSeamMm + ease.ValueMm), MovingEnd = EdgeEnd.Start, Move = EndMove.AlongEdge }).Panel;
        block.Sheet.Note("The back seam of the top sleeve is to be longer than that of the under sleeve by {0}: make good at its wrist what it is off, and ease it in between the notches at the elbow.", ease);

        double clearMm = draft.Customs.ClearMm;
        double frontSeamMm = top.FindEdge(FrontSeam).SewnLengthMm();
        double elbowMm = frontSeamMm * frontElbow;
        double backElbowMm = underSeamMm * backElbow;
        double topSeamMm = underSeamMm + ease.ValueMm;
        ArmholeHalf backHalf = draft.Armhole.BackHalf;
        ArmholeHalf frontHalf = draft.Armhole.FrontHalf;
        double topHeadMm = frontMm - backMm;
        top = WithNotches(
            top,
            [
                .. backHalf.Notches.Skip(1).Select(notch => (EdgeName.SleeveHead, backHalf.OnHeadMm(notch.FromSideMm, draft.BackEaseMm) - backMm, notch.Count)),
                (EdgeName.SleeveHead, draft.BackHeadMm - backMm, 1),
                .. frontHalf.Notches.Skip(1).Reverse().Select(notch => (EdgeName.SleeveHead, topHeadMm + frontHalf.Notches[0].FromSideMm - frontHalf.OnHeadMm(notch.FromSideMm, draft.FrontEaseMm), notch.Count)),
                (FrontSeam, elbowMm, 1),
                (BackSeam, topSeamMm - (backElbowMm + clearMm + ease.ValueMm), 2),
                (BackSeam, topSeamMm - (backElbowMm - clearMm), 2),
            ]);
        under = WithNotches(
            under,
            [
                (EdgeName.SleeveHead, frontHalf.Notches[0].FromSideMm, 1),
                (BackSeam, backElbowMm - clearMm, 2),
                (BackSeam, backElbowMm + clearMm, 2),
                (FrontSeam, frontSeamMm - elbowMm, 1),
            ]);
        return (top, under);
    }

    private static void SayCut(SleeveDraft draft, DraftingSheet sheet, double backMm)
    {
        sheet.Note(
            "Mark on the wrist the same share of its width that each first notch of the head lies across the underarm line, and cut the sleeve apart from each notch to its mark: the back seam {0} from {1} along the head, the front seam {2} from {3}. "
            + "Lay the two outer parts together along their underarm seams: the under sleeve. What was the underarm is marked on its head, for the side seam.",
            WorkedLength.GivenMm(null, backMm),
            SleeveNames.BackUnderarm,
            WorkedLength.GivenMm(null, draft.Armhole.FrontHalf.Notches[0].FromSideMm),
            SleeveNames.FrontUnderarm);
    }

    // The cut is straight: its share of the way down is that of the heights.
    private static double ElbowShare(SleeveDraft draft, in Point2D notch) => (notch.YMm + draft.ElbowDepthMm) / (notch.YMm + draft.HemDepthMm);

    private static double WidthAtElbow(Panel panel, double frontElbow, double backElbow) => At(panel, FrontSeam, frontElbow).DistanceMm(At(panel, BackSeam, backElbow));

    // Seams run down on the right of a panel and up on its left; the share is always that below the head.
    private static EdgePlace Place(Panel panel, EdgeName seam, double share) => seam.At(Ratio.FromDecimalFractions(RunsDown(panel, seam) ? share : 1 - share));

    private static Point2D At(Panel panel, EdgeName seam, double share)
    {
        PanelEdge edge = panel.FindEdge(seam);
        return edge.PointAtSewnMm(edge.SewnLengthMm() * (RunsDown(panel, seam) ? share : 1 - share));
    }

    private static bool RunsDown(Panel panel, EdgeName seam) => panel.Neighbour(seam, Toward.Start) == EdgeName.SleeveHead;

    private static Panel Bent(Panel panel, double openMm, double frontElbow, double backElbow) => panel
        .SlashAndSpread(Place(panel, FrontSeam, frontElbow), Place(panel, BackSeam, backElbow), Mm(openMm), EdgeName.SleeveHead)
        .TrueEdge(FrontSeam).Panel;

    // What was the underarm seam stands upright, and the grain with it; beside the top sleeve, not over it.
    private static Panel Upright(SleeveDraft draft, Panel under, PanelEdge underarm)
    {
        Direction down = underarm.StretchesRaw[0].EndDirection.Reversed;
        Panel upright = under.Transformed(Transform2D.RotationRaw(underarm.End, Direction.FromRadians(down.TurnRadTo(Direction.Down))));
        double leftMm = upright.SeamOutline().Bounds.RightMm + BesideMm;
        double xMm = underarm.End.XMm;
        var grain = new LineSegment(new Point2D(xMm, underarm.End.YMm - (0.1 * draft.HemDepthMm)), new Point2D(xMm, underarm.End.YMm - (0.8 * draft.HemDepthMm)));
        return new Panel(upright.Name, upright.EdgesRaw, upright.Features with { Grainline = grain, Landmarks = [] }).Transformed(Transform2D.Translation(new Vector2D(-leftMm, 0)));
    }

    private static Panel Redrawn(EdgeName name, Func<PanelEdge, CurvePath> draw, Panel panel)
        => new(panel.Name, [.. panel.EdgesRaw.Select(edge => edge.Name == name ? new PanelEdge(name, edge.Role, draw(edge)) : edge)], panel.Features);

    private static CurvePath OneSweep(PanelEdge edge)
    {
        CurvePath line = edge.StretchesRaw[0];
        return CurvePath.FromCubic(CubicBezier.InOneSweep(line.Start, line.StartDirection, line.End, line.EndDirection));
    }

    // Where its two parts were laid together the lower edge has a corner, and cloth folds flat along a straight line only.
    private static CurvePath Straight(PanelEdge edge) => CurvePath.FromLine(new LineSegment(edge.Start, edge.End));

    private static Panel WithNotches(Panel panel, IEnumerable<(EdgeName Edge, double AlongMm, int Count)> notches) => new(panel.Name, panel.EdgesRaw, panel.Features with
    {
        Notches = [.. notches.Select(notch => SleeveDraft.On(panel.FindEdge(notch.Edge), notch.AlongMm, notch.Count))],
    });

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
