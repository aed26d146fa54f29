using System;
using System.Globalization;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The gored skirt: so many equal gores, the waist shaped in their seams, each seam flared from a level.</summary>
/// <remarks>Closed forms for n gores: waist W / n and hip H / n, each seam edge takes in (H - W) / 2n.</remarks>
internal sealed class GoresDesign() : BlockDesign("gores", "1", Count, Flare, From)
{
    /// <summary>Six by usage.</summary>
    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("gores", 6, 3, 24).Printed();

    /// <summary>1 to 3 in by usage.</summary>
    internal static readonly MethodSetting<Length> Flare = MethodSetting.OfLength("flare of a seam edge", Length.FromInches(2), Length.Zero, Length.FromInches(10)).InMetric(Length.FromCentimeters(5)).Printed();

    /// <summary>Where nobody says, from the hip.</summary>
    internal static readonly MethodSetting<Length> From = MethodSetting.OfLength("flare from below the waist", null, Length.FromInches(2), Length.FromInches(50));

    internal static readonly PanelName Gore = PanelName.Of("gore");
    internal static readonly EdgeName Right = EdgeName.Of("right");
    internal static readonly EdgeName Left = EdgeName.Of("left");

    // A flare needs some length to run out in.
    private const double LeastRunMm = 50;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtTops.RefuseLowered(work);
        int count = work.Take(Count);
        WorkedLength flare = work.Take(Flare);
        double hip = stock.Levels.UpperHipMm;
        double from = work.IsGiven(From) ? work.Take(From).ValueMm : hip;
        if (from < hip - CheckList.ToleranceMm || from > stock.LengthMm - LeastRunMm)
        {
            throw work.Refusal(string.Format(
                CultureInfo.InvariantCulture, "Its seams would flare from {0:0} mm below the waist; between the hip at {1:0} mm and {2:0} mm above the hem they can. Choose a level there.", from, hip, LeastRunMm));
        }

        bool isTrumpet = flare.ValueMm > 0 && from > hip + CheckList.ToleranceMm;
        if (isTrumpet && flare.ValueMm > (stock.LengthMm - from) / 2)
        {
            throw work.Refusal(string.Format(
                CultureInfo.InvariantCulture, "Its seams would curve out by {0:0} mm over the last {1:0} mm, which is more than half of that. Let them flare from further up, or less.", flare.ValueMm, stock.LengthMm - from));
        }

        Panel half = Half(stock, count, hip, isTrumpet ? 0 : flare.ValueMm);
        Panel gore = Whole(isTrumpet ? Trumpet(half, flare.ValueMm, from) : half);
        foreach (Panel old in work.Source.Panels)
        {
            work.Drop(old.Name);
        }

