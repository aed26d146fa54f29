using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Drafting.DraftingSheetTests;

namespace Pattern.Core.Tests.Drafting;

/// <summary>Each refusal of the sheet: its code, the number of the step, the landmark, what was measured and what is allowed. A refused verb leaves the sheet as it was.</summary>
public class DraftingSheetRefusalTests
{
    private readonly DraftingSheet _sheet = new();
    private readonly Landmark _a;
    private readonly Landmark _b;
    private readonly DraftedLine _level;
    private readonly DraftedLine _hip;

    public DraftingSheetRefusalTests()
    {
        _a = _sheet.Mark("A", P(0, 0));
        _b = _sheet.Mark("B", P(100, 0));
        _level = _sheet.Join(_a, _b, "level");
        _hip = _sheet.HipCurve(_a, _sheet.Mark("waist", P(20, 100)), "hip curve");
    }

    [Fact]
    public void Names_ThatAreTaken_AreRefusedByEveryVerbThatMarksOrDraws()
    {
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Mark("B", P(1, 1)));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.SquareDown(_a, Mm(5), "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.MarkFrom(_a, Across.Left, Mm(5), Upright.Up, Mm(5), "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.MarkAlong(_level, _a, Mm(5), "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.MarkOnto(_level, _a, Across.Right, Mm(5), "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Divide(_level, "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Midpoint(_a, _b, "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Compass(_a, Mm(60), _b, Mm(60), SheetSide.Above, "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Swing(_a, Mm(60), _level, SheetSide.Right, "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.GoOnAlong(_level, _b, Mm(5), "B"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Lift(_level, Mm(5), "B", "C", "other"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "C", null, null, () => _sheet.Lift(_level, Mm(5), "C", "C", "other"));
        Refuses(DiagnosticCode.LandmarkMarkedTwice, "B", null, null, () => _sheet.Mirror(_a, _level, "B"));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.Join(_a, _b, "level"));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.SquareDown(_a, Mm(5), "C", draws: "level"));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.HipCurve(_a, _hip.To, "level"));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.Curve(_a, Direction.Up, _b, Direction.Down, "level"));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.CurveThrough("level", _a, _b));
        Refuses(DiagnosticCode.LineDrawnTwice, "level", null, null, () => _sheet.Part(_level, _b, _a, "level"));
    }

    [Fact]
    public void Divide_WithTheSameNameTwice_IsRefused()
        => Refuses(DiagnosticCode.LandmarkMarkedTwice, "C", null, null, () => _sheet.Divide(_level, "C", "D", "C"));

    [Fact]
    public void LandmarksAndLines_OfAnotherSheetOrNone_AreRefusedByEveryVerb()
    {
        var other = new DraftingSheet();
        Landmark strange = other.Mark("A", P(7, 7));
        Landmark far = other.Mark("far", P(9, 9));
        DraftedLine line = other.Join(strange, far, "strange line");
        Refuses(DiagnosticCode.LandmarkNotDrawn, "A", null, null, () => _sheet.SquareDown(strange, Mm(5), "C"));
        Refuses(DiagnosticCode.LandmarkNotDrawn, "far", null, null, () => _sheet.Join(_a, far, "other"));
        Refuses(DiagnosticCode.LandmarkNotDrawn, "without a name", null, null, () => _sheet.SquareDown(default, Mm(5), "C"));
        Refuses(DiagnosticCode.LandmarkNotDrawn, "A", null, null, () => _sheet.GoOnAlong(_level, strange, Mm(5), "C"));
        Refuses(DiagnosticCode.LandmarkNotDrawn, "far", null, null, () => _sheet.Compass(_a, Mm(5), far, Mm(5), SheetSide.Above, "C"));
        Refuses(DiagnosticCode.LandmarkNotDrawn, "far", null, null, () => _sheet.Find("far"));
        Refuses(DiagnosticCode.LineNotDrawn, "strange line", null, null, () => _sheet.FindLine("strange line"));
        Refuses(DiagnosticCode.LineNotDrawn, "strange line", null, null, () => _sheet.Measure(line));
        Refuses(DiagnosticCode.LineNotDrawn, "strange line", null, null, () => _sheet.Intersect(_level, line, "C"));
        Refuses(DiagnosticCode.LineNotDrawn, "strange line", null, null, () => _sheet.MarkAlong(line, _a, Mm(1), "C"));
    }

    [Fact]
    public void Distances_BelowZero_AreRefusedByEveryVerbThatMeasuresOff()
    {
        Refuses(DiagnosticCode.DistanceNegative, "A", -5, 0, () => _sheet.SquareDown(_a, Mm(-5), "C"));
        Refuses(DiagnosticCode.DistanceNegative, "A", -5, 0, () => _sheet.MarkFrom(_a, Across.Left, Mm(1), Upright.Up, Mm(-5), "C"));
        Refuses(DiagnosticCode.DistanceNegative, "A", -5, 0, () => _sheet.MarkAlong(_level, _a, Mm(-5), "C"));
        Refuses(DiagnosticCode.DistanceNegative, "B", -5, 0, () => _sheet.GoOnAlong(_level, _b, Mm(-5), "C"));
        Refuses(DiagnosticCode.DistanceNegative, "A", -5, 0, () => _sheet.Drop(_level, Mm(-5), "C", "D", "other"));
    }

    [Fact]
    public void Places_ThatTheLineDoesNotReach_AreRefused()
    {
        Refuses(DiagnosticCode.DistanceOffLine, "A", 101, 100, () => _sheet.MarkAlong(_level, _a, Mm(101), "C"));
        Refuses(DiagnosticCode.LineNotMet, "level", 130, 100, () => _sheet.MarkOnto(_level, _a, Across.Right, Mm(130), "C"));
        Refuses(DiagnosticCode.LineNotMet, "level", 40, 100, () => _sheet.Swing(_sheet.Find("waist"), Mm(40), _level, SheetSide.Left, "C"));
        Landmark off = _sheet.Mark("off", P(50, 30));
        Refuses(DiagnosticCode.LandmarkOffLine, "off", 30, 1e-6, () => _sheet.MarkAlong(_level, off, Mm(5), "C"));
        Refuses(DiagnosticCode.LandmarkOffLine, "off", 30, 1e-6, () => _sheet.PlaceDart(_level, off, Mm(5), Mm(5), "C"));
        Landmark middle = _sheet.MarkAlong(_level, _a, Mm(30), "middle");
        Refuses(DiagnosticCode.WayUndecided, "middle", null, null, () => _sheet.MarkAlong(_level, middle, Mm(5), "C"));
        Refuses(DiagnosticCode.LandmarkNoEnd, "middle", 30, 0, () => _sheet.GoOnAlong(_level, middle, Mm(5), "C"));
        Refuses(DiagnosticCode.LineNotMet, "far right", 50, null, () => _sheet.SquareOnto(_sheet.Mark("far right", P(150, 0)), _level, "C"), steps: 1);
    }

    [Fact]
    public void Compass_ThatDoesNotReach_SaysByHowMuch()
    {
        Refuses(DiagnosticCode.CompassDoesNotReach, "C", 100, 90, () => _sheet.Compass(_a, Mm(40), _b, Mm(50), SheetSide.Above, "C"));
        Refuses(DiagnosticCode.CompassDoesNotReach, "C", 100, 110, () => _sheet.Compass(_a, Mm(150), _b, Mm(40), SheetSide.Above, "C"));
        Refuses(DiagnosticCode.SideUndecided, "C", 0, null, () => _sheet.Compass(_a, Mm(60), _b, Mm(60), SheetSide.Left, "C"));
        Refuses(DiagnosticCode.PointsCoincide, "A", 0, null, () => _sheet.Compass(_a, Mm(60), _a, Mm(60), SheetSide.Left, "C"));
    }

    [Fact]
    public void Crossings_ThatAreNoneOrSeveral_AreRefused()
    {
        DraftedLine above = _sheet.Join(_sheet.Mark("C", P(30, 40)), _sheet.Mark("D", P(90, 40)), "above");
        Refuses(DiagnosticCode.LinesDoNotCross, "E", 40, 0, () => _sheet.Intersect(_level, above, "E"));
        DraftedLine wave = _sheet.Draw("wave", CurvePath.FromCubic(CubicBezier.FromPoints(P(10, 10), P(10, -40), P(90, -40), P(90, 10))), _sheet.Mark("F", P(10, 10)), _sheet.Mark("G", P(90, 10)));
        Refuses(DiagnosticCode.CrossingUndecided, "E", null, null, () => _sheet.Intersect(_level, wave, "E"));
        Refuses(DiagnosticCode.SideUndecided, "wave", 0, 1e-6, () => _sheet.Intersect(_level, wave, "E", SheetSide.Above));
        Refuses(DiagnosticCode.SideUndecided, "A", 0, null, () => _sheet.SquareOff(_level, _a, SheetSide.Left, Mm(5), "E"));
    }

    [Fact]
    public void Lines_ThatCannotBeDrawn_AreRefused()
    {
        Landmark same = _sheet.Mark("same", P(0, 0));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.Join(_a, same, "other"));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.Curve(_a, Direction.Up, same, Direction.Up, "other"));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.CurveThrough("other", _b, _a, same));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.MarkToward(_a, same, Mm(1), "C"));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.Part(_level, _a, same, "other"));
        Refuses(DiagnosticCode.LandmarkOffLine, "B", 100, 1e-6, () => _sheet.Draw("other", CurvePath.FromLine(LineSegment.Between(P(0, 0), P(200, 0))), _a, _b));
        Refuses(DiagnosticCode.PointsCoincide, "same", 0, null, () => _sheet.Arc(_a, same, Angle.FromDegrees(90), "C", "other"));
        Refuses(DiagnosticCode.HipCurveLevel, "B", 0, null, () => _sheet.HipCurve(_a, _b, "other"));
        Refuses(DiagnosticCode.MirrorNotStraight, "hip curve", null, null, () => _sheet.Mirror(_level, _hip, "C", "D", "other"));
        ConstructionException tooShort = Refuses(DiagnosticCode.LengthTooShort, "other", 90, null, () => _sheet.CurveOfLength(_a, Direction.Right, _b, Direction.Right, Mm(90), "other"));
        Assert.Equal(100, tooShort.Allowed!.Value.Millimeters, 1e-6);
        _sheet.SquareDown(_a, Mm(0), "C", draws: "nothing");
        Refuses(DiagnosticCode.CurveEnds, "C", 5, null, () => _sheet.GoOnAlong(_sheet.FindLine("nothing"), _sheet.Find("C"), Mm(5), "D"));
    }

    [Fact]
    public void Darts_ThatHaveNoRoomOrSize_AreRefused()
    {
        Landmark middle = _sheet.MarkAlong(_level, _a, Mm(10), "middle");
        Refuses(DiagnosticCode.DartOffLine, "middle", 15, 10, () => _sheet.PlaceDart(_level, middle, Mm(30), Mm(50), "apex"));
        Refuses(DiagnosticCode.DartWithoutSize, "middle", 0, 0, () => _sheet.PlaceDart(_level, middle, Mm(0), Mm(50), "apex"));
        Refuses(DiagnosticCode.DartWithoutSize, "middle", 0, 0, () => _sheet.PlaceDart(_level, middle, Mm(5), Mm(0), "apex"));
        DraftedDart dart = _sheet.PlaceDart(_level, middle, Mm(10), Mm(50), "apex");
        Refuses(DiagnosticCode.DartOnOtherLine, "middle", null, null, () => _sheet.MeasureFolded(_hip, "folded", dart));
    }

    [Fact]
    public void ReasonsAndNotes_ThatSayNothing_AreRefused()
    {
        int steps = _sheet.Steps.Count;
        Assert.Equal(DiagnosticCode.NoStepYet, Assert.Throws<ConstructionException>(() => new DraftingSheet().Because("Why not.")).Code);
        foreach (string wrong in new[] { "Pin {0}.", "Pin {0} and {2}.", "Pin {0} to {1", "Pin {0} } {1}", "Pin {} {0} {1}", "Pin {0} {1} {99999999999999}", "{0}{1}{a}" })
        {
            Assert.Throws<ArgumentException>(() => _sheet.Note(wrong, _a, _b));
        }

        Assert.Equal(steps, _sheet.Steps.Count);
    }

    private ConstructionException Refuses(DiagnosticCode code, string? landmark, double? measuredMm, double? allowedMm, Func<object> act, int steps = 0)
    {
        (int landmarks, int lines, int done) = (_sheet.Landmarks.Count, _sheet.Lines.Count, _sheet.Steps.Count);
        var refusal = Assert.Throws<ConstructionException>(act);
        Assert.Equal(code, refusal.Code);
        Assert.Equal(landmark, refusal.Landmark);
        Assert.StartsWith($"step {done + 1 + steps}, ", refusal.Step, StringComparison.Ordinal);
        Near(measuredMm, refusal.Measured);
        if (code is not DiagnosticCode.LengthTooShort)
        {
            Near(allowedMm, refusal.Allowed);
        }

        Assert.Equal((landmarks + steps, lines, done + steps), (_sheet.Landmarks.Count, _sheet.Lines.Count, _sheet.Steps.Count));
        return refusal;
    }

    private static void Near(double? expected, Length? actual)
    {
        Assert.Equal(expected.HasValue, actual.HasValue);
        if (expected is { } value)
        {
            Assert.Equal(value, actual!.Value.Millimeters, 1e-9);
        }
    }
}
