using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Slanted pockets: the corner of the front between waist and side is cut off; an inner layer keeps the outline of the block, and a bag is sewn to the cut.</summary>
internal sealed class SlantedPocketsDesign() : BlockDesign(PocketsName, "1", Along, Down, Depth)
{
    internal const string PocketsName = "slanted pockets";

    /// <summary>10 cm along the waist by usage: 4 in (10 cm), but 15 mm beside a dart.</summary>
    internal static readonly MethodSetting<Length> Along = MethodSetting.OfLength("along the waist", null, Length.FromInches(1), Length.FromInches(8));

    /// <summary>15 to 18 cm down the side by usage: 6 1/2 in (16 cm), but within the hip curve.</summary>
    internal static readonly MethodSetting<Length> Down = MethodSetting.OfLength("down the side", null, Length.FromInches(3), Length.FromInches(10));

    /// <summary>25 to 28 cm below the waist by usage: 10 1/2 in (27 cm).</summary>
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("bag below the waist", Length.FromInches(10.5), Length.FromInches(6), Length.FromInches(20)).InMetric(Length.FromCentimeters(27)).Printed();

    internal static readonly PanelName Inner = PanelName.Of("front pocket");
    internal static readonly PanelName Bag = PanelName.Of("pocket bag");
    internal static readonly EdgeName PocketTop = EdgeName.Of("pocket top");
    internal static readonly EdgeName PocketSide = EdgeName.Of("pocket side");

    private const double BesideDartMm = 15;
    private const double LeastAlongMm = 35;
    private const double BeyondMm = 30;
    private const double AtSideMm = 40;
    private const double SinksMm = 50;
    private const double FreeMm = 60;
    private const double ApartMm = 50;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.OfFinished(work);
        (Panel back, Panel front, Seam side) = SkirtPockets.Sides(work);
        PanelEdge waist = front.FindEdge(EdgeName.Waist);
        CurvePath line = front.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath last = waist.StretchesRaw[waist.StretchesRaw.Length - 1];
        double along = AlongMm(work, stock, last.LengthMm, waist);
        double down = DownMm(work, stock, line);
        WorkedLength depth = work.Take(Depth);
        Point2D at = last.PointAtMm(last.LengthMm - along);
        Point2D below = line.PointAtMm(down);
        double opening = at.DistanceMm(below);
        SkirtPockets.RefuseSmall(work, opening);
        double room = line.LengthMm - FreeMm;
        if (depth.ValueMm < down + SinksMm || depth.ValueMm > room)
        {
            throw work.Refusal(FormattableString.Invariant($"The bag would end {depth.ValueMm:0} mm below the waist; from {down + SinksMm:0} mm, below its opening, to {room:0} mm, above the hem, there is room. Choose a depth there."));
        }

