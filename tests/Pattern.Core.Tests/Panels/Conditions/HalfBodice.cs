using System;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Panels;

/// <summary>A bodice-like half of any size, as an unsteady hand would draw it, and what must hold on it.</summary>
internal sealed class HalfBodice
{
    internal static readonly EdgeOf BackWaist = Of(PanelName.Back, EdgeName.Waist);
    internal static readonly EdgeOf FrontWaist = Of(PanelName.Front, EdgeName.Waist);
    internal static readonly EdgeOf BackSide = Of(PanelName.Back, EdgeName.SideSeam);
    internal static readonly EdgeOf FrontSide = Of(PanelName.Front, EdgeName.SideSeam);
    internal static readonly EdgeOf BackArmhole = Of(PanelName.Back, EdgeName.Armhole);
    internal static readonly EdgeOf FrontArmhole = Of(PanelName.Front, EdgeName.Armhole);
    internal static readonly EdgeOf BackShoulder = Of(PanelName.Back, EdgeName.Shoulder);
    internal static readonly EdgeOf FrontShoulder = Of(PanelName.Front, EdgeName.Shoulder);
    internal static readonly EdgeOf BackNeck = Of(PanelName.Back, EdgeName.Neckline);
    internal static readonly EdgeOf FrontNeck = Of(PanelName.Front, EdgeName.Neckline);

    internal static readonly Seam Side = Seam.Between(BackSide, FrontSide).Named("side seam");
    internal static readonly Seam ShoulderSeam = Seam.Between(BackShoulder, FrontShoulder).Named("shoulder").WithEase(Mm(6));

    private readonly Random _random;
    private readonly double _noise;

    internal HalfBodice(int seed, double noise)
    {
        _random = new Random(seed);
        _noise = noise;
        double size = 0.8 + (0.5 * _random.NextDouble());
        double waist = 0;
        Back = Draw(PanelName.Back, size, 0.97, ref waist);
        Front = Draw(PanelName.Front, size, 1, ref waist);
        WaistMm = waist;
        ArmholeMm = Back.FindEdge(EdgeName.Armhole).SewnLengthMm() + Front.FindEdge(EdgeName.Armhole).SewnLengthMm();
        Panels = [Back, Front];
    }

    internal Panel Back { get; }

    internal Panel Front { get; }

    internal Panel[] Panels { get; }

    internal double WaistMm { get; }

    internal double ArmholeMm { get; }

    /// <summary>What may move: 58 unknowns.</summary>
    internal static Movable[] Movables(double cornersMm = 120, double handlesMm = 80) =>
    [
        .. new[] { PanelName.Back, PanelName.Front }.SelectMany(panel => new[]
        {
            Movable.Corner(Of(panel, EdgeName.Waist).AtEnd, Mm(cornersMm)),
            Movable.Corner(Of(panel, EdgeName.SideSeam).AtEnd, Mm(cornersMm)),
            Movable.Corner(Of(panel, EdgeName.Armhole).AtEnd, Mm(cornersMm)),
            Movable.Corner(Of(panel, EdgeName.Shoulder).AtEnd, Mm(cornersMm)),
            Movable.Corner(Of(panel, EdgeName.Neckline).AtEnd, Mm(cornersMm)).Along(Direction.Up),
            Movable.Handles(Of(panel, EdgeName.Waist), Mm(handlesMm)),
            Movable.Handles(Of(panel, EdgeName.Armhole), Mm(handlesMm)),
            Movable.Handles(Of(panel, EdgeName.Neckline), Mm(handlesMm)),
            Movable.Legs(Of(panel, EdgeName.Waist).Dart(1), Mm(cornersMm)),
        }),
    ];

    /// <summary>What must hold: 14 conditions and more.</summary>
    internal Condition[] Conditions() =>
    [
        Condition.SewnLength(WorkedLength.Given("half waist", Mm(WaistMm)), BackWaist, FrontWaist).Named("half waist"),
        Condition.SewnLength(WorkedLength.Given("armhole", Mm(ArmholeMm)), BackArmhole, FrontArmhole).Named("armhole"),
        Condition.Sewn(Side),
        Condition.Sewn(ShoulderSeam),
        Condition.Square(BackWaist.AtStart),
        Condition.Square(FrontWaist.AtStart),
        Condition.Square(BackNeck.AtEnd),
        Condition.Square(FrontNeck.AtEnd),
        Condition.SmoothOverSeam(BackWaist.AtEnd, FrontWaist.AtEnd),
        Condition.SmoothOverSeam(BackArmhole.AtStart, FrontArmhole.AtStart),
        Condition.SmoothOverSeam(BackArmhole.AtEnd, FrontArmhole.AtEnd),
        Condition.SmoothOverSeam(BackNeck.AtStart, FrontNeck.AtStart),
        Condition.SmoothOverDarts(BackWaist),
        Condition.SmoothOverDarts(FrontWaist),
        Condition.LegsEqual(BackWaist.Dart(1)),
        Condition.LegsEqual(FrontWaist.Dart(1)),
    ];

