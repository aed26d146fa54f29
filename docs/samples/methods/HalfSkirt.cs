using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>One half of a skirt in a box: back to the left, front to the right, the side seam between. What the methods share that draft so; each says its own figures.</summary>
internal sealed class HalfSkirt
{
    private static readonly Seam SideSeam = Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam", "waist to hip", "hip to hem");

    // Common practice, no source: more makes a bump over the hip.
    private static readonly Length MostSideShaping = Length.FromInches(1.5);

    // What truing moves by is not the method's doing.
    private static readonly Length HandTolerance = Length.FromInches(1.0 / 16);
    private static readonly Advice MuchSide = Advice.Of("So much shaping at the side makes a bump over the hip.", "Give more of it to the darts.");
    private static readonly Advice SideGoesOut = Advice.Of("The side goes out above the hip while darts are taken in.", "Take smaller darts, or none, for this figure.");

    private static readonly EdgeTruing Sweep = new() { Start = EndDirection.Square, End = EndDirection.Square };
    private static readonly EdgeOf BackWaist = EdgeOf.Panel(PanelName.Back, EdgeName.Waist);
    private static readonly EdgeOf FrontWaist = EdgeOf.Panel(PanelName.Front, EdgeName.Waist);

    // Stated once: another body only asks for other lengths.
    private static readonly TruingPlan Plan = TruingPlan.Empty
        .MayMove(
            Movable.OneSweep(BackWaist, turning: Angle.FromDegrees(45)),
            Movable.OneSweep(FrontWaist, turning: Angle.FromDegrees(45)),
            Movable.Corner(BackWaist.AtEnd, within: Length.FromCentimeters(4)),
            Movable.Corner(FrontWaist.AtEnd, within: Length.FromCentimeters(4)),
            Movable.Notch(SideSeam.First, 1, within: Length.FromCentimeters(2)),
            Movable.Notch(SideSeam.Second, 1, within: Length.FromCentimeters(2)))
        .MustHold(
            Condition.SewnLength(WorkedLength.Given(Length.Zero), BackWaist).Named("back waist"),
            Condition.SewnLength(WorkedLength.Given(Length.Zero), FrontWaist).Named("front waist"),
            Condition.Sewn(SideSeam),
            Condition.Square(BackWaist.AtStart),
            Condition.Square(BackWaist.AtEnd),
            Condition.Square(FrontWaist.AtStart),
            Condition.Square(FrontWaist.AtEnd));

    private readonly BlockDraft _draft;
    private readonly HalfFigures _figures;
    private Landmark _centreBackHip;
    private Landmark _sideHip;
    private Landmark _sideHem;
    private DraftedLine _sideLine = null!;

    private HalfSkirt(BlockDraft draft, HalfFigures figures)
    {
        _draft = draft;
        _figures = figures;
    }

    private DraftingSheet Sheet => _draft.Sheet;

    internal static void Draft(BlockDraft draft, HalfFigures figures) => new HalfSkirt(draft, figures).Draft();

    private void Draft()
    {
        WorkedLength below = _figures.Length - _figures.HipDepth;
        Landmark centreBack = Sheet.Mark("CB waist level", Point2D.Origin);
        Landmark centreFront = Sheet.SquareAcross(centreBack, Across.Right, _figures.Box, "CF waist level", LineName.Of("waist level", ConstructionRole.Level));
        Landmark backHem = Sheet.SquareDown(centreBack, _figures.Length, "CB hem", LineName.Of("CB line", ConstructionRole.Frame));
        Landmark frontHem = Sheet.SquareDown(centreFront, _figures.Length, "CF hem", LineName.Of("CF line", ConstructionRole.Frame));
        Sheet.Join(backHem, frontHem, LineName.Of("hem line", ConstructionRole.Frame));
        _centreBackHip = Sheet.SquareDown(centreBack, _figures.HipDepth, "CB hip");
        Landmark frontHip = Sheet.SquareAcross(_centreBackHip, Across.Right, _figures.Box, "CF hip", LineName.Of("hip line", ConstructionRole.Level));
        _sideHip = Sheet.SquareAcross(_centreBackHip, Across.Right, _figures.Back.HipWidth, "side hip");
        _sideHem = Sheet.SquareDown(_sideHip, below, "side hem", "side line");
        _sideLine = Sheet.FindLine("side line");

        Panel back = DrawQuarter(_figures.Back, PanelName.Back, Across.Right, centreBack, _centreBackHip, backHem);
        Panel front = DrawQuarter(_figures.Front, PanelName.Front, Across.Left, centreFront, frontHip, frontHem);
        foreach (Panel panel in TrueBoth(back, front))
        {
            _draft.Add(panel, 2);
        }

        _draft.Seams(SeamPlan.Of(SideSeam));
        _draft.Check(Check);
        _draft.Remark("Half of the skirt is drawn: centre back to the left, centre front to the right.");
    }

