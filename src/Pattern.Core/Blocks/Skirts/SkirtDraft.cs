using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The skirt drawn by hand on the sheet, step by step; truing comes after.</summary>
/// <remarks>One half of the skirt: centre back to the left, centre front to the right, the side seam between, inside a box as wide as half the hip
/// girth with half the ease and as long as the skirt.</remarks>
internal sealed class SkirtDraft
{
    private static readonly WorkedLength UsualFrontDart = WorkedLength.GivenMm("front dart length", 5 * 25.4);
    private static readonly WorkedLength UsualBackDart = WorkedLength.GivenMm("back dart length", 6 * 25.4);

    private readonly BodyMeasurements _body;
    private readonly SkirtOptions _options;
    private Landmark _sideUpperHip;
    private Landmark _sideLowerHip;
    private Landmark _sideHem;

    private SkirtDraft(BodyMeasurements body, SkirtOptions options, DraftingSheet sheet)
    {
        _body = body;
        _options = options;
        Sheet = sheet;
    }

    internal DraftingSheet Sheet { get; }

    internal SkirtQuarter Back { get; } = new(SkirtNames.Back, hand: 1);

    internal SkirtQuarter Front { get; } = new(SkirtNames.Front, hand: -1);

    internal ShapingReading Reading { get; private set; } = null!;

    internal Point2D SideUpperHip => _sideUpperHip.Position;

    internal Point2D SideLowerHip => _sideLowerHip.Position;

    internal double WaistTargetMm { get; private set; }

    internal double HipTargetMm { get; private set; }

    /// <summary>What the hand laid off for the hip, all around.</summary>
    internal double HandHipMm => 2 * Front.CentreLowerHip.Position.XMm;

    /// <summary>From the upper hip to the waist: both side seams take the mean of what the hand drew, the least change for both.</summary>
    internal double SideTargetMm => (Back.HandSideLengthMm + Front.HandSideLengthMm) / 2;

    internal SkirtOptions Options => _options;

    /// <summary>Draws the whole draft.</summary>
    /// <exception cref="ConstructionException">A measurement is missing, or the options leave no room for the draft.</exception>
    internal static SkirtDraft Draw(BodyMeasurements body, SkirtOptions options, DraftingSheet sheet)
    {
        var draft = new SkirtDraft(body, options, sheet);
        SkirtRefusals.RefuseWrongLevels(options);
        draft.DrawAll();
        return draft;
    }

    private void DrawAll()
    {
        WorkedLength waist = Girth(BodyMeasurement.WaistGirth, "waist girth", "the waist of a skirt block");
        WorkedLength hip = Girth(BodyMeasurement.HipGirth, "hip girth", "the box of a skirt block");
        WorkedLength waistEase = Given("waist ease", _options.WaistEaseMm);
        WorkedLength hipEase = Given("hip ease", _options.HipEaseMm);
        WaistTargetMm = waist.ValueMm + waistEase.ValueMm;
        HipTargetMm = hip.ValueMm + hipEase.ValueMm;
        Reading = _options.Table.Read(new ShapingQuery(waist, hip, waistEase, hipEase));

        DrawBox((hip.Half() + hipEase.Half()).Named("box width"));
        WorkedLength quarterWaist = (waistEase.ValueMm == 0 ? waist.Quarter() : (waist + waistEase).Quarter()).Named("quarter waist");
        Shape(Back, quarterWaist, Reading.BackDartIntake, _options.BackDarts, UsualBackDart, _options.Fit.CentreBackWaistMm);
        Shape(Front, quarterWaist, Reading.FrontDartIntake, _options.FrontDarts, UsualFrontDart, 0);
        DrawCentreBack();
        DrawCentreFront();
        DrawSide(Back);
        DrawSide(Front);
        DrawWaistline(Back);
        DrawWaistline(Front);
        DrawHem(Back);
        DrawHem(Front);
    }

