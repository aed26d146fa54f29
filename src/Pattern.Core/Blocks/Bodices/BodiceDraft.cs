using System;
using System.Collections.Generic;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using Names = Pattern.Core.Blocks.BodiceNames;

namespace Pattern.Core.Blocks;

/// <summary>The bodice drawn by hand on the sheet, step by step; truing comes after.</summary>
/// <remarks>One half: centre back to the left at x 0, centre front to the right, the waist at y 0. The front is drawn at its own length above the waist, so that its armhole
/// line lies higher than that of the back: what the front side line is longer for it is the bust dart.</remarks>
internal sealed class BodiceDraft
{
    private readonly BlockDraft _draft;
    private readonly BodiceMeasures _body;
    private readonly List<(PanelName Panel, DraftedDart Dart)> _waistDarts = new(2);
    private Landmark _blade;

    private BodiceDraft(BlockDraft draft)
    {
        _draft = draft;
        _body = new BodiceMeasures(draft);
        Sheet = draft.Sheet;
        BustEase = draft.Take(BodiceSettings.BustEase);
        WaistEase = draft.Take(BodiceSettings.WaistEase);
        HasShoulderDart = draft.Take(BodiceSettings.BackShoulder) == BodiceSettings.Dart;
        Slope = draft.Take(BodiceSettings.ShoulderSlope);
        Box = (_body.Bust.Half() + BustEase.Half()).Named("box width");
        QuarterWaist = (_body.Waist + WaistEase).Quarter().Named("quarter waist");
        BackWidth = (Box - draft.Take(BodiceSettings.FrontWider)).Half().Named("back width at the armhole line");
        FrontWidth = (Box - BackWidth).Named("front width at the armhole line");
        ArmholeDepth = (_body.ScyeDepth + draft.Take(BodiceSettings.ScyeEase)).Named("armhole depth");
        BackNeckWidth = (_body.Neck.DividedBy(5) - _body.Figure("1/16", 0.2)).Named("back neck width");
        FrontNeckWidth = (_body.Neck.DividedBy(5) - _body.Figure("1/4", 0.7)).Named("front neck width");
        NeckRise = _body.Neck.DividedBy(24).Named("back neck rise");
        AcrossBack = Across(_body.AcrossBack.Half() + BustEase.DividedBy(16), BackNeckWidth, Slope + SlopeApart, HasShoulderDart).Named("half across the back");
        AcrossFront = Across(_body.AcrossFront.Half() + BustEase.DividedBy(32), FrontNeckWidth, Slope - SlopeApart, hasDart: false).Named("half across the front");
    }

    internal BodiceMeasures Body => _body;

    internal DraftingSheet Sheet { get; }

    internal WorkedLength BustEase { get; }

    internal WorkedLength WaistEase { get; }

    internal WorkedLength Box { get; }

    internal WorkedLength QuarterWaist { get; }

    internal WorkedLength BackWidth { get; }

    internal WorkedLength FrontWidth { get; }

    internal WorkedLength ArmholeDepth { get; }

    internal WorkedLength AcrossBack { get; }

    internal WorkedLength AcrossFront { get; }

    internal WorkedLength BackNeckWidth { get; }

    internal WorkedLength FrontNeckWidth { get; }

    /// <summary>How far the side neck point of the back lies above the back neck point.</summary>
    internal WorkedLength NeckRise { get; }

    internal Angle Slope { get; }

    internal bool HasShoulderDart { get; }

    /// <summary>How much longer the back shoulder is sewn than the front one.</summary>
    internal WorkedLength ShoulderEase { get; private set; } = null!;

    internal BodiceShaping BackShaping { get; private set; } = null!;

    internal BodiceShaping FrontShaping { get; private set; } = null!;

    internal Landmark BustPoint { get; private set; }

    internal Landmark CentreBackWaist { get; private set; }

    internal Landmark CentreFrontWaist { get; private set; }

    /// <summary>Where the armhole is drawn through at the width across the back.</summary>
    internal Point2D BackTouch { get; private set; }