    private Panel DrawQuarter(QuarterFigures quarter, PanelName name, Across toSide, Landmark centre, Landmark centreHip, Landmark centreHem)
    {
        string side = name.Text;
        LandmarkName centreName = side == "back" ? "CB waist" : "CF waist";
        Landmark centreWaist = quarter.CentreDrop.ValueIsNothing()
            ? quarter.CentreLift.ValueIsNothing() ? centre : Sheet.SquareUp(centre, quarter.CentreLift!, centreName)
            : Sheet.SquareDown(centre, quarter.CentreDrop!, centreName);
        Landmark waistPoint = Sheet.SquareAcross(centre, toSide, quarter.OpenWaist, side + " waist point");
        Landmark sideWaist = _figures.SideLift.ValueIsNothing() ? waistPoint : Sheet.SquareUp(waistPoint, _figures.SideLift!, side + " side waist");
        DraftedLine curve = Sheet.HipCurve(_sideHip, sideWaist, LineName.Of(side + " side seam", ConstructionRole.HandDrawn));
        bool isBack = toSide == Across.Right;
        Direction leaving = isBack ? Direction.Right : Direction.Left;
        Direction up = curve.Path.EndDirection;
        DraftedLine waist = Sheet.Curve(centreWaist, leaving, sideWaist, isBack ? up.TurnedRight : up.TurnedLeft, LineName.Of(side + " waistline", ConstructionRole.HandDrawn));

        PanelOutline outline = PanelOutline.Of(name, centreWaist)
            .Along(EdgeName.Waist, EdgeRole.Opening, waist)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, curve, _sideLine)
            .Straight(EdgeName.Hem, EdgeRole.Hem, centreHem)
            .Straight(EdgeName.Centre, EdgeRole.Centre, centreWaist)
            .WithNotch(EdgeName.SideSeam, _sideHip, isBack ? 2 : 1)
            .WithLandmark(_sideHip)
            .WithLandmark(centreHip);
        var darts = new List<DraftedDart>();
        foreach (DartFigures dart in quarter.Darts)
        {
            string dartName = side + " dart " + (darts.Count + 1);
            Landmark middle = Sheet.MarkOnto(waist, centre, toSide, dart.FromCentre, dartName + " centre");
            DraftedDart drawn = Sheet.PlaceDart(waist, middle, dart.Intake, dart.Length, dartName + " apex", dartName + " middle line");
            darts.Add(drawn);
            outline = outline.WithDart(EdgeName.Waist, drawn, Toward.Start);
        }

