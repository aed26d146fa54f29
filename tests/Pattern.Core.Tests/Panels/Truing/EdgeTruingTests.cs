using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class EdgeTruingTests
{
    private static readonly Gen<EdgeTruing> Asked =
        from line in Gen.Elements(TruedLine.OneSweep, TruedLine.Blended)
        from start in Gen.Elements(EndDirection.Kept, EndDirection.Square)
        from end in Gen.Elements(EndDirection.Kept, EndDirection.Square)
        select new EdgeTruing { Line = line, Start = start, End = end };

    private static readonly Arbitrary<(Panel Panel, PanelEdge Edge, EdgeTruing Asked)> Cases =
        (from c in AnyPanel.WithEdge from asked in Asked select (c.Panel, c.Edge, asked)).ToArbitrary();

    private static readonly Arbitrary<(Panel Panel, PanelEdge Edge, EdgeTruing Asked)> LengthCases =
        (from c in AnyPanel.WithEdge
         from asked in Asked
         from off in Bodies.Range(-0.06, 0.06)
         from end in Gen.Elements(EdgeEnd.Start, EdgeEnd.End)
         from move in Gen.Elements(EndMove.AlongEdge, EndMove.AlongNeighbour)
         select (c.Panel, c.Edge, asked with { ClosedLength = c.Edge.SewnLength * (1 + off), MovingEnd = end, Move = move })).ToArbitrary();

    [Property(MaxTest = 300)]
    public Property TrueEdge_AnyPanel_ClosedEdgeIsSmooth() => Prop.ForAll(Cases, c => Judge(c, (panel, edge) =>
    {
        CurvePath closed = edge.Closed();
        double worst = Enumerable.Range(1, closed.Segments.Count - 1)
            .Select(i => Math.Abs(closed.Segments[i - 1].EndDirection.AngleTo(closed.Segments[i].StartDirection).Degrees)).DefaultIfEmpty(0).Max();
        double gap = Enumerable.Range(1, closed.Segments.Count - 1)
            .Select(i => closed.Segments[i - 1].End.DistanceTo(closed.Segments[i].Start).Millimeters).DefaultIfEmpty(0).Max();
        return (worst < 1e-4 && gap < 1e-6).Label($"corner of {worst} degrees, gap of {gap} mm");
    }));

    [Property(MaxTest = 300)]
    public Property TrueEdge_AnyPanel_EndsStayAndDirectionsAreAsAsked() => Prop.ForAll(Cases, c => Judge(c, (panel, edge) =>
    {
        int index = panel.Edges.ToList().IndexOf(edge);
        PanelEdge before = panel.Edges[(index + panel.Edges.Count - 1) % panel.Edges.Count];
        PanelEdge after = panel.Edges[(index + 1) % panel.Edges.Count];
        CurvePath closed = edge.Closed();
        CurvePath was = c.Edge.Closed();
        double ends = edge.Start.DistanceTo(c.Edge.Start).Millimeters + edge.End.DistanceTo(c.Edge.End).Millimeters;
        double start = c.Asked.Start == EndDirection.Kept
            ? closed.StartDirection.AngleTo(was.StartDirection).Degrees
            : Math.Abs(closed.StartDirection.AngleTo(before.Stretches[^1].EndDirection).Degrees) - 90;
        double end = c.Asked.End == EndDirection.Kept
            ? closed.EndDirection.AngleTo(was.EndDirection).Degrees
            : Math.Abs(edge.Stretches[^1].EndDirection.AngleTo(after.Stretches[0].StartDirection).Degrees) - 90;
        return (ends < 1e-6 && Math.Abs(start) < 1e-4 && Math.Abs(end) < 1e-4).Label($"ends {ends} mm, {start} and {end} degrees off");
    }));

    [Property(MaxTest = 300)]
    public Property TrueEdge_AnyPanel_DartsKeepTheirWedges() => Prop.ForAll(Cases, c => Judge(c, (_, edge) =>
    {
        double worst = edge.Darts.Zip(c.Edge.Darts, (now, was) => new[]
        {
            now.Apex.DistanceTo(was.Apex).Millimeters,
            (now.Angle - was.Angle).Degrees,
            now.LegLength(Toward.Start).Millimeters - now.LegLength(Toward.End).Millimeters,
            now.StartLeg.DistanceTo(edge.Stretches[now.Number - 1].End).Millimeters,
            now.EndLeg.DistanceTo(edge.Stretches[now.Number].Start).Millimeters,
            Line.Through(was.Apex, was.StartLeg).SignedDistanceTo(now.StartLeg).Millimeters,

            // The intake follows the leg: 2 leg sin(angle / 2).
            now.Intake.Millimeters - (2 * now.LegLength(Toward.Start).Millimeters * Math.Sin(was.Angle.Radians / 2)),
        }.Max(Math.Abs)).DefaultIfEmpty(0).Max();
        return (edge.Darts.Count == c.Edge.Darts.Count && worst < 1e-6).Label($"{worst} off");
    }));

    [Property(MaxTest = 200)]
    public Property TrueEdge_AnyPanel_OtherEdgesStayAndASecondTimeChangesNothing() => Prop.ForAll(Cases, c => Judge(c, (panel, edge) =>
    {
        bool others = panel.Edges.Zip(c.Panel.Edges, (now, was) => was.Name == edge.Name || ReferenceEquals(now, was)).All(same => same);
        TruingResult again = panel.TrueEdge(edge.Name, c.Asked);
        return (others && !again.HasChanged && ReferenceEquals(again.Panel, panel)).Label(string.Join("; ", again.Changes.Select(x => x.ToString())));
    }));

    [Property(MaxTest = 1000)]
    public Property TrueEdge_AskedLength_IsMetAndTheNeighbourFollows() => Prop.ForAll(LengthCases, c => Judge(c, (panel, edge) =>
    {
        double off = (edge.SewnLength - c.Asked.ClosedLength!.Value).Millimeters;
        int index = panel.Edges.ToList().IndexOf(edge);
        double gap = Enumerable.Range(0, panel.Edges.Count)
            .Max(i => panel.Edges[i].End.DistanceTo(panel.Edges[(i + 1) % panel.Edges.Count].Start).Millimeters);
        double held = c.Asked.MovingEnd == EdgeEnd.End ? edge.Start.DistanceTo(c.Edge.Start).Millimeters : edge.End.DistanceTo(c.Edge.End).Millimeters;
        return (Math.Abs(off) < 1e-6 && gap < 1e-6 && held < 1e-6).Label($"{off} mm off, gap {gap} mm, held end moved {held} mm");
    }));

    [Property(MaxTest = 100)]
    public Property TrueEdge_AlongNeighbour_TheNeighbourOnlyLosesOrGoesOnStraight() => Prop.ForAll(
        (from c in LengthCases.Generator where c.Asked.Move == EndMove.AlongNeighbour select c).ToArbitrary(),
        c => Judge(c, (panel, edge) =>
        {
            int index = panel.Edges.ToList().IndexOf(edge);
            int beside = (index + (c.Asked.MovingEnd == EdgeEnd.End ? 1 : panel.Edges.Count - 1)) % panel.Edges.Count;
            Point2D corner = c.Asked.MovingEnd == EdgeEnd.End ? edge.End : edge.Start;
            CurvePath near = c.Asked.MovingEnd == EdgeEnd.End ? c.Panel.Edges[beside].Stretches[0] : c.Panel.Edges[beside].Stretches[^1].Reversed();
            double onLine = near.ClosestTo(corner).Distance.Millimeters;
            double ahead = Math.Abs(Line.From(near.Start, near.StartDirection).SignedDistanceTo(corner).Millimeters);
            double grown = (panel.Edges[beside].SewnLength - c.Panel.Edges[beside].SewnLength).Millimeters;
            return ((grown <= 1e-9 && onLine < 1e-6) || (grown > 0 && ahead < 1e-6)).Label($"grown {grown}, on line {onLine}, ahead {ahead}");
        }));

    [Property(MaxTest = 100)]
    public Property TrueEdge_LengthThatItHas_ChangesNothing() => Prop.ForAll(AnyPanel.WithEdge.ToArbitrary(), c =>
    {
        Panel smooth;
        try
        {
            smooth = c.Panel.TrueEdge(c.Edge.Name).Panel;
        }
        catch (ConstructionException e)
        {
            return Allowed(e);
        }

        TruingResult result = smooth.TrueEdge(c.Edge.Name, new EdgeTruing { ClosedLength = smooth.FindEdge(c.Edge.Name).SewnLength });
        return (ReferenceEquals(result.Panel, smooth) && !result.HasChanged).ToProperty();
    });

    [Property(MaxTest = 100)]
    public Property TrueEdge_PanelScaled_Scales() => Prop.ForAll(
        (from recipe in AnyPanel.Recipes from scale in Bodies.Range(0.5, 2) from index in Gen.Choose(0, 1000) from asked in Asked select (recipe, scale, index, asked)).ToArbitrary(),
        t =>
        {
            Panel small = t.recipe.Make();
            Panel large = t.recipe.Make(t.scale);
            EdgeName edge = small.Edges[t.index % small.Edges.Count].Name;
            try
            {
                Panel a = small.TrueEdge(edge, t.asked).Panel;
                Panel b = large.TrueEdge(edge, t.asked).Panel;
                double worst = a.SeamOutline().Segments.Zip(b.SeamOutline().Segments, (p, q) =>
                    Point2D.FromMillimeters(p.Start.X.Millimeters * t.scale, p.Start.Y.Millimeters * t.scale).DistanceTo(q.Start).Millimeters).Max();
                return (worst < 1e-5).Label($"{worst} mm off");
            }
            catch (ConstructionException e)
            {
                return Allowed(e);
            }
        });

    [Property(MaxTest = 100)]
    public Property TrueEdge_AnyPanel_NotchesAndNamedPointsStayOnTheLine() => Prop.ForAll(Cases, c => Judge(c, (panel, edge) =>
    {
        double worst = panel.Notches.Select(n =>
        {
            PanelEdge on = panel.FindEdge(n.Edge);
            return on.Stretches.Min(s => s.ClosestTo(n.Position).Distance.Millimeters);
        }).DefaultIfEmpty(0).Max();
        double corner = panel.Landmarks.Where(l => l.Name.Text == "first corner").Select(l => panel.Edges.Min(e => e.Start.DistanceTo(l.Position).Millimeters)).DefaultIfEmpty(0).Max();
        return (panel.Notches.Count == c.Panel.Notches.Count && worst < 1e-6 && corner < 1e-6).Label($"{worst} and {corner} mm off");
    }));

    // By hand: a 200 mm waist with a 30 mm dart of 140 mm in its middle, legs sqrt(140^2 + 15^2), closes to two lines of 85 mm that meet at 180 - 2 x 6.1155 = 167.769 degrees.
    [Fact]
    public void TrueEdge_StraightWaistWithADart_ReportsTheCornerThatIsGone()
    {
        Panel panel = Rectangle(200, 400).TakeInDart(EdgeName.Waist.Middle, Mm(30), Mm(140));

        TruingResult result = panel.TrueEdge(EdgeName.Waist);

        Finding corner = result.Corners.Single(c => c.Check == "dart 1, closed");
        Assert.Equal(167.769, corner.RawBefore * 180 / Math.PI, 1e-3);
        Assert.Equal(180, corner.RawMeasured * 180 / Math.PI, 1e-6);
        Assert.Equal("sample waist", corner.Place);
        Finding length = result.Changes.Single(c => c is { Check: "sewn length", Place: "sample waist" });
        Assert.Equal(170, length.RawBefore, 1e-9);
        Assert.Equal(result.Panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters, length.RawMeasured, 1e-9);

        // Symmetrical, so the dart stays upright in the middle, and both legs moved alike.
        Dart dart = result.Panel.Darts.Single();
        Assert.Equal(100, dart.MiddleOfIntake.X.Millimeters, 1e-6);
        Assert.Equal(dart.LegLength(Toward.Start).Millimeters, dart.LegLength(Toward.End).Millimeters, 1e-9);
    }

    // By hand: the straight waist of a rectangle drawn square to both sides is the line that it was, and its top corner may slide along a side that leans.
    [Fact]
    public void TrueEdge_ToALengthAlongALeaningSide_SlidesTheCornerAlongIt()
    {
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 300)).LineTo(At(200, 300)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 300)).LineTo(At(380, 60)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(380, 60)).LineTo(At(0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 300)))
            .WithNotch(EdgeName.SideSeam, Mm(150))
            .WithLandmark(LandmarkName.Of("side waist"), At(200, 300))
            .Make();

        // A straight line to (200 + 0.6 s, 300 - 0.8 s) measures 240 where (200 + 0.6 s)^2 + (0.8 s)^2 = 240^2: s^2 + 240 s - 17600 = 0, s = 58.8854.
        TruingResult result = panel.TrueEdge(EdgeName.Waist, new EdgeTruing { ClosedLength = Mm(240) });

        PanelEdge waist = result.Panel.FindEdge(EdgeName.Waist);
        Assert.Equal(240, waist.SewnLength.Millimeters, 1e-6);
        Assert.Equal(0, Line.Through(At(200, 300), At(380, 60)).SignedDistanceTo(waist.End).Millimeters, 1e-6);
        double slid = waist.End.DistanceTo(At(200, 300)).Millimeters;

        // A curve is longer than the straight line, so it slides less far.
        Assert.InRange(slid, 50, 58.8854);
        Finding side = result.Changes.Single(c => c.Place == "front side");
        Assert.Equal(300, side.RawBefore, 1e-9);
        Assert.Equal(300 - slid, side.RawMeasured, 1e-6);
        Assert.Equal(240, result.Changes.Single(c => c.Place == "front waist").RawTarget, 1e-9);

        // The notch stays on the cloth; the named corner goes along.
        Notch notch = result.Panel.Notches.Single();
        Assert.Equal(150 - slid, notch.DistanceFromStart.Millimeters, 1e-6);
        Assert.Equal(0, notch.Position.DistanceTo(panel.Notches.Single().Position).Millimeters, 1e-6);
        Assert.Equal(0, result.Panel.Landmarks.Single().Position.DistanceTo(waist.End).Millimeters, 1e-6);
    }

    // A straight edge of 200 mm made 450 mm long ends 250 mm farther on: the move may be longer than the edge was.
    [Fact]
    public void TrueEdge_ToMoreThanTwiceItsLength_MovesTheEndBeyondTheOldLength()
    {
        TruingResult result = Rectangle(200, 300).TrueEdge(EdgeName.Waist, new EdgeTruing { ClosedLength = Mm(450), MovingEnd = EdgeEnd.End, Move = EndMove.AlongEdge });

        PanelEdge waist = result.Panel.FindEdge(EdgeName.Waist);
        Assert.Equal(450, waist.Closed().Length.Millimeters, 1e-6);
        Assert.Equal(450, waist.Start.DistanceTo(waist.End).Millimeters, 1e-6);
    }

    // By hand: a straight edge that has to be 10 mm longer in its own direction moves its corner by 10 mm, and the straight neighbour follows.
    [Theory]
    [InlineData(EdgeEnd.End, 210, 300)]
    [InlineData(EdgeEnd.Start, -10, 300)]
    public void TrueEdge_ToALengthAlongTheEdge_MovesTheCornerOut(EdgeEnd end, double x, double y)
    {
        TruingResult result = Rectangle(200, 300).TrueEdge(EdgeName.Waist, new EdgeTruing { ClosedLength = Mm(210), MovingEnd = end, Move = EndMove.AlongEdge });

        PanelEdge waist = result.Panel.FindEdge(EdgeName.Waist);
        Assert.Equal(0, (end == EdgeEnd.End ? waist.End : waist.Start).DistanceTo(At(x, y)).Millimeters, 1e-6);
        PanelEdge follows = result.Panel.FindEdge(end == EdgeEnd.End ? EdgeName.SideSeam : EdgeName.Centre);
        Assert.Equal(Math.Sqrt((300 * 300) + 100), follows.SewnLength.Millimeters, 1e-6);
        Assert.Equal(PathSegmentKind.Line, follows.Stretches.Single().Segments.Single().Kind);
    }

    [Fact]
    public void TrueEdge_LengthOutOfReach_IsRefusedWithTheNearest()
    {
        // Sliding down a side that stands square to it, a straight waist only becomes longer.
        ConstructionException e = Assert.Throws<ConstructionException>(() => Rectangle(200, 300).TrueEdge(EdgeName.Waist, new EdgeTruing { ClosedLength = Mm(190) }));

        Assert.Equal(DiagnosticCode.TruingLengthImpossible, e.Code);
        Assert.Equal("waist", e.Landmark);
        Assert.Equal(190, e.Allowed!.Value.Millimeters, 1e-9);
        Assert.Equal(200, e.Measured!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void TrueEdge_OptionsOutOfRange_AreTheCallersMistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new EdgeTruing { ClosedLength = Mm(-1) });
        Assert.Throws<ArgumentOutOfRangeException>(() => new EdgeTruing { Line = (TruedLine)5 });
        Assert.Throws<ArgumentNullException>(() => Rectangle(200, 300).TrueEdge(EdgeName.Waist, null!));
        Assert.Equal(DiagnosticCode.EdgeNotOnPanel, Assert.Throws<ConstructionException>(() => Rectangle(200, 300).TrueEdge(EdgeName.Armhole)).Code);
    }

    // A bust dart moved to the shoulder leaves a corner in the closed shoulder; trued, the shoulder is smooth and the armhole is the one it was.
    [Fact]
    public void TrueEdge_ShoulderAfterTransfer_IsSmooth()
    {
        Panel panel = BodiceWithBustDart().TransferDart(EdgeName.Waist.Dart(1), EdgeName.Shoulder.At(Ratio.FromDecimalFractions(0.4)));
        panel = panel.WithDartLength(EdgeName.Shoulder.Dart(1), Mm(160));

        TruingResult result = panel.TrueEdge(EdgeName.Shoulder);

        CurvePath closed = result.Panel.FindEdge(EdgeName.Shoulder).Closed();
        Assert.Equal(0, closed.Segments[0].EndDirection.AngleTo(closed.Segments[1].StartDirection).Degrees, 1e-6);
        Assert.Same(panel.FindEdge(EdgeName.Armhole), result.Panel.FindEdge(EdgeName.Armhole));
        Assert.True(result.HasChanged);
    }

    [Fact]
    public void TrueEdge_WaistOfASkirtBlock_IsTruedAlready()
    {
        foreach (BodyMeasurements body in Bodies.Ansur.Take(50))
        {
            SkirtBlock block = SkirtBlock.For(body).Draft();
            var square = new EdgeTruing { Start = EndDirection.Square, End = EndDirection.Square };

            Assert.Same(block.Front, block.Front.TrueEdge(EdgeName.Waist, square).Panel);
            Assert.Same(block.Back, block.Back.TrueEdge(EdgeName.Waist, square).Panel);
        }
    }

    private static Property Judge((Panel Panel, PanelEdge Edge, EdgeTruing Asked) c, Func<Panel, PanelEdge, Property> judge)
    {
        try
        {
            Panel panel = c.Panel.TrueEdge(c.Edge.Name, c.Asked).Panel;
            return judge(panel, panel.FindEdge(c.Edge.Name));
        }
        catch (ConstructionException e)
        {
            return Allowed(e);
        }
    }

    // A hostile case may be refused, by a code that says what is in the way.
    private static Property Allowed(ConstructionException e) => (e.Step == "truing an edge"
        && e.Code is DiagnosticCode.OutlineWouldCross or DiagnosticCode.DartOffTruedLine or DiagnosticCode.TruingLengthImpossible or DiagnosticCode.PlaceOffEdge)
        .Label(e.Message).Collect(e.Code.ToString());
}