    /// <inheritdoc cref="BackTouch"/>
    internal Point2D FrontTouch { get; private set; }

    internal DraftedDart? BustDart { get; private set; }

    internal IReadOnlyList<(PanelName Panel, DraftedDart Dart)> WaistDarts => _waistDarts;

    internal DraftedDart? ShoulderDart { get; private set; }

    internal DraftedLine BackWaistline { get; private set; } = null!;

    internal DraftedLine FrontWaistline { get; private set; } = null!;

    internal Panel Back { get; private set; } = null!;

    internal Panel Front { get; private set; } = null!;

    /// <summary>The panels as truing left them; null before.</summary>
    internal Panel? TruedBack { get; set; }

    /// <inheritdoc cref="TruedBack"/>
    internal Panel? TruedFront { get; set; }

    private WorkedLength SideLength { get; set; } = null!;

    private Landmark CentreBackScye { get; set; }

    private Landmark BackUnderarm { get; set; }

    internal static BodiceDraft Draw(BlockDraft draft) => Draw(draft, null);

    /// <summary>With waist darts no wider than that, one to a side, and the rest of what comes in at the side seam.</summary>
    internal static BodiceDraft Draw(BlockDraft draft, WorkedLength? widestDart)
    {
        var bodice = new BodiceDraft(draft);
        BodiceRefusals.Refuse(draft, bodice);
        bodice.Shape(widestDart);
        bodice.DrawBack();
        bodice.DrawFront();
        return bodice;
    }

    private void Shape(WorkedLength? widestDart)
    {
        WorkedLength back = (BackWidth - QuarterWaist).Named("back comes in");
        WorkedLength front = (FrontWidth - QuarterWaist).Named("front comes in");
        WorkedLength whole = (Box - QuarterWaist.Times(2)).Named("waist comes in");
        (BackShaping, FrontShaping) = widestDart is null
            ? (BodiceShaping.Of("back", back, whole, _body), BodiceShaping.Of("front", front, whole, _body))
            : BodiceShaping.WithDartsUpTo(widestDart, back, front, whole, _body);
        BodiceRefusals.RefuseSide(_draft, BackShaping);
        BodiceRefusals.RefuseSide(_draft, FrontShaping);
    }

