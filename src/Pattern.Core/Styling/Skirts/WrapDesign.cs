using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The wrap skirt: each front goes on beyond the centre front, shaped there as the other front that it lies over.</summary>
internal sealed class WrapDesign() : BlockDesign("wrap", "1", Overlap)
{
    /// <summary>15 to 20 cm beyond the centre front by usage: less gapes when one walks.</summary>
    internal static readonly MethodSetting<Length> Overlap = MethodSetting.OfLength("beyond the centre front", null, Length.FromInches(2), Length.FromInches(16)).Printed();

    internal static readonly EdgeName OverlapWaist = EdgeName.Of("overlap");
    internal static readonly EdgeName FrontEdge = EdgeName.Of("front edge");

    // A front edge beside a dart leaves so much room before it; one beyond a dart goes on by so much more, since its facing, 4 to 5 cm wide by usage, lies on flat cloth only.
    private const double BesideDartMm = 10;
    private const double BeyondDartMm = 45;
    private const double LeastBeyondDartMm = 40;

    // The least that may be asked for.
    private const double LeastMm = 50.8;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        Panel front = quarters[1];
        if (SkirtStock.TopOf(front).Name != EdgeName.Waist)
        {
            throw work.Refusal("It has a yoke, and a wrap is laid over from the waist down. Wrap the block first.");
        }

        WorkedLength overlap = work.IsGiven(Overlap) ? work.Take(Overlap) : WorkedLength.GivenMm("beyond the centre front", stock.Usually(6, 15));
        double roomMm = RoomMm(front);
        double lapMm = ClearOfDarts(front, overlap.ValueMm, BeyondDartMm);
        lapMm = lapMm > roomMm ? ClearOfDarts(front, overlap.ValueMm, LeastBeyondDartMm) : lapMm;
        if (lapMm > roomMm && !work.IsGiven(Overlap))
        {
            // Nobody asked for so much: it ends before the dart, or before the side.
            double shorterMm = BeforeDarts(front, Math.Min(overlap.ValueMm, roomMm - BesideDartMm));
            lapMm = shorterMm >= LeastMm ? shorterMm : lapMm;
        }

        if (lapMm > roomMm)
        {
            throw work.Refusal(FormattableString.Invariant($"The overlap would reach {lapMm:0} mm, beyond the side seam at {roomMm:0} mm. Let it end before the side."));
        }

        Panel wrapped = Wrapped(front, lapMm);
        work.Replace(wrapped);
        if (SkirtStock.IsStraight(work.FindPanel(PanelName.Back).FindEdge(EdgeName.Centre)))
        {
            // Without a zip it lies on the fold.
            work.Sew(work.Seams.Without(SkirtSeams.CentreBack.First));
        }

