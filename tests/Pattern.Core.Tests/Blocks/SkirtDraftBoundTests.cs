using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Every draft ends within a bound on its work, holds no NaN, and is refused in one way only.</summary>
public class SkirtDraftBoundTests(ITestOutputHelper output)
{
    /// <summary>Steps of all searches of one draft together: the bound that the documentation states.</summary>
    private const long MostSteps = 5_000;

    private const int Sample = 4_000;

    /// <summary>Drafts that once never ended: a dart's leg that missed the edge made NaN, and no comparison with NaN ends a search.</summary>
    private static readonly Dictionary<string, SkirtBlockBuilder> Endless = new()
    {
        ["waist 20 in, hip 50 in"] = SkirtBlock.For(Bodies.Inches("20", "50")),
        ["700/1420"] = SkirtBlock.For(Bodies.Millimetres(700, 1420)),
        ["600/1400"] = SkirtBlock.For(Bodies.Millimetres(600, 1400)),
        ["720/980, hip ease 400"] = SkirtBlock.For(Bodies.Millimetres(720, 980)).WithHipEase(Mm(400)),
        ["720/980, hip ease 450"] = SkirtBlock.For(Bodies.Millimetres(720, 980)).WithHipEase(Mm(450)),
        ["720/980, hip ease 508"] = SkirtBlock.For(Bodies.Millimetres(720, 980)).WithHipEase(Mm(508)),
        ["503.6/840.5, much ease"] = SkirtBlock.For(Bodies.Millimetres(503.6, 840.5)).WithWaistEase(Mm(112.7)).WithHipEase(Mm(508)),
        ["610/535.5, everything said"] = SkirtBlock.For(Bodies.Millimetres(610, 535.5))
            .WithWaistEase(Mm(90.7)).WithLength(Mm(1258.1)).WithSideLift(Mm(69.8)).WithCentreFrontDrop(Mm(61.3)).WithLargestDart(Mm(91.9))
            .WithLevels(new SkirtLevels { Yoke = Mm(61.2), UpperHip = Mm(123.4), LowerHip = Mm(394) })
            .WithFrontDarts(new DartPlan { Intake = Mm(109.2), Length = Mm(203.2), Shortening = Mm(10.5) })
            .WithBackDarts(new DartPlan { Shortening = Mm(4.4) })
            .Fitted(new SkirtFit { SideHem = Mm(24.4), CentreBackHem = Mm(91.4), CentreBackWaist = Mm(148.9) }),
    };

    public static TheoryData<string> EndlessOnce => [.. Endless.Keys];

    [Theory]
    [MemberData(nameof(EndlessOnce))]
    public void Draft_ThatOnceNeverEnded_IsRightOrRefusedWithinTheBound(string name)
    {
        long before = SearchWork.Steps;
        try
        {
            SkirtBlock block = Endless[name].Draft();
            Assert.True(block.Report.Passed, block.Report.ToString());
        }
        catch (ConstructionException e)
        {
            AssertSaysWhatToDo(e);
        }

        Assert.InRange(SearchWork.Steps - before, 0, MostSteps);
    }

    // Each of these threw an ArgumentException of the kernel.
    [Theory]
    [InlineData(402, 1812, 0, DiagnosticCode.DartsTurnTooFar)]
    [InlineData(1142, 1053, 465.5, DiagnosticCode.DartsTurnTooFar)]
    public void Draft_ThatCannotBeDrawn_IsRefusedAsDocumented(double waist, double hip, double frontIntake, DiagnosticCode code)
    {
        SkirtBlockBuilder builder = SkirtBlock.For(Bodies.Millimetres(waist, hip));
        builder = frontIntake > 0 ? builder.WithFrontDarts(new DartPlan { Count = 4, Intake = Mm(frontIntake) }) : builder;

        ConstructionException e = Assert.Throws<ConstructionException>(() => builder.Draft());

        Assert.Equal(code, e.Code);
        AssertSaysWhatToDo(e);
    }

    [Fact]
    public void Draft_LargeBodyWithNarrowDarts_IsDrawn()
        => Assert.True(SkirtBlock.For(Bodies.Millimetres(1400, 2000)).WithLargestDart(Mm(8)).Draft().Report.Passed);

