using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>A skirt of nine gores by proportions only: no box, no darts. Text-book on Domestic Art (C. C. Ingalls, about 1911; author and year from memory), US public domain.</summary>
/// <remarks>Each gore is a part of a ring: its two seams meet in a point, and the compass there draws waist, hip line and hem. So a width is measured along its line, and all seams are equal.</remarks>
public sealed class GoredSkirt() : DraftingMethod("gored skirt", "1", HipEase, Length, HipDepth)
{
    private static readonly EdgeName TowardFront = EdgeName.Of("seam toward front");
    private static readonly EdgeName TowardBack = EdgeName.Of("seam toward back");
    private static readonly PanelName[] Names = [PanelName.Front, PanelName.Of("side gore 1"), PanelName.Of("side gore 2"), PanelName.Of("side gore 3"), PanelName.Back];

    // A gore that hardly widens has its point in the next room.
    private static readonly Length LeastWidening = UnitsNet.Length.FromMillimeters(3);
    private static readonly Length LeastGore = Tape.Inches("1/2");

    /// <summary>How much the skirt measures more than the body around the hip.</summary>
    public static MethodSetting<Length> HipEase { get; } = MethodSetting.OfLength("hip ease", Tape.Inches("1"), UnitsNet.Length.Zero, Tape.Inches("8")).Printed();

    /// <summary>From waist to hem, along every seam.</summary>
    public static MethodSetting<Length> Length { get; } = MethodSetting.OfLength("length", Tape.Inches("36"), Tape.Inches("12"), Tape.Inches("48")).Printed();

    /// <summary>From waist to hip, along every seam; common practice, no source.</summary>
    public static MethodSetting<Length> HipDepth { get; } = MethodSetting.OfLength("hip depth", Tape.Inches("6"), Tape.Inches("4"), Tape.Inches("10")).Printed();

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength half = waist.Half().Named("half waist");
        WorkedLength third = half.DividedBy(3).Named("front and back gore together");
        WorkedLength wider = WorkedLength.Given("back wider", Tape.Inches("1"));
        WorkedLength front = (third - wider).Half().Named("front gore at the waist");
        WorkedLength back = (front + wider).Named("back gore at the waist");
        WorkedLength side = (half - third).DividedBy(3).Named("side gore at the waist");
        WorkedLength frontHip = (front + WorkedLength.Given("wider at the hip", Tape.Inches("3/4"))).Named("front gore at the hip");
        WorkedLength backHip = back.Times(2).Named("back gore at the hip");
        WorkedLength hips = (draft.Take(BodyMeasurement.HipGirth) + draft.Take(HipEase)).Half().Named("half hip with ease");
        WorkedLength sideHip = (hips - frontHip - backHip).DividedBy(3).Named("side gore at the hip");
        if (front.Value < LeastGore)
        {
            throw draft.Refusal("Half of the front gore is too narrow at the waist.", front.Value, LeastGore);
        }

        if (sideHip.Value < side.Value + LeastWidening)
        {
            throw draft.Refusal("The side gores would not widen from waist to hip.", sideHip.Value, side.Value + LeastWidening);
        }

        var gores = new List<Gore>();
        foreach (PanelName name in Names)
        {
            (WorkedLength atWaist, WorkedLength atHip) = name == PanelName.Front ? (front, frontHip) : name == PanelName.Back ? (back, backHip) : (side, sideHip);
            gores.Add(Draw(draft, name, gores.Count, atWaist, atHip));
        }

        draft.Remark("Half of the skirt is drawn: half of the front gore, three side gores, half of the back gore.");
        draft.Seams(SeamPlan.Of([.. Names.Zip(Names.Skip(1), (one, next) => Seam.Between(EdgeOf.Panel(one, TowardBack), EdgeOf.Panel(next, TowardFront)))]));
        draft.Check(list =>
        {
            list.Length("closed waist all around", "block", 2 * Sum(gores, gore => list.FindPanel(gore.Name).FindEdge(EdgeName.Waist).SewnLength), waist.Value);
            list.Length("hip width all around", "block", 2 * Sum(gores, gore => gore.HipLine.Length), 2 * hips.Value);
            foreach (Gore gore in gores)
            {
                Panel panel = list.FindPanel(gore.Name);
                list.Length("waist", gore.Name.Text, panel.FindEdge(EdgeName.Waist).SewnLength, gore.Waist.Value);
                list.Length("hip width", gore.Name.Text, gore.HipLine.Length, gore.Hip.Value);
                list.LengthAtLeast("hem no narrower than hip", gore.Name.Text, panel.FindEdge(EdgeName.Hem).SewnLength, gore.Hip.Value);
            }
        });
    }

    private static Gore Draw(BlockDraft draft, PanelName name, int place, WorkedLength waist, WorkedLength hip)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength depth = draft.Take(HipDepth);
        WorkedLength length = draft.Take(Length);
        WorkedLength radius = depth.Times(waist.Value / (hip.Value - waist.Value)).Named(name.Text + " compass");
        Angle opening = Angle.FromRadians((hip.Value - waist.Value) / depth.Value);
        bool isFront = name == PanelName.Front;
        bool isBack = name == PanelName.Back;
        Direction left = isFront ? Direction.Down : Direction.Down.Turned(isBack ? -opening : -opening / 2);

        string gore = name.Text;
        Landmark pivot = sheet.Mark(gore + " point", Point2D.At(place * Tape.Inches("20"), radius.Value));
        sheet.WorkedFrom(radius, waist, hip);
        Landmark leftWaist = sheet.Slant(pivot, left, radius, gore + " left waist");
        sheet.WorkedFrom(waist, hip, depth);
        Landmark leftHip = sheet.Slant(leftWaist, left, depth, gore + " left hip");
        Landmark leftHem = sheet.Slant(leftWaist, left, length, gore + " left hem", gore + " left seam");
        DraftedLine waistLine = sheet.Arc(pivot, leftWaist, opening, gore + " right waist", LineName.Of(gore + " waistline", ConstructionRole.HandDrawn));
        sheet.WorkedFrom(waist, hip, depth);
        DraftedLine hipLine = sheet.Arc(pivot, leftHip, opening, gore + " right hip", LineName.Of(gore + " hip line", ConstructionRole.Level));
        DraftedLine hem = sheet.Arc(pivot, leftHem, opening, gore + " right hem", LineName.Of(gore + " hem", ConstructionRole.HandDrawn));
        DraftedLine right = sheet.Join(waistLine.To, hem.To, gore + " right seam");
        PanelOutline outline = PanelOutline.Of(name, leftWaist)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistLine)
            .Along(isBack ? EdgeName.Centre : TowardBack, isBack ? EdgeRole.Centre : EdgeRole.Seam, right)
            .Along(EdgeName.Hem, EdgeRole.Hem, hem)
            .Along(isFront ? EdgeName.Centre : TowardFront, isFront ? EdgeRole.Centre : EdgeRole.Seam, sheet.FindLine(gore + " left seam"));
        outline = isBack ? outline : outline.WithNotch(TowardBack, hipLine.To);
        outline = isFront ? outline : outline.WithNotch(TowardFront, leftHip);
        draft.Add(sheet.Trace(outline), 2);
        return new Gore(name, waist, hip, hipLine);
    }

    private static Length Sum(List<Gore> gores, Func<Gore, Length> of) => gores.Aggregate(UnitsNet.Length.Zero, (sum, gore) => sum + of(gore));

    private sealed record Gore(PanelName Name, WorkedLength Waist, WorkedLength Hip, DraftedLine HipLine);
}
