using System;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The circle skirt: ring sectors from waist, hip and length of the block.</summary>
/// <remarks>Closed forms for the part f of a circle: radius of the waist W / (2 pi f), hem W + 2 pi f L. The hip passes where W + 2 pi f d is at least hip girth and 2 cm, at the depth d of the hip.</remarks>
internal sealed class CircleDesign() : BlockDesign("circle", "1", Part, Smaller)
{
    /// <summary>A full circle by usage.</summary>
    internal static readonly MethodSetting<Ratio> Part = MethodSetting.OfShare("part of a circle", Ratio.FromPercent(100), Ratio.FromPercent(25), Ratio.FromPercent(200)).Printed();

    /// <summary>1 to 3 cm, from memory: where the waist lies on the bias it stretches in sewing.</summary>
    internal static readonly MethodSetting<Length> Smaller = MethodSetting.OfLength("waist cut smaller by", Length.FromInches(0.75), Length.Zero, Length.FromInches(2)).InMetric(Length.FromCentimeters(2));

    private const double RoomMm = 20;

    private static readonly EdgeName Side = EdgeName.SideSeam;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtStock.RefuseDesigned(work);
        double part = work.Take(Part).DecimalFractions;
        WorkedLength smaller = work.Take(Smaller);
        double girth = 2 * Math.PI * part;
        RefuseNarrow(work, stock, girth);

        // Front and back take a half of the ring each, and each is drawn as one half.
        double angle = girth / 4;
        double radius = stock.WaistMm / girth;
        double cutRadius = (stock.WaistMm - smaller.ValueMm) / girth;
        double away = Math.Sin(Math.Min(angle, SkirtStock.SquareRad)) * (radius + stock.LengthMm);
        foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
        {
            double hand = name == PanelName.Back ? 1 : -1;
            var centre = new Point2D(hand > 0 ? 0 : (2 * away) + 60, 0);
            Panel Sector(double innerMm) => MakeSector(name, centre, hand, angle, innerMm, radius + stock.LengthMm, radius + stock.Levels.UpperHipMm, isFold: part <= 1 || hand > 0);
            Panel sewn = Sector(radius);
            work.Drop(name);
            work.Add(sewn, 2);
            if (smaller.ValueMm > 0)
            {
                work.CutAs(Sector(cutRadius));
            }
        }

