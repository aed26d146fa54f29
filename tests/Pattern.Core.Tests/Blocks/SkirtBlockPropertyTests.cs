using System;
using System.Globalization;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Styling;
using UnitsNet;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Blocks;

public class SkirtBlockPropertyTests(ITestOutputHelper output)
{
    private static readonly Arbitrary<(BodyMeasurements Body, SkirtAsked Asked)> Case =
        (from body in Bodies.Any from asked in Bodies.Options select (body, asked)).ToArbitrary();

    [Fact]
    public void Draft_EveryWomanOfAnsur_PassesEveryCheck()
    {
        int passed = 0;
        int refused = 0;
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            try
            {
                SkirtBlock block = SkirtBlock.For(body).Draft();
                Assert.True(block.Report.Passed, body + "\n" + block.Report);
                passed++;
            }
            catch (ConstructionException e)
            {
                output.WriteLine(body + ": " + e.Message);
                refused++;
            }
        }

        output.WriteLine($"{passed} passed, {refused} refused");
        Assert.Equal(1986, passed);
        Assert.Equal(0, refused);
    }

    [Property(MaxTest = 2000)]
    public Property Draft_AnyBodyAndOptions_PassesEveryCheckOrIsRefusedWithAReason() => Prop.ForAll(Case, c =>
    {
        try
        {
            SkirtBlock block = c.Asked.Apply(SkirtBlock.For(c.Body)).Draft();
            return (block.Report.Passed && Sews(block, c.Body, c.Asked)).Label(block.Report.ToString());
        }
        catch (ConstructionException e) when (SkirtRefused.IsDraft(e))
        {
            return (e.Step is not null && e.Message.StartsWith("PC", StringComparison.Ordinal)).Label(e.Message);
        }
    });

    [Property(MaxTest = 300)]
    public Property Draft_RealProportions_IsNeverRefused() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from asked in Bodies.Options select (body, asked)).ToArbitrary(),
        c =>
        {
            SkirtBlock block = c.asked.Apply(SkirtBlock.For(c.body)).Draft();
            return (block.Report.Passed && Sews(block, c.body, c.asked)).Label(block.Report.ToString());
        });

    [Property(MaxTest = 200)]
    public Property Draft_AnyBody_ClosedWaistIsTheTargetWithinAHundredthOfAMillimetre() => Prop.ForAll(Case, c =>
    {
        if (!TryDraft(c.Body, c.Asked, 1, out SkirtBlock? block))
        {
            return true.Label("refused");
        }

        double target = c.Body[BodyMeasurement.WaistGirth].Millimeters + c.Asked.WaistEase;

        // Measured on the closed outline, not by the sum that the report uses.
        double closed = 2 * new[] { block!.Back, block.Front }.Sum(p => p.FindEdge(EdgeName.Waist).Closed().Length.Millimeters);
        return (Math.Abs(closed - target) < 0.01).Label($"{closed} for {target}");
    });

    [Property(MaxTest = 200)]
    public Property Draft_AnyBody_ClosedWaistIsSmooth() => Prop.ForAll(Case, c =>
    {
        if (!TryDraft(c.Body, c.Asked, 1, out SkirtBlock? block))
        {
            return true;
        }

        return new[] { block!.Back, block.Front }.All(panel =>
        {
            CurvePath closed = panel.FindEdge(EdgeName.Waist).Closed();
            return Enumerable.Range(1, closed.Segments.Count - 1).All(i =>
                Math.Abs(closed.Segments[i - 1].EndDirection.AngleTo(closed.Segments[i].StartDirection).Degrees) < 0.001
                && closed.Segments[i - 1].End.DistanceTo(closed.Segments[i].Start).Millimeters < 1e-6);
        });
    });

    // Fold the cap over the fold line and over the centre leg: it has to lie on the seam line that it is pressed onto.
    [Property(MaxTest = 100)]
    public Property Draft_AnyBody_DartCapsFoldedLieOnTheSeamLine() => Prop.ForAll(Case, c =>
    {
        if (!TryDraft(c.Body, c.Asked, 1, out SkirtBlock? block))
        {
            return true.Label("refused");
        }

        double worst = 0;
        foreach (PanelEdge edge in new[] { block!.Back, block.Front }.Select(p => p.FindEdge(EdgeName.Waist)))
        {
            for (int i = 0; i < edge.Darts.Count; i++)
            {
                Dart dart = edge.Darts[i];
                CurvePath seam = ClosedUpTo(edge, i);
                var overLeg = Transform2D.Mirror(Line.Through(dart.Apex, dart.StartLeg));
                var overFold = Transform2D.Mirror(Line.Through(dart.Apex, dart.MiddleOfIntake));
                double half = dart.Cap.Length.Millimeters / 2;
                for (double share = 0; share <= 1; share += 0.125)
                {
                    Point2D nearHalf = dart.Cap.PointAtLength(Length.FromMillimeters(half * share));
                    Point2D farHalf = dart.Cap.PointAtLength(Length.FromMillimeters(half * (2 - share)));
                    worst = Math.Max(worst, DistanceMm(seam, nearHalf.Transformed(overLeg)));
                    worst = Math.Max(worst, DistanceMm(seam, farHalf.Transformed(overFold).Transformed(overLeg)));
                }
            }
        }

        return (worst < 0.01).Label($"{worst} mm off");
    });

    // Below the greatest drop and the quarter waist that takes a second back dart: both are lengths of the trade and do not scale.
    [Property(MaxTest = 100)]
    public Property Draft_BodyScaled_ScalesTheDraft() => Prop.ForAll(
        (from hip in Bodies.Range(700, 1300)
         from difference in Bodies.Range(0, 150)
         from asked in Bodies.Options
         from scale in Bodies.Range(0.75, 1.3)
         where difference * Math.Max(scale, 1) < 240 && (hip - difference + 40) * Math.Max(scale, 1) < 1120 && hip - difference > 560 && asked.SideHem == 0 && (hip * scale) < 1950
         select (hip, difference, asked, scale)).ToArbitrary(),
        c =>
        {
            BodyMeasurements body = Bodies.Millimetres(c.hip - c.difference, c.hip);
            BodyMeasurements scaled = Bodies.Millimetres((c.hip - c.difference) * c.scale, c.hip * c.scale);
            if (!TryDraft(body, c.asked, 1, out SkirtBlock? small) || !TryDraft(scaled, c.asked, c.scale, out SkirtBlock? large))
            {
                return false.Label("refused");
            }

            Point2D[] a = SkirtBlockTests.Points(small!);
            Point2D[] b = SkirtBlockTests.Points(large!);
            double worst = a.Length == b.Length
                ? a.Zip(b, (p, q) => Point2D.FromMillimeters(p.X.Millimeters * c.scale, p.Y.Millimeters * c.scale).DistanceTo(q).Millimeters).Max()
                : double.PositiveInfinity;
            return (worst < 1e-5).Label($"{worst} mm off");
        });

    [Fact]
    public void Draft_AnyCultureAndEightThreads_GivesTheSameBytes()
    {
        static string Print()
        {
            SkirtBlock block = SkirtBlock.For(Bodies.Inches("29 1/2", "39 3/4")).Fitted(SkirtFit.Usual).Draft();
            return string.Join("\n", block.Steps.Select(s => s.Describe(TapeStep.Sixteenth))) + block.Report + string.Join(";", SkirtBlockTests.Points(block));
        }

        string expected = Print();
        string[] cultures = ["tr-TR", "ar-SA", "de-DE", "fa-IR", "th-TH", "en-US", "hi-IN", "fr-CA"];
        var printed = new string[cultures.Length];
        Thread[] threads = [.. cultures.Select((culture, i) => new Thread(() =>
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            printed[i] = Print();
        }))];
        Array.ForEach(threads, t => t.Start());
        Array.ForEach(threads, t => t.Join());

        Assert.All(printed, text => Assert.Equal(expected, text));
    }

    private static bool TryDraft(BodyMeasurements body, SkirtAsked asked, double scale, out SkirtBlock? block)
    {
        try
        {
            block = asked.Apply(SkirtBlock.For(body), scale).Draft();
            return true;
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
        {
            block = null;
            return false;
        }
    }

    /// <summary>The seam line before a dart as it lies when all darts before it are closed onto the stretch that ends at this dart.</summary>
    private static CurvePath ClosedUpTo(PanelEdge edge, int dart)
    {
        CurvePath path = edge.Stretches[dart];
        Transform2D opening = Transform2D.Identity;
        for (int i = dart - 1; i >= 0; i--)
        {
            Dart d = edge.Darts[i];
            Angle open = Angle.FromRadians((d.StartLeg - d.Apex).AngleTo(d.EndLeg - d.Apex).Radians);
            opening = Transform2D.Rotation(d.Apex, open).Then(opening);
            path = edge.Stretches[i].Transformed(opening).Then(path);
        }

        return path;
    }

    // By sampling and golden-section steps: shares nothing with the kernel's own search.
    private static double DistanceMm(CurvePath path, Point2D point)
    {
        const int Samples = 64;
        double best = double.PositiveInfinity;
        foreach (CubicBezier cubic in path.Segments.Select(s => s.AsCubic()))
        {
            double At(double t) => cubic.PointAt(Math.Clamp(t, 0, 1)).DistanceTo(point).Millimeters;
            double around = Enumerable.Range(0, Samples + 1).MinBy(i => At(i / (double)Samples)) / (double)Samples;

            // Inside the curve only: beyond its ends every place is as near as the end, and a step between two equals would lose a foot just inside.
            double lo = Math.Max(around - (1.0 / Samples), 0);
            double hi = Math.Min(around + (1.0 / Samples), 1);
            for (int i = 0; i < 40; i++)
            {
                double a = lo + ((hi - lo) / 3);
                double b = hi - ((hi - lo) / 3);
                (lo, hi) = At(a) < At(b) ? (lo, b) : (a, hi);
            }

            best = Math.Min(best, At((lo + hi) / 2));
        }

        return best;
    }

    // By chords between many points of the stretches that are sewn: nothing that the report computes a length with.
    private static bool Sews(SkirtBlock block, BodyMeasurements body, SkirtAsked asked)
    {
        double waistMm = body[BodyMeasurement.WaistGirth].Millimeters + asked.WaistEase;
        double sideMm = Sewn.LengthMm(block.Back.FindEdge(EdgeName.SideSeam)) - Sewn.LengthMm(block.Front.FindEdge(EdgeName.SideSeam));
        return Math.Abs(Sewn.WaistMm(block) - waistMm) < 0.02 && Math.Abs(sideMm) < 0.02;
    }
}