    private void DrawBack()
    {
        Landmark neck = Sheet.Mark("CB neck", Point2D.At(Length.Zero, _body.BackLength.Value));
        Sheet.Because("Near the top left corner of the paper, with a hand's breadth free above it and to its left.");
        CentreBackScye = Sheet.SquareDown(neck, ArmholeDepth, "CB armhole line");
        CentreBackWaist = Sheet.SquareDown(neck, _body.BackLength, "CB waist", Names.CentreBackLine);
        CentreFrontWaist = Sheet.SquareAcross(CentreBackWaist, Drafting.Across.Right, Box + _body.Figure("4", 10), "CF waist", Names.WaistLevel);
        Sheet.Because("Back and front are drawn a hand's breadth apart, for the bust dart.");
        BackUnderarm = Sheet.SquareAcross(CentreBackScye, Drafting.Across.Right, BackWidth, "back underarm", Names.ArmholeLine);

        Landmark sideNeck = Sheet.MarkFrom(neck, Drafting.Across.Right, BackNeckWidth, Upright.Up, NeckRise, "back side neck");

        Direction along = Heading(Slope + SlopeApart, toLeft: false);
        (Landmark tip, DraftedLine shoulder, Direction outward) = DrawBackShoulder(sideNeck, along);
        WorkedLength drop = _body.Shoulder.Times(Math.Sin((Slope + SlopeApart).Radians)).Named("back shoulder drop");
        WorkedLength height = (ArmholeDepth + NeckRise - drop).Half().Named("half back armhole height");
        WorkedLength width = (BackWidth - AcrossBack).Named("back part of the armhole");
        Landmark touch = Sheet.MarkFrom(CentreBackScye, Drafting.Across.Right, AcrossBack, Upright.Up, height, "back armhole touch");
        BackTouch = touch.Position;
        WorkedLength hollow = width.Times(0.36).AtMost(height.Times(0.33)).Named("back armhole hollow");
        Landmark deep = Sheet.MarkFrom(CentreBackScye, Drafting.Across.Right, AcrossBack + hollow, Upright.Up, hollow, "back armhole hollow");
        Landmark sideWaist = Sheet.SquareAcross(CentreBackWaist, Drafting.Across.Right, BackWidth - BackShaping.SideIn, "back side waist");
        DraftedLine side = Sheet.Join(BackUnderarm, sideWaist, Names.Drawn("back side seam"));
        SideLength = Sheet.Measure(side, "back side seam");
        Direction down = Toward(BackUnderarm, sideWaist);

        DraftedLine neckline = Sheet.Curve(neck, Direction.Right, sideNeck, along.TurnedLeft, Names.Drawn("back neckline"));
        DraftedLine armhole = Sheet.CurveThrough(Names.Drawn("back armhole"), [tip, touch, deep, BackUnderarm], outward.TurnedRight, down.TurnedLeft);
        Landmark notch = Sheet.MarkAlong(armhole, BackUnderarm, _body.ScyeDepth.Times(0.4), "back notch");
        BackWaistline = Sheet.Curve(sideWaist, down.TurnedRight, CentreBackWaist, Direction.Left, Names.Drawn("back waistline"));

        PanelOutline outline = PanelOutline.Of(PanelName.Back, neck)
            .Along(EdgeName.Neckline, EdgeRole.Opening, neckline)
            .Along(EdgeName.Shoulder, EdgeRole.Seam, shoulder)
            .Along(EdgeName.Armhole, EdgeRole.Seam, armhole)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, side)
            .Along(EdgeName.Waist, EdgeRole.Opening, BackWaistline)
            .Along(EdgeName.Centre, EdgeRole.Centre, Sheet.FindLine(Names.CentreBackLine))
            .WithNotch(EdgeName.Armhole, notch, 2);
        if (ShoulderDart is { } shoulderDart)
        {
            outline = outline.WithDart(EdgeName.Shoulder, shoulderDart, Panels.Toward.Start).WithLandmark(_blade);
        }

        if (BackShaping.Darts.Count > 0)
        {
            WorkedLength fromCentre = AcrossBack.Half().Named("half of half across the back");
            Landmark top = Sheet.MarkFrom(CentreBackScye, Drafting.Across.Right, fromCentre, Upright.Down, _body.Figure("1", 2.5), "back dart top");
            outline = DrawWaistDarts(outline, BackWaistline, CentreBackWaist, Drafting.Across.Right, BackShaping, fromCentre, top, null, "back");
        }

