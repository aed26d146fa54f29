using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>A curve between two ends that has a required length: what a waistline needs.</content>
public readonly partial struct CubicBezier
{
    // A required length may shorten the handles further than fairness would.
    private const double ShortestHandleShare = 0.02;

    /// <summary>A curve through two ends with given headings that has a given length.</summary>
    /// <remarks>Of the curves whose two handles keep the proportion of the fairest one (<see cref="Between(Point2D, Direction, Point2D, Direction)"/>),
    /// the one of this length. The length never falls while the handles grow, so there is exactly one. Shorter handles
    /// than 2 % of the chord, and handles so long that the curve crosses itself or doubles back, are refused.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <param name="length">The arc length it is to have; held to within <see cref="GeometryTolerance.Default"/>.</param>
    /// <exception cref="ArgumentException">Start and end are the same point.</exception>
    /// <exception cref="ConstructionException">No such curve has that length: it is too short or too long.</exception>
    public static CubicBezier BetweenWithLength(
        Point2D start, Direction startDirection, Point2D end, Direction endDirection, Length length)
    {
        double wantedMm = Guard.Millimetres(length, nameof(length));
        CubicBezier fairest = Between(start, startDirection, end, endDirection);
        var family = new HandleFamily(fairest, wantedMm);
        double chord = start.DistanceMm(end);
        double enoughMm = 0.1 * GeometryTolerance.DefaultMm * Math.Min(1, chord / GeometryTolerance.FullSizeMm);
        double missing = family.At(1);
        if (Math.Abs(missing) <= enoughMm)
        {
            return fairest;
        }

        double shortestHandle = Math.Min(Raw.Hypot(fairest.X1 - fairest.X0, fairest.Y1 - fairest.Y0), Raw.Hypot(fairest.X3 - fairest.X2, fairest.Y3 - fairest.Y2));
        double low = 1;
        double high = 1;
        double valueLow = missing;
        double valueHigh = missing;
        if (missing > 0)
        {
            low = ShortestHandleShare * chord / shortestHandle;
            valueLow = family.At(low);
            if (valueLow > 0)
            {
                Length least = Length.FromMillimeters(wantedMm + valueLow);
                throw new ConstructionException(DiagnosticCode.LengthTooShort, length, least) { Measured = length, Allowed = least };
            }
        }
        else
        {
            for (int i = 0; i < 60 && valueHigh < 0; i++)
            {
                low = high;
                valueLow = valueHigh;
                high *= 2;
                valueHigh = family.At(high);
            }
        }

        double factor = RootFinder.Find(family, low, valueLow, high, valueHigh, enoughMm);
        CubicBezier curve = family.Curve(factor);
        if (factor > 1 && curve.IsTangled && !fairest.IsTangled)
        {
            Length most = Length.FromMillimeters(family.LongestUntangledMm(factor));
            throw new ConstructionException(DiagnosticCode.LengthTooLong, length, most) { Measured = length, Allowed = most };
        }

        return curve;
    }

    /// <summary>Whether the curve does what no drafter means: it crosses itself, or doubles back where it changes sides.</summary>
    internal bool IsTangled => new PowerCubic(this).TrySelfCrossing(out _, out _) || DoublesBack;

    private bool DoublesBack
    {
        get
        {
            Vector2D chord = End - Start;
            Vector2D d0 = StartControl - Start;
            Vector2D d1 = EndControl - StartControl;
            Vector2D d2 = End - EndControl;
            double c01 = d0.CrossMm2(d1);
            double c02 = d0.CrossMm2(d2);
            double c12 = d1.CrossMm2(d2);
            double along0 = d0.DotMm2(chord);
            double along1 = d1.DotMm2(chord);
            double along2 = d2.DotMm2(chord);
            double inflection0;
            double inflection1;
            if (Math.Max(Math.Abs(c01), Math.Max(Math.Abs(c02), Math.Abs(c12))) <= 1e-12 * HodographMm * HodographMm)
            {
                // Straight: it doubles back where its speed along the chord is least, if at all.
                inflection0 = (along0 - along1) / (along0 - along1 + (along2 - along1));
                inflection1 = double.NaN;
            }
            else
            {
                Polynomial.QuadraticRoots(2 * c01, c02, 2 * c12, out inflection0, out inflection1);
            }

            return GoesBackAt(inflection0, along0, along1, along2) || GoesBackAt(inflection1, along0, along1, along2);
        }
    }

    private static bool GoesBackAt(double t, double along0, double along1, double along2)
        => t > 0 && t < 1 && ((1 - t) * (1 - t) * along0) + (2 * (1 - t) * t * along1) + (t * t * along2) < 0;

    /// <summary>The curves whose handles are so many times as long as those of the fairest one.</summary>
    private readonly struct HandleFamily(CubicBezier fairest, double wantedMm) : IScalarFunction
    {
        public double At(double x) => Curve(x).LengthMm() - wantedMm;

        internal CubicBezier Curve(double factor) => new(
            fairest.X0,
            fairest.Y0,
            fairest.X0 + (factor * (fairest.X1 - fairest.X0)),
            fairest.Y0 + (factor * (fairest.Y1 - fairest.Y0)),
            fairest.X3 + (factor * (fairest.X2 - fairest.X3)),
            fairest.Y3 + (factor * (fairest.Y2 - fairest.Y3)),
            fairest.X3,
            fairest.Y3);

        internal double LongestUntangledMm(double tooLong)
        {
            double low = 1;
            double high = tooLong;
            for (int i = 0; i < 40; i++)
            {
                double middle = 0.5 * (low + high);
                if (Curve(middle).IsTangled)
                {
                    high = middle;
                }
                else
                {
                    low = middle;
                }
            }

            return Curve(low).LengthMm();
        }
    }
}
