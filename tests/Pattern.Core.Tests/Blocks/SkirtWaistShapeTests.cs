using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Every open body in every variant: no waistline turns back on itself where its ends leave an even curve, and what a cutter would look twice at is said.</summary>
public class SkirtWaistShapeTests(ITestOutputHelper output)
{
    private const int Samples = 60;

    private static readonly Dictionary<string, Func<SkirtBlockBuilder, SkirtBlockBuilder>> Variants = new()
    {
        ["usual"] = b => b,
        ["fitted"] = b => b.Fitted(),
        ["level"] = b => b.WithWaistline(Waistline.Level),
        ["lowered back"] = b => b.WithWaistline(Waistline.LoweredBack),
        ["no darts"] = b => Darts(b, 0),
        ["one dart each"] = b => Darts(b, 1),
        ["two darts each"] = b => Darts(b, 2),
        ["three darts each"] = b => Darts(b, 3),
    };

    public static TheoryData<string> VariantNames => [.. Variants.Keys];

    [Theory]
    [MemberData(nameof(VariantNames))]
    public void Draft_EveryWomanOfAnsur_WaistTurnsBackOnlyWhereItsEndsForceIt(string variant)
    {
        int signed = 0;
        var refusals = new List<string>();
        var advice = new SortedDictionary<string, int>();
        var wiggles = new List<string>();
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            SkirtBlock block;
            try
            {
                block = Variants[variant](SkirtBlock.For(body)).Draft();
            }
            catch (ConstructionException refusal)
            {
                refusals.Add(body + ": " + refusal.Message);
                continue;
            }

            Assert.DoesNotContain(block.Report.Findings, finding => finding.Failed);
            string[] given = [.. block.Report.Findings.Where(finding => finding.Advice is not null).Select(finding => finding.Check + ", " + finding.Place).Distinct()];
            signed += given.Length == 0 ? 1 : 0;
            foreach (string one in given)
            {
                advice[one] = advice.GetValueOrDefault(one) + 1;
            }

            foreach (Panel panel in new[] { block.Back, block.Front })
            {
                (double turn, double hump, bool forced) = Wiggle(panel.FindEdge(EdgeName.Waist).Closed());
                if (!forced && (turn > 1 || hump > 0.5))
                {
                    wiggles.Add(FormattableString.Invariant($"{body}, {panel.Name}: {turn:0.00} degrees, {hump:0.00} mm"));
                }

                // What is forced is said.
                bool isSaid = block.Report.Findings.Any(finding => finding.Place == panel.Name.Text && finding.Check.Contains("of the waistline against"));
                Assert.True(isSaid || (turn < 1.05 && hump < 0.55), body + " " + panel.Name + turn.ToString(CultureInfo.InvariantCulture));
            }
        }

        output.WriteLine($"{variant}: {signed} signed, {refusals.Count} refused, {wiggles.Count} unforced");
        foreach (KeyValuePair<string, int> one in advice)
        {
            output.WriteLine($"  {one.Key}: {one.Value}");
        }

        foreach (string wiggle in wiggles.Take(20))
        {
            output.WriteLine("  " + wiggle);
        }

        Assert.Empty(wiggles);
        Assert.Empty(refusals);
    }

    // By headings between sampled points; shares nothing with the library's own measure. Forced where the tangents at the ends and the chord form no triangle, or one with a
    // side of less than a tenth of the chord.
    private static (double TurnDegrees, double HumpMm, bool Forced) Wiggle(CurvePath closed)
    {
        double length = closed.Length.Millimeters;
        (double X, double Y)[] at = [.. Enumerable.Range(0, Samples + 1).Select(i => closed.PointAtLength(UnitsNet.Length.FromMillimeters(length * i / Samples))).Select(p => (p.X.Millimeters, p.Y.Millimeters))];
        double[] turns = [.. Enumerable.Range(1, Samples - 1).Select(i => Turn(at[i].X - at[i - 1].X, at[i].Y - at[i - 1].Y, at[i + 1].X - at[i].X, at[i + 1].Y - at[i].Y))];
        double left = turns.Where(turn => turn > 0).Sum();
        double right = -turns.Where(turn => turn < 0).Sum();
        bool lesserIsLeft = left < right;

        double hump = 0;
        for (int from = 0; from < turns.Length; from++)
        {
            int to = from;
            while (to < turns.Length && turns[to] > 0 == lesserIsLeft && turns[to] != 0)
            {
                to++;
            }

            if (to > from)
            {
                (double X, double Y) a = at[from];
                (double X, double Y) b = at[to + 1];
                double chord = Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
                hump = Math.Max(hump, Enumerable.Range(from, to - from + 2).Max(i => Math.Abs(((b.X - a.X) * (at[i].Y - a.Y)) - ((b.Y - a.Y) * (at[i].X - a.X))) / chord));
                from = to;
            }
        }

        Direction start = closed.StartDirection;
        Direction end = closed.EndDirection;
        double all = Turn(start.X, start.Y, end.X, end.Y);
        double first = Turn(start.X, start.Y, at[Samples].X - at[0].X, at[Samples].Y - at[0].Y);
        double atEnd = Math.Sin(first) / Math.Sin(all);
        double atStart = Math.Sin(all - first) / Math.Sin(all);
        return (Math.Min(left, right) * 180 / Math.PI, hump, !(atEnd >= 0.1 && atStart >= 0.1));
    }

    private static double Turn(double ax, double ay, double bx, double by) => Math.Atan2((ax * by) - (ay * bx), (ax * bx) + (ay * by));

    private static SkirtBlockBuilder Darts(SkirtBlockBuilder builder, int count)
        => builder.WithFrontDarts(new DartPlan { Count = count }).WithBackDarts(new DartPlan { Count = count });
}
