using System;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Gores of unequal width: a front gore and a back gore of their own width, side gores that share the rest; what darts and side seams of the block take in goes into the seams beside them.</summary>
/// <remarks>Widths by L. I. Baldt, Clothing for Women, 1916, found in excerpts: half of the front and of the back gore a twelfth of the hip, at the hem twice that, two side gores share the rest.</remarks>
internal sealed class UnequalGoresDesign() : BlockDesign("unequal gores", "1", Count, FrontWidth, BackWidth, Flare, PanelFlare, From)
{
    /// <summary>Six by usage, as in 1916.</summary>
    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("gores", 6, 4, 8).Printed();

    /// <summary>Where nobody says, a sixth of the hip: Baldt, 1916.</summary>
    internal static readonly MethodSetting<Length> FrontWidth = MethodSetting.OfLength("front gore at the hip", null, Length.FromInches(2), Length.FromInches(40)).Printed();

    /// <summary>Where nobody says, a sixth of the hip: Baldt, 1916.</summary>
    internal static readonly MethodSetting<Length> BackWidth = MethodSetting.OfLength("back gore at the hip", null, Length.FromInches(2), Length.FromInches(40)).Printed();

    /// <summary>1 to 3 in by usage; where nobody says 2 in (5 cm), on a short skirt no more than an eighth of what hangs below the hip.</summary>
    internal static readonly MethodSetting<Length> Flare = MethodSetting.OfLength("flare of a seam edge", null, Length.Zero, Length.FromInches(10)).Printed();

    /// <summary>Where nobody says, as much as any other seam.</summary>
    internal static readonly MethodSetting<Length> PanelFlare = MethodSetting.OfLength("flare beside front and back gore", null, Length.Zero, Length.FromInches(10));

    /// <summary>Where nobody says, from the hip.</summary>
    internal static readonly MethodSetting<Length> From = MethodSetting.OfLength("flare from below the waist", null, Length.FromInches(2), Length.FromInches(50));

    internal static readonly PanelName FrontGore = PanelName.Of("front gore");
    internal static readonly PanelName BackGore = PanelName.Of("back gore");
    internal static readonly EdgeName TowardFront = EdgeName.Of("toward front");
    internal static readonly EdgeName TowardBack = EdgeName.Of("toward back");

    private const double GapMm = 40;
    private const double LeastWaistMm = 10;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtStock.RefuseDesigned(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        int count = work.Take(Count);
        if (count % 2 != 0)
        {
            throw work.Refusal(FormattableString.Invariant($"{count} gores would not be alike to both sides: one front gore, one back gore and side gores in pairs are 4, 6 or 8. Take one of these."));
        }

        double usual = stock.HipMm / 6;
        double front = work.IsGiven(FrontWidth) ? work.Take(FrontWidth).ValueMm : usual;
        double back = work.IsGiven(BackWidth) ? work.Take(BackWidth).ValueMm : usual;
        PanelName[] names = Names(count);
        int sides = names.Length - 2;
        double side = (stock.HipMm - front - back) / 2 / sides;
        double flare = GoreHalf.FlareOf(work, stock, Flare).ValueMm;
        double beside = work.IsGiven(PanelFlare) ? work.Take(PanelFlare).ValueMm : flare;
        double from = GoreHalf.FlareFrom(work, stock, From, Math.Max(flare, beside));

        // From the centre back on: how wide each is, and where the seams between them stand.
        double[] widths = [back / 2, .. Enumerable.Repeat(side, sides), front / 2];
        double[] seams = [.. Enumerable.Range(1, names.Length - 1).Select(i => widths.Take(i).Sum())];
        double[] takenIn = TakenIn(stock, quarters, seams);
        RefuseNarrow(work, names, widths, takenIn);
        double[] flares = [.. seams.Select((_, i) => i == 0 || i == seams.Length - 1 ? beside : flare)];
        Panel[] gores = Draw(stock, names, widths, takenIn, flares, from);
        foreach (Panel old in work.Source.Panels)
        {
            work.Drop(old.Name);
        }

        Array.ForEach(gores, gore => work.Add(gore, 2));
        work.Sew(SeamPlan.Of(
        [
            .. Enumerable.Range(0, seams.Length).Select(i => Seam.Between(EdgeOf.Panel(names[i], TowardFront), EdgeOf.Panel(names[i + 1], TowardBack))
                .Named(names[i].Text + " to " + names[i + 1].Text, "waist to hip", "hip to hem")),
            Seam.ToMirrorImage(EdgeOf.Panel(BackGore, EdgeName.Centre)).Named(SkirtSeams.CentreBack.Name),
        ]));
        Tell(work, stock, names, widths, takenIn, flares, from);
        Promise(work, stock, names);
    }

