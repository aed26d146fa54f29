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
    private readonly BodyMeasurements _body;
    private readonly SkirtOptions _options;
    private WorkedLength? _sideLift;
    private Landmark _sideUpperHip;
    private Landmark _sideLowerHip;
    private Landmark _sideHem;

    private SkirtDraft(BodyMeasurements body, SkirtOptions options, DraftingSheet sheet)
    {
        _body = body;
        _options = options;
        Customs = SkirtCustoms.Of(body.Unit);
        Depths = SkirtDepths.Of(body, options.Levels, Customs);
        Sheet = sheet;
    }

    internal SkirtCustoms Customs { get; }

    internal SkirtDepths Depths { get; }

    internal DraftingSheet Sheet { get; }

    internal SkirtQuarter Back { get; } = new(SkirtNames.Back, hand: 1);

    internal SkirtQuarter Front { get; } = new(SkirtNames.Front, hand: -1);

    internal ShapingReading Reading { get; private set; } = null!;

    internal Point2D SideLowerHip => _sideLowerHip.Position;

    internal double WaistTargetMm { get; private set; }

    internal double HipTargetMm { get; private set; }

    /// <summary>What the hand laid off for the hip, all around.</summary>
    internal double HandHipMm => 2 * Front.CentreLowerHip.Position.XMm;

    /// <summary>From the upper hip to the waist: both side seams take the mean of what the hand drew, the least change for both.</summary>
    internal double SideTargetMm => (Back.HandSideLengthMm + Front.HandSideLengthMm) / 2;

    internal SkirtOptions Options => _options;

    /// <summary>What was asked for, but no more at the centre back waist than there is to take in.</summary>
    internal SkirtFit Fit => (Back.ComesIn?.ValueMm ?? 0) == _options.Fit.CentreBackWaistMm
        ? _options.Fit
        : _options.Fit with { CentreBackWaist = Back.ComesIn?.Value ?? Length.Zero };

    /// <summary>Draws the whole draft.</summary>
    /// <exception cref="ConstructionException">A measurement is missing, or the options leave no room for the draft.</exception>
    internal static SkirtDraft Draw(BodyMeasurements body, SkirtOptions options, DraftingSheet sheet)
    {
        var draft = new SkirtDraft(body, options, sheet);
        SkirtRefusals.RefuseWrongLevels(draft.Depths.Levels, options.LengthMm);
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
        Reading = _options.Table.Read(new ShapingQuery(waist, hip, waistEase, hipEase, _body.Unit));

        DrawBox((hip.Half() + hipEase.Half()).Named("box width"));
        WorkedLength quarterWaist = (waistEase.ValueMm == 0 ? waist.Quarter() : (waist + waistEase).Quarter()).Named("quarter waist");
        Shape(Back, quarterWaist, Reading.BackDartIntake, _options.BackDarts, Customs.BackDart, _options.Fit.CentreBackWaistMm);
        Shape(Front, quarterWaist, Reading.FrontDartIntake, _options.FrontDarts, Customs.FrontDart, 0);
        LeaveHip();
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
        WorkedLength upper = Depths.UpperHip;
        WorkedLength lower = Depths.LowerHip;

        Landmark centreBack = Sheet.Mark(SkirtNames.CentreBackLevel, Point2D.Origin);
        Sheet.Because("Near the top left corner of the paper, with a hand's breadth free above it and to its left.");
        Landmark centreFront = Sheet.SquareAcross(centreBack, Across.Right, box, SkirtNames.CentreFrontLevel, SkirtNames.WaistLevel);
        Back.CentreHem = Sheet.SquareDown(centreBack, length, SkirtNames.CentreBackHem, SkirtNames.CentreBackLine);
        Front.CentreHem = Sheet.SquareDown(centreFront, length, SkirtNames.CentreFrontHem, SkirtNames.CentreFrontLine);
        Sheet.Join(Back.CentreHem, Front.CentreHem, SkirtNames.HemLine);

        Landmark yokeBack = Sheet.SquareDown(centreBack, Depths.Yoke, SkirtNames.CentreBackYoke);
        Sheet.SquareAcross(yokeBack, Across.Right, box, SkirtNames.CentreFrontYoke, SkirtNames.YokeLine);
        Sheet.Because("Where the seam of a yoke would lie: a skirt without one does not need this line.");
        Back.CentreUpperHip = Sheet.SquareDown(centreBack, upper, SkirtNames.CentreBackUpperHip);
        Front.CentreUpperHip = Sheet.SquareAcross(Back.CentreUpperHip, Across.Right, box, SkirtNames.CentreFrontUpperHip, SkirtNames.UpperHipLine);
        Back.CentreFoot = _options.Fit.CentreBackBlend == CentreBackBlend.Yoke && Depths.Yoke.ValueMm < upper.ValueMm ? yokeBack : Back.CentreUpperHip;
        Back.CentreLowerHip = Sheet.SquareDown(centreBack, lower, SkirtNames.CentreBackLowerHip);
        Front.CentreLowerHip = Sheet.SquareAcross(Back.CentreLowerHip, Across.Right, box, SkirtNames.CentreFrontLowerHip, SkirtNames.LowerHipLine);

        Back.HipWidth = (Reading.BackWider.Opposite is { } less ? box - less : box + Reading.BackWider).Half().Named("back hip width");
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
        WorkedLength width = quarter.HipWidth;
        if (comesInMm > 0)
        {
            quarter.ComesIn = SkirtHeights.ComesIn(quarter, (width - quarterWaist).Named(quarter.Names.Panel.Text + " suppression"), comesInMm);
            width = quarter.ComesIn is { } comesIn ? width - comesIn : width;
        }

        double twoAboveMm = quarter == Back ? Customs.TwoBackDartsMm : double.PositiveInfinity;
        quarter.Shaping = SkirtShaping.Decide(
            quarter.Names.Panel, width, quarterWaist, tableIntake, plan, usualLength, twoAboveMm, Customs, Depths, _options);
        quarter.SideInMm = width.ValueMm - quarter.Shaping.OpenWaistMm;
        SkirtRefusals.RefuseWideWaist(quarter.Names.Panel, width, quarter.Shaping, Depths.UpperHip.ValueMm);
        SkirtReasons.Say(Sheet, quarter, width, tableIntake, plan, _options);
    }

    // Where the waist is larger than the hip the side begins to go out at the lower hip: it leans less.
    private void LeaveHip()
    {
        double bothMm = Back.SideInMm + Front.SideInMm;
        Back.SideFoot = Front.SideFoot = bothMm < 0 ? _sideLowerHip : _sideUpperHip;
        _sideLift = SkirtHeights.SideLift(_options, Customs, bothMm, Back, Front);
    }

    private void DrawCentreBack()
    {
        if (Back.ComesIn is { } comesIn)
        {
            Back.CentreLevel = Sheet.SquareAcross(Back.CentreLevel, Back.TowardSide, comesIn, Back.Names.WaistComesIn);
            if (comesIn.ValueMm < _options.Fit.CentreBackWaistMm)
            {
                Sheet.Because("There is no more to take in between hip and waist: the side would have to go out again.");
            }
        }
        else if (_options.Fit.CentreBackWaistMm > 0)
        {
            Sheet.Note("Leave the centre back straight above the hip: the waist leaves nothing to take in.");
        }

        WorkedLength? lift = SkirtHeights.CentreBackLift(_options, Customs, Back, _sideLift);
        SkirtRefusals.RefuseLowCentre(Back.Names.CentreWaist.Text, -(lift?.ValueMm ?? 0), -Back.CentreFoot.Position.YMm);
        Back.CentreWaist = lift is null || lift.ValueMm == 0
            ? Back.CentreLevel
            : lift.ValueMm > 0
                ? Sheet.SquareUp(Back.CentreLevel, lift, Back.Names.CentreWaist)
                : Sheet.SquareDown(Back.CentreLevel, WorkedLength.GivenMm("CB drop", -lift.ValueMm, lift.Source), Back.Names.CentreWaist);
        if (Back.ComesIn is not null)
        {
            Back.CentreSeam = Sheet.HipCurve(Back.CentreFoot, Back.CentreWaist, Back.Names.CentreSeam).CubicRaw;
        }
    }

    private void DrawCentreFront()
    {
        WorkedLength? drop = SkirtHeights.CentreFrontDrop(_options, Reading);
        SkirtRefusals.RefuseLowCentre(Front.Names.CentreWaist.Text, drop?.ValueMm ?? 0, Depths.UpperHip.ValueMm);
        Front.CentreWaist = drop is null || drop.ValueMm == 0
            ? Front.CentreLevel
            : drop.ValueMm > 0
                ? Sheet.SquareDown(Front.CentreLevel, drop, Front.Names.CentreWaist)
                : Sheet.SquareUp(Front.CentreLevel, SkirtHeights.Rise(drop), Front.Names.CentreWaist);
    }

    private void DrawSide(SkirtQuarter quarter)
    {
        SkirtShaping shaping = quarter.Shaping;
        WorkedLength open = shaping.DartCount == 0 ? shaping.Waist : shaping.Waist + shaping.DartIntake;
        quarter.WaistPoint = Sheet.SquareAcross(quarter.CentreLevel, quarter.TowardSide, open, quarter.Names.WaistPoint);
        DraftedLine curve = Sheet.HipCurve(quarter.SideFoot, quarter.WaistPoint, quarter.Names.SideSeam);
        if (_sideLift is not { } lift)
        {
            quarter.SideWaist = quarter.WaistPoint;
            quarter.SideSeam = curve.CubicRaw;
            return;
        }

        quarter.SideWaist = Sheet.GoOnAlong(curve, quarter.WaistPoint, lift, quarter.Names.SideWaist);
        quarter.SideSeam = HipCurves.Vertical(quarter.SideFoot.Position, quarter.SideWaist.Position);
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
        quarter.Darts = new DraftedDart[count];
        WorkedLength each = quarter.Shaping.EachDart;
        for (int i = 0; i < count; i++)
        {
            DraftedDart dart = DrawDart(quarter, i, count, each);
            quarter.Darts[i] = dart;
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
        double[]? places = quarter == Back ? _options.BackDartPlacesMm : _options.FrontDartPlacesMm;
        fromCentre = places is not null && index < places.Length ? Given("place of the dart above", places[index]) : fromCentre;
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
        SkirtRefusals.RefuseNarrowHem(quarter, _options.Fit.SideHemMm, centreInMm, _options.LengthMm - Depths.LowerHip.ValueMm);
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

    private static WorkedLength Given(string name, double valueMm) => WorkedLength.GivenMm(name, valueMm, LengthSource.Setting);

    private WorkedLength Girth(BodyMeasurement key, string name, string purpose) => WorkedLength.MeasuredMm(name, _body.RequireMm(key, purpose));
}
