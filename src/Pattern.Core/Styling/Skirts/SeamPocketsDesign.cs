using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Pockets in the side seams: a stretch of the seam left open, and a bag of two layers sewn to it.</summary>
internal sealed class SeamPocketsDesign() : BlockDesign(PocketsName, "1", Opening, Below, Depth, Reach)
{
    internal const string PocketsName = "seam pockets";

    /// <summary>15 to 17 cm by usage: 6 1/2 in (16 cm).</summary>
    internal static readonly MethodSetting<Length> Opening = MethodSetting.OfLength("hand opening", Length.FromInches(6.5), Length.FromInches(2), Length.FromInches(10)).InMetric(Length.FromCentimeters(16)).Printed();

    /// <summary>3 to 5 cm under the waist by usage: 1 1/2 in (4 cm).</summary>
    internal static readonly MethodSetting<Length> Below = MethodSetting.OfLength("opening below the waist", Length.FromInches(1.5), Length.FromInches(0.5), Length.FromInches(8)).InMetric(Length.FromCentimeters(4)).Printed();

    /// <summary>25 to 28 cm below the waist by usage: 10 1/2 in (27 cm), and 6 cm below the opening.</summary>
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("bag below the waist", null, Length.FromInches(5), Length.FromInches(20));

    /// <summary>As wide as a hand is long without its fingers bent, by usage: 5 1/2 in (14 cm), but no more than three quarters of the front.</summary>
    internal static readonly MethodSetting<Length> Reach = MethodSetting.OfLength("bag width", null, Length.FromInches(3), Length.FromInches(10));

    internal static readonly PanelName FrontBag = PanelName.Of("front pocket bag");
    internal static readonly PanelName BackBag = PanelName.Of("back pocket bag");
    internal static readonly EdgeName Mouth = EdgeName.Of("mouth");
    internal static readonly EdgeName BagEdge = EdgeName.Of("bag edge");

    /// <summary>A hand does not pass through less; from memory: hands are 7 to 9 cm wide, and fingers enter aslant.</summary>
    internal const double LeastOpeningMm = 130;

    private const double SinksMm = 30;
    private const double FreeMm = 60;
    private const double ApartMm = 50;

    // Nearer to an end of the opening a notch says what the end says already.
    private const double EndMm = 1e-6;

    /// <summary>Whether a panel is a part of a pocket.</summary>
    internal static bool IsPocket(Panel panel) => panel.TryFindEdge(BagEdge, out _);

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.OfFinished(work);
        (Panel back, Panel front, Seam side) = SkirtPockets.Sides(work);
        WorkedLength opening = work.Take(Opening);
        WorkedLength below = work.Take(Below);
        double to = below.ValueMm + opening.ValueMm;
        double depth = work.IsGiven(Depth) ? work.Take(Depth).ValueMm : Math.Max(stock.Usually(10.5, 27), to + stock.Usually(2.5, 6));
        CurvePath line = front.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        double across = Math.Abs(line.PointAtMm(Math.Min(to, line.LengthMm)).XMm - front.FindEdge(EdgeName.Centre).End.XMm);
        double reach = work.IsGiven(Reach) ? work.Take(Reach).ValueMm : Math.Min(stock.Usually(5.5, 14), 0.75 * across);
        double room = line.LengthMm - FreeMm;
        SkirtPockets.RefuseSmall(work, opening.ValueMm);
        if (depth > room || depth < to + SinksMm)
        {
            throw work.Refusal(FormattableString.Invariant(
                $"The bag would end {depth:0} mm below the waist; it ends at least {SinksMm:0} mm below its opening, {to + SinksMm:0} mm, and {FreeMm:0} mm above the hem, {room:0} mm. Choose another depth, a shorter opening or a longer skirt."));
        }

        if (reach > 0.9 * across)
        {
            throw work.Refusal(FormattableString.Invariant($"The bag would reach {reach:0} mm in from the side, where the front is {across:0} mm wide: both bags would meet. Make it at most {0.9 * across:0} mm wide."));
        }

