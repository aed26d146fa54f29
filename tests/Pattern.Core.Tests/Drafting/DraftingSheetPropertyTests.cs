using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Geometry;
using UnitsNet;
using static Pattern.Core.Tests.Blocks.Bodies;
using static Pattern.Core.Tests.Drafting.DraftingSheetTests;

namespace Pattern.Core.Tests.Drafting;

/// <summary>What holds for any landmarks and curves, hostile ones among them, each measured by its own means.</summary>
public class DraftingSheetPropertyTests
{
    [Property(MaxTest = 300)]
    public Property GoOnAlong_AnyCurve_StaysOnItsPolynomialForTheDistance() => Prop.ForAll(
        (from seed in Gen.Choose(0, int.MaxValue) from distance in Range(0.01, 60) from before in Gen.Elements(false, true) select (seed, distance, before)).ToArbitrary(),
        c =>
        {
            CubicBezier cubic = HostileCurves.Cubic(c.seed, out _);
            if (Quadrature(CurvePath.FromCubic(cubic)) < 0.1)
            {
                return true.ToProperty();
            }

            var sheet = new DraftingSheet();
            Landmark a = sheet.Mark("A", cubic.Start);
            Landmark b = sheet.Mark("B", cubic.End);
            DraftedLine line = sheet.Draw("curve", CurvePath.FromCubic(cubic), a, b);
            Landmark end = sheet.GoOnAlong(line, c.before ? a : b, Mm(c.distance), "C", draws: "added");

            // Past the end the polynomial of the curve, past the start that of the curve drawn backwards, in powers of t.
            Extended poly = new(c.before ? cubic.Reversed() : cubic);
            double t = poly.ParameterAfter(c.distance);
            double off = poly.DistanceTo(end.Position, ref t);
            double walked = poly.Length(1, t);
            double drawn = Quadrature(sheet.FindLine("added").Path);
            return (off < 1e-6 && Math.Abs(walked - c.distance) < 1e-3 && Math.Abs(drawn - c.distance) < 1e-3)
                .Label($"{cubic}: off {off}, walked {walked}, drawn {drawn}, wanted {c.distance}");
        });

    [Property(MaxTest = 200)]
    public Property GoOnAlong_AnyArc_StaysOnItsCircle() => Prop.ForAll(
        (from radius in Range(1, 900) from sweep in Range(-200, 200) from share in Range(0, 1) select (radius, sweep, share)).ToArbitrary(),
        c =>
        {
            var sheet = new DraftingSheet();
            Landmark centre = sheet.Mark("centre", P(3, 4));
            Landmark start = sheet.SquareAcross(centre, Across.Right, Mm(c.radius), "start");
            DraftedLine arc = sheet.Arc(centre, start, Angle.FromDegrees(c.sweep), "end", "arc");
            double room = 360 - Math.Abs(c.sweep);
            Landmark on = sheet.GoOnAlong(arc, arc.To, Mm(c.radius * room * c.share * Math.PI / 180), "on");
            double angle = (c.sweep + (Math.Sign(c.sweep) * room * c.share)) * Math.PI / 180;
            double off = Hypot(on.Position.X.Millimeters - 3 - (c.radius * Math.Cos(angle)), on.Position.Y.Millimeters - 4 - (c.radius * Math.Sin(angle)));
            return (c.sweep == 0 || off < 1e-8).Label($"off {off}");
        });

    [Property(MaxTest = 300)]
    public Property Compass_AnyLandmarks_HasBothDistancesOnTheNamedSide() => Prop.ForAll(
        (from apart in Range(1, 400) from angle in Range(0, 360) from x in Range(0, 1) from y in Range(0.001, 300) from side in Gen.Elements(Enum.GetValues<SheetSide>()) select (apart, angle, x, y, side)).ToArbitrary(),
        c =>
        {
            double turn = c.angle * Math.PI / 180;
            (double across, double up) = (-Math.Sin(turn), Math.Cos(turn));
            if (Math.Abs(c.side is SheetSide.Left or SheetSide.Right ? across : up) < 1e-3)
            {
                return true.ToProperty();
            }

            var sheet = new DraftingSheet();
            Landmark a = sheet.Mark("A", P(0, 0));
            Landmark b = sheet.Mark("B", P(c.apart * Math.Cos(turn), c.apart * Math.Sin(turn)));
            (double first, double second) = (Hypot(c.x * c.apart, c.y), Hypot((1 - c.x) * c.apart, c.y));
            Landmark found = sheet.Compass(a, Mm(first), b, Mm(second), c.side, "C");
            double toA = Distance(found.Position, a.Position);
            double toB = Distance(found.Position, b.Position);
            double lead = ((found.Position.X.Millimeters * across) + (found.Position.Y.Millimeters * up))
                * (c.side switch { SheetSide.Left => -across, SheetSide.Right => across, SheetSide.Above => up, _ => -up });
            return (Math.Abs(toA - first) < 1e-8 && Math.Abs(toB - second) < 1e-8 && lead > 0).Label($"{toA} for {first}, {toB} for {second}, lead {lead}");
        });

