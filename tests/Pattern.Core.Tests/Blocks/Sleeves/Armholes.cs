using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Armholes to set sleeves into: those of a simple bodice of the tests' own, drawn by a handbook's proportions from body measures, and hostile ones.</summary>
/// <remarks>The proportions are recalled from W. Aldrich, Metric Pattern Cutting for Women's Wear (from memory), in centimetres, y down from the side neck level. Only bust girth, and what
/// it is taken to mean for depth and widths, counts.</remarks>
internal static class Armholes
{
    /// <summary>The body that the handbook works: bust 88, upper arm 28.4, wrist 16, arm 58.5 cm.</summary>
    internal static BodyMeasurements Worked { get; } = BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, "88")
        .With(BodyMeasurement.UpperArmGirth, "28.4")
        .With(BodyMeasurement.WristGirth, "16")
        .With(BodyMeasurement.OuterArmLength, "58.5");

    /// <summary>The armhole of that body: 21.181 cm in front and 21.386 cm behind.</summary>
    internal static Armhole Handbook { get; } = Armhole.Of(FrontPanel(88), BackPanel(88));

    /// <summary>Arms of the 1,986 women: bust, stature, upper arm, wrist, arm length; and the armhole that the bodice of the tests gives them.</summary>
    internal static IReadOnlyList<BodyMeasurements> Women { get; } =
        [.. File.ReadLines(Path.Combine("Data", "Blocks", "ansur2-women-arms.csv")).Skip(1).Select(line =>
        {
            double[] mm = [.. line.Split(',').Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            return BodyMeasurements.In(LengthUnit.Millimeter)
                .With(BodyMeasurement.BustGirth, Mm(mm[0]))
                .With(BodyMeasurement.Stature, Mm(mm[1]))
                .With(BodyMeasurement.UpperArmGirth, Mm(mm[2]))
                .With(BodyMeasurement.WristGirth, Mm(mm[3]))
                .With(BodyMeasurement.OuterArmLength, Mm(mm[4]));
        })];

    internal static Armhole Of(BodyMeasurements body)
    {
        double bust = body[BodyMeasurement.BustGirth].Centimeters;
        return Armhole.Of(FrontPanel(bust), BackPanel(bust));
    }

    /// <summary>Lines that no handbook draws: lopsided, hardly curved, curved twice, with straight parts, arcs and corners. All rise from the side seam to the shoulder.</summary>
    internal static Gen<Armhole> Any { get; } =
        from front in Line(1)
        from back in Line(-1)
        select Armhole.Of(front, back);

    internal static Panel FrontPanel(double bust, double scale = 1)
    {
        Figures f = Figures.Of(bust);
        Point2D[] armhole = [At(f.Side, f.Scye, scale), At(f.Front - 1.4142, f.Scye - 1.4142, scale), At(f.Front, f.Scye - ((f.Scye - f.FrontNeck) / 3), scale), At(f.Tip.X, f.Tip.Y, scale)];
        Point2D neck = At(f.FrontNeckPoint, 0, scale);
        Point2D waist = At(f.Side, f.Scye + 19.5, scale);
        Point2D centre = At(f.Box, f.Scye + 19.5, scale);
        return Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.Through(armhole, Direction.Right, armhole[3].DirectionTo(neck).TurnedLeft))
            .WithEdge(EdgeName.Shoulder, EdgeRole.Seam, CurvePath.From(armhole[3]).LineTo(neck))
            .WithEdge(EdgeName.Neckline, EdgeRole.Opening, CurvePath.From(neck).LineTo(At(f.Box, 0, scale)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(f.Box, 0, scale)).LineTo(centre))
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.From(centre).LineTo(waist))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(waist).LineTo(armhole[0]))
            .Make();
    }

    internal static Panel BackPanel(double bust, double scale = 1)
    {
        Figures f = Figures.Of(bust);
        Point2D[] armhole = [At(f.BackTip.X, f.BackTip.Y, scale), At(f.Back, (f.Scye + f.BackTip.Y) / 2, scale), At(f.Back + 1.7678, f.Scye - 1.7678, scale), At(f.Side, f.Scye, scale)];
        Point2D neck = At(f.BackNeckPoint, 0, scale);
        Point2D waist = At(f.Side, f.Scye + 19.5, scale);
        Point2D centre = At(0, f.Scye + 19.5, scale);
        return Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.Through(armhole, neck.DirectionTo(armhole[0]).TurnedRight, Direction.Right))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(armhole[3]).LineTo(waist))
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.From(waist).LineTo(centre))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(centre).LineTo(At(0, 1.5, scale)))
            .WithEdge(EdgeName.Neckline, EdgeRole.Opening, CurvePath.From(At(0, 1.5, scale)).LineTo(neck))
            .WithEdge(EdgeName.Shoulder, EdgeRole.Seam, CurvePath.From(neck).LineTo(armhole[0]))
            .Make();
    }

    internal static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static Point2D At(double x, double y, double scale) => Point2D.FromMillimeters(10 * scale * x, -10 * scale * y);

    private static Gen<CurvePath> Line(int hand) =>
        from width in Bodies.Range(20, 140)
        from height in Bodies.Range(90, 260)
        from kind in Gen.Choose(0, 3)
        from bend in Bodies.Range(0.15, 0.85)
        select Drawn(hand * width, height, kind, bend);

    private static CurvePath Drawn(double x, double y, int kind, double bend)
    {
        Point2D start = Point2D.FromMillimeters(7, -13);
        Point2D end = start + Vector2D.FromMillimeters(x, y);
        Direction level = x > 0 ? Direction.Right : Direction.Left;
        return kind switch
        {
            0 => CurvePath.From(start).CurveTo(level, end, Direction.Up),
            1 => CurvePath.From(start).CurveTo(start + Vector2D.FromMillimeters(bend * x, 0), start + Vector2D.FromMillimeters(x, bend * y), end),
            2 => CurvePath.From(start).LineTo(start + Vector2D.FromMillimeters(x, bend * y / 2)).LineTo(end),
            _ => CurvePath.From(start).ArcThrough(start + Vector2D.FromMillimeters(0.7 * x, 0.3 * y), end),
        };
    }

    private sealed record Figures(double Box, double Scye, double Side, double Back, double Front, double BackNeckPoint, double FrontNeckPoint, double FrontNeck, (double X, double Y) BackTip, (double X, double Y) Tip)
    {
        internal static Figures Of(double bust)
        {
            double sizes = (bust - 88) / 4;
            double neck = 37 + sizes;
            double shoulder = 12.25 + (0.25 * sizes);
            double dart = 7 + (0.6 * sizes);
            double depth = 21 + (0.4 * sizes);
            double box = (bust / 2) + 5;
            double scye = 2 + depth;
            double back = ((34.4 + sizes) / 2) + 0.5;
            double front = box - ((32.4 + (1.2 * sizes)) / 2) - (dart / 2);
            double tipY = 0.8 + (depth / 5);
            double backNeck = (neck / 5) - 0.2;
            double frontNeckPoint = box - ((neck / 5) - 0.7);
            double dartEnd = frontNeckPoint - dart;
            return new Figures(
                box,
                scye,
                (back + front) / 2,
                back,
                front,
                backNeck,
                dartEnd,
                (neck / 5) - 0.2,
                (backNeck + Math.Sqrt(Math.Pow(shoulder + 1, 2) - (tipY * tipY)), tipY),
                (dartEnd - Math.Sqrt((shoulder * shoulder) - Math.Pow(tipY + 1.5, 2)), tipY + 1.5));
        }
    }
}