    private void DrawBox(WorkedLength box)
    {
        WorkedLength length = Given("skirt length", _options.LengthMm);
        WorkedLength yoke = Given("yoke depth", _options.Levels.YokeMm);
        WorkedLength upper = Given("upper hip depth", _options.Levels.UpperHipMm);
        WorkedLength lower = Given("lower hip depth", _options.Levels.LowerHipMm);

        Landmark centreBack = Sheet.Mark(SkirtNames.CentreBackLevel, Point2D.Origin);
        Landmark centreFront = Sheet.SquareAcross(centreBack, Across.Right, box, SkirtNames.CentreFrontLevel, SkirtNames.WaistLevel);
        Back.CentreHem = Sheet.SquareDown(centreBack, length, SkirtNames.CentreBackHem, SkirtNames.CentreBackLine);
        Front.CentreHem = Sheet.SquareDown(centreFront, length, SkirtNames.CentreFrontHem, SkirtNames.CentreFrontLine);
        Sheet.Join(Back.CentreHem, Front.CentreHem, SkirtNames.HemLine);

        Landmark yokeBack = Sheet.SquareDown(centreBack, yoke, SkirtNames.CentreBackYoke);
        Sheet.SquareAcross(yokeBack, Across.Right, box, SkirtNames.CentreFrontYoke, SkirtNames.YokeLine);
        Back.CentreUpperHip = Sheet.SquareDown(centreBack, upper, SkirtNames.CentreBackUpperHip);
        Front.CentreUpperHip = Sheet.SquareAcross(Back.CentreUpperHip, Across.Right, box, SkirtNames.CentreFrontUpperHip, SkirtNames.UpperHipLine);
        Back.CentreLowerHip = Sheet.SquareDown(centreBack, lower, SkirtNames.CentreBackLowerHip);
        Front.CentreLowerHip = Sheet.SquareAcross(Back.CentreLowerHip, Across.Right, box, SkirtNames.CentreFrontLowerHip, SkirtNames.LowerHipLine);

        Back.HipWidth = (box + Reading.BackWider).Half().Named("back hip width");
        Front.HipWidth = (box - Back.HipWidth).Named("front hip width");
        SkirtRefusals.RefuseNoWidth(Back);
        SkirtRefusals.RefuseNoWidth(Front);
        Back.CentreLevel = centreBack;
        Front.CentreLevel = centreFront;
        _sideLowerHip = Sheet.SquareAcross(Back.CentreLowerHip, Across.Right, Back.HipWidth, SkirtNames.SideLowerHip);
        _sideUpperHip = Sheet.SquareUp(_sideLowerHip, lower - upper, SkirtNames.SideUpperHip);
        Sheet.SquareUp(_sideLowerHip, lower, SkirtNames.SideLevel, SkirtNames.SideLine);
        _sideHem = Sheet.SquareDown(_sideLowerHip, length - lower, SkirtNames.SideHem, SkirtNames.SideLineBelow);
    }

    private void Shape(SkirtQuarter quarter, WorkedLength quarterWaist, WorkedLength tableIntake, DartPlan plan, WorkedLength usualLength, double comesInMm)
    {
        WorkedLength width = comesInMm == 0 ? quarter.HipWidth : quarter.HipWidth - Given(quarter.Names.Centre + " waist in", comesInMm);
        quarter.Shaping = SkirtShaping.Decide(quarter.Names.Panel, width, quarterWaist, tableIntake, plan, usualLength, _options);
        SkirtRefusals.RefuseWideWaist(quarter.Names.Panel, width, quarter.Shaping, _options.Levels.UpperHipMm);
    }

    private void DrawCentreBack()
    {
        double comesIn = _options.Fit.CentreBackWaistMm;
        if (comesIn > 0)
        {
            Back.CentreLevel = Sheet.SquareAcross(Back.CentreLevel, Back.TowardSide, Given("CB waist in", comesIn), Back.Names.WaistComesIn);
        }

        double lift = _options.CentreBackLiftMm;
        bool shaped = _options.Waistline == Waistline.Shaped;
        SkirtRefusals.RefuseLowCentre(Back.Names.CentreWaist.Text, shaped ? -lift : 0, _options.Levels.UpperHipMm);
        Back.CentreWaist = shaped && lift > 0
            ? Sheet.SquareUp(Back.CentreLevel, Given("CB lift", lift), Back.Names.CentreWaist)
            : shaped && lift < 0
                ? Sheet.SquareDown(Back.CentreLevel, Given("CB drop", -lift), Back.Names.CentreWaist)
                : Back.CentreLevel;
        if (comesIn > 0)
        {
            Back.CentreSeam = Sheet.HipCurve(Back.CentreUpperHip, Back.CentreWaist, Back.Names.CentreSeam).CubicRaw;
        }
    }

    private void DrawCentreFront()
    {
        WorkedLength drop = _options.CentreFrontDropMm is { } asked ? Given("centre front drop", asked) : Reading.FrontDrop;
        bool shaped = _options.Waistline == Waistline.Shaped;
        SkirtRefusals.RefuseLowCentre(Front.Names.CentreWaist.Text, shaped ? drop.ValueMm : 0, _options.Levels.UpperHipMm);
        Front.CentreWaist = !shaped || drop.ValueMm == 0
            ? Front.CentreLevel
            : drop.ValueMm > 0
                ? Sheet.SquareDown(Front.CentreLevel, drop, Front.Names.CentreWaist)
                : Sheet.SquareUp(Front.CentreLevel, Given("centre front rise", -drop.ValueMm), Front.Names.CentreWaist);
    }

