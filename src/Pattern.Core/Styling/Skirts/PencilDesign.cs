using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The pencil: the sides come in below the hip and hang straight for the last of it, so that the hem turns up flat; room to walk by a vent, a slit or a kick pleat at the centre back.</summary>
internal sealed class PencilDesign() : BlockDesign("pencil", "1", In, Straight, Opening, Height, Width)
{
    internal const string Vent = "vent";
    internal const string Slit = "slit";
    internal const string KickPleat = "kick pleat";
    internal const string None = "none";

    /// <summary>1 in by usage: pegged, and still a step wide with an opening.</summary>
    internal static readonly MethodSetting<Length> In = MethodSetting.OfLength("side hem in", Length.FromInches(1), Length.Zero, Length.FromInches(4)).InMetric(Length.FromCentimeters(2.5)).Printed();

    /// <summary>2 in (5 cm), so that a hem as deep as usual lies on cloth as wide as itself.</summary>
    internal static readonly MethodSetting<Length> Straight = MethodSetting.OfLength("straight above the hem", Length.FromInches(2), Length.FromInches(0.5), Length.FromInches(6)).InMetric(Length.FromCentimeters(5));

    /// <summary>A vent by usage: it shows no leg when one stands.</summary>
    internal static readonly MethodSetting<string> Opening = MethodSetting.OfChoice("walking room", Vent, Vent, Slit, KickPleat, None);

    /// <summary>Where nobody says, 16 to 20 cm above the hem: 8 in (20 cm), but never above 20 cm below the hip.</summary>
    internal static readonly MethodSetting<Length> Height = MethodSetting.OfLength("opening height", null, Length.FromInches(2), Length.FromInches(30));

    /// <summary>Where nobody says, 2 in (5 cm) for a vent, 4 in (10 cm) for a kick pleat.</summary>
    internal static readonly MethodSetting<Length> Width = MethodSetting.OfLength("opening width", null, Length.FromInches(1), Length.FromInches(6));

    private static readonly Advice NarrowStep = Advice.Of(
        "The hem holds the legs together before a usual step is made.", "Make the opening higher, bring the hem in less, or add a vent, a slit or a kick pleat.");

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        if (quarters.Any(quarter => quarter.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw is not [{ Kind: PathSegmentKind.Line }]))
        {
            throw work.Refusal("It flares, and a pencil comes in. Begin with the block as drafted.");
        }

        WorkedLength comesIn = work.Take(In);
        WorkedLength straight = work.Take(Straight);
        string opening = work.Take(Opening);
        double below = quarters[0].FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw.Last().LengthMm();
        if (straight.ValueMm + (2 * comesIn.ValueMm) > below)
        {
            throw work.Refusal(FormattableString.Invariant($"Below the hip there are {below:0} mm, too few to come in by {comesIn.ValueMm:0} mm and to hang straight for {straight.ValueMm:0} mm. Make it longer, or bring it in less."));
        }

        foreach (Panel quarter in quarters)
        {
            work.Replace(Tapered(quarter, comesIn.ValueMm, straight.ValueMm));
        }

        if (comesIn.ValueMm > 0)
        {
            work.Sheet.Note("On back and front mark on the hem: {0}. Draw the side seam down from the lower hip in a flat S, without a corner, to the level {1} above the hem; from there straight down.", comesIn, WorkedLength.GivenMm(null, straight.ValueMm));
            work.Sheet.Because("The hem then meets its seams square and turns up flat.");
        }

        double height = work.IsGiven(Height) ? work.Take(Height).ValueMm : Math.Max(stock.Usually(3, 8), Math.Min(stock.Usually(8, 20), stock.LengthMm - stock.Levels.UpperHipMm - stock.Usually(8, 20)));
        if (opening != None)
        {
            double width = work.IsGiven(Width) ? work.Take(Width).ValueMm : opening == KickPleat ? stock.Usually(4, 10) : stock.Usually(2, 5);
            Open(work, stock, opening, height, width);
        }