        work.Add(gore, count);
        work.Sew(SeamPlan.Of(Seam.Between(EdgeOf.Panel(Gore, Right), EdgeOf.Panel(Gore, Left)).Running(SeamRun.Opposite).Named("gore seam", "waist to hip", "hip to hem")));
        Tell(work, stock, count, flare, WorkedLength.GivenMm("hip depth", hip), isTrumpet ? WorkedLength.GivenMm(null, from) : null);
        Promise(work, stock, count);
    }

    // One half of a gore, its middle where a quarter has its centre: straight below the hip or flared from there, the waist in one sweep, square to middle and seam.
    private static Panel Half(SkirtStock stock, int count, double hipMm, double flareMm)
    {
        double waist = stock.WaistMm / count / 2;
        double hip = stock.HipMm / count / 2;
        double swing = 2 * Math.Asin(Math.Min(1, flareMm / 2 / (stock.LengthMm - hipMm)));
        var foot = new Point2D(hip, -hipMm);

        // The seam leaves the hip with the lean of the flare and reaches the waist with a lean that makes up for the taking in; an even waistline square to it rises by half of
        // that lean over its width.
        double lean = (2 * Math.Atan((hip - waist) / hipMm)) - swing;
        var top = new Point2D(waist, waist * lean / 2);
        double curve = HipCurves.Vertical(foot, foot + (top - foot).Rotated(Angle.FromRadians(-swing))).LengthMm();
        var hem = new Point2D(hip, -stock.LengthMm);
        var bottom = new Point2D(0, -stock.LengthMm);
        var rough = new Panel(
            Gore,
            [
                new PanelEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromCubic(CubicBezier.Between(Point2D.Origin, Direction.Right, top))),
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.Trusted([PathSegment.FromCubic(HipCurves.Vertical(foot, top).Reversed()), PathSegment.FromLine(new LineSegment(foot, hem))], isClosed: false)),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(hem, bottom))),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(bottom, Point2D.Origin))),
            ],
            new PanelFeatures(new LineSegment(new Point2D(0, -hipMm), new Point2D(0, (-0.15 * hipMm) - (0.85 * stock.LengthMm))), [], [], []));
        return SkirtFlare.SwingSide(rough, flareMm, waist, curve);
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

    // The half and its image over the middle.
    private static Panel Whole(Panel half)
    {
        Transform2D over = Transform2D.Mirror(Line.Vertical(Point2D.Origin));
        CurvePath waist = half.FindEdge(EdgeName.Waist).StretchesRaw[0];
        CurvePath side = half.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath hem = half.FindEdge(EdgeName.Hem).StretchesRaw[0];
        Length hip = Length.FromMillimeters(side.SegmentsRaw[0].LengthMm());
        return Panel.Named(Gore)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, waist.Transformed(over).Reversed().Then(waist))
            .WithEdge(Right, EdgeRole.Seam, side)
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, hem.Then(hem.Transformed(over).Reversed()))
            .WithEdge(Left, EdgeRole.Seam, side.Transformed(over).Reversed())
            .WithNotch(Right, hip)
            .WithNotch(Left, side.Length - hip)
            .WithGrainline(half.Grainline)
            .Make();
    }

    private static void Tell(DesignDraft work, SkirtStock stock, int count, WorkedLength flare, WorkedLength hipDepth, WorkedLength? from)
    {
        work.Unsay(SkirtMethod.HalfDrawn);
        work.Remark(string.Format(CultureInfo.InvariantCulture, "One gore of {0}, all equal. The zip stands in one of the seams.", count));
        WorkedLength waist = WorkedLength.GivenMm("closed waist", stock.WaistMm).DividedBy(count).Named("waist of a gore");
        WorkedLength hip = WorkedLength.GivenMm("hip with ease", stock.HipMm).DividedBy(count).Named("hip of a gore");
        work.Sheet.Note("The panels of the block are not needed any more: draw the middle of a gore, upright: {0}.", WorkedLength.GivenMm("length", stock.LengthMm));
        work.Sheet.Note("Square out to both sides: at the waist half of the {0}; further down, at {1}, half of the {2}.", waist, hipDepth, hip);
        work.Sheet.Note("From hip to waist each seam edge takes in {0}. Draw it as a hip curve that leaves the hip without a corner.", (hip - waist).Half());
        if (flare.ValueMm > 0)
        {
            if (from is null)
            {
                work.Sheet.Note("Below the hip let each seam run out straight from the hip, at the hem by the {0}. It keeps its length; the hem is square to it.", flare);
            }
            else
            {
                work.Sheet.Note("From {0} below the waist let each seam curve out, at the hem by the {1}. It keeps its length; the hem is square to it.", from, flare);
            }
        }

        work.Sheet.Note("Draw the waist as one curve, hollow, square to both seams. Notch both seams at the hip. Cut {0} gores.", count);
    }

    private static void Promise(DesignDraft work, SkirtStock stock, int count)
    {
        (PanelName, int)[] tops = [(Gore, count)];
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Hip, list =>
        {
            Panel gore = list.FindPanel(Gore);
            double width = gore.Notches.Count == 2 ? gore.Notches[0].Position.DistanceMm(gore.Notches[1].Position) : double.NaN;
            list.Length("hip width all around", SkirtPromises.Block, count * width, stock.HipMm);
        });
        work.Check(SkirtPromises.Corners, list =>
        {
            Panel gore = list.FindPanel(Gore);
            CurvePath waist = gore.FindEdge(EdgeName.Waist).StretchesRaw[0];
            list.Angle("waist square to right seam", Gore.Text, CheckList.CornerRad(waist, gore.FindEdge(Right).StretchesRaw[0]), SkirtStock.SquareRad);
            list.Angle("waist square to left seam", Gore.Text, CheckList.CornerRad(gore.FindEdge(Left).StretchesRaw[0], waist), SkirtStock.SquareRad);
            list.Angle("waist without a corner", Gore.Text, SkirtPromises.SharpestCornerRad(waist), 0);
        });
        work.Check(SkirtPromises.Hem, list =>
        {
            Panel gore = list.FindPanel(Gore);
            CurvePath hem = gore.FindEdge(EdgeName.Hem).StretchesRaw[0];
            CurvePath right = gore.FindEdge(Right).StretchesRaw[0];
            list.Angle("hem without a corner", Gore.Text, SkirtPromises.SharpestCornerRad(hem), 0);
            list.Angle("hem joined at gore seam", SkirtPromises.Block, CheckList.CornerRad(right, hem) + CheckList.CornerRad(hem, gore.FindEdge(Left).StretchesRaw[0]), Math.PI);
            list.Length("seam from hip to hem", Gore.Text, right.LengthMm - right.SegmentsRaw[0].LengthMm(), stock.LengthMm - stock.Levels.UpperHipMm);
        });
        work.Release(SkirtPromises.Darts, "The seams of the gores shape the waist.");
        work.Check(SkirtPromises.Outline, list => SkirtPromises.SimpleOutline(list, list.FindPanel(Gore)));
        work.Release(SkirtPromises.Advice, "It spoke of darts and of the side seams of the block.");
    }
}