    [Property(MaxTest = 200)]
    public Property DivideAndMeasure_AnyCurve_AddUpToIndependentQuadrature() => Prop.ForAll(
        (from x in Gen.ArrayOf(Range(-300, 300), 8) from parts in Gen.Choose(2, 9) select (x, parts)).ToArbitrary(),
        c =>
        {
            var sheet = new DraftingSheet();
            CubicBezier cubic = CubicBezier.FromPoints(P(c.x[0], c.x[1]), P(c.x[2], c.x[3]), P(c.x[4], c.x[5]), P(c.x[6], c.x[7]));
            DraftedLine line = sheet.Draw("curve", CurvePath.FromCubic(cubic), sheet.Mark("A", cubic.Start), sheet.Mark("B", cubic.End));
            double whole = Quadrature(line.Path);
            double measured = sheet.Measure(line).Value.Millimeters;
            LandmarkName[] names = [.. Enumerable.Range(1, c.parts - 1).Select(i => LandmarkName.Of("part " + (char)('a' + i)))];
            Landmark[] marks = [line.From, .. sheet.Divide(line, names), line.To];

            // Each part drawn again, and measured by quadrature.
            double[] lengths = [.. Enumerable.Range(0, c.parts).Select(i => Quadrature(sheet.Part(line, marks[i], marks[i + 1], LineName.Of("piece " + (char)('a' + i), ConstructionRole.Guide)).Path))];
            bool equal = Math.Abs(line.Path.SelfIntersections().Points.Count) > 0 || lengths.All(l => Math.Abs(l - (whole / c.parts)) < 1e-3);
            return (Math.Abs(measured - whole) < 1e-4 && equal && (Math.Abs(lengths.Sum() - whole) < 1e-3 || !line.Path.IsSimple()))
                .Label($"measured {measured}, quadrature {whole}, parts {string.Join(" ", lengths)}");
        });

    [Property(MaxTest = 200)]
    public Property PlaceDart_OnAnyCurve_LaysHalfTheIntakeEitherSideSquareToItsMiddle() => Prop.ForAll(
        (from rise in Range(-60, 60) from sag in Range(0, 40) from at in Range(80, 120) from intake in Range(1, 60) from length in Range(20, 200) select (rise, sag, at, intake, length)).ToArbitrary(),
        c =>
        {
            var sheet = new DraftingSheet();
            Landmark a = sheet.Mark("A", P(0, 0));
            Landmark b = sheet.Mark("B", P(200, c.rise));
            DraftedLine waist = sheet.Draw("waist", CurvePath.FromCubic(CubicBezier.FromPoints(a.Position, P(60, -c.sag), P(140, c.rise - c.sag), b.Position)), a, b);
            Landmark middle = sheet.MarkOnto(waist, a, Across.Right, Mm(c.at), "middle");
            DraftedDart dart = sheet.PlaceDart(waist, middle, Mm(c.intake), Mm(c.length), "apex");
            double first = dart.FirstLeg.X.Millimeters - c.at;
            double second = dart.SecondLeg.X.Millimeters - c.at;
            double onLine = Math.Max(waist.Path.ClosestTo(dart.FirstLeg).Distance.Millimeters, waist.Path.ClosestTo(dart.SecondLeg).Distance.Millimeters);
            double deep = middle.Position.Y.Millimeters - dart.Apex.Position.Y.Millimeters;
            return (Math.Abs(first + (c.intake / 2)) < 1e-8 && Math.Abs(second - (c.intake / 2)) < 1e-8 && onLine < 1e-8 && Math.Abs(deep - c.length) < 1e-9)
                .Label($"{first} {second} {onLine} {deep}");
        });

