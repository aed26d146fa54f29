using System;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

public class CurvePathTests
{
    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);

    private static CurvePath Rectangle => CurvePath.From(P(0, 0)).LineTo(P(100, 0)).LineTo(P(100, 50)).LineTo(P(0, 50)).Closed();

    [Fact]
    public void Closed_Rectangle_HasPositiveAreaCounterClockwise()
    {
        Assert.Equal(4, Rectangle.Segments.Count);
        Assert.Equal(5000, Rectangle.SignedArea.SquareMillimeters, 1e-9);
        Assert.Equal(-5000, Rectangle.Reversed().SignedArea.SquareMillimeters, 1e-9);
        Assert.Equal(300, Rectangle.Length.Millimeters, 1e-12);
    }

    [Fact]
    public void ArcAround_HalfCircle_HasLengthAndArea()
    {
        CurvePath half = CurvePath.From(P(10, 0)).ArcAround(P(0, 0), Angle.FromDegrees(180));

        Assert.Equal(10 * Math.PI, half.Length.Millimeters, 1e-12);
        Assert.Equal(50 * Math.PI, half.Closed().SignedArea.SquareMillimeters, 1e-10);
        Assert.Equal(10, half.Bounds.Top.Millimeters, 1e-12);
    }

    [Fact]
    public void SubPath_OverTheStartOfAClosedPath_Wraps()
    {
        CurvePath part = Rectangle.SubPath(Length.FromMillimeters(275), Length.FromMillimeters(25));

        Assert.Equal(50, part.Length.Millimeters, 1e-9);
        Assert.True(part.Start.IsCloseTo(P(0, 25), Length.FromMillimeters(1e-9)));
        Assert.True(part.End.IsCloseTo(P(25, 0), Length.FromMillimeters(1e-9)));
    }

    [Fact]
    public void FromSegments_Gap_Refused()
    {
        var first = PathSegment.FromLine(LineSegment.Between(P(0, 0), P(1, 0)));
        var second = PathSegment.FromLine(LineSegment.Between(P(1.1, 0), P(2, 0)));

        ArgumentException error = Assert.Throws<ArgumentException>(() => CurvePath.FromSegments([first, second]));

        Assert.StartsWith("PC3007", error.Message);
    }

    [Fact]
    public void Transformed_Mirrored_TurnsAreaOver()
    {
        CurvePath mirrored = Rectangle.Transformed(Transform2D.Mirror(Line.Vertical(P(100, 0))));

        Assert.Equal(-5000, mirrored.SignedArea.SquareMillimeters, 1e-9);
        Assert.Equal(200, mirrored.Bounds.Right.Millimeters, 1e-12);
    }
}
