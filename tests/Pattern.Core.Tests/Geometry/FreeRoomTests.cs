using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

public class FreeRoomTests
{
    private static readonly Point2D Middle = new(100, 60);

    // By hand: in a rectangle of 200 by 120 mm with a line along its middle, a box of 40 by 20 mm stands on the line or hangs from it.
    [Fact]
    public void TryFind_LineThroughTheMiddle_StandsBesideIt()
    {
        FreeRoom room = Room(out CurvePath outline);
        room.Take(new Point2D(0, 60), new Point2D(200, 60));

        Assert.True(room.TryFind(outline, 40, 20, Middle, out BoundingBox place));

        Assert.Equal(100, place.Centre.XMm, 1e-9);
        Assert.InRange(Math.Abs(place.Centre.YMm - 60), 10, 12);
        Assert.Equal((40, 20), (place.Width.Millimeters, place.Height.Millimeters));
    }

    [Fact]
    public void TryFind_UprightLineThroughTheMiddle_StandsAgainstIt()
    {
        FreeRoom room = Room(out CurvePath outline);
        room.Take(new Point2D(100, 0), new Point2D(100, 120), 1.5);

        Assert.True(room.TryFind(outline, 40, 20, Middle, out BoundingBox place));

        Assert.Equal(60, place.Centre.YMm, 1e-9);
        Assert.Equal(20 + 1.5, Math.Abs(place.Centre.XMm - 100), 1e-9);
    }

    [Theory]
    [InlineData(201, 20)]
    [InlineData(40, 121)]
    public void TryFind_LargerThanTheOutline_FindsNothing(double width, double height) => Assert.False(Room(out CurvePath outline).TryFind(outline, width, height, Middle, out _));

    // A strip of a hundred metres is looked through in as many rows as one of a metre: a line in every row leaves nothing.
    [Fact]
    public void TryFind_InAHundredMetres_LooksAtFiveHundredRows()
    {
        CurvePath strip = Rectangle(30, 100_000);
        var room = new FreeRoom();
        room.Take(strip);
        room.Take(new Point2D(15, 0), new Point2D(15, 100_000));

        Assert.False(room.TryFind(strip, 20, 10, new Point2D(15, 50_000), out _));
        Assert.InRange(room.RowsSeen, 400, 1002);
    }

    // Against places looked for on a grid, each tested by points of the lines: what is found is free and inside, nothing that is clearly nearer was missed, and where
    // nothing is found no place is clearly free.
    [Property(MaxTest = 200)]
    public bool TryFind_AmongAnyLines_AgreesWithAGrid(int seed)
    {
        var random = new Random(seed);
        FreeRoom room = Room(out CurvePath outline);
        (Point2D From, Point2D To)[] lines = [.. Enumerable.Range(0, random.Next(8)).Select(_ => (At(random), At(random)))];
        foreach ((Point2D from, Point2D to) in lines)
        {
            room.Take(from, to);
        }

        (double width, double height) = (10 + (80 * random.NextDouble()), 8 + (40 * random.NextDouble()));
        Point2D near = At(random);
        Point2D[] taken = [.. lines.SelectMany(line => Enumerable.Range(0, 401).Select(i => line.From + ((line.To - line.From) * (i / 400.0))))];
        double Nearest(double roomMm) => (from x in Enumerable.Range(0, 101)
                                          from y in Enumerable.Range(0, 61)
                                          let centre = new Point2D(2 * x, 2 * y)
                                          where IsFree(centre, width + roomMm, height + roomMm, taken)
                                          select centre.DistanceMm(near)).DefaultIfEmpty(double.PositiveInfinity).Min();

        if (!room.TryFind(outline, width, height, near, out BoundingBox place))
        {
            return double.IsPositiveInfinity(Nearest(2.5));
        }

        return IsFree(place.Centre, width - 1e-6, height - 1e-6, taken) && place.Centre.DistanceMm(near) <= Nearest(2.5) + 2;
    }

    private static bool IsFree(Point2D centre, double width, double height, Point2D[] taken)
        => centre.XMm - (width / 2) >= 0 && centre.XMm + (width / 2) <= 200 && centre.YMm - (height / 2) >= 0 && centre.YMm + (height / 2) <= 120
            && !Array.Exists(taken, point => Math.Abs(point.XMm - centre.XMm) < width / 2 && Math.Abs(point.YMm - centre.YMm) < height / 2);

    private static Point2D At(Random random) => new(200 * random.NextDouble(), 120 * random.NextDouble());

    private static FreeRoom Room(out CurvePath outline)
    {
        outline = Rectangle(200, 120);
        var room = new FreeRoom();
        room.Take(outline);
        return room;
    }

    private static CurvePath Rectangle(double widthMm, double heightMm) => CurvePath.From(Point2D.Origin)
        .LineTo(new Point2D(widthMm, 0)).LineTo(new Point2D(widthMm, heightMm)).LineTo(new Point2D(0, heightMm)).Closed();
}