    private static PanelName[] Names(int count)
    {
        string[] sides = count switch
        {
            4 => ["side gore"],
            6 => ["side back gore", "side front gore"],
            _ => ["side back gore", "side gore", "side front gore"],
        };
        return [BackGore, .. sides.Select(PanelName.Of), FrontGore];
    }

    // What each seam takes in, both edges together. What a dart or the side seam of the block takes in goes into the seams before and behind it, more to the nearer one.
    private static double[] TakenIn(SkirtStock stock, Panel[] quarters, double[] seamsMm)
    {
        double half = stock.HipMm / 2;
        double backHip = SkirtFlare.HipWidthMm(quarters[0]);
        var takenIn = new double[seamsMm.Length];
        double left = half - (stock.WaistMm / 2);
        foreach (Panel quarter in quarters)
        {
            double centre = quarter.FindEdge(EdgeName.Centre).Start.XMm;
            foreach (Dart dart in SkirtStock.TopOf(quarter).Darts)
            {
                double fromCentre = Math.Abs(dart.Apex.XMm - centre);
                ShareOut(quarter.Name == PanelName.Back ? fromCentre : half - fromCentre, dart.IntakeMm);
                left -= dart.IntakeMm;
            }
        }

        ShareOut(backHip, left);
        return takenIn;

        void ShareOut(double at, double intake)
        {
            int after = Array.FindIndex(seamsMm, seam => seam >= at);
            if (after <= 0)
            {
                takenIn[after < 0 ? seamsMm.Length - 1 : 0] += intake;
                return;
            }

            double nearness = (at - seamsMm[after - 1]) / (seamsMm[after] - seamsMm[after - 1]);
            takenIn[after] += nearness * intake;
            takenIn[after - 1] += (1 - nearness) * intake;
        }
    }

    private static void RefuseNarrow(DesignDraft work, PanelName[] names, double[] widths, double[] takenIn)
    {
        for (int i = 0; i < names.Length; i++)
        {
            double waist = Math.Min(HalfWaist(i, toFront: true), HalfWaist(i, toFront: false));
            if (waist < LeastWaistMm)
            {
                throw work.Refusal(string.Format(
                    CultureInfo.InvariantCulture, "Half of the {0} would be {1:0} mm wide at the waist; it needs {2:0}. Take fewer gores, or give the front and back gore other widths.", names[i], waist, LeastWaistMm));
            }
        }

        double HalfWaist(int i, bool toFront) => i == 0 || i == names.Length - 1
            ? widths[i] - (takenIn[i == 0 ? 0 : takenIn.Length - 1] / 2)
            : (widths[i] / 2) - (takenIn[toFront ? i : i - 1] / 2);
    }

    private static Panel[] Draw(SkirtStock stock, PanelName[] names, double[] widths, double[] takenIn, double[] flares, double from)
    {
        int last = names.Length - 1;
        GoreHalf Half(int gore, int seam) => new(gore == 0 || gore == last ? widths[gore] : widths[gore] / 2, takenIn[seam] / 2, flares[seam]);

        // A seam is as long as its two edges are by themselves, in the mean; the waists of both are trued to that.
        double[] curves = [.. takenIn.Select((_, seam) => (Half(seam, seam).CurveMm(stock, from) + Half(seam + 1, seam).CurveMm(stock, from)) / 2)];
        Panel Drawn(int gore, int seam) => Half(gore, seam).Draw(stock, from, curves[seam]);
        int Cuts(int seam) => seam == last - 1 ? 1 : seam == 0 ? 3 : 2;
        var gores = new Panel[names.Length];
        double at = 0;
        for (int i = 0; i <= last; i++)
        {
            gores[i] = i == 0
                ? GoreShape.OnFold(names[0], Drawn(0, 0), TowardFront, Cuts(0))
                : i == last
                    ? GoreShape.OnFold(names[last], Drawn(last, last - 1), TowardBack, Cuts(last - 1)).Transformed(Transform2D.Mirror(Line.Vertical(Point2D.Origin)))
                    : GoreShape.Whole(names[i], (Drawn(i, i), TowardFront), (Drawn(i, i - 1), TowardBack), (Cuts(i), Cuts(i - 1)));
            BoundingBox box = gores[i].SeamOutline().Bounds;
            gores[i] = gores[i].Transformed(Transform2D.Translation(new Vector2D(at - box.Left.Millimeters, 0)));
            at += box.Width.Millimeters + GapMm;
        }

        return gores;
    }