        Panel bag = Bag(front, line, below.ValueMm, to, depth, reach);
        Panel[] bags = Placed(work, bag);
        SkirtTops.Replace(work, SkirtPockets.WithNotches(back, below.ValueMm, to));
        SkirtTops.Replace(work, SkirtPockets.WithNotches(front, below.ValueMm, to));
        Array.ForEach(bags, one => work.Add(one, 2));
        work.Sew(SkirtPockets.Opened(work.Seams, side, below.ValueMm, to)
            .With(MouthSeam(FrontBag, PanelName.Front, below.ValueMm, to))
            .With(MouthSeam(BackBag, PanelName.Back, below.ValueMm, to))
            .With(Seam.Between(EdgeOf.Panel(FrontBag, BagEdge), EdgeOf.Panel(BackBag, BagEdge)).Running(SeamRun.SameWay).Named("pocket bag seam")));
        work.Sheet.Note("On both side seams notch the opening of the pocket: its upper end {0}, its lower end further down by the {1}.", below, opening);
        work.Sheet.Note("Draw the bag on the front: along the side seam from notch to notch, {0} in from the side, down to {1} below the waist, rounded so that no dust gathers in a corner. Trace it, and turn it over for the back.", WorkedLength.GivenMm(null, reach), WorkedLength.GivenMm(null, depth));
        work.Sheet.Note("Cut the front bags of lining and the back bags of the main cloth. Stay the opening with tape, sew the bags to it, then the side seam above and below and the bag all around in one go.");
        work.Sheet.Because("The back bag shows when the pocket gapes; the tape keeps the seam from stretching.");
        SkirtStock.KeepLines(work);
        double openMm = opening.ValueMm;
        work.Check("pocket", list =>
        {
            list.Length("hand opening", FrontBag.Text, list.FindPanel(FrontBag).FindEdge(Mouth).SewnLengthMm(), openMm);
            list.LengthAtLeast("opening for a hand", FrontBag.Text, list.FindPanel(BackBag).FindEdge(Mouth).SewnLengthMm(), LeastOpeningMm, CheckList.ToleranceMm);
            SkirtPromises.SimpleOutline(list, list.FindPanel(FrontBag));
        });
    }

    private static Seam MouthSeam(PanelName bag, PanelName panel, double fromMm, double toMm) => Seam
        .Between(EdgeOf.Panel(bag, Mouth), EdgeOf.Panel(panel, EdgeName.SideSeam))
        .Running(SeamRun.SameWay)
        .OverSecond(SeamMark.At(SkirtStock.Mm(fromMm)), SeamMark.At(SkirtStock.Mm(toMm)))
        .Named(panel.Text + " pocket mouth");

    // On the front, under the side seam: the mouth runs down, the rest back up around the bag.
    private static Panel Bag(Panel front, CurvePath side, double fromMm, double toMm, double depthMm, double reachMm)
    {
        const double SlantRad = Math.PI / 4;
        CurvePath mouth = side.SubPathMm(fromMm, toMm);
        Direction inward = front.FindEdge(EdgeName.Waist).StretchesRaw[0].StartDirection.X > 0 ? Direction.Left : Direction.Right;
        double bottom = side.Start.YMm - depthMm;
        Point2D far = new(mouth.End.XMm + (inward.X * reachMm), (mouth.Start.YMm + bottom) / 2);
        Point2D lowest = new(mouth.End.XMm + (inward.X * reachMm / 2), bottom);
        Direction aslant = Direction.Up.TurnedRad(inward.X > 0 ? SlantRad : -SlantRad);
        CurvePath around = CurvePath.FromCubic(CubicBezier.Between(mouth.End, aslant.Reversed, lowest, inward))
            .Then(CurvePath.FromCubic(CubicBezier.Between(lowest, inward, far, Direction.Up)))
            .Then(CurvePath.FromCubic(CubicBezier.Between(far, Direction.Up, mouth.Start, inward.Reversed)));
        var outline = CurvePath.FromSegments([.. mouth.SegmentsRaw, .. around.SegmentsRaw]);
        PanelBuilder bag = Panel.Named(FrontBag)
            .WithEdge(Mouth, EdgeRole.Seam, mouth)
            .WithEdge(BagEdge, EdgeRole.Seam, around)
            .WithGrainline(Grain.Within(outline.Closed(), front.Grainline.Direction));
        foreach (Notch notch in front.Notches.Where(notch => notch.Edge == EdgeName.SideSeam && notch.FromStartMm > fromMm + EndMm && notch.FromStartMm < toMm - EndMm))
        {
            bag = bag.WithNotch(Mouth, SkirtStock.Mm(notch.FromStartMm - fromMm), notch.Count);
        }

        return bag.Make();
    }

    // Beside the front, and turned over beside the back.
    private static Panel[] Placed(DesignDraft work, Panel bag)
    {
        BoundingBox box = bag.SeamOutline().Bounds;
        BoundingBox all = work.Panels.Select(panel => panel.SeamOutline().Bounds).Aggregate((one, other) => one.Union(other));
        Panel right = bag.Transformed(Transform2D.Translation(new Vector2D(all.RightMm + ApartMm - box.LeftMm, 0)));
        Transform2D over = Transform2D.Mirror(Line.Vertical(new Point2D(box.LeftMm, 0)));
        BoundingBox turned = bag.Transformed(over).SeamOutline().Bounds;
        Panel left = bag.Transformed(over.Then(Transform2D.Translation(new Vector2D(all.LeftMm - ApartMm - turned.RightMm, 0))));
        return [new Panel(BackBag, left.EdgesRaw, left.Features), right];
    }
}