    // The centre front dropped below the hip line, and the report said NaN.
    [Fact]
    public void Draft_CentreFrontBelowTheHip_IsRefused()
    {
        SkirtBlockBuilder builder = SkirtBlock.For(Bodies.Millimetres(499.999999999, 500))
            .WithLevels(new SkirtLevels { Yoke = Mm(17.6), UpperHip = Mm(76.3), LowerHip = Mm(91.8) })
            .WithCentreBackLift(Mm(-38.4)).WithCentreFrontDrop(Mm(101.6))
            .Fitted(new SkirtFit { SideHem = Mm(69), CentreBackHem = Mm(25), CentreBackWaist = Mm(54) });

        AssertSaysWhatToDo(Assert.Throws<ConstructionException>(() => builder.Draft()));
        ConstructionException e = Assert.Throws<ConstructionException>(() => builder.Fitted(SkirtFit.Straight).Draft());
        Assert.Equal(DiagnosticCode.WaistAtHip, e.Code);
        Assert.Equal(101.6, e.Measured!.Value.Millimeters, 1e-9);
        Assert.Equal(66.3, e.Allowed!.Value.Millimeters, 1e-9);
    }

    [Theory]
    [InlineData(DiagnosticCode.WaistWiderThanHip)]
    [InlineData(DiagnosticCode.DartsTurnTooFar)]
    [InlineData(DiagnosticCode.HemTooSteep)]
    [InlineData(DiagnosticCode.HemTooNarrow)]
    public void Draft_WithTheAllowedAmount_IsNotRefusedForThatReason(DiagnosticCode code)
    {
        SkirtBlockBuilder example = SkirtBlock.For(Bodies.Millimetres(682, 725.5));
        SkirtBlockBuilder Darts(double intake) => example.WithBackDarts(new DartPlan { Count = 4, Intake = Mm(intake) });
        SkirtBlockBuilder Hem(double length, double sideIn) => example.WithLength(Mm(length)).Fitted(new SkirtFit { SideHem = Mm(sideIn) });

        // Asked too much, asked what the refusal allows, and what is measured of what was asked.
        (Func<double, SkirtBlockBuilder> Ask, double TooMuch, Func<double, double> FromAllowed) c = code switch
        {
            DiagnosticCode.WaistWiderThanHip => (Darts, 140, allowed => allowed - (682 / 4.0)),
            DiagnosticCode.DartsTurnTooFar => (Darts, 400, allowed => allowed),
            DiagnosticCode.HemTooSteep => (sideIn => Hem(300, sideIn), 60, allowed => allowed),
            _ => (sideIn => Hem(1000, sideIn), 149, allowed => 0.5 * allowed),
        };
        ConstructionException e = Assert.Throws<ConstructionException>(() => c.Ask(c.TooMuch).Draft());
        Assert.Equal(code, e.Code);
        AssertSaysWhatToDo(e);

        try
        {
            c.Ask(c.FromAllowed(e.Allowed!.Value.Millimeters)).Draft();
        }
        catch (ConstructionException other)
        {
            Assert.NotEqual(code, other.Code);
        }
    }