        Back = Sheet.Trace(outline);
    }

    private void DrawFront()
    {
        WorkedLength neckDepth = (_body.Neck.DividedBy(5) - _body.Figure("1/16", 0.2)).Named("front neck depth");
        WorkedLength scye = (ArmholeDepth + NeckRise - _body.ScyeDepth.DividedBy(6)).Named("front armhole depth");
        Landmark neck = Sheet.SquareUp(CentreFrontWaist, _body.FrontLength - neckDepth, "CF neck", Names.CentreFrontLine);
        Landmark sideNeck = Sheet.MarkFrom(CentreFrontWaist, Drafting.Across.Left, FrontNeckWidth, Upright.Up, _body.FrontLength, "front side neck");
        Direction along = Heading(Slope - SlopeApart, toLeft: true);
        Landmark tip = Sheet.Slant(sideNeck, along, _body.Shoulder, "front shoulder point", Names.Drawn("front shoulder"));

        Landmark below = Sheet.SquareAcross(CentreFrontWaist, Drafting.Across.Left, _body.BustPointWidth.Half(), "below the bust point");
        Sheet.SquareUp(below, _body.FrontLength, "above the bust point", Names.BustPointLine);
        BustPoint = Sheet.Swing(sideNeck, _body.BustPointDepth, Sheet.FindLine(Names.BustPointLine), SheetSide.Below, Names.BustPoint);
        Landmark centreScye = Sheet.SquareUp(CentreFrontWaist, (_body.FrontLength - scye).Named("front armhole line above the waist"), "CF armhole line");
        Landmark sideWaist = Sheet.SquareAcross(CentreFrontWaist, Drafting.Across.Left, FrontWidth - FrontShaping.SideIn, "front side waist");
        WorkedLength drop = _body.Shoulder.Times(Math.Sin((Slope - SlopeApart).Radians)).Named("front shoulder drop");
        WorkedLength height = (scye - drop).Half().Named("half front armhole height");
        WorkedLength width = (FrontWidth - AcrossFront).Named("front part of the armhole");
        Landmark touch = Sheet.MarkFrom(centreScye, Drafting.Across.Left, AcrossFront, Upright.Up, height, "front armhole touch");
        FrontTouch = touch.Position;
        WorkedLength hollow = width.Times(0.25).AtMost(height.Times(0.24)).Named("front armhole hollow");
        Landmark deep = Sheet.MarkFrom(centreScye, Drafting.Across.Left, AcrossFront + hollow, Upright.Up, hollow, "front armhole hollow");

        (Landmark underarm, DraftedLine side, Direction upward) = DrawFrontSide(centreScye, sideWaist);
        Direction down = side.Path.EndDirection;
        DraftedLine neckline = Sheet.Curve(neck, Direction.Left, sideNeck, along.TurnedRight, Names.Drawn("front neckline"));
        DraftedLine armhole = Sheet.CurveThrough(Names.Drawn("front armhole"), [tip, touch, deep, underarm], along.TurnedLeft, upward.Reversed.TurnedRight);
        Landmark notch = Sheet.MarkAlong(armhole, underarm, _body.ScyeDepth.Times(0.375), "front notch");
        FrontWaistline = Sheet.Curve(sideWaist, down.TurnedLeft, CentreFrontWaist, Direction.Right, Names.Drawn("front waistline"));

        PanelOutline outline = PanelOutline.Of(PanelName.Front, neck)
            .Along(EdgeName.Neckline, EdgeRole.Opening, neckline)
            .Along(EdgeName.Shoulder, EdgeRole.Seam, Sheet.FindLine(Names.Drawn("front shoulder")))
            .Along(EdgeName.Armhole, EdgeRole.Seam, armhole)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, side)
            .Along(EdgeName.Waist, EdgeRole.Opening, FrontWaistline)
            .Along(EdgeName.Centre, EdgeRole.Centre, Sheet.FindLine(Names.CentreFrontLine))
            .WithNotch(EdgeName.Armhole, notch)
            .WithLandmark(BustPoint);
        if (BustDart is { } bustDart)
        {
            outline = outline.WithDart(EdgeName.SideSeam, bustDart, Panels.Toward.End);
        }

        if (FrontShaping.Darts.Count > 0)
        {
            WorkedLength off = StandsOff(onWaist: true);
            outline = DrawWaistDarts(outline, FrontWaistline, CentreFrontWaist, Drafting.Across.Left, FrontShaping, _body.BustPointWidth.Half(), BustPoint, off, "front");
        }

        Front = Sheet.Trace(outline);
    }

    // With the dart folded the front side lies as that of the back; opened about the bust point, its upper part swings up onto the front armhole line.
    private (Landmark Underarm, DraftedLine Side, Direction Upward) DrawFrontSide(Landmark centreScye, Landmark sideWaist)
    {
        LineName sideName = Names.Drawn("front side seam");
        WorkedLength above = (_body.BackLength - ArmholeDepth).Named("armhole line above the waist");
        bool hasDart = centreScye.Position.YMm - CentreFrontWaist.Position.YMm - above.ValueMm >= LeastDartMm;
        Landmark lying = Sheet.MarkFrom(CentreFrontWaist, Drafting.Across.Left, FrontWidth, Upright.Up, above, hasDart ? "front underarm folded" : "front underarm");
        DraftedLine folded = Sheet.Join(lying, sideWaist, hasDart ? Names.FoldedSide : sideName);
        if (!hasDart)
        {
            Sheet.Because("There is no bust dart: the front is hardly longer than the back.");
            return (lying, folded, folded.Path.StartDirection.Reversed);
        }

        BodiceRefusals.RefuseWideBustDart(_draft, BustPoint.Position, lying.Position, centreScye.Position.YMm);
        Sheet.SquareAcross(centreScye, Drafting.Across.Left, FrontWidth.Times(1.25), "front armhole line end", Names.FrontArmholeLine);
        WorkedLength reach = Sheet.Measure(BustPoint, lying, "bust point to underarm");
        Landmark underarm = Sheet.Swing(BustPoint, reach, Sheet.FindLine(Names.FrontArmholeLine), SheetSide.Left, "front underarm");
        Sheet.Because("As far from the bust point as with the dart folded: opening the dart swings it up.");
        WorkedLength third = SideLength.DividedBy(3).Named("underarm to bust dart");
        Landmark lowerLeg = Sheet.MarkAlong(folded, lying, third, "lower bust dart leg");
        Landmark upperLeg = Sheet.Compass(
            BustPoint, Sheet.Measure(BustPoint, lowerLeg, "bust dart leg"), underarm, third, SheetSide.Below, "upper bust dart leg");
        CurvePath path = CurvePath.FromSegments([Straight(underarm, upperLeg), Straight(upperLeg, lowerLeg), Straight(lowerLeg, sideWaist)]);
        DraftedLine side = Sheet.Draw(sideName, path, underarm, sideWaist);
        Sheet.Because("Straight from point to point, by way of both legs of the bust dart.");
        Landmark middle = Sheet.Midpoint(upperLeg, lowerLeg, "bust dart centre");
        Landmark apex = Sheet.MarkToward(BustPoint, middle, StandsOff(onWaist: false), "bust dart apex");
        Sheet.Because("The dart points at the bust point, and ends before it.");
        BustDart = Sheet.JoinDart(side, upperLeg, lowerLeg, middle, apex);
        return (underarm, side, Toward(upperLeg, underarm));
    }

    // The armhole leaves the shoulder square to it: where it has to come down farther out than that leads, it would have to turn back. A dart turns the shoulder, and moves its end out.
    private WorkedLength Across(WorkedLength asked, WorkedLength neckWidth, Angle slope, bool hasDart)
    {
        WorkedLength tip = neckWidth + _body.Shoulder.Times((hasDart ? 1 + (1.0 / 12) : 1) * Math.Cos(slope.Radians));
        double turnRad = hasDart ? _body.Shoulder.ValueMm / 12 / (_body.ScyeDepth.ValueMm / 3) : 0;
        WorkedLength comesIn = _body.ScyeDepth.Times(0.16 * Math.Tan(slope.Radians + turnRad));
        return asked.AtMost((tip - comesIn).Named("below the shoulder point"));
    }

    // With the dart folded the shoulder is straight from neck to shoulder point; opened about the apex, its outer part swings away.
    private (Landmark Tip, DraftedLine Line, Direction Outward) DrawBackShoulder(Landmark sideNeck, Direction along)
    {
        LineName name = Names.Drawn("back shoulder");
        WorkedLength dart = _body.Shoulder.DividedBy(12).Named("shoulder dart");
        if (!HasShoulderDart)
        {
            ShoulderEase = dart.Half().Named("shoulder ease");
            Landmark end = Sheet.Slant(sideNeck, along, (_body.Shoulder + ShoulderEase).Named("back shoulder"), "back shoulder point", name);
            return (end, Sheet.FindLine(name), along);
        }

        ShoulderEase = dart.Times(0);
        Landmark lying = Sheet.Slant(sideNeck, along, _body.Shoulder, "back shoulder folded", Names.FoldedShoulder);
        DraftedLine folded = Sheet.FindLine(Names.FoldedShoulder);
        Landmark first = Sheet.Midpoint(sideNeck, lying, "inner shoulder dart leg");
        _blade = Sheet.SquareOff(folded, first, SheetSide.Below, _body.ScyeDepth.Half(), Names.ShoulderBlade);
        WorkedLength leg = _body.ScyeDepth.DividedBy(3).Named("shoulder dart leg");
        Landmark apex = Sheet.MarkToward(first, _blade, leg, "shoulder dart apex");
        WorkedLength reach = Sheet.Measure(apex, lying, "apex to shoulder point");
        Landmark second = Sheet.Compass(apex, leg, first, dart, SheetSide.Right, "outer shoulder dart leg");
        Landmark tip = Sheet.Compass(apex, reach, second, _body.Shoulder.Half(), SheetSide.Right, "back shoulder point");
        Landmark middle = Sheet.Midpoint(first, second, "shoulder dart centre");
        CurvePath path = CurvePath.FromSegments([Straight(sideNeck, first), Straight(first, second), Straight(second, tip)]);
        DraftedLine line = Sheet.Draw(name, path, sideNeck, tip);
        Sheet.Because("Straight from point to point, by way of both legs of the shoulder dart.");
        ShoulderDart = Sheet.JoinDart(line, first, second, middle, apex);
        return (tip, line, Toward(second, tip));
    }

    // The first under its point, the second a finger's breadth nearer to the side and shorter.
    private PanelOutline DrawWaistDarts(
        PanelOutline outline, DraftedLine waistline, Landmark centre, Across outward, BodiceShaping shaping, WorkedLength fromCentre, Landmark toward, WorkedLength? standsOff, string side)
    {
        for (int i = 0; i < shaping.Darts.Count; i++)
        {
            string name = side + " waist dart" + (i == 0 ? string.Empty : " 2");
            WorkedLength intake = shaping.Darts[i];
            Landmark point = toward;
            WorkedLength place = fromCentre;
            if (i > 0)
            {
                place = fromCentre + intake + _body.Figure("1 1/4", 3);
                WorkedLength height = WorkedLength.Drawn("height of the first dart", Length.FromMillimeters(toward.Position.YMm - centre.Position.YMm)) - _body.Figure("1", 2.5);
                point = Sheet.MarkFrom(centre, outward, place, Upright.Up, height, side + " second dart top");
            }

            Landmark middle = Sheet.MarkOnto(waistline, centre, outward, place, name + " centre");
            WorkedLength up = Sheet.Measure(middle, point, "up to the " + point.Name.Text);
            DraftedDart dart = Sheet.PointDart(waistline, middle, intake, point, standsOff is null ? up : up - standsOff, name + " apex");
            _waistDarts.Add((outline.Name, dart));
            outline = outline.WithDart(EdgeName.Waist, dart, Panels.Toward.End);
        }

        return outline;
    }

    /// <summary>How far a dart of the front ends before the bust point, on the waist or elsewhere.</summary>
    internal WorkedLength StandsOff(bool onWaist) => onWaist
        ? StandsOff(BodiceSettings.WaistDartStandsOff, 45, "waist dart stands off")
        : StandsOff(BodiceSettings.BustDartStandsOff, 30, "bust dart stands off");

    // More for a larger bust.
    private WorkedLength StandsOff(MethodSetting<Length> setting, int partOfBust, string name)
        => _draft.IsGiven(setting) ? _draft.Take(setting) : _body.Bust.DividedBy(partOfBust).Named(name);

    private static Direction Heading(Angle slope, bool toLeft) => Direction.FromAngle(toLeft ? Angle.FromDegrees(180) + slope : -slope);

    private static PathSegment Straight(Landmark from, Landmark to) => PathSegment.FromLine(LineSegment.Between(from.Position, to.Position));

    private static Direction Toward(Landmark from, Landmark to) => from.Position.DirectionTo(to.Position);

    // The back slopes a little more than the front, as a handbook's draft comes to with its darts closed (from memory).
    private static readonly Angle SlopeApart = Angle.FromDegrees(1.5);

    private const double LeastDartMm = 6;
}
