using System;
using System.Linq;
using NetTopologySuite.Geometries;
using Pattern.Core.Geometry;
using UnitsNet;
using LineSegment = Pattern.Core.Geometry.LineSegment;

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

    // The joint lies at 100 mm; rounding may put a cut one bit beside it, and what is left of the segment there has no heading.
    [Fact]
    public void SubPath_CutBesideAJoint_KeepsNoSegmentWithoutLength()
    {
        CurvePath after = Rectangle.SubPath(Length.FromMillimeters(Math.BitDecrement(100)), Length.FromMillimeters(140));
        CurvePath before = Rectangle.SubPath(Length.FromMillimeters(40), Length.FromMillimeters(Math.BitIncrement(100)));
        CurvePath atJoint = Rectangle.SubPath(Length.FromMillimeters(Math.BitDecrement(100)), Length.FromMillimeters(Math.BitIncrement(100)));

        Assert.Equal(40, Assert.Single(after.Segments).Length.Millimeters, 1e-9);
        Assert.Equal(60, Assert.Single(before.Segments).Length.Millimeters, 1e-9);
        Assert.True(Assert.Single(atJoint.Segments).Length.Millimeters < 1e-12);
    }

    [Fact]
    public void FromSegments_Gap_Refused()
    {
        var first = PathSegment.FromLine(LineSegment.Between(P(0, 0), P(1, 0)));
        var second = PathSegment.FromLine(LineSegment.Between(P(1.1, 0), P(2, 0)));

        ArgumentException error = Assert.Throws<ArgumentException>(() => CurvePath.FromSegments([first, second]));

        Assert.StartsWith("PC3104", error.Message);
    }

    [Fact]
    public void Transformed_Mirrored_TurnsAreaOver()
    {
        CurvePath mirrored = Rectangle.Transformed(Transform2D.Mirror(Line.Vertical(P(100, 0))));

        Assert.Equal(-5000, mirrored.SignedArea.SquareMillimeters, 1e-9);
        Assert.Equal(200, mirrored.Bounds.Right.Millimeters, 1e-12);
    }

    // NetTopologySuite knows polygons only: the area between the outline and its chords is at most the length times the tolerance.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.001)]
    public void SignedArea_AreaOfNetTopologySuite_Agrees(double toleranceMm)
    {
        CurvePath outline = Outline;
        Coordinate[] ring = outline.Flatten(Length.FromMillimeters(toleranceMm)).Select(p => new Coordinate(p.X.Millimeters, p.Y.Millimeters)).ToArray();
        Polygon polygon = new GeometryFactory().CreatePolygon(ring);

        Assert.True(polygon.IsValid);
        Assert.Equal(polygon.Area, outline.SignedArea.SquareMillimeters, toleranceMm * outline.Length.Millimeters);
        Assert.Equal(polygon.EnvelopeInternal.MaxX, outline.Bounds.Right.Millimeters, toleranceMm);
        Assert.Equal(360, outline.TotalTurning.Degrees, 1e-9);
        Assert.Equal(-360, outline.Reversed().TotalTurning.Degrees, 1e-9);
    }

    [Fact]
    public void Reversed_Twice_IsIdentity()
    {
        Assert.Equal(Outline.Segments.Where(s => s.Kind != PathSegmentKind.Arc), Outline.Reversed().Reversed().Segments.Where(s => s.Kind != PathSegmentKind.Arc));
        Assert.Equal(Outline.Length.Millimeters, Outline.Reversed().Length.Millimeters, 1e-10);
        Assert.Equal(-Outline.SignedArea.SquareMillimeters, Outline.Reversed().SignedArea.SquareMillimeters, 1e-8);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void PointAtLength_AndLengthTo_AreInverse(double share)
    {
        Length length = Outline.Length * share;
        PathLocation place = Outline.LocationAtLength(length);

        Assert.Equal(length.Millimeters, Outline.LengthTo(place).Millimeters, 1e-9);
        Assert.Equal(place.Point, Outline.PointAtLength(length));
    }

    [Fact]
    public void PointAtLength_Beyond_IsRefusedOrStops()
    {
        CurvePath open = CurvePath.From(P(0, 0)).LineTo(P(100, 0));

        Assert.Throws<ArgumentOutOfRangeException>(() => open.PointAtLength(Length.FromMillimeters(100.001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => open.PointAtLength(Length.FromMillimeters(-0.001)));
        Assert.Equal(P(100, 0), open.PointAtLength(Length.FromMillimeters(200), BeyondEnds.StopAtEnd));
        Assert.Equal(P(0, 0), open.PointAtLength(Length.FromMillimeters(-200), BeyondEnds.StopAtEnd));
    }

    [Fact]
    public void DirectionsAndCurvature_AlongThePath_FitTheSegment()
    {
        CurvePath path = CurvePath.From(P(0, 0)).LineTo(P(100, 0)).ArcAround(P(100, 50), Angle.FromDegrees(90));

        Assert.Equal(0, path.CurvatureAt(path.LocationAtLength(Length.FromMillimeters(50))).InverseMillimeters);
        Assert.Equal(1 / 50.0, path.CurvatureAt(path.LocationAtLength(Length.FromMillimeters(120))).InverseMillimeters, 1e-14);
        Assert.Equal(90, path.EndDirection.Angle.Degrees, 1e-12);
        Assert.Equal(90, path.TotalTurning.Degrees, 1e-12);
    }

    [Fact]
    public void ZeroLengthSegments_AreCarriedAlong()
    {
        CurvePath path = CurvePath.From(P(0, 0)).LineTo(P(0, 0)).LineTo(P(10, 0)).CurveTo(P(10, 0), P(10, 0), P(10, 0));

        Assert.Equal(10, path.Length.Millimeters, 1e-15);
        Assert.Equal(Direction.Right, path.StartDirection);
        Assert.Equal(Direction.Right, path.EndDirection);
        Assert.Equal(P(5, 0), path.PointAtLength(Length.FromMillimeters(5)));
        Assert.Throws<Pattern.Core.Diagnostics.ConstructionException>(() => CurvePath.From(P(0, 0)).LineTo(P(0, 0)).StartDirection);
    }

    private static CurvePath Outline => CurvePath.From(P(0, 0)).CurveTo(P(60, -6), P(120, -4), P(180, 4)).LineTo(P(200, 4))
        .CurveTo(P(266, 180), P(272, 220), P(270, 250)).ArcAround(P(240, 250), Angle.FromDegrees(90)).LineTo(P(120, 300)).CurveTo(P(118, 200), P(60, 180), P(0, 178)).Closed();
}
