using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>How exact the kernel is unless it is asked otherwise.</summary>
public static class GeometryTolerance
{
    internal const double DefaultMm = 1e-9;

    // A tolerance is meant for a piece of cloth this large; smaller curves are held to the same share of their size.
    internal const double FullSizeMm = 1000;

    // Far below what a plotter or a person can tell, far above what rounding does to coordinates of a sheet.
    internal const double JoinMm = 1e-6;

    internal const double ArcAsCubicsMm = 1e-5;

    /// <summary>The largest error of a length, an inverse length or a nearest point.</summary>
    /// <remarks>For curves up to a metre. A smaller curve is held to the same share of its size, so that a curve of a
    /// thousandth of a millimetre is still measured to twelve digits. On curves so large that rounding alone does more
    /// (coordinates above about a kilometre), rounding is the limit. Every tolerance that a caller passes is read the same way.</remarks>
    /// <value>0.000000001 mm.</value>
    public static Length Default => Length.FromMillimeters(DefaultMm);

    /// <summary>The largest gap that still joins two segments of a path.</summary>
    /// <value>0.000001 mm.</value>
    public static Length Join => Length.FromMillimeters(JoinMm);

    /// <summary>The largest distance between an arc and the cubics that stand for it.</summary>
    /// <value>0.00001 mm.</value>
    public static Length ArcAsCubics => Length.FromMillimeters(ArcAsCubicsMm);

    /// <summary>Millimetres of a tolerance that a caller passes.</summary>
    internal static double CheckedMm(Length tolerance, string parameter)
    {
        double toleranceMm = Guard.Millimetres(tolerance, parameter);
        return toleranceMm > 0
            ? toleranceMm
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.ToleranceNotPositive, parameter, tolerance));
    }

    /// <summary>By how much a length that a caller adds up from parts may pass the end.</summary>
    internal static double SlackMm(double lengthMm) => (DefaultMm * Math.Min(1, lengthMm / FullSizeMm)) + (8 * Raw.Epsilon * lengthMm);
}
