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

    /// <summary>1 to 3 in by usage; where nobody says 2 in (5 cm), on a short skirt no more than an eighth of what hangs below the hip.</summary>
    internal static readonly MethodSetting<Length> Flare = MethodSetting.OfLength("flare of a seam edge", null, Length.Zero, Length.FromInches(10)).Printed();

    /// <summary>Where nobody says, from the hip.</summary>
    internal static readonly MethodSetting<Length> From = MethodSetting.OfLength("flare from below the waist", null, Length.FromInches(2), Length.FromInches(50));

    internal static readonly PanelName Gore = PanelName.Of("gore");
    internal static readonly EdgeName Right = EdgeName.Of("right");
    internal static readonly EdgeName Left = EdgeName.Of("left");

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtStock.RefuseDesigned(work);
        int count = work.Take(Count);
        WorkedLength flare = GoreHalf.FlareOf(work, stock, Flare);
        double from = GoreHalf.FlareFrom(work, stock, From, flare.ValueMm);
        bool isTrumpet = flare.ValueMm > 0 && from > stock.Levels.UpperHipMm + CheckList.ToleranceMm;
        double hip = stock.HipMm / count / 2;
        var shape = new GoreHalf(hip, hip - (stock.WaistMm / count / 2), flare.ValueMm);
        Panel half = shape.Draw(stock, from, shape.CurveMm(stock, from));
        Panel gore = GoreShape.Whole(Gore, (half, Right), (half, Left), (1, 1));
        foreach (Panel old in work.Source.Panels)
        {
            work.Drop(old.Name);
        }

        work.Add(gore, count);
        work.Sew(SeamPlan.Of(Seam.Between(EdgeOf.Panel(Gore, Right), EdgeOf.Panel(Gore, Left)).Running(SeamRun.Opposite).Named("gore seam", "waist to hip", "hip to hem")));
        Tell(work, stock, count, flare, WorkedLength.GivenMm("hip depth", stock.Levels.UpperHipMm), isTrumpet ? WorkedLength.GivenMm(null, from) : null);
        Promise(work, stock, count);
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
        work.Check(SkirtPromises.Hip, list => list.Length("hip width all around", SkirtPromises.Block, count * GoreShape.HipMm(list.FindPanel(Gore)), stock.HipMm));
        work.Check(SkirtPromises.Corners, list => GoreShape.CheckCorners(list, list.FindPanel(Gore)));
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