    // Crossings are counted on a fine polyline of the outline, by comparing every pair of chords.
    [Fact]
    public void Draft_BackWithManyNarrowDartsOnALevelWaist_DoesNotCrossItself()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(682, 725.5))
            .WithBackDarts(new DartPlan { Intake = Mm(77.4) }).WithLargestDart(Mm(20.2)).WithWaistline(Waistline.Level).Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(0, Crossings(block.Back));
        Assert.Equal(0, Crossings(block.Front));
    }

    [Fact]
    public void With_EveryBoundInTheOtherUnit_IsAllowed()
    {
        SkirtBlockBuilder builder = SkirtBlock.For(Bodies.Example);

        Assert.NotNull(builder.WithSideLift(Mm(76.2)).WithCentreBackLift(Mm(-50.8)).WithCentreBackLift(Mm(76.2)).WithWaistEase(Mm(-50.8)).WithWaistEase(Mm(203.2))
            .WithHipEase(Mm(-101.6)).WithHipEase(Mm(508)).WithLength(Mm(25.4)).WithLength(Mm(1524)).WithCentreFrontDrop(Mm(101.6))
            .WithLargestDart(Mm(6.35)).WithLargestDart(Mm(101.6)).WithSmallestDart(Mm(50.8)).WithLargestSideShaping(Mm(152.4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => builder.WithSideLift(Mm(76.2001)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void SkirtWaist_WorkSpent_IsRefused(int mostDrawings)
    {
        var target = new WaistTarget(
            "back", Point2D.Origin, Direction.Right, new Point2D(265, -203), new Point2D(235, 10), 203, 216);

        ConstructionException e = Assert.Throws<ConstructionException>(() => SkirtWaist.Solve(target, [new DartWedge(116, 31, 152)], mostDrawings));

        Assert.Equal(DiagnosticCode.WaistNotTrued, e.Code);
        Assert.InRange(SkirtWaist.Solve(target, [new DartWedge(116, 31, 152)]).Drawings, 3, 50);
    }

    // PATTERN_LONG_DRAFTS says how many; `.ci/long` asks for 500,000 of them.
    [Fact]
    public void Draft_RandomBodiesAndOptions_EndsWithinTheBoundHoldsNoNaNAndIsRefusedInOneWay()
    {
        int count = int.TryParse(Environment.GetEnvironmentVariable("PATTERN_LONG_DRAFTS"), NumberStyles.None, CultureInfo.InvariantCulture, out int asked) ? asked : Sample;
        var outcomes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        long worst = 0;
        int worstNumber = 0;
        for (int number = 0; number < count; number++)
        {
            long before = SearchWork.Steps;
            string outcome = Outcome(number);
            long steps = SearchWork.Steps - before;
            (worst, worstNumber) = steps > worst ? (steps, number) : (worst, worstNumber);
            outcomes[outcome] = outcomes.GetValueOrDefault(outcome) + 1;
            Assert.True(steps <= MostSteps, $"draft {number} took {steps} steps");
        }

        foreach ((string outcome, int times) in outcomes)
        {
            output.WriteLine($"{times,8} {outcome}");
        }

        output.WriteLine($"{count} drafts, {worst} steps at most, in draft {worstNumber}");
        Assert.InRange(outcomes["passed"], count / 4, count);
    }

    private static string Outcome(int number)
    {
        SkirtBlockBuilder builder = RandomDrafts.Of(number);
        try
        {
            SkirtBlock block = builder.Draft();
            foreach (Panel panel in new[] { block.Back, block.Front })
            {
                foreach (PathSegment segment in panel.SeamOutline().Segments)
                {
                    // Four places of a cubic are finite only where all of its control points are.
                    double sum = Enumerable.Range(0, 4).Sum(i => segment.PointAtRaw(i / 3.0).XMm + segment.PointAtRaw(i / 3.0).YMm);
                    Assert.True(double.IsFinite(sum), $"draft {number} has a line that is not finite");
                }
            }

            Assert.True(block.Report.Findings.All(f => double.IsFinite(f.RawMeasured) && double.IsFinite(f.RawTarget)), $"draft {number}: {block.Report}");
            return block.Report.Passed ? "passed" : "drawn, with findings";
        }
        catch (ConstructionException e)
        {
            AssertSaysWhatToDo(e);
            return "refused, " + e.Code;
        }
        catch (Exception e) when (e is not Xunit.Sdk.XunitException)
        {
            Assert.Fail($"draft {number} threw {e}");
            throw;
        }
    }

    private static void AssertSaysWhatToDo(ConstructionException e)
    {
        Assert.StartsWith("PC", e.Message, StringComparison.Ordinal);
        Assert.NotNull(e.Step);
        Assert.True(double.IsFinite(e.Measured!.Value.Millimeters), e.Message);
        Assert.True(double.IsFinite(e.Allowed!.Value.Millimeters), e.Message);
    }

    private static int Crossings(Panel panel)
    {
        var points = new List<Point2D>();
        foreach (PathSegment segment in panel.SeamOutline().Segments)
        {
            for (int i = 0; i < 32; i++)
            {
                points.Add(segment.PointAtRaw(i / 32.0));
            }
        }

        int crossings = 0;
        for (int i = 0; i < points.Count; i++)
        {
            for (int k = i + 2; k < points.Count; k++)
            {
                if ((k + 1) % points.Count != i && Cross(points[i], points[i + 1], points[k], points[(k + 1) % points.Count]))
                {
                    crossings++;
                }
            }
        }

        return crossings;
    }

    private static bool Cross(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        static double Side(Point2D p, Point2D q, Point2D r)
            => ((q.X.Millimeters - p.X.Millimeters) * (r.Y.Millimeters - p.Y.Millimeters)) - ((q.Y.Millimeters - p.Y.Millimeters) * (r.X.Millimeters - p.X.Millimeters));
        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
