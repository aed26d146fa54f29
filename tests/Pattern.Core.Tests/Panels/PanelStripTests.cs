using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Styling;
using UnitsNet;

namespace Pattern.Core.Tests.Panels;

public class PanelStripTests
{
    private static readonly EdgeName Cut = EdgeName.Of("cut");
    private static readonly PanelName Strip = PanelName.Of("strip");

    // Derived (ring sector): 680 over 720 at a depth of 40 has the radii 680 and 720 and an angle of 57.2958 degrees; a quarter of it here, with and without a dart to close.
    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(25, false)]
    [InlineData(60, true)]
    public void StripBeside_OfACone_IsTheRingSector(double intake, bool mirrored)
    {
        Panel cone = Cone(intake, mirrored);

        Panel band = cone.StripBeside(EdgeName.Waist, Mm(40), Cut, Strip);
        Panel below = cone.MoveEdgeIn(EdgeName.Waist, Mm(40));

        Assert.Equal(170, Sewn.LengthMm(band.FindEdge(EdgeName.Waist)), 1e-2);
        Assert.Equal(180, Sewn.LengthMm(band.FindEdge(Cut)), 1e-2);
        Assert.Equal(180, Sewn.LengthMm(below.FindEdge(EdgeName.Waist)), 1e-2);
        Assert.Equal(40, Sewn.LengthMm(band.FindEdge(EdgeName.SideSeam)), 1e-6);
        (double X, double Y)[] line = Sewn.Points(band.FindEdge(Cut).Stretches[0]);
        Assert.All(line, point => Assert.Equal(720, Math.Sqrt((point.X * point.X) + (point.Y * point.Y)), 5e-3));
        Assert.Equal(intake > 0 ? 1 : 0, below.Darts.Count());
    }

    // On a cone whose dart has its apex on the hem, the intake grows evenly with the distance from the apex.
    [Fact]
    public void MoveEdgeIn_DartThatReachesBeyond_KeepsApexAndAngle()
    {
        Panel cone = Cone(60, mirrored: false);
        Dart before = cone.FindDart(EdgeName.Waist.Dart(1));

        Dart after = cone.MoveEdgeIn(EdgeName.Waist, Mm(100)).FindDart(EdgeName.Waist.Dart(1));

        Assert.Equal(before.Apex, after.Apex);
        Assert.Equal(before.Angle.Radians, after.Angle.Radians, 1e-9);
        Assert.Equal(before.LegLength(Toward.Start).Millimeters - 100, after.LegLength(Toward.Start).Millimeters, 1e-6);
        Assert.Equal(after.LegLength(Toward.Start).Millimeters, after.LegLength(Toward.End).Millimeters, 1e-9);
        Assert.Equal(60 * (before.LegLength(Toward.Start).Millimeters - 100) / before.LegLength(Toward.Start).Millimeters, after.Intake.Millimeters, 1e-6);
    }

    [Fact]
    public void MoveEdgeIn_BeyondADart_LeavesItOut()
    {
        Panel front = SkirtBlock.For(Bodies.Example).Draft().Front;
        double length = front.Darts.Max(dart => dart.Length.Millimeters);

        Assert.Empty(front.MoveEdgeIn(EdgeName.Waist, Mm(length + 15)).Darts);
        Assert.Equal(front.Darts.Count(), front.MoveEdgeIn(EdgeName.Waist, Mm(length / 2)).Darts.Count());
        Assert.Same(front, front.MoveEdgeIn(EdgeName.Waist, Length.Zero));
    }

    [Fact]
    public void MoveEdgeIn_Hem_StaysParallelAndKeepsTheSeamsAndNotchesAbove()
    {
        Panel front = SkirtBlock.For(Bodies.Example).Draft().Front;

        Panel shorter = front.MoveEdgeIn(EdgeName.Hem, Mm(25));

        Assert.Equal(front.FindEdge(EdgeName.Hem).SewnLength.Millimeters, shorter.FindEdge(EdgeName.Hem).SewnLength.Millimeters, 1e-6);
        Assert.Equal(front.FindEdge(EdgeName.SideSeam).SewnLength.Millimeters - 25, shorter.FindEdge(EdgeName.SideSeam).SewnLength.Millimeters, 1e-6);
        Assert.Equal(front.Notches.Select(notch => notch.Position), shorter.Notches.Select(notch => notch.Position));
        Assert.Equal(front.FindEdge(EdgeName.Waist).SewnLength, shorter.FindEdge(EdgeName.Waist).SewnLength);
    }

    [Fact]
    public void MoveEdgeIn_DeeperThanTheSeamsBeside_SaysHowDeepItMayBe()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(() => Cone(0, mirrored: false).MoveEdgeIn(EdgeName.Waist, Mm(600)));

        Assert.Equal(DiagnosticCode.StripWithoutRoom, e.Code);
        Assert.Contains("no room beside its edge waist for a strip", e.Message, StringComparison.Ordinal);
        Assert.Equal(520, ((Length)e.Allowed!).Millimeters, 1e-6);
    }

    // Measured with chords: nothing is lost between strip and rest, their lines agree, and no angle of a dart changes.
    [Property(MaxTest = 150)]
    public Property StripAndRest_AnyPanel_MakeThePanel() => Prop.ForAll(
        (from one in AnyPanel.WithEdge
         from share in Bodies.Range(0.02, 0.6)
         select (one.Panel, one.Edge, share)).ToArbitrary(),
        c =>
        {
            // No strip is less than a tenth of a millimetre deep: where there is hardly any room, that is asked for and refused.
            double depth = Math.Max(0.1, c.share * Beside(c.Panel, c.Edge));
            Panel strip;
            Panel rest;
            try
            {
                rest = c.Panel.MoveEdgeIn(c.Edge.Name, Mm(depth));
                strip = c.Panel.StripBeside(c.Edge.Name, Mm(depth), Cut, Strip);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            PanelEdge line = rest.FindEdge(c.Edge.Name);
            if (line.Darts.Count < c.Edge.Darts.Count)
            {
                return true.Label("a dart ends in the strip");
            }

            double lengths = Math.Abs(Sewn.LengthMm(line) - Sewn.LengthMm(strip.FindEdge(Cut)));
            double top = Math.Abs(Sewn.LengthMm(c.Edge) - Sewn.LengthMm(strip.FindEdge(c.Edge.Name)));
            double area = AreaMm2(c.Panel);
            double lost = Math.Abs(area - AreaMm2(strip) - AreaMm2(rest)) / area;
            double angles = line.Darts.Zip(c.Edge.Darts, (a, b) => Math.Abs(a.Angle.Radians - b.Angle.Radians)).DefaultIfEmpty(0).Max();
            double legs = line.Darts.Select(dart => Math.Abs((dart.LegLength(Toward.Start) - dart.LegLength(Toward.End)).Millimeters - LegsBefore(c.Edge, dart))).DefaultIfEmpty(0).Max();
            return (lengths < 0.02 && top < 0.02 && lost < 1e-5 && angles < 1e-7 && legs < 1e-6)
                .Label($"lines {lengths}, top {top}, area lost {lost}, angles {angles}, legs {legs}");
        });

    private static double LegsBefore(PanelEdge edge, Dart dart)
    {
        Dart was = edge.Darts[dart.Number - 1];
        return (was.LegLength(Toward.Start) - was.LegLength(Toward.End)).Millimeters;
    }

    private static double Beside(Panel panel, PanelEdge edge)
    {
        int index = panel.Edges.ToList().IndexOf(edge);
        int count = panel.Edges.Count;
        CurvePath[] before = [.. panel.Edges[(index + count - 1) % count].Stretches];
        return Math.Min(before[before.Length - 1].Length.Millimeters, panel.Edges[(index + 1) % count].Stretches[0].Length.Millimeters);
    }

    private static double AreaMm2(Panel panel) => Sewn.AreaMm2([.. panel.Edges.SelectMany(edge => edge.Stretches.SelectMany((stretch, i) => i < edge.Darts.Count
        ? [.. Sewn.Points(stretch), (edge.Darts[i].Apex.X.Millimeters, edge.Darts[i].Apex.Y.Millimeters)]
        : Sewn.Points(stretch)))]);

    // A quarter of the ring, about the origin; the dart is opened from the waist to a hinge on the hem, which changes no line that is sewn.
    private static Panel Cone(double intake, bool mirrored)
    {
        double sweep = 170.0 / 680;
        double hand = mirrored ? -1 : 1;
        Point2D At(double radius, double angle) => Point2D.FromMillimeters(hand * radius * Math.Sin(angle), -radius * Math.Cos(angle));
        CurvePath Arc(double radius, double from, double to) => CurvePath.FromArc(CircularArc.Around(Point2D.Origin, At(radius, from), Angle.FromRadians(hand * (to - from))));
        CurvePath Line(Point2D a, Point2D b) => CurvePath.FromLine(new LineSegment(a, b));
        Panel cone = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, Arc(680, 0, sweep))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Line(At(680, sweep), At(1200, sweep)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, Arc(1200, sweep, 0))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, Line(At(1200, 0), At(680, 0)))
            .Make();
        return intake == 0 ? cone : cone.OpenDart(EdgeName.Waist.Middle, EdgeName.Hem.Middle, Mm(intake));
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
