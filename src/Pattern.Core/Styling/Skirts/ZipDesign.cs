using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Where the zip stands and how long it is, checked by pulling the skirt on: the waist and both sides of the opening go around the hip.</summary>
internal sealed class ZipDesign() : BlockDesign(ZipName, "1", Place, Opening)
{
    internal const string ZipName = "zip";
    internal const string CentreBack = "centre back";
    internal const string Side = "side";

    /// <summary>The centre back by usage: a seam that can be let out, and both sides alike.</summary>
    internal static readonly MethodSetting<string> Place = MethodSetting.OfChoice("zip in", CentreBack, CentreBack, Side);

    /// <summary>Where nobody says, 7 in (18 cm; 18 to 20 by usage), and longer where the hip would not pass.</summary>
    internal static readonly MethodSetting<Length> Opening = MethodSetting.OfLength("zip length", null, Length.FromInches(3), Length.FromInches(24));

    // So much of the seam stays below the stop of a zip.
    private const double BelowMm = 25;
    private const double EasyMm = 10;

    /// <summary>What a block says of its zip: at which seam, and how long; null where it says nothing.</summary>
    internal static (bool AtSide, double LengthMm)? Of(Block block)
    {
        DesignDescription? design = block.Designs.LastOrDefault(one => one.Name == ZipName);
        if (design is null)
        {
            return null;
        }

        bool atSide = design.Settings[0].Text == Side;
        double waist = SkirtTops.ClosedWaistMm(block.Panels, block.TimesOf);
        double hip = block.Body.RequireMm(BodyMeasurement.HipGirth, ZipName);
        return (atSide, design.Settings[1].IsGiven ? design.Settings[1].Raw : UsualMm(waist, hip, TapeStep.For(block.Body.Unit).IsMetric));
    }

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.OfFinished(work);
        if (work.Panels.Any(panel => panel.TryFindEdge(WrapDesign.FrontEdge, out _)))
        {
            throw work.Refusal("It wraps, and opens without a zip.");
        }

        bool atSide = work.Take(Place) == Side;
        if (atSide && work.Panels.Any(SeamPocketsDesign.IsPocket))
        {
            throw work.Refusal("There is a pocket in the side seam, and the hand would meet the zip. Put the zip into the centre back.");
        }

        List<ZipPart> parts = ZipSeam.Of(work.Panels, atSide);
        double seam = ZipSeam.LengthMm(parts);
        if (seam == 0)
        {
            throw work.Refusal(atSide ? "It has no side seam between back and front. Put the zip into the centre back." : "It has no centre back seam: gores carry the zip in any of their seams.");
        }

        double waist = SkirtTops.ClosedWaistMm(work.Panels, work.TimesOf);
        double hip = work.Body.RequireMm(BodyMeasurement.HipGirth, work.By);
        double usual = UsualMm(waist, hip, stock.IsMetric);
        WorkedLength length = work.IsGiven(Opening) ? work.Take(Opening) : WorkedLength.GivenMm("zip length", usual);
        if (length.ValueMm > seam - BelowMm)
        {
            throw work.Refusal(FormattableString.Invariant(
                $"The zip would be {length.ValueMm:0} mm long, and its seam is {seam:0} mm: {BelowMm:0} mm of it stay below the stop. The hip of {hip:0} mm passes a closed waist of {waist:0} mm from {Math.Max(0, (hip - waist) / 2):0} mm on. Take a shorter zip or a longer skirt."));
        }

        if (atSide)
        {
            work.Remark("The zip stands in the left side seam; the right one is sewn up to the waist.");
            LayBackOnFold(work);
        }

        Tell(work, atSide, length, WorkedLength.GivenMm("closed waist", waist), WorkedLength.GivenMm("hip girth", hip));
        SkirtStock.KeepLines(work);
        double lengthMm = length.ValueMm;
        Func<CheckList, double> closedWaist = SkirtTops.ClosedWaistMm(work);
        work.Check("zip", list => list.LengthAtLeast(
            "waist and both sides of the zip, for the hip to pass",
            SkirtPromises.Block,
            closedWaist(list) + (2 * lengthMm),
            hip,
            CheckList.ToleranceMm));
    }

    // Round on the tape, and as long as the hip needs with a finger's breadth.
    private static double UsualMm(double waistMm, double hipMm, bool isMetric)
    {
        double mark = isMetric ? 10 : 12.7;
        double needed = ((hipMm - waistMm) / 2) + EasyMm;
        return Math.Max(isMetric ? 180 : 177.8, Math.Ceiling(needed / mark) * mark);
    }

    // Without a zip the back needs no seam where its centre is straight and nothing opens below.
    private static void LayBackOnFold(DesignDraft work)
    {
        Panel[] backs = [.. work.Panels.Where(panel => panel.Name.Text.StartsWith(PanelName.Back.Text, StringComparison.Ordinal) && panel.TryFindEdge(EdgeName.Centre, out _))];
        bool isPlain = backs.All(panel => SkirtStock.IsStraight(panel.FindEdge(EdgeName.Centre)) && panel.Edges.Count == 4);
        if (!isPlain)
        {
            return;
        }

        SeamPlan plan = work.Seams;
        foreach (Panel back in backs)
        {
            plan = plan.Without(EdgeOf.Panel(back.Name, EdgeName.Centre));
            if (back.FindEdge(EdgeName.Centre).Role != EdgeRole.Centre)
            {
                work.Replace(new Panel(back.Name, [.. back.EdgesRaw.Select(edge => edge.Name == EdgeName.Centre ? new PanelEdge(edge.Name, EdgeRole.Centre, edge.StretchesRaw[0]) : edge)], back.Features));
            }
        }

        work.Sew(plan);
        work.Sheet.Note("Lay the centre back on the fold as well.");
        work.Sheet.Because("Nothing opens there: it needs no seam.");
    }

    private static void Tell(DesignDraft work, bool atSide, WorkedLength length, WorkedLength waist, WorkedLength hip)
    {
        work.Sheet.Note(atSide ? "Leave the left side seam open from the top down, for the zip: {0}." : "Leave the centre back seam open from the top down, for the zip: {0}.", length);
        work.Sheet.Note("Pulled on, the skirt opens to {0}; it goes over the {1}.", (waist + length.Times(2)).Named("closed waist and both sides of the zip"), hip);
        work.Sheet.Because("What does not pass the hip cannot be put on: then take a longer zip.");
    }
}