    private static void Tell(DesignDraft work, SkirtStock stock, PanelName[] names, double[] widths, double[] takenIn, double[] flares, double from)
    {
        int last = names.Length - 1;
        work.Remark("Half of the skirt, gore by gore: the back gore to the left, half of it; the front gore to the right, half of it.");
        WorkedLength hip = WorkedLength.GivenMm("hip with ease", stock.HipMm);
        work.Sheet.Note("Width at the hip: half of the back gore {0}, half of the front gore {1}.", WorkedLength.GivenMm(null, widths[0]), WorkedLength.GivenMm(null, widths[last]));
        work.Sheet.Note(
            "The side gores share the rest of half of the {0}, each {1}.", hip, WorkedLength.GivenMm(null, widths[1]));
        for (int i = 0; i < takenIn.Length; i++)
        {
            work.Sheet.Note("The seam between {0} and {1} takes in {2} at the waist, half of it on either gore.", names[i].Text, names[i + 1].Text, WorkedLength.GivenMm(null, takenIn[i]));
            if (i == 0)
            {
                work.Sheet.Because("What each dart and the side seam of the block take in goes into the seams beside it, more to the nearer one.");
            }

            if (flares[i] > 0)
            {
                work.Sheet.Note("It flares from {0} below the waist, on either gore by {1} at the hem.", WorkedLength.GivenMm(null, from), WorkedLength.GivenMm(null, flares[i]));
            }
        }

        work.Sheet.Note("Draw each waist as one curve, hollow, square to the seams, and each hem square to the seams. Notch the seams at the hip: once beside the front gore, three times beside the back gore, twice between.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, PanelName[] names)
    {
        (PanelName, int)[] tops = [.. names.Select(name => (name, 2))];
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Hip, list => list.Length("hip width all around", SkirtPromises.Block, 2 * names.Sum(name => GoreShape.HipMm(list.FindPanel(name))), stock.HipMm));
        work.Check(SkirtPromises.Corners, list => Array.ForEach(names, name => GoreShape.CheckCorners(list, list.FindPanel(name))));
        work.Check(SkirtPromises.Hem, list =>
        {
            for (int i = 0; i < names.Length; i++)
            {
                Panel gore = list.FindPanel(names[i]);
                CurvePath hem = gore.FindEdge(EdgeName.Hem).StretchesRaw[0];
                list.Angle("hem without a corner", names[i].Text, SkirtPromises.SharpestCornerRad(hem), 0);
                if (gore.TryFindEdge(EdgeName.Centre, out PanelEdge? centre))
                {
                    list.Angle("hem square to centre", names[i].Text, CornerBetween(gore, EdgeName.Hem, centre!.Name), SkirtStock.SquareRad);
                }

                if (i > 0)
                {
                    double joined = CornerBetween(list.FindPanel(names[i - 1]), TowardFront, EdgeName.Hem) + CornerBetween(gore, TowardBack, EdgeName.Hem);
                    list.Angle($"hem joined at {names[i - 1]} to {names[i]}", SkirtPromises.Block, joined, Math.PI);
                    list.Length("seam from hip to hem", names[i].Text, BelowNotchMm(gore, TowardBack), stock.LengthMm - stock.Levels.UpperHipMm);
                }
            }
        });
        work.Release(SkirtPromises.Darts, "The seams of the gores shape the waist.");
        work.Check(SkirtPromises.Outline, list => Array.ForEach(names, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
        work.Release(SkirtPromises.Advice, "It spoke of darts and of the side seams of the block.");
    }

    // The angle inside a panel between two edges that follow each other, in either order.
    private static double CornerBetween(Panel panel, EdgeName one, EdgeName other)
    {
        bool isNext = (panel.IndexOf(one) + 1) % panel.EdgesRaw.Length == panel.IndexOf(other);
        (EdgeName arriving, EdgeName leaving) = isNext ? (one, other) : (other, one);
        return CheckList.CornerRad(panel.FindEdge(arriving).StretchesRaw[0], panel.FindEdge(leaving).StretchesRaw[0]);
    }

    private static double BelowNotchMm(Panel gore, EdgeName edge)
    {
        Notch? hip = gore.Notches.Where(notch => notch.Edge == edge).Cast<Notch?>().FirstOrDefault();
        PanelEdge seam = gore.FindEdge(edge);
        bool runsDown = seam.Start.YMm > seam.End.YMm;
        return hip is { } at ? (runsDown ? seam.SewnLengthMm() - at.FromStartMm : at.FromStartMm) : double.NaN;
    }
}