        Tell(work, overlap, lapMm);
        SkirtStock.KeepLines(work);
        Promise(work, stock, quarters, lapMm);
    }

    // As far as the front reaches from its centre, at the waist or the hem, whichever is the narrower.
    private static double RoomMm(Panel front)
    {
        PanelEdge side = front.FindEdge(EdgeName.SideSeam);
        double centre = front.FindEdge(EdgeName.Centre).End.XMm;
        return Math.Min(Math.Abs(side.Start.XMm - centre), Math.Abs(side.End.XMm - centre));
    }

    private static double ClearOfDarts(Panel front, double lapMm, double beyondMm)
        => Taken(front, beyondMm).Aggregate(lapMm, (lap, taken) => lap > taken.Near && lap < taken.Far ? taken.Far : lap);

    private static double BeforeDarts(Panel front, double lapMm)
        => Taken(front, LeastBeyondDartMm).Reverse().Aggregate(lapMm, (lap, taken) => lap > taken.Near && lap < taken.Far ? taken.Near : lap);

    // Where no front edge can fall, from the centre out.
    private static IEnumerable<(double Near, double Far)> Taken(Panel front, double beyondMm)
    {
        double centre = front.FindEdge(EdgeName.Centre).End.XMm;
        return SkirtStock.TopOf(front).Darts.Select(dart => (
            Math.Min(Math.Abs(dart.StartLeg.XMm - centre), Math.Abs(dart.EndLeg.XMm - centre)) - BesideDartMm,
            Math.Max(Math.Abs(dart.StartLeg.XMm - centre), Math.Abs(dart.EndLeg.XMm - centre)) + beyondMm));
    }

    // Beyond its centre the front is its own mirror image, cut off upright.
    private static Panel Wrapped(Panel front, double lapMm)
    {
        PanelEdge waist = SkirtStock.TopOf(front);
        CurvePath hem = front.FindEdge(EdgeName.Hem).StretchesRaw[0];
        Point2D top = front.FindEdge(EdgeName.Centre).End;
        double outward = waist.StretchesRaw[0].StartDirection.X > 0 ? -1 : 1;
        Transform2D over = Transform2D.Mirror(Line.Vertical(top));
        Line end = Line.Vertical(new Point2D(top.XMm + (outward * lapMm), 0));

        // The mirrored waist runs out from the centre; the overlap runs in to it.
        var stretches = new List<CurvePath>();
        var darts = new List<DartShape>();
        for (int i = 0; i < waist.StretchesRaw.Length; i++)
        {
            CurvePath image = waist.StretchesRaw[i].Transformed(over);
            PathIntersection[] hits = [.. image.IntersectionsWith(end).Points];
            stretches.Insert(0, (hits.Length > 0 ? image.SubPathMm(0, image.LengthToMm(image.ClosestTo(hits[0].Point))) : image).Reversed());
            if (hits.Length > 0)
            {
                break;
            }

            DartShape dart = waist.DartsRaw[i].Shape.Transformed(over);
            darts.Insert(0, dart with { StartLeg = dart.EndLeg, EndLeg = dart.StartLeg, PressedToward = dart.PressedToward == Toward.Start ? Toward.End : Toward.Start });
        }

        CurvePath image2 = hem.Reversed().Transformed(over);
        PathIntersection below = image2.IntersectionsWith(end).Points.First();
        CurvePath longer = hem.Then(image2.SubPathMm(0, image2.LengthToMm(image2.ClosestTo(below.Point))));
        return front.WithEdges(
            [
                new PanelEdge(OverlapWaist, EdgeRole.Opening, [.. stretches], [.. darts]),
                waist,
                front.FindEdge(EdgeName.SideSeam),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, longer),
                new PanelEdge(FrontEdge, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(longer.End, stretches[0].Start))),
            ],
            front.Features,
            "wrapping a front");
    }

    private static void Tell(DesignDraft work, WorkedLength overlap, double lapMm)
    {
        work.Unsay(SkirtMethod.HalfDrawn);
        work.Remark("One front of two, drawn beyond the centre front, and one half of the back. No zip: the fronts lie over each other.");
        work.Sheet.Note("Fold the paper at the centre front and trace the front through, so that it goes on beyond the centre as its own mirror image.");
        work.Sheet.Because("The upper front lies over the under one, and has to have its shape, darts and all.");
        work.Sheet.Note("Cut it off straight down, {0} beyond the centre front.", WorkedLength.GivenMm(null, overlap.ValueMm));
        if (lapMm - overlap.ValueMm > CheckList.ToleranceMm)
        {
            work.Sheet.Note("There it would cut into a dart: cut it off {0} beyond the centre front.", WorkedLength.GivenMm(null, lapMm));
        }
        else if (overlap.ValueMm - lapMm > CheckList.ToleranceMm)
        {
            work.Sheet.Note("There it would cut into a dart, or come too near to the side: cut it off {0} beyond the centre front.", WorkedLength.GivenMm(null, lapMm));
            work.Sheet.Because("A narrow overlap gapes when one walks: hold it with a pin or a button below the waist.");
        }

        work.Sheet.Note("Face both front edges, or turn them in. Ties or a button hold the upper front at the other side.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, Panel[] quarters, double lapMm)
    {
        double hipFront = SkirtFlare.HipWidthMm(quarters[1]);
        double hemFront = quarters[1].FindEdge(EdgeName.Hem).SewnLengthMm();
        double below = SkirtFlare.BelowHipMm(quarters[1]);
        (PanelName, int)[] tops = [(PanelName.Back, 2), (PanelName.Front, 2)];
        work.Check(SkirtPromises.Waist, list =>
        {
            SkirtPromises.ClosedWaist(list, tops, stock.WaistMm);
            PanelEdge lap = list.FindPanel(PanelName.Front).FindEdge(OverlapWaist);
            list.Length("waist of the overlap as that of the front beneath", "front", lap.SewnLengthMm(), SewnTo(list.FindPanel(PanelName.Front).FindEdge(EdgeName.Waist), lap));
        });
        work.Check(SkirtPromises.Hip, list =>
        {
            // What lies beyond the centre covers the other front and adds nothing around the body.
            Panel front = list.FindPanel(PanelName.Front);
            double beyond = front.FindEdge(EdgeName.Hem).SewnLengthMm() - hemFront;
            list.LengthAtLeast("hip width all around", SkirtPromises.Block, 2 * (SkirtFlare.HipWidthMm(list.FindPanel(PanelName.Back)) + hipFront), stock.HipMm, CheckList.ToleranceMm);
            list.LengthAtLeast("overlap at the hem", "front", beyond, lapMm, CheckList.ToleranceMm);
        });
        work.Check(SkirtPromises.Corners, list =>
        {
            SkirtPromises.SquareTop(list, [PanelName.Back]);
            Panel front = list.FindPanel(PanelName.Front);
            PanelEdge waist = front.FindEdge(EdgeName.Waist);
            PanelEdge lap = front.FindEdge(OverlapWaist);
            list.Angle("waist square to side", "front", CheckList.CornerRad(waist.StretchesRaw[waist.StretchesRaw.Length - 1], front.FindEdge(EdgeName.SideSeam).StretchesRaw[0]), SkirtStock.SquareRad);
            list.Angle("waist without a corner at the centre front", "front", CheckList.CornerRad(lap.StretchesRaw[lap.StretchesRaw.Length - 1], waist.StretchesRaw[0]), Math.PI);
        });
        work.Check(SkirtPromises.Hem, list =>
        {
            SkirtPromises.HemOfQuarter(list, list.FindPanel(PanelName.Back));
            Panel front = list.FindPanel(PanelName.Front);
            list.Angle("hem without a corner", "front", SkirtPromises.SharpestCornerRad(front.FindEdge(EdgeName.Hem).StretchesRaw[0]), 0);
            list.Length("side from hip to hem", "front", SkirtFlare.BelowHipMm(front), below);
            SkirtPromises.HemJoined(list, list.FindPanel(PanelName.Back), front, EdgeName.SideSeam);
        });
        work.Check(SkirtPromises.Outline, list =>
        {
            SkirtPromises.SimpleOutline(list, list.FindPanel(PanelName.Back));
            SkirtPromises.SimpleOutline(list, list.FindPanel(PanelName.Front));
        });
        work.Release(SkirtPromises.Advice, "It spoke of a front that ends at its centre.");
    }

    // As much of an edge, from its start, as has as many stretches as the other one, its last one cut off at the same place.
    private static double SewnTo(PanelEdge edge, PanelEdge image)
    {
        int whole = image.StretchesRaw.Length - 1;
        double sum = 0;
        for (int i = 0; i < whole; i++)
        {
            sum += edge.StretchesRaw[i].LengthMm;
        }

        return sum + image.StretchesRaw[0].LengthMm;
    }
}