        Layers layers = Draw(front, waist, line, along, down, depth.ValueMm);
        work.Replace(PanelName.Front, layers.Inner(waist.Role), Cut(front, waist, along, down, at, below));
        work.Add(layers.OfBag(at, below), 2);
        Place(work);
        work.Sew(Sewn(work, side, front, along, down));
        Tell(work, WorkedLength.GivenMm(null, along), WorkedLength.GivenMm(null, down), WorkedLength.GivenMm("opening", opening), depth);
        SkirtStock.KeepLines(work);
        Promise(work, stock, waist.SewnLengthMm(), opening, back.Name);
    }

    private static double AlongMm(DesignDraft work, SkirtStock stock, double lastMm, PanelEdge waist)
    {
        double room = waist.Darts.Count == 0 ? waist.SewnLengthMm() - (2 * BeyondMm) : Math.Min(lastMm - BesideDartMm, waist.SewnLengthMm() - (2 * BeyondMm));
        if (room < LeastAlongMm)
        {
            throw work.Refusal(FormattableString.Invariant($"Beside the dart there are {room:0} mm of waist for the pocket, and it takes {LeastAlongMm:0} mm. Draft fewer darts in the front, or put the pockets into the side seams."));
        }

        if (!work.IsGiven(Along))
        {
            return Math.Min(stock.Usually(4, 10), room);
        }

        double along = work.Take(Along).ValueMm;
        return along <= room
            ? along
            : throw work.Refusal(FormattableString.Invariant($"The pocket would begin {along:0} mm along the waist from the side, and would cut into a dart or leave no front beside it: up to {room:0} mm there is room. Begin it nearer to the side."));
    }

    private static double DownMm(DesignDraft work, SkirtStock stock, CurvePath side)
    {
        double room = side.SegmentsRaw[0].LengthMm() - 10;
        double down = work.IsGiven(Down) ? work.Take(Down).ValueMm : Math.Min(stock.Usually(6.5, 16), room);
        return down <= room
            ? down
            : throw work.Refusal(FormattableString.Invariant($"The pocket would end {down:0} mm down the side, below the hip curve: up to {room:0} mm it ends within it. Let it end higher."));
    }

    // The corner is cut off straight.
    private static Panel Cut(Panel front, PanelEdge waist, double alongMm, double downMm, in Point2D at, in Point2D below)
    {
        CurvePath last = waist.StretchesRaw[waist.StretchesRaw.Length - 1];
        CurvePath side = front.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        var edges = new List<PanelEdge>();
        foreach (PanelEdge edge in front.EdgesRaw)
        {
            if (edge == waist)
            {
                edges.Add(new PanelEdge(edge.Name, edge.Role, [.. waist.StretchesRaw.Take(waist.StretchesRaw.Length - 1), last.SubPathMm(0, last.LengthMm - alongMm)], [.. waist.DartsRaw.Select(dart => dart.Shape)]));
                edges.Add(new PanelEdge(SeamPocketsDesign.Mouth, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(at, below))));
            }
            else
            {
                edges.Add(edge.Name == EdgeName.SideSeam ? new PanelEdge(edge.Name, edge.Role, side.SubPathMm(downMm, side.LengthMm)) : edge);
            }
        }

        PanelFeatures features = front.Features with
        {
            Notches = [.. front.Notches.Where(notch => notch.Edge != EdgeName.SideSeam || notch.FromStartMm > downMm)
                .Select(notch => notch.Edge == EdgeName.SideSeam ? new Notch(notch.Edge, notch.Position, notch.FromStartMm - downMm, notch.Count) : notch)],
            Landmarks = [.. front.Landmarks.Where(landmark => landmark.Position.DistanceMm(side.Start) > GeometryTolerance.JoinMm)],
        };
        return front.WithEdges([.. edges], features, "cutting a slanted pocket");
    }

    // In the frame of the side, with the darts closed: the bag lies flat behind the sewn front.
    private static Layers Draw(Panel front, PanelEdge waist, CurvePath side, double alongMm, double downMm, double depthMm)
    {
        Transform2D closing = waist.Darts.Aggregate(Transform2D.Identity, (turn, dart) => dart.Closing().Then(turn));
        CurvePath closed = waist.Closed().Transformed(closing.Inverted());
        double length = closed.LengthMm;
        CurvePath top = closed.SubPathMm(length - alongMm - BeyondMm, length - alongMm);
        CurvePath own = closed.SubPathMm(length - alongMm, length);
        CurvePath pocketSide = side.SubPathMm(downMm, downMm + AtSideMm);
        Direction inward = waist.StretchesRaw[0].StartDirection.X > 0 ? Direction.Left : Direction.Right;
        double bottom = side.Start.YMm - depthMm;
        Point2D lowest = new((pocketSide.End.XMm + top.Start.XMm) / 2, bottom);
        CurvePath edge = CurvePath.FromCubic(CubicBezier.Between(pocketSide.End, pocketSide.EndDirection, lowest, inward))
            .Then(CurvePath.FromCubic(CubicBezier.Between(lowest, inward, top.Start, Direction.Up)));
        Notch[] notches = [.. front.Notches.Where(notch => notch.Edge == EdgeName.SideSeam && notch.FromStartMm < downMm)];
        return new Layers(top, own, side.SubPathMm(0, downMm), pocketSide, edge, front.Grainline.Direction, notches);
    }

    private static void Place(DesignDraft work)
    {
        foreach (PanelName name in new[] { Inner, Bag })
        {
            Panel panel = work.FindPanel(name);
            double right = work.Panels.Where(other => other.Name == PanelName.Front || (name == Bag && other.Name == Inner) || !SeamPocketsDesign.IsPocket(other))
                .Max(other => other.SeamOutline().Bounds.RightMm);
            work.Replace(panel.Transformed(Transform2D.Translation(new Vector2D(right + ApartMm - panel.SeamOutline().Bounds.LeftMm, 0))));
        }
    }

    private static SeamPlan Sewn(DesignDraft work, Seam side, Panel front, double alongMm, double downMm)
    {
        EdgeOf Of(PanelName panel, EdgeName edge) => EdgeOf.Panel(panel, edge);
        EdgeOf back = Of(PanelName.Back, EdgeName.SideSeam);
        EdgeOf waist = Of(PanelName.Front, EdgeName.Waist);
        var seams = new List<Seam>();
        foreach (Seam seam in work.Seams.Seams)
        {
            if (seam == side)
            {
                seams.Add(Seam.Between(back, Of(Inner, EdgeName.SideSeam)).Running(SeamRun.SameWay).OverFirst(SeamMark.Start, SeamMark.At(SkirtStock.Mm(downMm))).Named("side seam above the pocket"));
                seams.Add(Seam.Between(back, Of(PanelName.Front, EdgeName.SideSeam)).Running(SeamRun.SameWay).OverFirst(SeamMark.At(SkirtStock.Mm(downMm)), SeamMark.End).Named("side seam below the pocket"));
            }
            else if (seam.First == waist || seam.Second == waist)
            {
                // What is sewn to the waist is sewn to the front and, over the corner, to the inner layer.
                EdgeOf other = seam.First == waist ? seam.Second : seam.First;
                double length = front.FindEdge(EdgeName.Waist).SewnLengthMm();
                SeamRun run = seam.Walk([.. work.Source.Panels]).Run;
                double corner = run == SeamRun.SameWay ? length - alongMm : alongMm;
                (SeamMark From, SeamMark To) before = (SeamMark.Start, SeamMark.At(SkirtStock.Mm(corner)));
                (SeamMark From, SeamMark To) beyond = (SeamMark.At(SkirtStock.Mm(corner)), SeamMark.End);
                (SeamMark From, SeamMark To) own = run == SeamRun.SameWay ? before : beyond;
                (SeamMark From, SeamMark To) inner = run == SeamRun.SameWay ? beyond : before;
                seams.Add(Seam.Between(other, waist).Running(run).OverFirst(own.From, own.To).Named(seam.Name));
                seams.Add(Seam.Between(other, Of(Inner, EdgeName.Waist)).Running(run).OverFirst(inner.From, inner.To).Named(seam.Name + " over the pocket"));
            }
            else
            {
                seams.Add(seam);
            }
        }

        Seam Layer(string name, PanelName first, PanelName second, EdgeName edge) => Seam.Between(Of(first, edge), Of(second, edge)).Running(SeamRun.SameWay).Named(name);
        seams.Add(Layer("pocket mouth", Bag, PanelName.Front, SeamPocketsDesign.Mouth));
        seams.Add(Layer("pocket bag seam", Bag, Inner, SeamPocketsDesign.BagEdge));
        seams.Add(Layer("pocket top in the waist", Bag, Inner, PocketTop));
        seams.Add(Layer("pocket side in the side seam", Bag, Inner, PocketSide));
        return SeamPlan.Of([.. seams]);
    }

    private static void Tell(DesignDraft work, WorkedLength along, WorkedLength down, WorkedLength opening, WorkedLength depth)
    {
        work.Sheet.Note("On the front mark the pocket on the waistline, {0} from the side, and on the side seam, {1} below the waist. Join both with a straight line: {2}.", along, down, opening);
        work.Sheet.Note("Fold the front darts closed and trace the inner layer: the waist from the side on and a little beyond the line, the side seam, and a rounded bag down to the depth: {0}.", depth);
        work.Sheet.Note("Trace the bag the same way, but only up to the slanted line. Then cut the corner off the front along it.");
        work.Sheet.Note("Cut the inner layers of the main cloth and the bags of lining. Stay the slanted edge with tape, face it with the bag, lay it on the inner layer and sew both layers around; catch them in waist and side seam.");
        work.Sheet.Because("The inner layer shows, and keeps the outline of the block; the slanted edge lies on the bias and stretches.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, double frontWaistMm, double openingMm, PanelName back)
    {
        Func<CheckList, double> closedWaist = SkirtTops.ClosedWaistMm(work);
        double waistMm = stock.WaistMm;
        work.Check(SkirtPromises.Waist, list => list.Length("closed waist all around", SkirtPromises.Block, closedWaist(list), waistMm));
        work.Check(SkirtPromises.Corners, list =>
        {
            SkirtPromises.SquareTop(list, [back]);
            Panel front = list.FindPanel(PanelName.Front);
            Panel inner = list.FindPanel(Inner);
            list.Angle("waist square to centre", front.Name.Text, CheckList.CornerRad(front.FindEdge(EdgeName.Centre).StretchesRaw[0], front.FindEdge(EdgeName.Waist).StretchesRaw[0]), SkirtStock.SquareRad);
            list.Angle("waist square to side", Inner.Text, CheckList.CornerRad(inner.FindEdge(EdgeName.Waist).StretchesRaw[0], inner.FindEdge(EdgeName.SideSeam).StretchesRaw[0]), SkirtStock.SquareRad);
        });
        work.Check("pocket", list =>
        {
            Panel front = list.FindPanel(PanelName.Front);
            list.Length("waist of front and pocket", SkirtPromises.Block, front.FindEdge(EdgeName.Waist).SewnLengthMm() + list.FindPanel(Inner).FindEdge(EdgeName.Waist).SewnLengthMm(), frontWaistMm);
            list.Length("hand opening", front.Name.Text, front.FindEdge(SeamPocketsDesign.Mouth).SewnLengthMm(), openingMm);
            list.LengthAtLeast("opening for a hand", front.Name.Text, list.FindPanel(Bag).FindEdge(SeamPocketsDesign.Mouth).SewnLengthMm(), SeamPocketsDesign.LeastOpeningMm, CheckList.ToleranceMm);
            SkirtPromises.SimpleOutline(list, list.FindPanel(Inner));
            SkirtPromises.SimpleOutline(list, list.FindPanel(Bag));
        });
    }

    /// <summary>The lines of both layers, in the frame of the side.</summary>
    private sealed record Layers(CurvePath Top, CurvePath Own, CurvePath Side, CurvePath Below, CurvePath Edge, Direction Along, Notch[] Notches)
    {
        internal Panel Inner(EdgeRole waist)
        {
            PanelBuilder panel = Start(SlantedPocketsDesign.Inner)
                .WithEdge(EdgeName.Waist, waist, Own)
                .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Side);
            return End(Notches.Aggregate(panel, (one, notch) => one.WithNotch(EdgeName.SideSeam, SkirtStock.Mm(notch.FromStartMm), notch.Count)), Own.Then(Side));
        }

        internal Panel OfBag(in Point2D at, in Point2D below)
        {
            CurvePath mouth = CurvePath.FromLine(new LineSegment(at, below));
            return End(Start(Bag).WithEdge(SeamPocketsDesign.Mouth, EdgeRole.Seam, mouth), mouth);
        }

        private PanelBuilder Start(PanelName name) => Panel.Named(name).WithEdge(PocketTop, EdgeRole.Seam, Top);

        private Panel End(PanelBuilder panel, CurvePath between)
        {
            CurvePath outline = CurvePath.FromSegments([.. Top.SegmentsRaw, .. between.SegmentsRaw, .. Below.SegmentsRaw, .. Edge.SegmentsRaw]).Closed();
            return panel.WithEdge(PocketSide, EdgeRole.Seam, Below).WithEdge(SeamPocketsDesign.BagEdge, EdgeRole.Seam, Edge).WithGrainline(Grain.Within(outline, Along)).Make();
        }
    }
}
