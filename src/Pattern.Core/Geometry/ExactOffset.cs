namespace Pattern.Core.Geometry;

/// <summary>The signed distance from a line through two points, times the distance of these, in twice the digits of a double.</summary>
/// <remarks>A line that runs along a nearly straight curve a billionth of a millimetre beside it crosses it where differences say,
/// of which plain doubles have lost every digit.</remarks>
internal static class ExactOffset
{
    internal static double Of(in Point2D from, in Point2D to, in Point2D point)
    {
        Difference(to.XMm, from.XMm, out double dx, out double dxLow);
        Difference(to.YMm, from.YMm, out double dy, out double dyLow);
        Difference(point.XMm, from.XMm, out double px, out double pxLow);
        Difference(point.YMm, from.YMm, out double py, out double pyLow);
        Product(dx, py, out double left, out double leftLow);
        Product(dy, px, out double right, out double rightLow);
        Difference(left, right, out double sum, out double sumLow);
        double low = (leftLow - rightLow) + sumLow + ((dx * pyLow) + (dxLow * py)) - ((dy * pxLow) + (dyLow * px));
        return sum + low;
    }

    private static void Difference(double a, double b, out double difference, out double low)
    {
        difference = a - b;
        double virtualB = a - difference;
        double virtualA = difference + virtualB;
        low = (a - virtualA) + (virtualB - b);
    }

    private static void Product(double a, double b, out double product, out double low)
    {
        product = a * b;
#if NET
        low = System.Math.FusedMultiplyAdd(a, b, -product);
#else
        // Split into halves of 26 bits (Dekker); exact while no coordinate comes near the end of the range.
        const double Splitter = 134217729;
        double aBig = Splitter * a;
        double aHigh = aBig - (aBig - a);
        double aLow = a - aHigh;
        double bBig = Splitter * b;
        double bHigh = bBig - (bBig - b);
        double bLow = b - bHigh;
        low = (aLow * bLow) - (((product - (aHigh * bHigh)) - (aLow * bHigh)) - (aHigh * bLow));
#endif
    }
}
