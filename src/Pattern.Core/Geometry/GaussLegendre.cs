using System;
#if NET
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#endif

namespace Pattern.Core.Geometry;

/// <summary>Gauss-Legendre rules of 8, 16, 24, 32 and 48 points on -1 to 1.</summary>
/// <remarks>Only the positive nodes are kept, the negative ones mirror them; so each rule is a whole number of blocks of four.</remarks>
internal static class GaussLegendre
{
    /// <summary>How many rules there are, by rising order.</summary>
    internal const int RuleCount = 5;

    private static readonly double[] Nodes =
    [
        // 8 points
        0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363,
        // 16 points
        0.09501250983763744, 0.2816035507792589, 0.45801677765722737, 0.6178762444026438,
        0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499,
        // 24 points
        0.06405689286260563, 0.1911188674736163, 0.3150426796961634, 0.4337935076260451,
        0.5454214713888396, 0.6480936519369755, 0.7401241915785544, 0.820001985973903,
        0.8864155270044011, 0.9382745520027328, 0.9747285559713095, 0.9951872199970213,
        // 32 points
        0.04830766568773832, 0.1444719615827965, 0.23928736225213706, 0.33186860228212767,
        0.42135127613063533, 0.5068999089322294, 0.5877157572407623, 0.6630442669302152,
        0.7321821187402897, 0.7944837959679424, 0.84936761373257, 0.8963211557660521,
        0.9349060759377397, 0.9647622555875064, 0.9856115115452684, 0.9972638618494816,
        // 48 points
        0.03238017096286936, 0.0970046992094627, 0.1612223560688917, 0.22476379039468905,
        0.28736248735545555, 0.34875588629216075, 0.4086864819907167, 0.4669029047509584,
        0.523160974722233, 0.5772247260839727, 0.6288673967765136, 0.6778723796326639,
        0.7240341309238146, 0.7671590325157404, 0.8070662040294426, 0.8435882616243935,
        0.8765720202742479, 0.9058791367155696, 0.9313866907065543, 0.9529877031604309,
        0.9705915925462473, 0.9841245837228269, 0.9935301722663508, 0.9987710072524261,
    ];

    private static readonly double[] Weights =
    [
        // 8 points
        0.362683783378362, 0.31370664587788727, 0.22238103445337448, 0.10122853629037626,
        // 16 points
        0.1894506104550685, 0.18260341504492358, 0.16915651939500254, 0.14959598881657674,
        0.12462897125553388, 0.09515851168249279, 0.062253523938647894, 0.027152459411754096,
        // 24 points
        0.12793819534675216, 0.1258374563468283, 0.12167047292780339, 0.1155056680537256,
        0.10744427011596563, 0.09761865210411388, 0.08619016153195327, 0.0733464814110803,
        0.05929858491543678, 0.04427743881741981, 0.028531388628933663, 0.0123412297999872,
        // 32 points
        0.0965400885147278, 0.09563872007927486, 0.09384439908080457, 0.09117387869576389,
        0.08765209300440381, 0.08331192422694675, 0.07819389578707031, 0.0723457941088485,
        0.06582222277636185, 0.058684093478535544, 0.050998059262376175, 0.04283589802222668,
        0.03427386291302143, 0.02539206530926206, 0.01627439473090567, 0.007018610009470096,
        // 48 points
        0.06473769681268392, 0.06446616443595009, 0.06392423858464819, 0.06311419228625402,
        0.062039423159892665, 0.06070443916589388, 0.059114839698395635, 0.057277292100403214,
        0.055199503699984165, 0.05289018948519367, 0.05035903555385447, 0.04761665849249048,
        0.04467456085669428, 0.04154508294346475, 0.03824135106583071, 0.03477722256477044,
        0.03116722783279809, 0.027426509708356948, 0.02357076083932438, 0.01961616045735553,
        0.015579315722943849, 0.01147723457923454, 0.0073275539012762625, 0.0031533460523058385,
    ];

