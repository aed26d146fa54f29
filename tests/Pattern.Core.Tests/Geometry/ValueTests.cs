using System;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Points, vectors, directions, lines and boxes.</summary>
public class ValueTests
{
    [Fact]
    public void Point_Doors_TakeEveryUnit()
    {
        Assert.Equal(P(25.4, -10), Point2D.At(Length.FromInches(1), Length.FromCentimeters(-1)));
        Assert.Equal(P(3, 4), Point2D.Origin + Vector2D.FromMillimeters(3, 4));
        Assert.Equal(5, Point2D.Origin.DistanceTo(P(3, 4)).Millimeters);
        Assert.Equal(P(0, 7), P(0, 2).Toward(Direction.Up, Length.FromMillimeters(5)));
        Assert.Equal(P(2, 3), P(0, 0).MidpointTo(P(4, 6)));
        Assert.Equal("(3, 4.5) mm", P(3, 4.5).ToString());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e13)]
    [InlineData(-1e13)]
    public void Point_NotACoordinate_Refused(double x)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Point2D.FromMillimeters(x, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Point2D.FromMillimeters(0, x));
    }

    [Fact]
    public void Equality_MinusZero_HashesLikeZero()
    {
        Assert.Equal(P(0, 0), P(-0.0, 0));
        Assert.Equal(P(0, 0).GetHashCode(), P(-0.0, 0).GetHashCode());
        Assert.False(P(0, 0) == P(0, 1e-12));
        Assert.True(P(0, 0).IsCloseTo(P(0, 1e-12), Length.FromMillimeters(1e-9)));
    }

    [Fact]
    public void Vector_Products_MatchClosedForms()
    {
        var a = Vector2D.FromMillimeters(3, 4);
        var b = Vector2D.FromMillimeters(-4, 3);

        Assert.Equal(0, a.Dot(b).SquareMillimeters);
        Assert.Equal(25, a.Cross(b).SquareMillimeters);
        Assert.Equal(90, a.AngleTo(b).Degrees, 1e-12);
        Assert.Equal(b, a.Rotated(Angle.FromDegrees(90)));
        Assert.Equal(Vector2D.FromMillimeters(-6, -8), -(2 * a));
        Assert.Throws<InvalidOperationException>(() => default(Vector2D).Direction);
    }

    [Theory]
    [InlineData(1e-200, 1e-200)]
    [InlineData(3e-160, 4e-160)]
    [InlineData(3e160, 4e160)]
    public void LengthMm_ExtremeComponents_NeitherVanishNorOverflow(double x, double y)
    {
        double expected = Math.Abs(x) * Math.Sqrt(1 + (y / x * (y / x)));

        Assert.Equal(1, new Vector2D(x, y).LengthMm / expected, 1e-15);
    }

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(90, 0, 1)]
    [InlineData(-90, 0, -1)]
    [InlineData(180, -1, 0)]
    [InlineData(450, 0, 1)]
    [InlineData(-540, -1, 0)]
    public void FromAngle_QuarterTurns_AreExact(double degrees, double x, double y)
    {
        var direction = Direction.FromAngle(Angle.FromDegrees(degrees));

        Assert.Equal(x, direction.X);
        Assert.Equal(y, direction.Y);
    }

    [Fact]
    public void Direction_Default_PointsRight()
    {
        Assert.Equal(Direction.Right, default);
        Assert.Equal(Direction.Up, default(Direction).TurnedLeft);
        Assert.Equal(Direction.Left, default(Direction).Reversed);
        Assert.Equal(0, default(Direction).Angle.Degrees);
        Assert.Equal(30, Direction.Up.AngleTo(Direction.Up.Turned(Angle.FromDegrees(30))).Degrees, 1e-12);
    }

    [Fact]
    public void Line_PerpendicularFromAPoint_MeetsAtTheFoot()
    {
        var line = Line.Through(P(0, 0), P(4, 3));

        Assert.True(line.FootOf(P(-3, 4)).IsCloseTo(Point2D.Origin, Length.FromMillimeters(1e-15)));
        Assert.Equal(5, line.SignedDistanceTo(P(-3, 4)).Millimeters, 1e-15);
        Assert.Equal(-5, line.SignedDistanceTo(P(3, -4)).Millimeters, 1e-15);
        Assert.Equal(line.Direction.TurnedLeft, line.PerpendicularThrough(P(9, 9)).Direction);
        Assert.Throws<ArgumentException>(() => Line.Through(P(1, 1), P(1, 1)));
    }

    [Fact]
    public void LineSegment_PointAtLength_RefusesBeyond()
    {
        var segment = LineSegment.Between(P(0, 0), P(30, 40));

        Assert.Equal(P(30, 40), segment.PointAtLength(segment.Length));
        Assert.True(segment.PointAtLength(Length.FromMillimeters(10)).IsCloseTo(P(6, 8), Length.FromMillimeters(1e-13)));
        Assert.Throws<ArgumentOutOfRangeException>(() => segment.PointAtLength(Length.FromMillimeters(50.1)));
        Assert.Throws<InvalidOperationException>(() => LineSegment.Between(P(1, 1), P(1, 1)).Direction);
        Assert.Equal(50, segment.ToCubic().Length.Millimeters, 1e-12);
    }

    [Fact]
    public void Box_UnionAndContains_CountBorders()
    {
        BoundingBox box = BoundingBox.Around(P(5, 9), P(1, 2));

        Assert.Equal(4, box.Width.Millimeters);
        Assert.Equal(7, box.Height.Millimeters);
        Assert.True(box.Contains(P(5, 9)));
        Assert.False(box.Contains(P(5.0001, 9)));
        Assert.True(box.Overlaps(BoundingBox.Around(P(5, 9), P(8, 12))));
        Assert.Equal(P(8, 12), box.Union(BoundingBox.Around(P(5, 9), P(8, 12))).UpperRight);
    }

    [Fact]
    public void Rotation_QuarterTurnAboutAPoint_IsExact()
        => Assert.Equal(P(10, 20), Transform2D.Rotation(P(10, 10), Angle.FromDegrees(90)).Apply(P(20, 10)));

    [Fact]
    public void Mirror_Twice_IsIdentityAndKeepsTheLine()
    {
        var line = Line.Through(P(3, 1), P(8, 13));
        var mirror = Transform2D.Mirror(line);
        Point2D p = P(40, -7);

        Assert.True(mirror.TurnsOver);
        Assert.True(mirror.Apply(mirror.Apply(p)).IsCloseTo(p, Length.FromMillimeters(1e-12)));
        Assert.True(mirror.Apply(P(8, 13)).IsCloseTo(P(8, 13), Length.FromMillimeters(1e-13)));
        Assert.Equal(-line.SignedDistanceTo(p).Millimeters, line.SignedDistanceTo(mirror.Apply(p)).Millimeters, 1e-12);
    }

    [Fact]
    public void Then_InOrder_AndInverted_Undoes()
    {
        Transform2D move = Transform2D.Scaling(P(1, 2), Ratio.FromPercent(150))
            .Then(Transform2D.Rotation(P(0, 0), Angle.FromDegrees(30)))
            .Then(Transform2D.Translation(Vector2D.FromMillimeters(5, 6)));
        Point2D expected = Transform2D.Translation(Vector2D.FromMillimeters(5, 6)).Apply(
            Transform2D.Rotation(P(0, 0), Angle.FromDegrees(30)).Apply(Transform2D.Scaling(P(1, 2), Ratio.FromPercent(150)).Apply(P(7, 8))));

        Assert.True(move.Apply(P(7, 8)).IsCloseTo(expected, Length.FromMillimeters(1e-13)));
        Assert.True(move.Inverted().Apply(expected).IsCloseTo(P(7, 8), Length.FromMillimeters(1e-13)));
        Assert.Equal(P(7, 8), default(Transform2D).Apply(P(7, 8)));
        Assert.Equal(default, Transform2D.Identity);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Scaling_NotPositive_Refused(double factor)
        => Assert.Throws<ArgumentOutOfRangeException>(() => Transform2D.Scaling(P(0, 0), Ratio.FromDecimalFractions(factor)));

    [Fact]
    public void Arc_Measures_MatchClosedForms()
    {
        var arc = CircularArc.FromCentre(P(10, 20), Length.FromMillimeters(50), Angle.FromDegrees(-30), Angle.FromDegrees(150));

        Assert.Equal(50 * 150 * Math.PI / 180, arc.Length.Millimeters, 1e-12);
        Assert.Equal(60, arc.Bounds.Right.Millimeters, 1e-12);
        Assert.Equal(70, arc.Bounds.Top.Millimeters, 1e-12);
        Assert.Equal(arc.End.YMm, arc.Reversed().Start.YMm, 1e-12);
        Assert.Equal(0.02, arc.Curvature.InverseMillimeters, 1e-15);
        Assert.Equal(-0.02, arc.Reversed().Curvature.InverseMillimeters, 1e-15);
        Assert.True(arc.PointAtLength(arc.Length * 0.2).IsCloseTo(P(60, 20), Length.FromMillimeters(1e-12)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircularArc.FromCentre(P(0, 0), Length.FromMillimeters(-1), Angle.Zero, Angle.FromDegrees(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircularArc.FromCentre(P(0, 0), Length.FromMillimeters(1), Angle.Zero, Angle.FromDegrees(361)));
    }

    // One more than an angle of that size is the same angle: counting its quarters must end all the same.
    [Theory]
    [InlineData(1e17)]
    [InlineData(-1e300)]
    public void Bounds_OfAnArcThatStartsAtAHugeAngle_AreThoseOfItsCircleAtMost(double startRad)
    {
        BoundingBox box = CircularArc.FromCentre(Point2D.Origin, Length.FromMillimeters(10), Angle.FromRadians(startRad), Angle.FromRadians(1)).Bounds;

        Assert.InRange(box.Width.Millimeters, 0, 20.001);
        Assert.InRange(box.Height.Millimeters, 0, 20.001);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(170)]
    [InlineData(300)]
    [InlineData(-40)]
    [InlineData(-200)]
    [InlineData(-350)]
    public void Arc_ThroughAndTangent_GiveTheSameArcBack(double sweepDegrees)
    {
        var arc = CircularArc.FromCentre(P(10, 20), Length.FromMillimeters(50), Angle.FromDegrees(25), Angle.FromDegrees(sweepDegrees));
        var through = CircularArc.Through(arc.Start, arc.PointAtLength(arc.Length * 0.3), arc.End);
        CircularArc tangent = CurvePath.From(P(0, 0)).CurveTo(Direction.Up, arc.Start, arc.StartDirection).ArcTo(arc.End).Segments[1].AsArc();

        foreach (CircularArc made in new[] { through, tangent })
        {
            Assert.True(made.Centre.IsCloseTo(arc.Centre, Length.FromMillimeters(1e-10)));
            Assert.Equal(sweepDegrees, made.Sweep.Degrees, 1e-9);
        }
    }

    [Fact]
    public void Arc_ThroughPointsOnALine_Refused()
    {
        Assert.Throws<ArgumentException>(() => CircularArc.Through(P(0, 0), P(1, 1), P(2, 2)));
        Assert.Throws<ArgumentException>(() => CircularArc.TangentTo(P(0, 0), Direction.Right, P(5, 0)));
    }

    [Fact]
    public void Arc_Mirrored_TurnsTheOtherWay()
    {
        CurvePath arc = CurvePath.From(P(10, 0)).ArcAround(P(0, 0), Angle.FromDegrees(90)).MirroredOver(Line.Vertical(P(0, 0)));
        CircularArc mirrored = arc.Segments[0].AsArc();

        Assert.Equal(-90, mirrored.Sweep.Degrees, 1e-12);
        Assert.True(mirrored.Start.IsCloseTo(P(-10, 0), Length.FromMillimeters(1e-12)));
        Assert.True(mirrored.End.IsCloseTo(P(0, 10), Length.FromMillimeters(1e-12)));
    }

    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);
}