    private void DrawSide(SkirtQuarter quarter)
    {
        SkirtShaping shaping = quarter.Shaping;
        WorkedLength open = shaping.DartCount == 0 ? shaping.Waist : shaping.Waist + shaping.DartIntake;
        quarter.WaistPoint = Sheet.SquareAcross(quarter.CentreLevel, quarter.TowardSide, open, quarter.Names.WaistPoint);
        DraftedLine curve = Sheet.HipCurve(_sideUpperHip, quarter.WaistPoint, quarter.Names.SideSeam);
        if (_options.Waistline == Waistline.Level || _options.SideLiftMm == 0)
        {
            quarter.SideWaist = quarter.WaistPoint;
            quarter.SideSeam = curve.CubicRaw;
            return;
        }

        quarter.SideWaist = Sheet.GoOnAlong(curve, quarter.WaistPoint, Given("side lift", _options.SideLiftMm), quarter.Names.SideWaist);
        quarter.SideSeam = HipCurves.Vertical(_sideUpperHip.Position, quarter.SideWaist.Position);
    }

    private void DrawWaistline(SkirtQuarter quarter)
    {
        quarter.Waistline = Sheet.Curve(
            quarter.CentreWaist, quarter.LeavingCentre, quarter.SideWaist, quarter.Square(quarter.SideSeam.EndDirection), quarter.Names.Waistline);
        quarter.HandClosedWaistMm = quarter.Waistline.LengthMm();
        int count = quarter.Shaping.DartCount;
        if (count == 0)
        {
            return;
        }

        quarter.Wedges = new DartWedge[count];
        WorkedLength each = count == 1 ? quarter.Shaping.DartIntake : quarter.Shaping.DartIntake.DividedBy(count).Named("each dart");
        for (int i = 0; i < count; i++)
        {
            DraftedDart dart = DrawDart(quarter, i, count, each);
            quarter.Wedges[i] = new DartWedge(dart.Middle.Position.XMm, dart.IntakeMm, dart.Middle.Position.YMm - dart.Apex.Position.YMm);
            quarter.HandLegDifferenceMm = Math.Max(quarter.HandLegDifferenceMm, dart.LegDifferenceMm);
            quarter.HandClosedWaistMm -= dart.AlongMm;
        }
    }

    private DraftedDart DrawDart(SkirtQuarter quarter, int index, int count, WorkedLength each)
    {
        // The middle of the waistline for one dart; for more, at equal parts of the finished waist, with the darts before it open.
        WorkedLength waist = quarter.Shaping.Waist;
        WorkedLength part = waist.DividedBy(count + 1);
        WorkedLength fromCentre = count == 1
            ? (waist + each).Half()
            : index == 0 ? part + each.Half() : part.Times(index + 1) + each.Times(index + 0.5);
        DartNames names = quarter.Names.Darts[index];
        try
        {
            Landmark middle = Sheet.MarkOnto(quarter.Waistline, quarter.CentreLevel, quarter.TowardSide, fromCentre, names.Middle);
            return Sheet.PlaceDart(quarter.Waistline, middle, each, quarter.Shaping.DartLengths[index], names.Apex, names.MiddleLine);
        }
        catch (ConstructionException refusal) when (refusal.Code is DiagnosticCode.LineNotMet or DiagnosticCode.DartOffLine)
        {
            Length along = (fromCentre + each.Half()).Value;
            Length most = Length.FromMillimeters(quarter.Hand * (quarter.SideWaist.Position.XMm - quarter.CentreLevel.Position.XMm));
            throw new ConstructionException(DiagnosticCode.DartOffWaistline, quarter.Names.Panel, along, most)
            {
                Step = refusal.Step,
                Landmark = quarter.Names.Waistline.Text,
                Measured = along,
                Allowed = most,
            };
        }
    }

    private void DrawHem(SkirtQuarter quarter)
    {
        double centreInMm = quarter == Back ? _options.Fit.CentreBackHemMm : 0;
        SkirtRefusals.RefuseNarrowHem(quarter, _options.Fit.SideHemMm, centreInMm, _options.LengthMm - _options.Levels.LowerHipMm);
        quarter.SideHem = _sideHem;
        if (_options.Fit.SideHemMm > 0)
        {
            quarter.SideHem = Sheet.SquareAcross(_sideHem, quarter.TowardCentre, Given("side hem in", _options.Fit.SideHemMm), quarter.Names.SideHem);
            quarter.SideSeamBelow = Sheet.HipCurve(_sideLowerHip, quarter.SideHem, quarter.Names.SideSeamBelow).CubicRaw;
        }

        if (centreInMm > 0)
        {
            quarter.CentreHem = Sheet.SquareAcross(quarter.CentreHem, quarter.TowardSide, Given("CB hem in", centreInMm), quarter.Names.CentreHemIn);
            quarter.CentreSeamBelow = Sheet.HipCurve(quarter.CentreLowerHip, quarter.CentreHem, quarter.Names.CentreSeamBelow).CubicRaw;
        }
    }

    private static WorkedLength Given(string name, double valueMm) => WorkedLength.GivenMm(name, valueMm);

    private WorkedLength Girth(BodyMeasurement key, string name, string purpose) => WorkedLength.MeasuredMm(name, _body.RequireMm(key, purpose));
}
