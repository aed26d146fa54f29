using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class GodetsTests
{
    // Closed form, derived: g t. A quarter circle of the radius 25 cm adds 39.27 cm to the hem, in each of six seams.
    [Fact]
    public void Godets_QuarterCirclesInSixGores_AddTheClosedForm()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(680, 940)).WithLength(Length.FromMillimeters(700)).Draft();
        Block gored = block.Gores(6);

        Block skirt = gored.Godets(Length.FromMillimeters(250));

        Assert.Equal(6 * 392.699, HemMm(skirt) - HemMm(gored), 0.01);
        Assert.Equal(6, skirt.TimesOf(PanelName.Of("godet")));
        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
        var pieces = SkirtPattern.From(skirt);
        Assert.Contains("godet: cut 6 of main cloth, in pairs", pieces.CutList.Select(row => row.ToString()));
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    // What is left of a seam and what is sewn to the godet are together as long as the seam was.
    [Fact]
    public void Godets_OpenedSeam_KeepsItsLength()
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();
        Block skirt = block.Godets(Tape.Inches("9"));

        foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
        {
            double was = Sewn.LengthMm(block.FindPanel(name).FindEdge(EdgeName.SideSeam));
            double left = Sewn.LengthMm(skirt.FindPanel(name).FindEdge(EdgeName.SideSeam));
            double opened = Sewn.LengthMm(skirt.FindPanel(name).FindEdge(EdgeName.Of("side beside godet")));
            Assert.Equal(9 * 25.4, opened, 1e-3);
            Assert.Equal(was, left + opened, 1e-3);
        }
    }

    [Fact]
    public void Godets_HigherThanBelowTheHip_AreRefused()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(() => SkirtBlock.For(Bodies.Example).Draft().Gores().Godets(Tape.Inches("20")));

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
        Assert.Contains("there is room", e.Message, StringComparison.Ordinal);
    }

    private static double HemMm(Block skirt)
        => skirt.Panels.Sum(panel => skirt.TimesOf(panel.Name) * panel.Edges.Where(edge => edge.Role == EdgeRole.Hem).Sum(Sewn.LengthMm));
}
