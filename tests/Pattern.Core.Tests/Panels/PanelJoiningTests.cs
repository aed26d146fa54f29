using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class PanelJoiningTests
{
    private static readonly EdgeName Cut = EdgeName.Of("cut");

    // A box 300 wide and 200 high, its top bulging upward.
    private static readonly Panel Box = Panel.Named(PanelName.Front)
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 200)).CurveTo(At(100, 230), At(200, 230), At(300, 200)))
        .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(300, 200)).LineTo(At(300, 0)))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(300, 0)).LineTo(At(0, 0)))
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 200)))
        .WithNotch(EdgeName.Waist, Mm(250))
        .WithNotch(EdgeName.Hem, Mm(40), 2)
        .Make();

    // What was cut apart and is joined again is as it was, wherever the other part has been moved to meanwhile.
    [Property(MaxTest = 60)]
    public Property JoinedTo_WhatWasCutApart_IsWholeAgain() => Prop.ForAll(
        (from share in Bodies.Range(0.2, 0.8)
         from below in Bodies.Range(0.2, 0.8)
         from turn in Bodies.Range(-180, 180)
         select (share, below, turn)).ToArbitrary(),
        c =>
        {
            PanelPair parts = Box.CutApart(EdgeName.Waist.At(Ratio.FromDecimalFractions(c.share)), EdgeName.Hem.At(Ratio.FromDecimalFractions(c.below)), Cut, PanelName.Of("one"), PanelName.Of("other"));
            Panel moved = parts.Beyond.Transformed(Transform2D.Rotation(At(50, -70), Angle.FromDegrees(c.turn)));

            Panel joined = parts.Before.JoinedTo(Cut, moved, Cut, PanelName.Front);

            return joined.Edges.Count == 4
                && Box.Edges.All(edge => Math.Abs((joined.FindEdge(edge.Name).SewnLength - edge.SewnLength).Millimeters) < 1e-6
                    && joined.FindEdge(edge.Name).Start.DistanceTo(edge.Start).Millimeters < 1e-6
                    && joined.FindEdge(edge.Name).End.DistanceTo(edge.End).Millimeters < 1e-6)
                && Math.Abs(joined.SeamOutline().SignedAreaMm2 - Box.SeamOutline().SignedAreaMm2) < 1e-3
                && Box.Notches.All(notch => joined.Notches.Any(other => other.Edge == notch.Edge && other.Count == notch.Count
                    && Math.Abs((other.DistanceFromStart - notch.DistanceFromStart).Millimeters) < 1e-6 && other.Position.DistanceTo(notch.Position).Millimeters < 1e-6));
        });

    [Fact]
    public void JoinedTo_AnEdgeOfAnotherLength_SaysHowFarTheyAreApart()
    {
        var refusal = Assert.Throws<ConstructionException>(() => Box.JoinedTo(EdgeName.SideSeam, Box, EdgeName.Hem, PanelName.Of("both")));

        Assert.Equal(DiagnosticCode.EdgesNotAlike, refusal.Code);
        Assert.Equal(100, ((Length)refusal.Measured!).Millimeters, 1e-9);
    }

    [Fact]
    public void JoinedTo_ABulgeOnABulge_IsRefused()
        => Assert.Equal(DiagnosticCode.EdgesNotAlike, Assert.Throws<ConstructionException>(() => Box.JoinedTo(EdgeName.Waist, Box, EdgeName.Waist, PanelName.Of("both"))).Code);

    [Fact]
    public void JoinedTo_ADartedEdge_IsRefused()
        => Assert.Equal(
            DiagnosticCode.EdgesNotAlike,
            Assert.Throws<ConstructionException>(() => Box.TakeInDart(EdgeName.SideSeam.Middle, Mm(20), Mm(60)).JoinedTo(EdgeName.SideSeam, Box, EdgeName.SideSeam, PanelName.Of("both"))).Code);

    // Two centres on each other: the side seams keep their places, two of one name that do not meet.
    [Fact]
    public void JoinedTo_EdgesOfOneNameApart_AreRefused()
        => Assert.Equal(DiagnosticCode.EdgeNamedTwice, Assert.Throws<ConstructionException>(() => Box.JoinedTo(EdgeName.Centre, Box, EdgeName.Centre, PanelName.Of("both"))).Code);
}
