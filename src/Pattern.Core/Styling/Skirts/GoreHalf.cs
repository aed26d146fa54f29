using System;
using System.Globalization;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>One half of a gore, from its middle to a seam: the middle upright where a quarter has its centre, the seam a hip curve, below it straight, flared, or curved out from a level.</summary>
/// <param name="HipMm">How wide it is at the hip.</param>
/// <param name="TakenInMm">What its seam edge takes in from hip to waist.</param>
/// <param name="FlareMm">How far its seam edge stands out at the hem.</param>
internal readonly record struct GoreHalf(double HipMm, double TakenInMm, double FlareMm)
{
    // A flare needs some length to run out in.
    internal const double LeastRunMm = 50;

    internal double WaistMm => HipMm - TakenInMm;

    /// <summary>How far a seam edge flares: as asked for, or 2 in (5 cm), on a short skirt no more than an eighth of what hangs below the hip: more would pinch the hip.</summary>
    internal static WorkedLength FlareOf(DesignDraft work, SkirtStock stock, MethodSetting<Length> flare)
    {
        if (work.IsGiven(flare))
        {
            return work.Take(flare);
        }

        double mark = stock.Usually(0.125, 0.5);
        double most = Math.Floor((stock.LengthMm - stock.Levels.UpperHipMm) / 8 / mark) * mark;
        return WorkedLength.GivenMm(flare.Name, Math.Min(stock.Usually(2, 5), most));
    }

    /// <summary>From where seams flare: from the hip, or from the level that is asked for.</summary>
    /// <exception cref="Diagnostics.ConstructionException">It lies above the hip or too near to the hem, or the seams would curve out too fast.</exception>
    internal static double FlareFrom(DesignDraft work, SkirtStock stock, MethodSetting<Length> level, double mostFlareMm)
    {
        double hip = stock.Levels.UpperHipMm;
        double from = work.IsGiven(level) ? work.Take(level).ValueMm : hip;
        if (from < hip - CheckList.ToleranceMm || from > stock.LengthMm - LeastRunMm)
        {
            throw work.Refusal(string.Format(
                CultureInfo.InvariantCulture, "Its seams would flare from {0:0} mm below the waist; between the hip at {1:0} mm and {2:0} mm above the hem they can. Choose a level there.", from, hip, LeastRunMm));
        }

        if (from > hip + CheckList.ToleranceMm && mostFlareMm > (stock.LengthMm - from) / 2)
        {
            throw work.Refusal(string.Format(
                CultureInfo.InvariantCulture, "Its seams would curve out by {0:0} mm over the last {1:0} mm, which is more than half of that. Let them flare from further up, or less.", mostFlareMm, stock.LengthMm - from));
        }

        return from;
    }

    /// <summary>How long its seam is from waist to hip where nothing else is asked for.</summary>
    internal double CurveMm(SkirtStock stock, double fromMm) => Seam(stock, StraightFlareMm(stock, fromMm)).CurveMm;

    /// <summary>Draws it; its seam is as long as asked for from waist to hip, and as long as the skirt below.</summary>
    internal Panel Draw(SkirtStock stock, double fromMm, double curveMm)
    {
        double straight = StraightFlareMm(stock, fromMm);
        (Point2D top, _) = Seam(stock, straight);
        double hipMm = stock.Levels.UpperHipMm;
        var foot = new Point2D(HipMm, -hipMm);
        var hem = new Point2D(HipMm, -stock.LengthMm);
        var bottom = new Point2D(0, -stock.LengthMm);
        var rough = new Panel(
            PanelName.Of("gore"),
            [
                new PanelEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromCubic(CubicBezier.Between(Point2D.Origin, Direction.Right, top))),
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.Trusted([PathSegment.FromCubic(HipCurves.Vertical(foot, top).Reversed()), PathSegment.FromLine(new LineSegment(foot, hem))], isClosed: false)),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(hem, bottom))),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(bottom, Point2D.Origin))),
            ],
            new PanelFeatures(new LineSegment(new Point2D(0, -hipMm), new Point2D(0, (-0.15 * hipMm) - (0.85 * stock.LengthMm))), [], [], []));
        Panel half = SkirtFlare.SwingSide(rough, straight, WaistMm, curveMm);
        return straight < FlareMm ? Trumpet(half, FlareMm, fromMm) : half;
    }

    // What it flares by from the hip on: all of it, or nothing where the flare begins further down.
    private double StraightFlareMm(SkirtStock stock, double fromMm) => fromMm > stock.Levels.UpperHipMm + CheckList.ToleranceMm ? 0 : FlareMm;

    // The seam leaves the hip with the lean of the flare and reaches the waist with a lean that makes up for the taking in; an even waistline square to it rises by half of that lean
    // over its width.
    private (Point2D Top, double CurveMm) Seam(SkirtStock stock, double flareMm)
    {
        double hipMm = stock.Levels.UpperHipMm;
        double swing = 2 * Math.Asin(Math.Min(1, flareMm / 2 / (stock.LengthMm - hipMm)));
        double lean = (2 * Math.Atan(TakenInMm / hipMm)) - swing;
        var foot = new Point2D(HipMm, -hipMm);
        var top = new Point2D(WaistMm, WaistMm * lean / 2);
        return (top, HipCurves.Vertical(foot, foot + (top - foot).Rotated(Angle.FromRadians(-swing))).LengthMm());
    }

    // From its level down the seam leaves the upright without a corner and curves out; it keeps its length, and the hem is square to it.
    private static Panel Trumpet(Panel half, double flareMm, double fromMm)
    {
        CurvePath side = half.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        Point2D foot = side.SegmentsRaw[0].End;
        var from = new Point2D(foot.XMm, -fromMm);
        double run = from.YMm - side.End.YMm;
        double lower = 0;
        double upper = run;
        for (int i = 0; i < 60; i++)
        {
            double middle = (lower + upper) / 2;
            (lower, upper) = Curve(middle).LengthMm() < run ? (middle, upper) : (lower, middle);
        }

        CubicBezier curve = Curve(upper);
        CurvePath hem = CurvePath.FromCubic(CubicBezier.InOneSweep(curve.End, curve.EndDirection.TurnedRight, half.FindEdge(EdgeName.Hem).End, Direction.Left));
        PathSegment[] straight = foot.DistanceMm(from) > CheckList.ToleranceMm ? [PathSegment.FromLine(new LineSegment(foot, from))] : [];
        CurvePath newSide = CurvePath.Trusted([side.SegmentsRaw[0], .. straight, PathSegment.FromCubic(curve)], isClosed: false);
        return half.WithEdges(
            [
                half.EdgesRaw[0],
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, newSide),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, hem),
                half.EdgesRaw[3],
            ],
            half.Features,
            "flaring a gore");

        CubicBezier Curve(double downMm) => HipCurves.Vertical(from, new Point2D(from.XMm + flareMm, from.YMm - downMm));
    }
}