    internal static EdgeOf Of(PanelName panel, EdgeName edge) => EdgeOf.Panel(panel, edge);

    internal static Length Mm(double mm) => Length.FromMillimeters(mm);

    // The points of a plain bodice at full scale, the centre upright on the left; drawn counter-clockwise from the waist at the centre.
    private Panel Draw(PanelName name, double size, double share, ref double waist)
    {
        double w = size * share;
        Point2D centreWaist = new(0, 0);

        // No hand draws a dart inside out: its legs are shaken by less than half of their distance.
        Point2D startLeg = Shake(82 * w, -1, Math.Min(1, 10 / Math.Max(_noise, 1)));
        Point2D apex = new(96 * w, 150 * size);
        Point2D endLeg = Shake(110 * w, 0, Math.Min(1, 10 / Math.Max(_noise, 1)));
        Point2D sideWaist = Shake(225 * w, 9);
        Point2D underarm = Shake(243 * w, 205 * size);
        Point2D pitch = Shake(188 * w, 290 * size);
        Point2D tip = Shake(186 * w, 372 * size);
        Point2D neck = Shake(70 * w, 408 * size);
        Point2D centreNeck = new(0, (name == PanelName.Front ? 335 : 385) * size + (_noise * ((2 * _random.NextDouble()) - 1)));
        Vector2D up = new(-6 * w, 42 * size);
        Vector2D tilt = Shaken(up, 0.3);
        double depth = neck.YMm - centreNeck.YMm;

        var first = CurvePath.FromCubic(Cubic(centreWaist, new Vector2D(27 * w, 0), new Vector2D(-27 * w, 0), startLeg));
        var second = CurvePath.FromCubic(Cubic(endLeg, new Vector2D(38 * w, 1), new Vector2D(-38 * w, -4), sideWaist));
        var side = CurvePath.FromLine(new LineSegment(sideWaist, underarm));
        var armhole = CurvePath.FromSegments(
        [
            PathSegment.FromCubic(new CubicBezier(underarm, underarm + Shaken(new Vector2D(-30 * w, 6), 0.5), pitch - tilt, pitch)),
            PathSegment.FromCubic(new CubicBezier(pitch, pitch + (tilt * 0.7), tip + Shaken(new Vector2D(-4 * w, -28 * size), 0.5), tip)),
        ]);
        var shoulder = CurvePath.FromLine(new LineSegment(tip, neck));
        var neckline = CurvePath.FromCubic(Cubic(neck, new Vector2D(-8 * w, -0.55 * depth), new Vector2D(38 * w, 0), centreNeck));
        var centre = CurvePath.FromLine(new LineSegment(centreNeck, centreWaist));

        waist += (225 * w) - (28 * w);
        var dart = new DartShape(apex, startLeg, endLeg, Toward.Start);
        return new Panel(
            name,
            [
                new PanelEdge(EdgeName.Waist, EdgeRole.Seam, [first, second], [dart]),
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, side),
                new PanelEdge(EdgeName.Armhole, EdgeRole.Seam, armhole),
                new PanelEdge(EdgeName.Shoulder, EdgeRole.Seam, shoulder),
                new PanelEdge(EdgeName.Neckline, EdgeRole.Opening, neckline),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, centre),
            ],
            new PanelFeatures(new LineSegment(new Point2D(20, 40), new Point2D(20, 200)), [], [new Landmark(LandmarkName.Of("bust point"), apex)], []));
    }

    private CubicBezier Cubic(Point2D start, Vector2D leaving, Vector2D arriving, Point2D end)
        => new(start, start + Shaken(leaving, 0.5), end + Shaken(arriving, 0.5), end);

    private Point2D Shake(double x, double y, double by = 1) => new(x + (by * Noise()), y + (by * Noise()));

    private Vector2D Shaken(Vector2D v, double by) => new(v.XMm + (by * Noise()), v.YMm + (by * Noise()));

    private double Noise() => _noise * ((2 * _random.NextDouble()) - 1);
}