        WorkedLength hand = Sheet.MeasureFolded(waist, side + " waist", [.. darts]);
        _draft.Aim("closed waist", side, hand.Value, quarter.ClosedWaist.Value, list => list.FindPanel(name).FindEdge(EdgeName.Waist).SewnLength);
        return Sheet.Trace(outline);
    }

    // Each waistline in one sweep across its folded darts, square to centre and side; both closed lengths; the side seams alike.
    private IReadOnlyList<Panel> TrueBoth(Panel back, Panel front)
    {
        TruingOutcome outcome = Plan
            .Asking("back waist", _figures.Back.ClosedWaist)
            .Asking("front waist", _figures.Front.ClosedWaist)
            .True(AsLongAsAsked(back, _figures.Back), AsLongAsAsked(front, _figures.Front));
        foreach (TruingNote note in outcome.Notes)
        {
            Sheet.Note(note);
        }

        return outcome.Panels;
    }

    // The sweep lies a little over the hand's line where a dart stands: there the dart is measured.
    private static Panel AsLongAsAsked(Panel panel, QuarterFigures quarter)
    {
        panel = panel.TrueEdge(EdgeName.Waist, Sweep).Panel;
        for (int i = 0; i < quarter.Darts.Count; i++)
        {
            panel = panel.WithDartLength(EdgeName.Waist.Dart(i + 1), quarter.Darts[i].Length.Value);
        }

        return panel;
    }

    private void Check(CheckList list)
    {
        Panel back = list.FindPanel(PanelName.Back);
        Panel front = list.FindPanel(PanelName.Front);
        Length backWaist = back.FindEdge(EdgeName.Waist).SewnLength;
        Length frontWaist = front.FindEdge(EdgeName.Waist).SewnLength;
        list.Length("closed waist all around", "block", 2 * (backWaist + frontWaist), 2 * (_figures.Back.ClosedWaist + _figures.Front.ClosedWaist).Value);
        list.Length("closed waist", "back", backWaist, _figures.Back.ClosedWaist.Value);
        list.Length("closed waist", "front", frontWaist, _figures.Front.ClosedWaist.Value);
        list.Length("hip width all around", "block", 2 * (HipWidth(back, "CB hip") + HipWidth(front, "CF hip")), 2 * _figures.Box.Value);
        CheckQuarter(list, back, _figures.Back);
        CheckQuarter(list, front, _figures.Front);
    }

    private static void CheckQuarter(CheckList list, Panel panel, QuarterFigures quarter)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        CurvePath side = panel.FindEdge(EdgeName.SideSeam).Stretches[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).Stretches[0];
        list.Length("hip width", place, HipWidth(panel, place == "back" ? "CB hip" : "CF hip"), quarter.HipWidth.Value);
        list.Angle("waist square to centre", place, Corner(centre, waist.Stretches[0]), Angle.FromDegrees(90));
        list.Angle("waist square to side", place, Corner(waist.Stretches[^1], side), Angle.FromDegrees(90));
        list.Count("darts", place, waist.Darts.Count, quarter.Darts.Count);
        foreach (Dart dart in waist.Darts)
        {
            list.Length("dart " + dart.Number + " legs", place, dart.LegLength(Toward.Start), dart.LegLength(Toward.End));
        }

        list.Count("outline crossing itself", place, panel.SeamOutline().IsSimple() ? 0 : 1, 0);
        double toSide = place == "back" ? 1 : -1;
        Length takenIn = toSide * (Find(panel, "side hip").X - waist.End.X);
        if (takenIn > MostSideShaping + HandTolerance)
        {
            list.Advise(MuchSide, "side shaping at the waist", place, takenIn, FindingRelation.AtMost, MostSideShaping);
        }
        else if (takenIn < -HandTolerance && waist.Darts.Count > 0)
        {
            list.Advise(SideGoesOut, "side shaping at the waist", place, takenIn, FindingRelation.AtLeast, Length.Zero);
        }
    }

    private static Angle Corner(CurvePath arriving, CurvePath leaving) => Angle.FromDegrees(System.Math.Abs(arriving.EndDirection.Reversed.AngleTo(leaving.StartDirection).Degrees));

    private static Length HipWidth(Panel panel, LandmarkName centre) => Length.FromMillimeters(System.Math.Abs((Find(panel, centre).X - Find(panel, "side hip").X).Millimeters));

    private static Point2D Find(Panel panel, LandmarkName name) => panel.Landmarks.First(landmark => landmark.Name.Equals(name)).Position;
}

/// <summary>What a method says of its box.</summary>
internal sealed record HalfFigures(WorkedLength Box, WorkedLength Length, WorkedLength HipDepth, WorkedLength? SideLift, QuarterFigures Back, QuarterFigures Front);

/// <summary>What a method says of a quarter: its width at the hip, what is laid off for the waist with darts open, what is left once they are sewn.</summary>
internal sealed record QuarterFigures(WorkedLength HipWidth, WorkedLength OpenWaist, WorkedLength ClosedWaist, IReadOnlyList<DartFigures> Darts)
{
    /// <summary>How far the centre lies under the waist level.</summary>
    public WorkedLength? CentreDrop { get; init; }

    /// <summary>How far the centre lies over the waist level.</summary>
    public WorkedLength? CentreLift { get; init; }
}

/// <summary>A dart: from the centre along the waist level to its middle, its width, its length.</summary>
internal sealed record DartFigures(WorkedLength FromCentre, WorkedLength Intake, WorkedLength Length);

/// <summary>Small readings.</summary>
internal static class Figures
{
    /// <summary>A figure of the method.</summary>
    internal static WorkedLength Cm(string name, double centimetres) => WorkedLength.Given(name, Length.FromCentimeters(centimetres));

    /// <summary>Whether there is nothing to lay off.</summary>
    internal static bool ValueIsNothing(this WorkedLength? length) => length is null || length.Value <= Length.Zero;
}
