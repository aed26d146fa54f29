using System;
using System.Linq;
using MathNet.Numerics.Integration;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Drafting;

/// <summary>Each verb of the sheet against a closed form, and the sentence that it records.</summary>
public class DraftingSheetTests
{
    private readonly DraftingSheet _sheet = new();

    private string LastStep => _sheet.Steps[_sheet.Steps.Count - 1].Describe(TapeStep.Millimeter);

    internal static WorkedLength Mm(double value) => WorkedLength.Given(Length.FromMillimeters(value));

    internal static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);

    [Fact]
    public void SquareVerbs_FromALandmark_LeadStraightAndSayTheWay()
    {
        Landmark a = _sheet.Mark("A", P(10, 20));
        Near(10, 20, a);
        Assert.Equal("Mark A.", LastStep);
        Near(10, -10, _sheet.SquareDown(a, Mm(30), "down"));
        Assert.Equal("Square down from A: 3.0 cm. Mark down.", LastStep);
        Near(10, 50, _sheet.SquareUp(a, Mm(30), "up"));
        Assert.Equal("Square up from A: 3.0 cm. Mark up.", LastStep);
        Near(40, 20, _sheet.SquareAcross(a, Across.Right, Mm(30), "right"));
        Assert.Equal("Square across to the right from A: 3.0 cm. Mark right.", LastStep);
        Near(-20, 20, _sheet.SquareAcross(a, Across.Left, Mm(30), "left", draws: "level line"));
        Assert.Equal("Square across to the left from A: 3.0 cm. Mark left.", LastStep);
        Assert.Equal("level line from A to left", _sheet.FindLine("level line").ToString());
    }

    [Fact]
    public void MarkFrom_TwoDistances_LandsAtBoth()
    {
        Landmark a = _sheet.Mark("A", P(10, 20));
        Near(-5, 12, _sheet.MarkFrom(a, Across.Left, Mm(15), Upright.Down, Mm(8), "B"));
        Assert.Equal("From A measure to the left: 1.5 cm, and down: 0.8 cm. Mark B.", LastStep);
    }

    [Fact]
    public void Slant_AtAnAngle_IsSineAndCosine()
    {
        Landmark a = _sheet.Mark("A", Point2D.Origin);
        Near(100 * Math.Sqrt(3) / 2, -50, _sheet.Slant(a, Direction.FromAngle(Angle.FromDegrees(-30)), Mm(100), "shoulder"));
        Assert.Equal("Slant from A to the right, 30 degrees down: 10.0 cm. Mark shoulder.", LastStep);
        _sheet.Slant(a, Direction.FromAngle(Angle.FromDegrees(135)), Mm(10), "B");
        Assert.Equal("Slant from A to the left, 45 degrees up: 1.0 cm. Mark B.", LastStep);
    }

    [Fact]
    public void MarkToward_ALandmark_StaysOnTheStraightWay()
    {
        Landmark a = _sheet.Mark("A", P(1, 2));
        Landmark b = _sheet.Mark("B", P(4, 6));
        Near(7, 10, _sheet.MarkToward(a, b, Mm(10), "C"));
        Assert.Equal("From A toward B measure 1.0 cm. Mark C.", LastStep);
    }

    [Fact]
    public void SquareOff_ASlantedLine_IsAtARightAngleOnTheNamedSide()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.Mark("B", P(30, 40));
        DraftedLine line = _sheet.Join(a, b, "slant");
        Near(-8 + 30, 6 + 40, _sheet.SquareOff(line, b, SheetSide.Left, Mm(10), "C"));
        Assert.Equal("Square off the slant at B, to the left: 1.0 cm. Mark C.", LastStep);
        Near(8, -6, _sheet.SquareOff(line, a, SheetSide.Below, Mm(10), "D"));
    }

    [Fact]
    public void SquareOnto_ALine_FindsTheFootOfThePerpendicular()
    {
        DraftedLine line = _sheet.Join(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(30, 40)), "slant");
        Landmark c = _sheet.Mark("C", P(15 - 8, 20 + 6));
        Near(15, 20, _sheet.SquareOnto(c, line, "foot", "height"));
        Assert.Equal(10, _sheet.FindLine("height").Length.Millimeters, 1e-9);
    }

    [Fact]
    public void MarkAlong_FromEitherEndOrTowardALandmark_MeasuresTheLine()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.Mark("B", P(30, 40));
        DraftedLine line = _sheet.Join(a, b, "slant");
        Landmark c = _sheet.MarkAlong(line, a, Mm(20), "C");
        Near(12, 16, c);
        Assert.Equal("From A measure along the slant: 2.0 cm. Mark C.", LastStep);
        Near(24, 32, _sheet.MarkAlong(line, b, Mm(10), "D"));
        Near(9, 12, _sheet.MarkAlong(line, c, Mm(5), "E", toward: a));
        Assert.Equal("From C measure along the slant toward A: 0.5 cm. Mark E.", LastStep);
    }

    [Fact]
    public void MarkOnto_AParabola_StandsAboveTheDistance()
    {
        // The hip curve from (0, 0) to (20, 100): sideways 20 (y/100)^2.
        DraftedLine hip = _sheet.HipCurve(_sheet.Mark("hip", P(0, 0)), _sheet.Mark("waist", P(20, 100)), "side");
        Near(5, 50, _sheet.MarkOnto(hip, _sheet.Find("hip"), Across.Right, Mm(5), "C"));
        Assert.Equal("From hip measure level to the right: 0.5 cm. Mark C on the side, straight above or below that place.", LastStep);
    }

    [Fact]
    public void Divide_ALine_GivesEqualParts()
    {
        DraftedLine line = _sheet.Join(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(30, 40)), "slant");
        var thirds = _sheet.Divide(line, "first", "second");
        Near(10, 40.0 / 3, thirds[0]);
        Near(20, 80.0 / 3, thirds[1]);
        Assert.Equal("Divide the slant into 3 equal parts: ~1.7 cm. Mark first, second.", LastStep);
    }

    [Fact]
    public void Midpoint_OfTwoLandmarks_IsHalfWay()
    {
        Near(2, -1, _sheet.Midpoint(_sheet.Mark("A", P(1, 2)), _sheet.Mark("B", P(3, -4)), "M"));
        Assert.StartsWith("Mark M half-way from A to B: 1/2 of A to B", LastStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Compass_ThreeFourFive_ClosesTheTriangle()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.Mark("B", P(50, 0));
        Near(18, 24, _sheet.Compass(a, Mm(30), b, Mm(40), SheetSide.Above, "C"));
        Assert.Equal("Set the compass on A: 3.0 cm, and on B: 4.0 cm. Mark C where they cross, the upper one.", LastStep);
        Near(18, -24, _sheet.Compass(a, Mm(30), b, Mm(40), SheetSide.Below, "D"));
    }

    [Fact]
    public void Swing_OntoALine_ChoosesTheNamedPlace()
    {
        Landmark a = _sheet.Mark("A", P(0, 30));
        DraftedLine level = _sheet.Join(_sheet.Mark("B", P(-100, 0)), _sheet.Mark("C", P(100, 0)), "level");
        Near(40, 0, _sheet.Swing(a, Mm(50), level, SheetSide.Right, "D"));
        Assert.Equal("From A swing 5.0 cm onto the level. Of the places where it meets, mark the one to the right D.", LastStep);
        Near(-40, 0, _sheet.Swing(a, Mm(50), level, SheetSide.Left, "E", draws: "swung"));
        Assert.Equal(50, _sheet.FindLine("swung").Length.Millimeters, 1e-9);
    }

    [Fact]
    public void Intersect_LineAndParabola_IsWhereBothAre()
    {
        DraftedLine hip = _sheet.HipCurve(_sheet.Mark("hip", P(0, 0)), _sheet.Mark("waist", P(20, 100)), "side");
        DraftedLine level = _sheet.Join(_sheet.Mark("B", P(-10, 50)), _sheet.Mark("C", P(100, 50)), "level");
        Near(5, 50, _sheet.Intersect(hip, level, "D"));
        Assert.Equal("Mark D where the side crosses the level.", LastStep);
    }

    [Fact]
    public void HipCurve_UpOrDown_IsTheParabolaAndSaysTheWay()
    {
        DraftedLine up = _sheet.HipCurve(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(20, 100)), "up curve");
        Assert.Equal("Draw the up curve from A to B: a hip curve that leaves A straight up.", LastStep);
        Assert.Equal(20 * 0.09, up.Path.Segments[0].AsCubic().PointAt(0.3).X.Millimeters, 1e-12);
        _sheet.HipCurve(_sheet.Find("A"), _sheet.Mark("C", P(5, -40)), "down curve");
        Assert.EndsWith("leaves A straight down.", LastStep, StringComparison.Ordinal);
    }

    // A cutter looks for the line by its name: the straight helper line of the guide points is the nearest other one.
    [Fact]
    public void Curve_SquareToALineThatWasCarriedOnAndToOneInLine_NamesBoth()
    {
        Landmark low = _sheet.Mark("low", P(0, -100));
        Landmark level = _sheet.SquareUp(low, Mm(100), "level", "centre line");
        Landmark raised = _sheet.SquareUp(level, Mm(5), "raised");
        DraftedLine side = _sheet.HipCurve(_sheet.Mark("foot", P(100, -80)), _sheet.Mark("top", P(90, 0)), "side seam");
        Landmark end = _sheet.GoOnAlong(side, _sheet.Find("top"), Mm(10), "end");
        Direction up = HipCurves.Vertical(P(100, -80), end.Position).EndDirection;
        _sheet.Curve(raised, Direction.Right, end, up.TurnedRight, "waistline");
        Assert.Equal("Draw the waistline from raised to end, square to the centre line and to the side seam.", LastStep);
    }

    [Fact]
    public void Curve_SquareToLinesAtBothEnds_SaysSo_AndElseSaysWhatIsTrue()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.SquareUp(_sheet.Mark("foot", P(100, -50)), Mm(60), "B");
        _sheet.Join(a, _sheet.Mark("below", P(0, -100)), "centre");
        _sheet.Curve(a, Direction.Right, b, Direction.Right, "square curve");
        Assert.Equal("Draw the square curve from A to B, leaving A square to the centre and arriving at B square to the line there.", LastStep);
        _sheet.Curve(a, Direction.FromAngle(Angle.FromDegrees(10)), b, Direction.Right, "other curve");
        Assert.Equal("Draw the other curve from A to B, leaving A to the right, 10 degrees up and arriving at B square to the line there.", LastStep);
        Landmark alone = _sheet.Mark("alone", P(200, 80));
        _sheet.Curve(a, Direction.Up, alone, Direction.Down, "third curve");
        Assert.Equal("Draw the third curve from A to alone, leaving A square to the square curve and arriving at alone straight down.", LastStep);
    }

    [Fact]
    public void Arc_QuarterOfACircle_EndsSquareToWhereItBegan()
    {
        Landmark centre = _sheet.Mark("centre", P(5, 5));
        DraftedLine arc = _sheet.Arc(centre, _sheet.SquareAcross(centre, Across.Right, Mm(80), "A"), Angle.FromDegrees(-90), "B", "waist arc");
        Near(5, -75, arc.To);
        Assert.Equal(40 * Math.PI, arc.Length.Millimeters, 1e-9);
        Assert.Equal("Set the compass on centre and draw the waist arc from A, 90 degrees clockwise. Mark B.", LastStep);
        Near(5 - (80 * Math.Sqrt(0.5)), 5 - (80 * Math.Sqrt(0.5)), _sheet.GoOnAlong(arc, arc.To, Mm(20 * Math.PI), "C"));
    }

    [Fact]
    public void Draw_APathOfOnesOwn_IsALineLikeAnyOther()
    {
        CurvePath path = CurvePath.From(P(0, 0)).LineTo(P(30, 0)).LineTo(P(30, 40));
        DraftedLine line = _sheet.Draw("bent", path, _sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(30, 40)));
        Assert.Equal("Draw the bent from A to B.", LastStep);
        Near(30, 10, _sheet.MarkAlong(line, line.From, Mm(40), "C"));
        Near(30, 50, _sheet.GoOnAlong(line, line.To, Mm(10), "D"));
        Near(-10, 0, _sheet.GoOnAlong(line, line.From, Mm(10), "E"));
    }

    [Fact]
    public void CurveOfLength_MeasuresWhatWasAsked()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.Mark("B", P(100, 0));
        DraftedLine curve = _sheet.CurveOfLength(a, Direction.Up, b, Direction.Down, Mm(160), "cap");
        Assert.Equal(160, Quadrature(curve.Path), 1e-6);
        Assert.Equal("Draw the cap from A to B, leaving A straight up and arriving at B straight down, so that it measures 16.0 cm.", LastStep);
    }

    [Fact]
    public void CurveThrough_Landmarks_PassesThemAndKeepsItsDirections()
    {
        Landmark[] points = [_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(40, 25)), _sheet.Mark("C", P(100, 30))];
        DraftedLine curve = _sheet.CurveThrough("neck", points, Direction.Up, null);
        Assert.All(points, p => Assert.Equal(0, curve.Path.ClosestTo(p.Position).Distance.Millimeters, 1e-9));
        Assert.Equal(90, curve.Path.StartDirection.Angle.Degrees, 1e-9);
        Assert.Equal("Draw the neck through A, B, C, leaving A straight up.", LastStep);
        Assert.Equal("C", curve.To.Name.Text);
    }

    [Fact]
    public void GoOnAlong_AStraightLine_StaysStraightAtEitherEnd()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        DraftedLine line = _sheet.Join(a, _sheet.Mark("B", P(30, 40)), "straight");
        Near(36, 48, _sheet.GoOnAlong(line, line.To, Mm(10), "beyond"));
        Assert.Equal("Carry the straight on beyond B, in its own direction: 1.0 cm. Mark beyond.", LastStep);
        Near(-6, -8, _sheet.GoOnAlong(line, a, Mm(10), "before", draws: "added"));
        Assert.Equal("added from A to before", _sheet.FindLine("added").ToString());
    }

    [Fact]
    public void LiftAndDrop_ALine_MoveAllOfIt()
    {
        DraftedLine line = _sheet.HipCurve(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(20, 100)), "side");
        DraftedLine lifted = _sheet.Lift(line, Mm(7), "C", "D", "lifted side");
        Near(0, 7, lifted.From);
        Near(20, 107, lifted.To);
        Assert.Equal("Lift the side by 0.7 cm: the lifted side, from C to D.", LastStep);
        DraftedLine dropped = _sheet.Drop(line, Mm(7), "E", "F", "dropped side");
        Assert.Equal(0, dropped.Path.PointAtLength(Length.FromMillimeters(50)).DistanceTo(line.Path.PointAtLength(Length.FromMillimeters(50)).Toward(Direction.Down, Length.FromMillimeters(7))).Millimeters, 1e-9);
        Assert.Equal("Drop the side by 0.7 cm: the dropped side, from E to F.", LastStep);
    }

    [Fact]
    public void Mirror_LineAndLandmark_SwapTheirCoordinatesOverTheDiagonal()
    {
        DraftedLine diagonal = _sheet.Join(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(10, 10)), "diagonal");
        Landmark c = _sheet.Mark("C", P(30, 5));
        Near(5, 30, _sheet.Mirror(c, diagonal, "D"));
        DraftedLine other = _sheet.Mirror(_sheet.HipCurve(_sheet.Find("A"), _sheet.Mark("E", P(20, 100)), "side"), diagonal, "F", "G", "image");
        Near(100, 20, other.To);
        Assert.Equal("Mirror the side over the diagonal: the image, from F to G.", LastStep);
    }

    [Fact]
    public void Part_OfALine_RunsBetweenItsLandmarks()
    {
        DraftedLine line = _sheet.Join(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(100, 0)), "level");
        var thirds = _sheet.Divide(line, "C", "D");
        DraftedLine part = _sheet.Part(line, thirds[1], thirds[0], "middle part");
        Assert.Equal(100.0 / 3, part.Length.Millimeters, 1e-9);
        Near(100.0 / 3, 0, part.To);
        Assert.Equal(100.0 / 3, part.Path.End.X.Millimeters, 1e-9);
    }

    [Fact]
    public void Measure_WhatIsDrawn_CanBeUsedByTheNextStep()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        Landmark b = _sheet.Mark("B", P(30, 40));
        DraftedLine line = _sheet.Join(a, b, "slant");
        WorkedLength whole = _sheet.Measure(line);
        Assert.Equal("Measure the slant 5.0 cm.", LastStep);
        Assert.Equal(50, whole.Value.Millimeters, 1e-12);
        Near(0, -25, _sheet.SquareDown(a, whole.Half(), "C"));
        Assert.Equal("Square down from A: 1/2 of slant 5.0 = 2.5 cm. Mark C.", LastStep);
        Assert.Equal(20, _sheet.Measure(line, _sheet.MarkAlong(line, a, Mm(10), "D"), _sheet.MarkAlong(line, a, Mm(30), "E"), "piece").Value.Millimeters, 1e-9);
        Assert.Equal(50, _sheet.Measure(b, a, "straight").Value.Millimeters, 1e-12);
        Assert.Equal("Measure straight from B to A: straight 5.0 cm.", LastStep);
    }

    [Fact]
    public void PlaceDart_OnALevelLine_HasItsIntakeLengthAndEqualLegs()
    {
        DraftedLine level = _sheet.Join(_sheet.Mark("A", P(0, 0)), _sheet.Mark("B", P(200, 0)), "waist");
        Landmark middle = _sheet.MarkAlong(level, level.From, Mm(80), "middle");
        DraftedDart dart = _sheet.PlaceDart(level, middle, Mm(30), Mm(100), "apex", "dart line");
        Near(80, -100, dart.Apex);
        Assert.Equal(LandmarkKind.DartApex, dart.Apex.Kind);
        Assert.Equal(LandmarkKind.DartMiddle, _sheet.Find("middle").Kind);
        Assert.Equal((65.0, 95.0), (dart.FirstLeg.X.Millimeters, dart.SecondLeg.X.Millimeters));
        Assert.Equal(0, dart.LegDifference.Millimeters, 1e-12);
        Assert.Equal("Mark the two tops of the dart on the waist, 3.0 cm apart measured level, with middle midway between them: 1/2 of 3.0 = 1.5 cm to either side. Join both to apex.", LastStep);
        Assert.Equal(170, _sheet.MeasureFolded(level, "closed waist", dart).Value.Millimeters, 1e-9);
        Assert.Equal("Fold the darts and measure the waist: closed waist 17.0 cm.", LastStep);

        // A step sheet said 21/32 apart and 11/32 to either side: half of a rounded figure, rounded again.
        Landmark other = _sheet.MarkAlong(level, level.From, Mm(140), "other middle");
        _sheet.PlaceDart(level, other, Mm(16.6), Mm(100), "other apex", "other dart line");
        Assert.EndsWith("with other middle midway between them. Join both to other apex.", LastStep);
    }

    [Fact]
    public void PointDart_AtABustPoint_PointsThere()
    {
        Landmark bust = _sheet.Mark("bust", P(50, 0));
        DraftedLine side = _sheet.Join(_sheet.Mark("A", P(120, 80)), _sheet.Mark("B", P(120, -200)), "side");
        Landmark middle = _sheet.MarkAlong(side, side.From, Mm(80), "middle");
        DraftedDart dart = _sheet.PointDart(side, middle, Mm(20), bust, Mm(50), "apex");
        Near(70, 0, dart.Apex);
        Assert.Equal((10.0, -10.0), (dart.FirstLeg.Y.Millimeters, dart.SecondLeg.Y.Millimeters));
    }

    [Fact]
    public void Sheet_WithATape_RoundsWhateverItMeasuresOff()
    {
        var sheet = new DraftingSheet(TapeStep.Millimeter);
        Landmark a = sheet.Mark("A", P(0, 0));
        Near(0, -10, sheet.SquareDown(a, Mm(10.4), "B"));
        Near(4, 5, sheet.MarkFrom(a, Across.Right, Mm(3.6), Upright.Up, Mm(5.2), "C"));
        DraftedLine line = sheet.Join(a, sheet.Mark("D", P(100, 0)), "level");
        Near(21, 0, sheet.MarkAlong(line, a, Mm(20.7), "E"));
        Assert.Equal([33, 67], sheet.Divide(line, "F", "G").Select(m => m.Position.X.Millimeters));
        Near(3, 0, sheet.Midpoint(a, sheet.Mark("H", P(5, 0)), "I"));
        Near(30, 40, sheet.Compass(a, Mm(50.3), sheet.Mark("J", P(60, 0)), Mm(49.8), SheetSide.Above, "K"));
        Near(40, 0, sheet.Swing(sheet.Mark("L", P(0, 30)), Mm(50.4), line, SheetSide.Right, "M"));
        Near(110, 0, sheet.GoOnAlong(line, line.To, Mm(9.6), "N"));
        Near(7, 8, sheet.Lift(sheet.Join(a, sheet.Mark("Q", P(7, 0)), "short"), Mm(8.4), "O", "P", "lifted").To);
        Assert.Equal(71, sheet.Measure(sheet.Mark("R", P(0, 0)), sheet.Mark("S", P(50, 50)), "diagonal").Value.Millimeters);
        DraftedDart dart = sheet.PlaceDart(line, sheet.Find("E"), Mm(15.4), Mm(50.2), "T");
        Assert.Equal(15, dart.Intake.Millimeters);
        Near(21, -50, dart.Apex);
        Assert.Equal(150, sheet.CurveOfLength(a, Direction.Up, line.To, Direction.Down, Mm(150.3), "cap").Length.Millimeters, 1e-6);
    }

    [Fact]
    public void Step_OfAnyVerb_KnowsWhatItDrewAndWhy()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        _sheet.SquareAcross(a, Across.Right, Mm(30), "B", draws: "level");
        Step step = _sheet.Because("The hem then hangs level.");
        Assert.Equal(["B"], step.Marked.Select(m => m.Name.Text));
        Assert.Equal(["level"], step.Drew.Select(l => l.Name.Text));
        Assert.Equal("The hem then hangs level.", _sheet.Steps[1].Reason);
        Assert.Equal("Square across to the right from {0}: {1}. Mark {2}.", step.Template);
        _sheet.Measure(a, _sheet.Find("B"), "straight");
        Assert.Empty(_sheet.Steps[2].Marked);
        Assert.Empty(_sheet.Steps[2].Drew);
        Assert.Equal(["A"], _sheet.Steps[0].Marked.Select(m => m.Name.Text));
    }

    [Fact]
    public void Note_OfOnesOwn_CarriesLandmarksLinesAndLengths()
    {
        Landmark a = _sheet.Mark("A", P(0, 0));
        DraftedLine line = _sheet.Join(a, _sheet.Mark("B", P(50, 0)), "level");
        Step step = _sheet.Note("Pin {0} and smooth the {1} over {2} in {3} places.", a, line, WorkedLength.Given("ease", Length.FromMillimeters(12)), 4);
        Assert.Equal("Pin A and smooth the level over ease 1.2 cm in 4 places.", step.Describe(TapeStep.Millimeter));
        Assert.Equal([LandmarkName.Of("A")], step.Landmarks);
        Assert.Equal(12, step.Workings.Single().Value.Millimeters);
        Assert.Equal("level", step.Words[1].Line!.Text);
        Assert.Empty(step.Marked);
    }

    // A curve that nearly has a cusp, where quadrature with equal steps was off by a tenth of a micrometre. The length is mpmath's, to 40 digits.
    [Fact]
    public void Measure_ACurveWithNearlyACusp_IsItsLength()
    {
        CubicBezier cubic = CubicBezier.FromPoints(
            Point2D.FromMillimeters(-109.1952, 59.1186), Point2D.FromMillimeters(85.3638, -270.3726), Point2D.FromMillimeters(-130.593, -139.2786), Point2D.FromMillimeters(71.6838, 243.984));
        var sheet = new DraftingSheet();
        DraftedLine line = sheet.Draw("curve", CurvePath.FromCubic(cubic), sheet.Mark("A", cubic.Start), sheet.Mark("B", cubic.End));

        Assert.Equal(597.93943464530966, sheet.Measure(line).Value.Millimeters, 1e-9);
        Assert.Equal(597.93943464530966, Quadrature(line.Path), 1e-7);
    }

    /// <summary>The length of a path by MathNet's adaptive quadrature of its speed: no code of the library's lengths.</summary>
    internal static double Quadrature(CurvePath path)
    {
        double sum = 0;
        foreach (PathSegment segment in path.Segments)
        {
            if (segment.Kind != PathSegmentKind.Cubic)
            {
                sum += segment.Start.DistanceTo(segment.End).Millimeters;
                continue;
            }

            CubicBezier cubic = segment.AsCubic();
            double Speed(double t)
            {
                Vector2D d = cubic.DerivativeAtRaw(t);
                return Math.Sqrt((d.X.Millimeters * d.X.Millimeters) + (d.Y.Millimeters * d.Y.Millimeters));
            }

            // Adaptive: a curve that nearly has a cusp needs many more points there than elsewhere.
            const int parts = 8;
            for (int i = 0; i < parts; i++)
            {
                sum += GaussKronrodRule.Integrate(Speed, (double)i / parts, (i + 1.0) / parts, out _, out _, 1e-10, 30);
            }
        }

        return sum;
    }

    internal static void Near(double x, double y, Landmark landmark)
    {
        Assert.Equal(x, landmark.Position.X.Millimeters, 1e-9);
        Assert.Equal(y, landmark.Position.Y.Millimeters, 1e-9);
    }

    // Beside a straight line a straight line, beside an arc the arc of the larger radius: closed forms.
    [Fact]
    public void Parallel_LiesBesideTheLineEverywhere()
    {
        var sheet = new DraftingSheet();
        Landmark centre = sheet.Mark("centre", Point2D.Origin);
        Landmark start = sheet.SquareDown(centre, WorkedLength.Given(UnitsNet.Length.FromMillimeters(200)), "start");
        DraftedLine arc = sheet.Arc(centre, start, UnitsNet.Angle.FromDegrees(60), "end", "waist");
        WorkedLength depth = WorkedLength.Given("hip depth", UnitsNet.Length.FromMillimeters(50));

        DraftedLine hip = sheet.Parallel(arc, depth, SheetSide.Below, "hip start", "hip end", "hip line");
        DraftedLine above = sheet.Parallel(arc, depth, SheetSide.Above, "top start", "top end", "top line");
        DraftedLine level = sheet.Parallel(sheet.Join(centre, start, "centre line"), depth, SheetSide.Left, "left top", "left low", "left line");

        Assert.Equal(250 * System.Math.PI / 3, hip.Length.Millimeters, 1e-6);
        Assert.Equal(150 * System.Math.PI / 3, above.Length.Millimeters, 1e-6);
        Assert.Equal(0, hip.From.Position.X.Millimeters, 1e-9);
        Assert.Equal(-250, hip.From.Position.Y.Millimeters, 1e-9);
        Assert.Equal((-50.0, 0.0, 200.0), (level.From.Position.X.Millimeters, level.From.Position.Y.Millimeters, level.Length.Millimeters));
        Assert.Equal("Draw the hip line everywhere hip depth 5.0 cm from the waist, downward, from hip start to hip end.", sheet.Steps[3].Describe(TapeStep.Millimeter).Replace("~", string.Empty));
    }

    [Fact]
    public void Parallel_WhereItCannotLie_IsRefused()
    {
        var sheet = new DraftingSheet();
        Landmark centre = sheet.Mark("centre", Point2D.Origin);
        Landmark start = sheet.SquareDown(centre, WorkedLength.Given(UnitsNet.Length.FromMillimeters(40)), "start", "centre line");
        DraftedLine arc = sheet.Arc(centre, start, UnitsNet.Angle.FromDegrees(60), "end", "waist");
        WorkedLength wide = WorkedLength.Given(UnitsNet.Length.FromMillimeters(50));
        int steps = sheet.Steps.Count;

        Assert.Equal(DiagnosticCode.OffsetVanishes, Assert.Throws<ConstructionException>(() => sheet.Parallel(arc, wide, SheetSide.Above, "a", "b", "inside")).Code);
        Assert.Equal(DiagnosticCode.SideUndecided, Assert.Throws<ConstructionException>(() => sheet.Parallel(sheet.FindLine("centre line"), wide, SheetSide.Above, "a", "b", "beside")).Code);
        Assert.Equal(DiagnosticCode.LandmarkMarkedTwice, Assert.Throws<ConstructionException>(() => sheet.Parallel(arc, wide, SheetSide.Below, "start", "b", "beside")).Code);
        Assert.Equal(steps, sheet.Steps.Count);
    }
}
