using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Lines drawn in one sweep, measured on points along them.</summary>
public class CubicBezierSweepTests
{
    private const int Samples = 400;

    private static readonly Gen<(double Start, double End)> Headings =
        from start in Gen.Choose(-80_000, 80_000) from end in Gen.Choose(-80_000, 80_000) select (start / 1000.0, end / 1000.0);

    // The chord lies along x: a curve that turns one way only exists where the headings lie on either side of it. Both at most 80 degrees, turning less than 90.
    [Property(MaxTest = 500)]
    public Property InOneSweep_HeadingsOnEitherSideOfTheChord_TurnsOneWayOnly() => Prop.ForAll(Headings.ToArbitrary(), c =>
    {
        double turn = (c.End - c.Start) * Math.PI / 180;
        double atStart = Math.Sin(c.End * Math.PI / 180) / Math.Sin(turn);
        double atEnd = Math.Sin(-c.Start * Math.PI / 180) / Math.Sin(turn);
        if (!(Math.Abs(turn) is > 0.01 and < Math.PI / 2 && atStart > 0.1 && atEnd > 0.1))
        {
            return true.Label("forced");
        }

        (double left, double right) = TurnsOf(Swept(c.Start, c.End));
        return (Math.Min(left, right) < 1e-6).Label($"{left} left, {right} right");
    });

    [Property(MaxTest = 500)]
    public Property InOneSweep_AnyHeadings_KeepsEndsAndHeadingsAndHasNoLoop() => Prop.ForAll(Headings.ToArbitrary(), c =>
    {
        CubicBezier curve = Swept(c.Start, c.End);
        return (Math.Abs(curve.StartDirection.Angle.Degrees - c.Start) < 1e-9 && Math.Abs(curve.EndDirection.Angle.Degrees - c.End) < 1e-9
            && curve.End.X.Millimeters == 200 && curve.End.Y.Millimeters == 0 && !curve.IsTangled).Label(curve.ToString());
    });

    // Truing moves the end by a little at a time and must see the curve move by a little.
    [Property(MaxTest = 500)]
    public Property InOneSweep_HeadingsALittleOff_IsALittleOff() => Prop.ForAll(Headings.Where(c => Math.Abs(c.End - c.Start) is > 1 and < 89).ToArbitrary(), c =>
    {
        const double Off = 1e-6;
        CubicBezier a = Swept(c.Start, c.End);
        CubicBezier b = Swept(c.Start, c.End + Off);
        return (a.PointAt(0.5).DistanceTo(b.PointAt(0.5)).Millimeters < 1e-2).Label($"{a.PointAt(0.5)} and {b.PointAt(0.5)}");
    });

    // Already even: the fairest of all.
    [Theory]
    [InlineData(-10, 10)]
    [InlineData(-12, 9)]
    public void InOneSweep_EvenHeadings_IsTheFairestCurve(double start, double end)
        => Assert.Equal(CubicBezier.Between(Point2D.Origin, D(start), Point2D.FromMillimeters(200, 0), D(end)), Swept(start, end));

    // Against headings between points; shares nothing with the kernel's own turning.
    [Property(MaxTest = 300)]
    public Property AddTurns_AnyCurve_AgreesWithPointsAlongIt() => Prop.ForAll(Headings.ToArbitrary(), c =>
    {
        var curve = CubicBezier.Between(Point2D.Origin, D(c.Start), Point2D.FromMillimeters(200, 0), D(c.End));
        var turns = default(CubicBezier.Turns);
        curve.AddTurns(ref turns);
        (double left, double right) = TurnsOf(curve);
        return (Math.Abs(turns.BackRad - Math.Min(left, right)) < 0.02).Label($"{turns.BackRad}, not {left} or {right}");
    });

    private static CubicBezier Swept(double startDegrees, double endDegrees)
        => CubicBezier.InOneSweep(Point2D.Origin, D(startDegrees), Point2D.FromMillimeters(200, 0), D(endDegrees));

    private static Direction D(double degrees) => Direction.FromAngle(Angle.FromDegrees(degrees));

    private static (double Left, double Right) TurnsOf(CubicBezier curve)
    {
        // The headings at the ends are those to the control points; between them, those from point to point.
        (double X, double Y)[] at = [.. Enumerable.Range(0, Samples + 1).Select(i => curve.PointAt(i / (double)Samples)).Select(p => (p.X.Millimeters, p.Y.Millimeters))];
        (double X, double Y)[] ways =
        [
            (curve.X1 - curve.X0, curve.Y1 - curve.Y0),
            .. Enumerable.Range(1, Samples).Select(i => (at[i].X - at[i - 1].X, at[i].Y - at[i - 1].Y)),
            (curve.X3 - curve.X2, curve.Y3 - curve.Y2),
        ];
        double[] turns = [.. ways.Zip(ways.Skip(1), (a, b) => Math.Atan2((a.X * b.Y) - (a.Y * b.X), (a.X * b.X) + (a.Y * b.Y)))];
        return (turns.Where(turn => turn > 0).Sum(), -turns.Where(turn => turn < 0).Sum());
    }
}
