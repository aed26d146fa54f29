using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>A plain standing figure, from the front and from behind, on which a tape lies. Drawn for this library; heights are hundredths of the stature.</summary>
internal sealed class MeasuringFigure
{
    private const double HeightMm = 60;
    private const double MarginMm = 5;
    private const double ApartUnits = 40;
    private const double HalfUnits = 19;
    private const double NameMm = 3.4;

    private static readonly double[] Trunk = [3, 85.5, 3.3, 84.2, 6, 83, 9.6, 81.8];
    private static readonly double[] OuterArm = [9.6, 81.8, 11.4, 79.8, 12.1, 73, 12.9, 63, 14.2, 51, 15.1, 46.5, 14.4, 43.2];
    private static readonly double[] InnerArm = [14.4, 43.2, 13, 45.5, 12.8, 51, 11.2, 63, 10, 70, 8.7, 74.5];
    private static readonly double[] Side = [8.7, 74.5, 8, 69, 6.9, 62.5, 8.6, 57, 9.7, 51.5, 9.2, 44, 6.2, 28, 6.3, 21, 4.2, 5, 5.6, 1.2, 5.4, 0];
    private static readonly double[] InnerLeg = [2.3, 0, 2.4, 5, 2.2, 20, 2.2, 28, 1, 40, 0, 46.5];
    private static readonly double[] Head = [2.6, 87.5, 4, 91, 4.3, 94.5, 3, 98.6, 0, 100];
    private static readonly double[] Jaw = [2.6, 87.5, 1.4, 86.6, 0, 86.3];
    private static readonly double[] Bust = [1.6, 70.8, 4.2, 69.9, 6.6, 71.5];
    private static readonly double[] Seat = [0.6, 49.6, 4, 47.4, 8.2, 48.8];

    private readonly Phrasebook _book;
    private readonly CurvePath[] _outline;

    internal MeasuringFigure(Phrasebook book)
    {
        _book = book;
        CurvePath[] half = [.. new[] { Trunk, OuterArm, InnerArm, Side, InnerLeg, Head, Jaw }.Select(Smooth), Straight(2.6, 87.5, 3, 85.5), Straight(5.4, 0, 2.3, 0)];
        CurvePath[] common = [.. half, .. half.Select(Mirrored)];
        CurvePath bust = Smooth(Bust);
        CurvePath seat = Smooth(Seat);
        _outline =
        [
            .. common.Concat([bust, Mirrored(bust)]).Select(path => Placed(path, isBack: false)),
            .. common.Concat([seat, Mirrored(seat), Straight(0, 82, 0, 52)]).Select(path => Placed(path, isBack: true)),
        ];
    }

    private static double Scale => HeightMm / 100;

    /// <summary>The two figures with the tape of one measurement.</summary>
    internal LessonPicture With(MeasuringPlace? place, string words) => new(
        words,
        (Scale * (ApartUnits + (2 * HalfUnits))) + (2 * MarginMm),
        HeightMm + (3 * MarginMm),
        _outline,
        [
            new LessonLines(LessonStroke.Body) { Common = (0, _outline.Length) },
            new LessonLines(LessonStroke.Tape)
            {
                Own = place is null ? [] : [.. place.Front.Select(path => Placed(path, isBack: false)), .. place.Back.Select(path => Placed(path, isBack: true))],
            },
        ],
        [],
        [Name(_book.Say("front"), isBack: false), Name(_book.Say("back"), isBack: true)]);

    private static TextMark Name(string words, bool isBack)
        => new(words, Place(isBack).Apply(new Point2D(0, -7.5)), NameMm, 0, TextAlignment.Middle, TextWeight.Regular, Ink.Strong);

    private static Transform2D Place(bool isBack) => Transform2D.Scaling(Point2D.Origin, Ratio.FromDecimalFractions(Scale))
        .Then(Transform2D.Translation(new Vector2D(MarginMm + (Scale * (HalfUnits + (isBack ? ApartUnits : 0))), -MarginMm - HeightMm)));

    private static CurvePath Placed(CurvePath path, bool isBack) => path.Transformed(Place(isBack));

    private static CurvePath Mirrored(CurvePath path) => path.Transformed(Transform2D.Mirror(Line.Vertical(Point2D.Origin)));

    private static CurvePath Smooth(double[] points) => CurvePath.Through([.. Enumerable.Range(0, points.Length / 2).Select(i => new Point2D(points[2 * i], points[(2 * i) + 1]))], null, null);

    private static CurvePath Straight(double fromX, double fromY, double toX, double toY) => CurvePath.FromLine(new LineSegment(new Point2D(fromX, fromY), new Point2D(toX, toY)));
}