        SkirtStock.KeepLines(work);
        AdviseOnStride(work, stock, opening == None ? 0 : height);
    }

    private static Panel Tapered(Panel quarter, double inMm, double straightMm)
    {
        if (inMm == 0)
        {
            return quarter;
        }

        CurvePath side = quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath hem = quarter.FindEdge(EdgeName.Hem).StretchesRaw[0];
        PathSegment last = side.SegmentsRaw[side.SegmentsRaw.Length - 1];
        Vector2D inward = hem.StartDirection.TimesMm(inMm);
        Point2D bottom = side.End + inward;
        Point2D ends = bottom - last.EndDirection.TimesMm(straightMm);
        CubicBezier taper = CubicBezier.Between(last.Start, last.StartDirection, ends, last.EndDirection);
        CurvePath newSide = CurvePath.Trusted([.. side.SegmentsRaw.Take(side.SegmentsRaw.Length - 1), PathSegment.FromCubic(taper), PathSegment.FromLine(new LineSegment(ends, bottom))], isClosed: false);
        return quarter.WithEdges(
            [.. quarter.EdgesRaw.Select(edge => edge.Name == EdgeName.SideSeam ? new PanelEdge(edge.Name, edge.Role, newSide)
                : edge.Name == EdgeName.Hem ? new PanelEdge(edge.Name, edge.Role, CurvePath.FromLine(new LineSegment(bottom, hem.End)))
                : edge)],
            quarter.Features,
            "bringing a side hem in");
    }

    private static void Open(DesignDraft work, SkirtStock stock, string opening, double heightMm, double widthMm)
    {
        Panel back = work.FindPanel(PanelName.Back);
        CurvePath centre = back.FindEdge(EdgeName.Centre).StretchesRaw[0];
        CurvePath hem = back.FindEdge(EdgeName.Hem).StretchesRaw[0];
        double most = Math.Min(centre.LengthMm, -stock.Levels.LowerHipMm - centre.Start.YMm);
        double least = opening == Slit ? 0 : widthMm;
        if (heightMm > most || heightMm <= least)
        {
            throw work.Refusal(FormattableString.Invariant($"The {opening} would be {heightMm:0} mm high; more than {least:0} mm and up to {most:0} mm, where it ends at the hip, there is room. Choose a height there."));
        }

        Point2D top = centre.PointAtMm(heightMm);
        CurvePath above = centre.SubPathMm(heightMm, centre.LengthMm);
        PanelEdge Piece(string name, Point2D from, Point2D to) => new(EdgeName.Of(name), EdgeRole.Seam, CurvePath.FromLine(new LineSegment(from, to)));
        WorkedLength height = WorkedLength.GivenMm(null, heightMm);
        PanelEdge[] opened;
        if (opening == Slit)
        {
            opened = [back.FindEdge(EdgeName.Hem), Piece(Slit, centre.Start, top)];
            work.Sheet.Note("Leave the centre back seam open from {0} above the hem: a slit, faced.", height);
        }
        else
        {
            // The top slants by 45 degrees, so that it does not hang open when it is sewn down.
            Point2D corner = centre.Start + hem.EndDirection.TimesMm(widthMm);
            Point2D shoulder = corner + centre.StartDirection.TimesMm(heightMm - widthMm);
            opened =
            [
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(hem.Start, corner))),
                Piece(opening + " edge", corner, shoulder),
                Piece(opening + " top", shoulder, top),
            ];
            WorkedLength width = WorkedLength.GivenMm(null, widthMm);
            work.Sheet.Note("Extend the back hem beyond the centre by {0}. Square up from there, and slant the top by 45 degrees to the centre back, {1} above the hem.", width, height);
            if (opening == Vent)
            {
                work.Sheet.Note("The right half folds its extension back as a facing and mitres the hem; the left half lies under it. Sew the top through both.");
            }
            else
            {
                work.Sheet.Note("Sew both extensions to each other along edge and top, and press the pleat to both sides of the centre back: an inverted pleat.");
            }
        }

        Panel changed = back.WithEdges(
            [SkirtStock.TopOf(back), back.FindEdge(EdgeName.SideSeam), .. opened, new PanelEdge(EdgeName.Centre, EdgeRole.Centre, above)],
            back.Features,
            "opening the centre back");
        work.Replace(changed);
        if (opening != Slit)
        {
            // A vent lies one half over the other, and is sewn through both along its top; a kick pleat is sewn along its edge as well.
            string[] sewn = opening == Vent ? [" top"] : [" edge", " top"];
            work.Sew(sewn.Aggregate(work.Seams, (plan, part) => plan.With(Seam.ToMirrorImage(EdgeOf.Panel(PanelName.Back, EdgeName.Of(opening + part))).Named(opening + part))));
            CurvePath fold = CurvePath.FromLine(new LineSegment(centre.Start, top));
            work.Show("centre back fold", fold);
            work.CutAs(changed, ("centre back fold", fold));
        }
    }

    // Two legs that part from the fork like a pair of compasses, held by the girth at the top of the opening. Derived, from memory: waist at 62 % and fork at 46 % of the stature, a calf
    // of 35 cm, a step of 60 cm.
    private static void AdviseOnStride(DesignDraft work, SkirtStock stock, double openMm)
    {
        const double CalfMm = 350;
        const double StepMm = 600;
        double statureMm = work.Body.TryFindMm(BodyMeasurement.Stature, out double measured) ? measured : 1640;
        double forkMm = 0.46 * statureMm;
        double heldMm = Math.Max(0, (0.62 * statureMm) - stock.LengthMm + openMm);
        double levelMm = openMm - stock.LengthMm;
        work.Check("walking room", list =>
        {
            double girth = 2 * (WidthAt(list.FindPanel(PanelName.Back), levelMm) + WidthAt(list.FindPanel(PanelName.Front), levelMm));
            double step = heldMm >= forkMm ? double.PositiveInfinity : Math.Max(0, girth - CalfMm) / 2 * forkMm / (forkMm - heldMm);
            if (step < StepMm)
            {
                list.Advise(NarrowStep, "step that the hem lets one make", SkirtPromises.Block, SkirtStock.Mm(step), FindingRelation.AtLeast, SkirtStock.Mm(StepMm));
            }
        });
    }

    // At the level of the hem itself the lines end.
    private static double WidthAt(Panel panel, double yMm)
    {
        double y = yMm + CheckList.ToleranceMm;
        double centre = panel.FindEdge(EdgeName.Centre).StretchesRaw[0].Start.XMm;
        return Math.Abs(SkirtChecks.XAt(panel.FindEdge(EdgeName.SideSeam), y) - centre);
    }
}
