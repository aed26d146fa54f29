using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using static Pattern.Core.Samples.Methods.Figures;

namespace Pattern.Core.Samples.Methods;

/// <summary>The sleeve of a handbook (from memory: W. Aldrich, Metric Pattern Cutting for Women's Wear): the armhole laid off as two straight lines, and curves set off them by figures.</summary>
public sealed class HandbookSleeve() : DraftingMethod("handbook sleeve", "1", FrontArmhole, BackArmhole, Length, Wrist)
{
    private static readonly PanelName Sleeve = PanelName.Of("sleeve");
    private static readonly EdgeOf Head = EdgeOf.Panel(Sleeve, EdgeName.SleeveHead);
    private static readonly SeamPlan Underarm = SeamPlan.Of(
        Seam.Between(EdgeOf.Panel(Sleeve, EdgeName.BackUnderarm), EdgeOf.Panel(Sleeve, EdgeName.FrontUnderarm)).Named("underarm seam"));

    // The handbook's head is level at its ends, though the seams lean: sewn, there is a corner under the arm. It is bent there until it is square to them, and keeps its length.
    private static readonly TruingPlan Plan = TruingPlan.Empty
        .MayMove(Movable.Handles(Head, UnitsNet.Length.FromCentimeters(3)))
        .MustHold(
            Condition.Square(Head.AtStart),
            Condition.Square(Head.AtEnd),
            Condition.SewnLength(WorkedLength.Given("head", UnitsNet.Length.Zero), Head).Named("length of the head"));

    /// <summary>From the side seam to the shoulder in front, along the seam line.</summary>
    public static MethodSetting<Length> FrontArmhole { get; } = MethodSetting.OfLength("front armhole", Tape.Centimeters("21.2"), Tape.Centimeters("12"), Tape.Centimeters("40")).Printed();

    /// <summary>Likewise behind.</summary>
    public static MethodSetting<Length> BackArmhole { get; } = MethodSetting.OfLength("back armhole", Tape.Centimeters("21.4"), Tape.Centimeters("12"), Tape.Centimeters("40")).Printed();

    /// <summary>From the crown to the wrist.</summary>
    public static MethodSetting<Length> Length { get; } = MethodSetting.OfLength("sleeve length", Tape.Centimeters("58.5"), Tape.Centimeters("40"), Tape.Centimeters("80")).Printed();

    /// <summary>The width at the wrist.</summary>
    public static MethodSetting<Length> Wrist { get; } = MethodSetting.OfLength("wrist width", Tape.Centimeters("21"), Tape.Centimeters("15"), Tape.Centimeters("23"));

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength front = draft.Take(FrontArmhole);
        WorkedLength back = draft.Take(BackArmhole);
        WorkedLength armhole = (front + back).Named("armhole");
        WorkedLength height = armhole.DividedBy(3).Named("cap height");
        Landmark crown = sheet.Mark("crown", Point2D.Origin);
        Landmark foot = sheet.SquareDown(crown, height, "crown foot", LineName.Of("crown line", ConstructionRole.Guide));
        sheet.SquareAcross(foot, Across.Right, armhole, "far front", LineName.Of("front underarm line", ConstructionRole.Level));
        sheet.SquareAcross(foot, Across.Left, armhole, "far back", LineName.Of("back underarm line", ConstructionRole.Level));
        Landmark frontUnderarm = sheet.Swing(crown, front, sheet.FindLine("front underarm line"), SheetSide.Right, "front underarm", LineName.Of("front chord", ConstructionRole.Guide));
        Landmark backUnderarm = sheet.Swing(crown, back + Cm("more", 1), sheet.FindLine("back underarm line"), SheetSide.Left, "back underarm", LineName.Of("back chord", ConstructionRole.Guide));
        IReadOnlyList<Landmark> ahead = SetOff(sheet, "front", sheet.FindLine("front chord"), 1.7, 0.1, -1.3);
        IReadOnlyList<Landmark> behind = SetOff(sheet, "back", sheet.FindLine("back chord"), 1.5, 0.6, -0.7);
        DraftedLine frontHead = sheet.CurveThrough(LineName.Of("front head", ConstructionRole.HandDrawn), [crown, .. ahead, frontUnderarm], Direction.Right, Direction.Right);
        DraftedLine backHead = sheet.CurveThrough(LineName.Of("back head", ConstructionRole.HandDrawn), [backUnderarm, behind[2], behind[1], behind[0], crown], Direction.Right, Direction.Right);

        WorkedLength width = sheet.Measure(backUnderarm, frontUnderarm, "sleeve width");
        WorkedLength inward = (width - draft.Take(Wrist)).Half().Named("in at the wrist");
        WorkedLength down = (draft.Take(Length) - height).Named("underarm length");
        Landmark backWrist = sheet.SquareAcross(sheet.SquareDown(backUnderarm, down, "below the back"), Across.Right, inward, "back wrist");
        Landmark frontWrist = sheet.SquareAcross(sheet.SquareDown(frontUnderarm, down, "below the front"), Across.Left, inward, "front wrist");
        Panel drawn = sheet.Trace(PanelOutline.Of(Sleeve, backUnderarm)
            .Along(EdgeName.SleeveHead, EdgeRole.Seam, backHead, frontHead)
            .Straight(EdgeName.FrontUnderarm, EdgeRole.Seam, frontWrist)
            .Straight(EdgeName.Wrist, EdgeRole.Hem, backWrist)
            .Straight(EdgeName.BackUnderarm, EdgeRole.Seam, backUnderarm)
            .WithNotch(EdgeName.SleeveHead, crown));

        WorkedLength head = WorkedLength.Drawn("head", drawn.FindEdge(EdgeName.SleeveHead).SewnLength);
        TruingOutcome trued = Plan.Asking("length of the head", head).True(drawn);
        foreach (TruingNote note in trued.Notes)
        {
            sheet.Note(note);
        }

        draft.Add(trued.Find(Sleeve), 2);
        draft.Seams(Underarm);
        draft.Check("head", list =>
        {
            PanelEdge edge = list.FindPanel(Sleeve).FindEdge(EdgeName.SleeveHead);
            list.Length("length of the head", Sleeve.Text, edge.SewnLength, head.Value);
            list.LengthAtLeast("head at least as long as the armhole", Sleeve.Text, edge.SewnLength, armhole.Value);
        });
    }

    // At the quarters of a chord from the crown: out of it, or into it where the figure is negative, by twentieths of the chord.
    private static IReadOnlyList<Landmark> SetOff(DraftingSheet sheet, string side, DraftedLine chord, params double[] twentieths)
    {
        IReadOnlyList<Landmark> quarters = sheet.Divide(chord, side + " quarter", side + " half", side + " three quarters");
        WorkedLength length = WorkedLength.Drawn(side + " chord", chord.Length);
        var points = new List<Landmark>();
        for (int i = 0; i < quarters.Count; i++)
        {
            points.Add(sheet.SquareOff(
                chord,
                quarters[i],
                twentieths[i] > 0 ? SheetSide.Above : SheetSide.Below,
                length.Times(System.Math.Abs(twentieths[i]) / 20),
                quarters[i].Name.Text + " set off"));
        }

        return points;
    }
}
