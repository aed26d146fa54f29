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

    /// <summary>The largest error of a length, an inverse length or a nearest point.</summary>
    /// <remarks>For curves up to a metre. A smaller curve is held to the same share of its size, so that a curve of a
    /// thousandth of a millimetre is still measured to twelve digits. On curves so large that rounding alone does more
    /// (coordinates above about a kilometre), rounding is the limit. Every tolerance that a caller passes is read the same way.</remarks>
    /// <value>0.000000001 mm.</value>
    public static Length Default => Length.FromMillimeters(DefaultMm);

    /// <summary>The largest gap that still joins two segments of a path.</summary>
    /// <value>0.000001 mm.</value>
    public static Length Join => Length.FromMillimeters(JoinMm);
}