    private static readonly int[] Offsets = [0, 4, 12, 24, 40, 64];

    /// <summary>The number of points of a rule.</summary>
    internal static int Points(int rule) => 2 * (Offsets[rule + 1] - Offsets[rule]);

    /// <summary>A node of a rule: the positive ones first, then their mirrors.</summary>
    internal static double Node(int rule, int index)
    {
        int half = Offsets[rule + 1] - Offsets[rule];
        return index < half ? Nodes[Offsets[rule] + index] : -Nodes[Offsets[rule] + index - half];
    }

    /// <summary>The weight of a node of a rule.</summary>
    internal static double Weight(int rule, int index)
    {
        int half = Offsets[rule + 1] - Offsets[rule];
        return Weights[Offsets[rule] + (index < half ? index : index - half)];
    }

    /// <summary>Integrates the speed |e0 + e1 x + e2 x^2| of a plane curve over x from -1 to 1.</summary>
    /// <remarks>Both of a pair of mirrored nodes share the even and the odd part, so that a pair costs little more than one.</remarks>
    internal static double Speed(int rule, double ex0, double ex1, double ex2, double ey0, double ey1, double ey2)
    {
        int from = Offsets[rule];
        int to = Offsets[rule + 1];
#if NET
        if (Vector256.IsHardwareAccelerated)
        {
            ref double nodes = ref MemoryMarshal.GetArrayDataReference(Nodes);
            ref double weights = ref MemoryMarshal.GetArrayDataReference(Weights);
            var x0 = Vector256.Create(ex0);
            var x1 = Vector256.Create(ex1);
            var x2 = Vector256.Create(ex2);
            var y0 = Vector256.Create(ey0);
            var y1 = Vector256.Create(ey1);
            var y2 = Vector256.Create(ey2);
            Vector256<double> sum = Vector256<double>.Zero;
            for (int i = from; i < to; i += Vector256<double>.Count)
            {
                var node = Vector256.LoadUnsafe(ref nodes, (nuint)i);
                Vector256<double> square = node * node;
                Vector256<double> evenX = Vector256.FusedMultiplyAdd(x2, square, x0);
                Vector256<double> evenY = Vector256.FusedMultiplyAdd(y2, square, y0);
                Vector256<double> oddX = x1 * node;
                Vector256<double> oddY = y1 * node;
                Vector256<double> aheadX = evenX + oddX;
                Vector256<double> aheadY = evenY + oddY;
                Vector256<double> behindX = evenX - oddX;
                Vector256<double> behindY = evenY - oddY;
                Vector256<double> ahead = Vector256.Sqrt(Vector256.FusedMultiplyAdd(aheadX, aheadX, aheadY * aheadY));
                Vector256<double> behind = Vector256.Sqrt(Vector256.FusedMultiplyAdd(behindX, behindX, behindY * behindY));
                sum = Vector256.FusedMultiplyAdd(Vector256.LoadUnsafe(ref weights, (nuint)i), ahead + behind, sum);
            }

            return Vector256.Sum(sum);
        }
#endif
        return SpeedScalar(from, to, ex0, ex1, ex2, ey0, ey1, ey2);
    }

    private static double SpeedScalar(int from, int to, double ex0, double ex1, double ex2, double ey0, double ey1, double ey2)
    {
        double sum = 0;
        for (int i = from; i < to; i++)
        {
            double node = Nodes[i];
            double square = node * node;
            double evenX = ex0 + (ex2 * square);
            double evenY = ey0 + (ey2 * square);
            double oddX = ex1 * node;
            double oddY = ey1 * node;
            double aheadX = evenX + oddX;
            double aheadY = evenY + oddY;
            double behindX = evenX - oddX;
            double behindY = evenY - oddY;
            sum += Weights[i] * (Math.Sqrt((aheadX * aheadX) + (aheadY * aheadY)) + Math.Sqrt((behindX * behindX) + (behindY * behindY)));
        }

        return sum;
    }
}