        SeamPlan plan = SeamPlan.Of(Seam.Between(EdgeOf.Panel(PanelName.Back, Side), EdgeOf.Panel(PanelName.Front, Side)).Named("side seam", "waist to hip", "hip to hem"), SkirtSeams.CentreBack);
        work.Sew(part <= 1 ? plan : plan.With(Seam.ToMirrorImage(EdgeOf.Panel(PanelName.Front, EdgeName.Centre)).Named("centre front seam")));
        Tell(work, stock, part, girth, smaller);
        Promise(work, stock, girth);
    }

    private static void RefuseNarrow(DesignDraft work, SkirtStock stock, double girth)
    {
        double hipMm = work.Body.RequireMm(BodyMeasurement.HipGirth, work.By);
        double passes = stock.WaistMm + (girth * stock.Levels.UpperHipMm);
        if (passes < hipMm + RoomMm)
        {
            double needed = 100 * (hipMm + RoomMm - stock.WaistMm) / (2 * Math.PI * stock.Levels.UpperHipMm);
            throw work.Refusal(string.Format(
                CultureInfo.InvariantCulture,
                "At the depth of the hip it would measure {0:0} mm, and a hip of {1:0} mm needs {2:0} mm to pass. Take at least {3:0.0} % of a circle.",
                passes, hipMm, hipMm + RoomMm, Math.Ceiling(needed * 10) / 10));
        }
    }

    private static Panel MakeSector(PanelName name, Point2D centre, double hand, double angleRad, double innerMm, double outerMm, double hipMm, bool isFold)
    {
        Angle sweep = Angle.FromRadians(hand * angleRad);
        CircularArc waist = CircularArc.Around(centre, new Point2D(centre.XMm, centre.YMm - innerMm), sweep);
        CircularArc hem = CircularArc.Around(centre, new Point2D(centre.XMm, centre.YMm - outerMm), sweep).Reversed();
        double clear = 0.15 * (outerMm - innerMm);
        double across = centre.XMm + (hand * 0.25 * innerMm);
        return Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromArc(waist))
            .WithEdge(Side, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(waist.End, hem.Start)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromArc(hem))
            .WithEdge(EdgeName.Centre, isFold ? EdgeRole.Centre : EdgeRole.Seam, CurvePath.FromLine(new LineSegment(hem.End, waist.Start)))
            .WithNotch(Side, Length.FromMillimeters(hipMm - innerMm), hand > 0 ? 2 : 1)
            .WithGrainline(new LineSegment(new Point2D(across, centre.YMm - innerMm - clear), new Point2D(across, centre.YMm - outerMm + clear)))
            .Make();
    }

    private static void Tell(DesignDraft work, SkirtStock stock, double part, double girth, WorkedLength smaller)
    {
        work.Unsay(SkirtMethod.HalfDrawn);
        work.Remark("Half of the skirt: one half of the back to the left, one half of the front to the right. Its waist is drawn as it is sewn.");
        var waist = WorkedLength.GivenMm("closed waist", stock.WaistMm);
        WorkedLength radius = waist.Times(1 / girth).Named("radius of the waist");
        work.Sheet.Note("The panels of the block are not needed any more: draw a circle about a corner of the paper: {0}.", radius);
        work.Sheet.Because(string.Format(CultureInfo.InvariantCulture, "The waist is {0:0.#} % of a circle, and a whole circle is 6.283 times its radius.", part * 100));
        work.Sheet.Note("About the same corner draw the hem: {0}.", (radius + WorkedLength.GivenMm("length", stock.LengthMm)).Named("radius of the hem"));
        work.Sheet.Note("Back and front are a half of it each. Draw one half of each: an angle of {0} degrees, the centre on one leg and the side seam on the other.", (90 * part).ToString("0.##", CultureInfo.InvariantCulture));
        if (smaller.ValueMm > 0)
        {
            work.Sheet.Note("Cut the waist smaller, by {0} all around: {1}.", WorkedLength.GivenMm(null, smaller.ValueMm), (waist - smaller).Times(1 / girth).Named("radius to cut"));
            work.Sheet.Because("Where the waist lies on the bias it stretches. Staystitch it at once, and let it out to the waistband.");
        }

        // The bias drops by 1 to 4 cm, from memory.
        work.Sheet.Note("The pieces have the hem as it is worn. Cut it lower where it lies on the bias, half way between the two straight grains, and run out to nothing at both: {0}.", WorkedLength.GivenMm(null, stock.Usually(1.25, 3)));
        work.Sheet.Because("There the cloth drops as it hangs: what is left over is cut off when the hem is levelled, and what is short cannot be put back.");
        work.Remark("Hang the skirt 24 to 48 hours before levelling the hem: on the bias it drops.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, double girth)
    {
        PanelName[] names = [PanelName.Back, PanelName.Front];
        (PanelName, int)[] tops = [.. names.Select(name => (name, 2))];
        double hipMm = work.Body.RequireMm(BodyMeasurement.HipGirth, work.By);
        double depth = stock.Levels.UpperHipMm;
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Hip, list =>
        {
            // Between waist and hem the width grows evenly with the depth.
            double passes = names.Sum(name =>
            {
                Panel panel = list.FindPanel(name);
                double waist = panel.FindEdge(EdgeName.Waist).SewnLengthMm();
                double hem = panel.FindEdge(EdgeName.Hem).SewnLengthMm();
                return 2 * (waist + ((hem - waist) * depth / panel.FindEdge(Side).SewnLengthMm()));
            });
            list.LengthAtLeast("hip width all around", SkirtPromises.Block, passes, hipMm + RoomMm);
        });
        work.Check(SkirtPromises.Corners, list => SkirtPromises.SquareTop(list, names));
        work.Check(SkirtPromises.Hem, list =>
        {
            double hem = 2 * names.Sum(name => list.FindPanel(name).FindEdge(EdgeName.Hem).SewnLengthMm());
            list.Length("hem all around", SkirtPromises.Block, hem, stock.WaistMm + (girth * stock.LengthMm));
            foreach (PanelName name in names)
            {
                Panel panel = list.FindPanel(name);
                SkirtPromises.HemOfQuarter(list, panel);
                list.Length("side from waist to hem", name.Text, panel.FindEdge(Side).SewnLengthMm(), stock.LengthMm);
                list.Length("centre from waist to hem", name.Text, panel.FindEdge(EdgeName.Centre).SewnLengthMm(), stock.LengthMm);
            }

            SkirtPromises.HemJoined(list, list.FindPanel(PanelName.Back), list.FindPanel(PanelName.Front), Side);
        });
        work.Release(SkirtPromises.Darts, "A circle has none.");
        work.Check(SkirtPromises.Outline, list => Array.ForEach(names, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
        work.Release(SkirtPromises.Advice, "It spoke of darts and of the side seams of the block.");
    }
}
