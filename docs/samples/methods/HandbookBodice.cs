using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using static Pattern.Core.Samples.Methods.Figures;

namespace Pattern.Core.Samples.Methods;

/// <summary>The close-fitting bodice of a handbook, its bust dart in the neck end of the shoulder; from memory: W. Aldrich, Metric Pattern Cutting for Women's Wear.</summary>
/// <remarks>Points have the numbers of the handbook. The waist is shaped as common practice, no source: CB 1, back dart 4, sides 2 and 1.5, front dart 4.5 cm, at bust 88 and waist 68.
/// Drafted by hand alone its dart legs differ by 0.95 mm and its side seams by 0.45 mm, and the report says so; trued, both fit.</remarks>
public sealed class HandbookBodice() : DraftingMethod("handbook bodice", "1", BustDart, HalfBustEase, Truing)
{
    private const string ByHand = "by hand";
    private const string Trued = "trued";

    private static readonly EdgeName InnerLeg = EdgeName.Of("inner dart leg");
    private static readonly EdgeName OuterLeg = EdgeName.Of("outer dart leg");
    private static readonly EdgeOf BackSide = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
    private static readonly EdgeOf FrontSide = EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam);
    private static readonly EdgeOf FrontShoulder = EdgeOf.Panel(PanelName.Front, EdgeName.Shoulder);
    private static readonly EdgeOf FrontWaist = EdgeOf.Panel(PanelName.Front, EdgeName.Waist);
    private static readonly Seam BustDartSeam = Seam.Between(EdgeOf.Panel(PanelName.Front, OuterLeg), EdgeOf.Panel(PanelName.Front, InnerLeg)).Named("bust dart").Running(SeamRun.Opposite);
    private static readonly Seam Side = Seam.Between(BackSide, FrontSide).Named("side seam");

    /// <summary>How wide the bust dart is at the shoulder: 7 cm at bust 88, 0.6 more for each size.</summary>
    public static MethodSetting<Length> BustDart { get; } = MethodSetting.OfLength("bust dart", Tape.Centimeters("7"), Tape.Centimeters("3"), Tape.Centimeters("14")).Printed();

    /// <summary>What half of the bodice measures more than half of the bust.</summary>
    public static MethodSetting<Length> HalfBustEase { get; } = MethodSetting.OfLength("half bust ease", Tape.Centimeters("5"), Tape.Centimeters("2"), Tape.Centimeters("10")).Printed();

    /// <summary>Whether the hand draft is trued.</summary>
    public static MethodSetting<string> Truing { get; } = MethodSetting.OfChoice("truing", Trued, Trued, ByHand);

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength neck = draft.Take(BodyMeasurement.NeckBaseGirth);
        WorkedLength scye = draft.Take(BodyMeasurement.ScyeDepthLength);
        WorkedLength shoulder = draft.Take(BodyMeasurement.ShoulderLength);
        WorkedLength dart = draft.Take(BustDart);
        WorkedLength box = (draft.Take(BodyMeasurement.BustGirth).Half() + draft.Take(HalfBustEase)).Named("half box");

        Landmark p0 = sheet.Mark("P0", Point2D.Origin);
        Landmark p1 = sheet.SquareDown(p0, Cm("raise of the neck", 1.5), "P1");
        Landmark p2 = sheet.SquareDown(p1, (scye + Cm("ease", 0.5)).Named("depth of the scye line"), "P2");
        Landmark p3 = sheet.SquareAcross(p2, Across.Right, box, "P3", "scye line");
        Landmark p4 = sheet.SquareAcross(p0, Across.Right, box, "P4");
        Landmark p5 = sheet.SquareDown(p1, draft.Take(BodyMeasurement.BackNeckPointToWaist), "P5");
        Landmark p6 = sheet.SquareAcross(p5, Across.Right, box, "P6", "waist line");
        Panel back = Back(draft, p0, p1, p2, p5, neck, scye, shoulder, out Landmark p14, out Landmark p10);

        // The front, from the centre front toward the side.
        WorkedLength frontNeck = (neck.DividedBy(5) - Cm("less", 0.7)).Named("front neck width");
        WorkedLength depth = (neck.DividedBy(5) - Cm("less", 0.2)).Named("front neck depth");
        Landmark p20 = sheet.SquareAcross(p4, Across.Left, frontNeck, "P20");
        Landmark p21 = sheet.SquareDown(p4, depth, "P21");
        Landmark p22 = sheet.SquareAcross(p3, Across.Left, (draft.Take(BodyMeasurement.AcrossFrontWidth).Half() + dart.Half()).Named("front width"), "P22");
        Landmark p23 = sheet.Midpoint(p3, p22, "P23");
        Landmark bust = sheet.SquareDown(p23, Cm("below the scye line", 2.5), "bust point");
        Landmark p27 = sheet.SquareAcross(p20, Across.Left, dart, "P27");
        Landmark p30Level = sheet.SquareDown(p10, Cm("front shoulder lower by", 1.5), "P30 level");
        Landmark p30End = sheet.SquareAcross(p30Level, Across.Right, box, "P30 line end", "front shoulder line");
        Landmark p30 = sheet.Swing(p27, shoulder, sheet.FindLine("front shoulder line"), SheetSide.Left, "P30", "front shoulder");
        Landmark p31 = sheet.SquareUp(p22, sheet.Measure(p4, p3, "down to the scye line").DividedBy(3) - depth.DividedBy(3), "P31");
        Landmark p32 = sheet.Midpoint(p14, p22, "P32");
        Landmark hollow = sheet.Slant(p22, Direction.FromAngle(Angle.FromDegrees(135)), Cm("front hollow", 2), "front hollow");
        Direction outward = p27.Position.DirectionTo(p30.Position);
        DraftedLine armhole = sheet.CurveThrough("front armhole", [p30, p31, hollow, p32], outward.TurnedLeft, Direction.Left);
        DraftedLine neckline = sheet.Curve(p21, Direction.Left, p20, Direction.Up, "front neckline");

        WorkedLength takeIn = (box - draft.Take(BodyMeasurement.WaistGirth).Half() - Cm("half waist ease", 2)).Named("take-in");
        Landmark p7 = sheet.SquareDown(p6, Cm("CF drop", 1), "P7");
        Landmark foot = sheet.SquareDown(p32, sheet.Measure(p2, p5, "scye line to waist"), "P33");
        Landmark waist = sheet.SquareAcross(foot, Across.Right, takeIn.Times(1.5 / 13), "front side waist");
        DraftedLine side = sheet.Join(p32, waist, "front side seam");
        DraftedLine waistline = sheet.Join(waist, p7, "front waist");
        Landmark middle = sheet.MarkOnto(waistline, p7, Across.Left, sheet.Measure(p23, p3, "bust point from CF"), "front dart middle");
        DraftedDart waistDart = sheet.PointDart(waistline, middle, takeIn.Times(4.5 / 13), bust, sheet.Measure(middle, bust, "up to the bust point") - Cm("ends before it", 2.5), "front dart apex");
        Panel front = sheet.Trace(PanelOutline.Of(PanelName.Front, p21)
            .Along(EdgeName.Neckline, EdgeRole.Opening, neckline)
            .Straight(InnerLeg, EdgeRole.Seam, bust)
            .Straight(OuterLeg, EdgeRole.Seam, p27)
            .Along(EdgeName.Shoulder, EdgeRole.Seam, sheet.FindLine("front shoulder"))
            .Along(EdgeName.Armhole, EdgeRole.Seam, armhole)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, side)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistline)
            .Straight(EdgeName.Centre, EdgeRole.Centre, p21)
            .WithDart(EdgeName.Waist, waistDart, Toward.End));

        if (draft.Take(Truing) == Trued)
        {
            // The outer leg is lengthened or shortened on its own line; the shoulder keeps its length; the front side seam goes on along itself.
            TruingOutcome trued = TruingPlan.Empty
                .MayMove(
                    Movable.Corner(FrontShoulder.AtStart, Length.FromCentimeters(1)).Along(bust.Position.DirectionTo(p27.Position)),
                    Movable.Corner(FrontShoulder.AtEnd, Length.FromCentimeters(1)).Along(outward),
                    Movable.Corner(FrontWaist.AtStart, Length.FromCentimeters(1)).Along(side.Path.EndDirection))
                .MustHold(
                    Condition.Sewn(BustDartSeam),
                    Condition.SewnLength(shoulder, FrontShoulder),
                    Condition.Sewn(Side))
                .True(back, front);
            foreach (TruingNote note in trued.Notes)
            {
                sheet.Note(note);
            }

            (back, front) = (trued.Find(PanelName.Back), trued.Find(PanelName.Front));
        }

        draft.Add(back, 2);
        draft.Add(front, 2);
        draft.Seams(SeamPlan.Of(Side, BustDartSeam));
        draft.Check("shoulder", list =>
        {
            list.Length("front shoulder", "front", list.FindPanel(PanelName.Front).FindEdge(EdgeName.Shoulder).SewnLength, shoulder.Value);
            list.LengthAtMost("back shoulder, its dart closed, longer than the front", "back", list.FindPanel(PanelName.Back).FindEdge(EdgeName.Shoulder).SewnLength - shoulder.Value, Length.FromMillimeters(0.5));
        });
    }

    private static Panel Back(
        BlockDraft draft, Landmark p0, Landmark p1, Landmark p2, Landmark p5, WorkedLength neck, WorkedLength scye, WorkedLength shoulder, out Landmark p14, out Landmark p10)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength dart = Cm("shoulder dart", 1);
        Landmark p9 = sheet.SquareAcross(p0, Across.Right, (neck.DividedBy(5) - Cm("less", 0.2)).Named("back neck width"), "P9");
        p10 = sheet.SquareDown(p1, (scye.DividedBy(5) - Cm("less", 0.7)).Named("shoulder line below the nape"), "P10");
        sheet.SquareAcross(p10, Across.Right, draft.Take(BodyMeasurement.BustGirth).Half(), "P10 line end", "shoulder line");
        Landmark p11 = sheet.Swing(p9, (shoulder + dart).Named("shoulder with its dart"), sheet.FindLine("shoulder line"), SheetSide.Right, "P11", "back shoulder");
        DraftedLine line = sheet.FindLine("back shoulder");
        p14 = sheet.SquareAcross(p2, Across.Right, (draft.Take(BodyMeasurement.AcrossBackWidth).Half() + Cm("ease", 0.5)).Named("half back"), "P14");
        Landmark p15 = sheet.SquareAcross(p10, Across.Right, (draft.Take(BodyMeasurement.AcrossBackWidth).Half() + Cm("ease", 0.5)).Named("half back"), "P15");
        Landmark p16 = sheet.Midpoint(p14, p15, "P16");
        Landmark hollow = sheet.Slant(p14, Direction.FromAngle(Angle.FromDegrees(45)), Cm("back hollow", 2.5), "back hollow");
        WorkedLength box = draft.Take(BodyMeasurement.BustGirth).Half() + draft.Take(HalfBustEase);
        WorkedLength front = draft.Take(BodyMeasurement.AcrossFrontWidth).Half() + draft.Take(BustDart).Half();
        Landmark side = sheet.SquareAcross(p14, Across.Right, ((box - front - sheet.Measure(p2, p14, "half back")).Half()).Named("half the armhole"), "P32 of the back");
        Direction along = p9.Position.DirectionTo(p11.Position);
        DraftedLine neckline = sheet.Curve(p1, Direction.Right, p9, Direction.Up, "back neckline");
        DraftedLine armhole = sheet.CurveThrough("back armhole", [p11, p16, hollow, side], along.TurnedRight, Direction.Right);

        WorkedLength takeIn = (box - draft.Take(BodyMeasurement.WaistGirth).Half() - Cm("half waist ease", 2)).Named("take-in");
        Landmark centre = sheet.SquareAcross(p5, Across.Right, takeIn.Times(1.0 / 13), "CB waist");
        Landmark foot = sheet.SquareDown(side, sheet.Measure(p2, p5, "scye line to waist"), "P33 of the back");
        Landmark waist = sheet.SquareAcross(foot, Across.Left, takeIn.Times(2.0 / 13), "back side waist");
        DraftedLine sideSeam = sheet.Join(side, waist, "back side seam");
        DraftedLine waistline = sheet.Join(waist, centre, "back waist");
        DraftedLine upper = sheet.Join(p2, p1, "upper CB");
        DraftedLine lower = sheet.Join(centre, p2, "lower CB");
        Landmark middle = sheet.MarkOnto(waistline, p5, Across.Right, sheet.Measure(p2, p14, "half back").Half(), "back dart middle");
        Landmark top = sheet.SquareAcross(p2, Across.Right, sheet.Measure(p2, p14, "half back").Half(), "back dart top");
        DraftedDart waistDart = sheet.PointDart(waistline, middle, takeIn.Times(4.0 / 13), top, sheet.Measure(middle, top, "back dart length"), "back dart apex");
        Landmark shoulderMiddle = sheet.Midpoint(p9, p11, "shoulder dart middle");
        Landmark below = sheet.MarkFrom(shoulderMiddle, Across.Left, Cm("leaning", 1), Upright.Down, Cm("dart length", 5), "shoulder dart end");
        DraftedDart shoulderDart = sheet.PointDart(line, shoulderMiddle, dart, below, sheet.Measure(shoulderMiddle, below, "along the dart"), "shoulder dart apex");
        return sheet.Trace(PanelOutline.Of(PanelName.Back, p1)
            .Along(EdgeName.Neckline, EdgeRole.Opening, neckline)
            .Along(EdgeName.Shoulder, EdgeRole.Seam, line)
            .Along(EdgeName.Armhole, EdgeRole.Seam, armhole)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, sideSeam)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistline)
            .Along(EdgeName.Centre, EdgeRole.Centre, lower, upper)
            .WithDart(EdgeName.Shoulder, shoulderDart)
            .WithDart(EdgeName.Waist, waistDart, Toward.End));
    }
}