    [Property(MaxTest = 200)]
    public Property SquareOnto_AnyCurve_MeetsItAtARightAngleOrRefuses() => Prop.ForAll(
        (from x in Gen.ArrayOf(Range(-300, 300), 10) select x).ToArbitrary(),
        x =>
        {
            var sheet = new DraftingSheet();
            CubicBezier cubic = CubicBezier.FromPoints(P(x[0], x[1]), P(x[2], x[3]), P(x[4], x[5]), P(x[6], x[7]));
            DraftedLine line = sheet.Draw("curve", CurvePath.FromCubic(cubic), sheet.Mark("A", cubic.Start), sheet.Mark("B", cubic.End));
            Landmark from = sheet.Mark("C", P(x[8], x[9]));
            Landmark foot;
            try
            {
                foot = sheet.SquareOnto(from, line, "foot");
            }
            catch (ConstructionException refusal)
            {
                double nearest = Enumerable.Range(0, 2001).Min(i => Distance(cubic.PointAt(i / 2000.0), from.Position));
                bool atEnd = Math.Min(Distance(cubic.Start, from.Position), Distance(cubic.End, from.Position)) <= nearest + 1e-9;
                return (refusal.Code == DiagnosticCode.LineNotMet && atEnd).Label(refusal.Message);
            }

            Extended poly = new(cubic);
            double best = Enumerable.Range(0, 4001).Select(i => i / 4000.0).OrderBy(t => Distance(cubic.PointAt(t), foot.Position)).First();
            double off = poly.DistanceTo(foot.Position, ref best);
            (double dx, double dy) = poly.Velocity(best);
            double along = ((dx * (foot.Position.X.Millimeters - from.Position.X.Millimeters)) + (dy * (foot.Position.Y.Millimeters - from.Position.Y.Millimeters))) / Hypot(dx, dy);
            return (off < 1e-6 && Math.Abs(along) < 1e-4).Label($"off {off}, along {along}");
        });

    private static double Hypot(double x, double y) => Math.Sqrt((x * x) + (y * y));

    private static double Distance(Point2D a, Point2D b) => Hypot(a.X.Millimeters - b.X.Millimeters, a.Y.Millimeters - b.Y.Millimeters);

    /// <summary>A cubic in powers of its parameter, beyond 0 to 1 as well: no code of the library's.</summary>
    private sealed class Extended(CubicBezier b)
    {
        private readonly double[] _x = Powers(b.Start.X, b.StartControl.X, b.EndControl.X, b.End.X);
        private readonly double[] _y = Powers(b.Start.Y, b.StartControl.Y, b.EndControl.Y, b.End.Y);

        internal (double X, double Y) Velocity(double t) => (_x[1] + (t * ((2 * _x[2]) + (t * 3 * _x[3]))), _y[1] + (t * ((2 * _y[2]) + (t * 3 * _y[3]))));

        internal double Length(double from, double to)
        {
            const int parts = 4000;
            double h = (to - from) / parts;
            double sum = 0;
            for (int i = 0; i <= parts; i++)
            {
                (double dx, double dy) = Velocity(from + (i * h));
                sum += Hypot(dx, dy) * (i == 0 || i == parts ? 1 : i % 2 == 0 ? 2 : 4);
            }

            return sum * h / 3;
        }

        internal double ParameterAfter(double distance)
        {
            // A curve whose velocity vanishes there would never be long enough: forty doublings are more than a sheet holds.
            double high = 2;
            for (int i = 0; i < 40 && Length(1, high) < distance; i++)
            {
                high = 1 + (2 * (high - 1));
            }

            Assert.True(Length(1, high) >= distance);

            double low = 1;
            for (int i = 0; i < 60; i++)
            {
                double middle = (low + high) / 2;
                (low, high) = Length(1, middle) < distance ? (middle, high) : (low, middle);
            }

            return high;
        }

        /// <summary>The distance of a point from the curve near a parameter, which moves to the nearest place.</summary>
        internal double DistanceTo(Point2D point, ref double t)
        {
            double At(double u) => Hypot(Value(_x, u) - point.X.Millimeters, Value(_y, u) - point.Y.Millimeters);
            double width = 1e-3;
            for (int i = 0; i < 200; i++)
            {
                if (At(t - width) < At(t))
                {
                    t -= width;
                }
                else if (At(t + width) < At(t))
                {
                    t += width;
                }
                else
                {
                    width /= 2;
                }
            }

            return At(t);
        }

        private static double Value(double[] c, double t) => c[0] + (t * (c[1] + (t * (c[2] + (t * c[3])))));

        private static double[] Powers(Length p0, Length p1, Length p2, Length p3)
        {
            (double a, double b, double c, double d) = (p0.Millimeters, p1.Millimeters, p2.Millimeters, p3.Millimeters);
            return [a, 3 * (b - a), 3 * (a - (2 * b) + c), d - (3 * c) + (3 * b) - a];
        }
    }
}
