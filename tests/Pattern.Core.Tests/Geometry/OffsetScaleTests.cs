using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>An offset does not depend on the size of a shape: drawn smaller, with a width and a tolerance as much smaller, it is the same shape.</summary>
public class OffsetScaleTests
{
    private const double ToleranceMm = 0.01;

    // Each bends somewhere more tightly than most of the widths, so its parallel turns back there and is trimmed. At the smallest size each is about a tenth of a
    // millimetre long. Powers of two change no digit of any number, so the same pieces are found, not only the same line.
    [Theory]
    [InlineData(1.0 / 4)]
    [InlineData(1.0 / 64)]
    [InlineData(1.0 / 256)]
    [InlineData(1.0 / 1024)]
    public void Offset_OfAShapeDrawnSmaller_IsTheSameShape(double scale)
    {
        foreach (double depth in new[] { 40.0, 60, 90, 120, 180 })
        {
            foreach (double width in new[] { 8.0, 15, 25, 35 })
            {
                PathSegment[] full = Parallel(1, depth, width);
                PathSegment[] small = Parallel(scale, depth, width);

                string said = FormattableString.Invariant($"depth {depth}, width {width}");
                Assert.True(full.Length == small.Length, $"{said}: {full.Length} segments, {small.Length} when small");
                double apart = full.Zip(small, (one, other) => Apart(one.End, other.End, scale)).Max();
                Assert.True(apart < ToleranceMm, $"{said}: {apart}");
            }
        }
    }

    private static double Apart(Point2D one, Point2D other, double scale) => Raw.Hypot(one.XMm - (other.XMm / scale), one.YMm - (other.YMm / scale));

    private static PathSegment[] Parallel(double scale, double depth, double width)
        => [.. OffsetBuilder.Build(Bow(scale, depth), width * scale, OffsetJoin.Round, ToleranceMm * scale).Paths.SelectMany(path => path.SegmentsRaw)];

    private static CurvePath Bow(double scale, double depth)
        => CurvePath.FromCubic(new CubicBezier(0, 0, 20 * scale, -depth * scale, 80 * scale, -depth * scale, 100 * scale, 0));
}
