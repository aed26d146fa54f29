using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

public class SharedEndsTests
{
    // An allowance of 0.018 mm left two specks beside each other, each as long as a joint may be wide; without both, the line was 0.000002 mm open and refused to be one.
    [Fact]
    public void WithoutSpecks_TwoBesideEachOther_LeaveNoGap()
    {
        const double last = 120.0000018;
        var line = new List<PathSegment>
        {
            Line(At(0, 0), At(120, 0)),
            Line(At(120, 0), At(120.0000009, 0)),
            Line(At(120.0000009, 0), At(last, 0)),
            Line(At(last, 0), At(last, 50)),
        };

        List<PathSegment> left = SharedEnds.WithoutSpecks(line);

        Assert.Equal(2, left.Count);
        Assert.Equal(170, CurvePath.FromSegments(left).Length.Millimeters, 5);
    }

    private static PathSegment Line(Point2D from, Point2D to) => PathSegment.FromLine(new LineSegment(from, to));
}
