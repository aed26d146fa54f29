using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Tests.Pieces;

/// <summary>Looking for where a cut line is too near ends, however long the lines are; work is counted in looks, never in time.</summary>
public class ClearanceTests
{
    private const double NeededMm = 10;

    // A line beside the edge at just the distance needed is the hardest: no look settles more than its own step. One hundred metres need more steps of half a
    // millimetre than there are, and ten kilometres no more than that.
    [Theory]
    [InlineData(1e5)]
    [InlineData(1e7)]
    public void Find_AlongALineOfAnyLength_ReachesItsBoundAndNoMore(double lengthMm)
    {
        long looks = LooksAt(lengthMm, NeededMm, NeededMm, out CutFault? fault);

        Assert.Null(fault);
        AssertCounted(Clearance.MostSteps + 1, looks);
    }

    // By hand: 100 mm are halved until a step is no longer than half a millimetre, so into 256, between 257 looks.
    [Fact]
    public void Find_AlongALineOfAGarment_LooksEveryHalfMillimetre()
    {
        long looks = LooksAt(100, NeededMm, NeededMm, out CutFault? fault);

        Assert.Null(fault);
        AssertCounted(257, looks);
    }

    // By hand: both ends are 200 mm away, so no point of 100 mm between them is nearer than 150 mm.
    [Fact]
    public void Find_FarFromAnEdge_LooksAtBothEndsOnly()
    {
        AssertCounted(2, LooksAt(100, 200, 150, out CutFault? fault));

        Assert.Null(fault);
    }

    [Fact]
    public void Find_TooNear_SaysWhereAndHowNear()
    {
        var slanting = CurvePath.FromLine(new LineSegment(new Point2D(0, 20), new Point2D(100, 4)));

        CutFault fault = Assert.IsType<CutFault>(Clearance.Find(slanting, Edge(100), NeededMm));

        Assert.Equal(4, fault.NearestMm!.Value, 1e-9);
        Assert.Equal(new Point2D(100, 4), fault.At);
    }

    private static PanelEdge Edge(double lengthMm, double slopeX = 1, double slopeY = 0)
        => new(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(Point2D.Origin, new Point2D(slopeX * lengthMm, slopeY * lengthMm))));

    // Both lie slanting, 3 across and 4 up: upright boxes around them tell nothing.
    private static long LooksAt(double lengthMm, double awayMm, double neededMm, out CutFault? fault)
    {
        var beside = CurvePath.FromLine(new LineSegment(
            new Point2D(-0.8 * awayMm, 0.6 * awayMm), new Point2D((0.6 * lengthMm) - (0.8 * awayMm), (0.8 * lengthMm) + (0.6 * awayMm))));
        long before = SearchWork.Steps;
        fault = Clearance.Find(beside, Edge(lengthMm, 0.6, 0.8), neededMm);
        return SearchWork.Steps - before;
    }

    // A release build counts nothing.
    private static void AssertCounted(long expected, long looks)
    {
#if DEBUG
        Assert.Equal(expected, looks);
#else
        Assert.Equal(0, Math.Min(expected, looks));
#endif
    }
}
