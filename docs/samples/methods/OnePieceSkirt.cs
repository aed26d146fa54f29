using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>A skirt in one piece, without box or darts: I. Rosenfeld, The Practical Designer, 1911, US public domain; found.</summary>
/// <remarks>The waist curve is longer than the waist: what is over is eased into the band. One seam, at the centre back.</remarks>
public sealed class OnePieceSkirt() : DraftingMethod("one-piece skirt", "1", HipEase, HipDepth, FrontLength, SideLength, BackLength)
{
    private static readonly EdgeName BackSeam = EdgeName.Of("back seam");

    // "Always", says the page.
    private static readonly WorkedLength Raise = WorkedLength.Given("raise", Tape.Inches("3"));
    private static readonly WorkedLength Hollow = WorkedLength.Given("hollow of the waist", Tape.Inches("3/4"));

    // Of the whole waist: a firm cloth eases in no more. Common practice, no source.
    private static readonly Length MostEased = Tape.Inches("1 1/2");
    private static readonly Advice MuchEase = Advice.Of("So much is hard to ease into a band.", "Take a small dart at the back, or gather the back.");

    /// <summary>How much the skirt measures more than the body around the hip.</summary>
    public static MethodSetting<Length> HipEase { get; } = MethodSetting.OfLength("hip ease", Length.Zero, Length.Zero, Tape.Inches("8")).Printed();

    /// <summary>From waist to hip, front and back. For a child a sixth of the breast: 5 in for 30.</summary>
    public static MethodSetting<Length> HipDepth { get; } = MethodSetting.OfLength("hip depth", Tape.Inches("7"), Tape.Inches("4"), Tape.Inches("10")).Printed();

    /// <summary>From waist to hem at the centre front.</summary>
    public static MethodSetting<Length> FrontLength { get; } = MethodSetting.OfLength("front length", Tape.Inches("28"), Tape.Inches("12"), Tape.Inches("50")).Printed();

    /// <summary>From waist to hem at the side.</summary>
    public static MethodSetting<Length> SideLength { get; } = MethodSetting.OfLength("side length", Tape.Inches("28 1/2"), Tape.Inches("12"), Tape.Inches("50")).Printed();

    /// <summary>From waist to hem at the centre back.</summary>
    public static MethodSetting<Length> BackLength { get; } = MethodSetting.OfLength("back length", Tape.Inches("29"), Tape.Inches("12"), Tape.Inches("50")).Printed();

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength depth = draft.Take(HipDepth);
        WorkedLength halfHip = (draft.Take(BodyMeasurement.HipGirth) + draft.Take(HipEase)).Half().Named("half hip");
        WorkedLength back = draft.Take(BackLength);

        Landmark a = sheet.Mark("A", Point2D.Origin);
        Landmark c = sheet.SquareAcross(a, Across.Right, waist.Half(), "C", LineName.Of("waist level", ConstructionRole.Frame));
        Landmark d = sheet.SquareUp(c, Raise, "D");
        DraftedLine chord = sheet.Join(a, d, "waist chord");
        Landmark middle = sheet.Divide(chord, "middle of the waist")[0];
        Landmark h = sheet.SquareOff(chord, middle, SheetSide.Below, Hollow, "H");

        Landmark frontHip = sheet.SquareDown(a, depth, "front hip");
        Landmark frontHem = sheet.SquareDown(a, draft.Take(FrontLength), "front hem", LineName.Of("centre front", ConstructionRole.Frame));
        Landmark backHip = sheet.Compass(frontHip, halfHip, d, depth, SheetSide.Right, "back hip");
        sheet.Because("The hip line is half of the hip long, and the back hip lies as far below the waist as the front hip.");
        DraftedLine hipLine = sheet.Join(frontHip, backHip, LineName.Of("hip line", ConstructionRole.Level));
        Landmark j = sheet.MarkToward(d, backHip, back, "J", LineName.Of("back line", ConstructionRole.HandDrawn));
        DraftedLine backLine = sheet.FindLine("back line");

        // Square to both edges, so that the waist has no corner where it meets the fold, nor over the seam.
        Direction ofBack = backLine.Path.StartDirection;
        DraftedLine waistLine = sheet.CurveThrough(LineName.Of("waistline", ConstructionRole.HandDrawn), [a, h, d], Direction.Right, ofBack.TurnedLeft);
        Landmark sideHem = sheet.SquareOff(waistLine, h, SheetSide.Below, draft.Take(SideLength), "side hem", "side line");
        DraftedLine hem = sheet.CurveThrough(LineName.Of("hem", ConstructionRole.HandDrawn), [frontHem, sideHem, j], Direction.Right, ofBack.TurnedLeft);

        draft.Add(sheet.Trace(PanelOutline.Of(PanelName.Of("skirt"), a)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistLine)
            .Along(BackSeam, EdgeRole.Seam, backLine)
            .Along(EdgeName.Hem, EdgeRole.Hem, hem)
            .Along(EdgeName.Centre, EdgeRole.Centre, sheet.FindLine("centre front"))
            .WithNotch(BackSeam, backHip)
            .WithGrainline(frontHip, frontHem)), 2);
        draft.Remark("Half of the skirt is drawn: the centre front lies on the fold, the one seam is at the centre back.");
        draft.Aim("closed waist", "block", 2 * waistLine.Length, 2 * waistLine.Length, list => 2 * list.FindPanel(PanelName.Of("skirt")).FindEdge(EdgeName.Waist).SewnLength);
        draft.Check(list =>
        {
            Panel skirt = list.FindPanel(PanelName.Of("skirt"));
            Length wide = 2 * skirt.FindEdge(EdgeName.Waist).SewnLength;
            list.LengthAtLeast("closed waist all around", "block", wide, waist.Value);
            if (wide - waist.Value > MostEased)
            {
                list.Advise(MuchEase, "waist eased into the band", "block", wide - waist.Value, FindingRelation.AtMost, MostEased);
            }

            list.Length("hip width all around", "block", 2 * hipLine.Length, 2 * halfHip.Value);
            list.Length("back length", "block", skirt.FindEdge(BackSeam).SewnLength, back.Value);
            list.Length("front length", "block", skirt.FindEdge(EdgeName.Centre).SewnLength, draft.Take(FrontLength).Value);
            list.Count("outline crossing itself", "block", skirt.SeamOutline().IsSimple() ? 0 : 1, 0);
        });
    }
}
