using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Styling;

/// <summary>Princess seams, measured with chords between many points.</summary>
public class PrincessTests(ITestOutputHelper output)
{
    private static readonly EdgeName Seam = EdgeName.Of("princess seam");

    [Theory]
    [InlineData(PrincessFrom.Shoulder)]
    [InlineData(PrincessFrom.Armhole)]
    public void Princess_BodyOfTheHandbook_PassesEveryCheckAndItsPiecesToo(PrincessFrom from)
    {
        Block bodice = BodiceBlock.For(BodiceBodies.Handbook).Draft().Princess(from);
        Assert.True(bodice.Report.Passed, bodice.Report.ToString());
        Assert.Equal(["centre back", "side back", "side front", "centre front"], bodice.Panels.Select(panel => panel.Name.Text));
        PieceSet pieces = BodicePattern.From(bodice);
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    // C5 of the trade's brief: notches 5 cm before and behind the point, no more than 0.6 cm eased between them, both edges equal elsewhere (common practice, no source).
    [Theory]
    [InlineData(PrincessFrom.Shoulder)]
    [InlineData(PrincessFrom.Armhole)]
    public void Princess_WomenOfAnsur_SeamsWalkEqualButForTheEaseBetweenTheNotches(PrincessFrom from)
    {
        int passed = 0;
        var refused = new List<string>();
        var eases = new List<double>();
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 40 == 1))
        {
            BodiceBlock block;
            Block bodice;
            try
            {
                block = BodiceBlock.For(body).Draft();
                bodice = block.Princess(from);
            }
            catch (ConstructionException e) when (e.Code is DiagnosticCode.DesignRefused or DiagnosticCode.MethodDeclines)
            {
                refused.Add(e.Message);
                continue;
            }

            passed++;
            Assert.True(bodice.Report.Passed, body + "\n" + bodice.Report);
            Assert.Equal(Sewn.WaistMm(block), Sewn.WaistMm(bodice), 0.01);
            Assert.Equal(Total(block, EdgeName.Armhole), Total(bodice, EdgeName.Armhole), 0.01);
            Assert.Equal(Total(block, EdgeName.Neckline), Total(bodice, EdgeName.Neckline), 0.01);
            Assert.All(bodice.Panels.SelectMany(panel => panel.Edges), edge => Assert.InRange(DartTurnTests.SharpestCornerDegrees(edge), 0, 0.1));
            foreach (string part in new[] { "front", "back" })
            {
                double[] centre = Parts(bodice.FindPanel(PanelName.Of("centre " + part)));
                double[] side = Parts(bodice.FindPanel(PanelName.Of("side " + part)));
                Assert.Equal(centre[0], side[2], 0.01);
                Assert.Equal(centre[2], side[0], 0.01);
                Assert.InRange(Math.Abs(centre[1] - side[1]), 0, 6);
                Assert.InRange(centre[1], 0, part == "front" ? 100.01 : double.MaxValue);
                eases.Add(centre[1] - side[1]);
            }
        }

        output.WriteLine($"{passed} passed, {refused.Count} refused, ease {eases.Min():0.00} to {eases.Max():0.00} mm\n" + string.Join("\n", refused));
        Assert.True(passed >= 30, string.Join("\n", refused));
    }

    // A panel that is called centre back has its centre line called so too, and not twice.
    [Fact]
    public void Draw_PrincessSeams_SaysCentreOnce()
    {
        string drawing = BodiceBlock.For(BodiceBodies.Handbook).Draft().Princess().Draw().ToSvg();
        Assert.DoesNotContain("centre centre", drawing, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(">centre back<", drawing, StringComparison.Ordinal);
        Assert.Contains(">centre front<", drawing, StringComparison.Ordinal);
    }

    [Fact]
    public void Princess_NoShoulderDart_IsRefusedWithItsReason()
    {
        ConstructionException refusal = Assert.Throws<ConstructionException>(
            () => BodiceBlock.For(BodiceBodies.Handbook).WithBackShoulder(BackShoulder.Eased).Draft().Princess());
        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
        Assert.Contains("no shoulder dart", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Princess_ThenTurningADart_IsRefused()
        => Assert.Contains("cut its panels apart", Assert.Throws<ConstructionException>(
            () => BodiceBlock.For(BodiceBodies.Handbook).Draft().Princess().BustDartTo(BustDartPlace.Shoulder)).Message, StringComparison.Ordinal);

    private static double[] Parts(Panel panel)
    {
        double all = Sewn.LengthMm(panel.FindEdge(Seam));
        double[] at = [.. panel.Notches.Where(notch => notch.Edge == Seam).Select(notch => notch.DistanceFromStart.Millimeters).Order()];
        return [at[0], at[1] - at[0], all - at[1]];
    }

    private static double Total(Block block, EdgeName edge) => block.Panels.Where(panel => panel.TryFindEdge(edge, out _)).Sum(panel => Sewn.LengthMm(panel.FindEdge(edge)));
}
