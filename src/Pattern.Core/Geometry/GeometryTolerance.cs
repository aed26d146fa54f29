using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>How exact the kernel is unless it is asked otherwise.</summary>
public static class GeometryTolerance
{
    internal const double DefaultMm = 1e-9;

    // Far below what a plotter or a person can tell, far above what rounding does to coordinates of a sheet.
    internal const double JoinMm = 1e-6;

    /// <summary>The largest error of a length, an inverse length or a nearest point.</summary>
    /// <remarks>On curves so large that rounding alone does more (coordinates above about a kilometre), rounding is the limit.</remarks>
    /// <value>0.000000001 mm.</value>
    public static Length Default => Length.FromMillimeters(DefaultMm);

    /// <summary>The largest gap that still joins two segments of a path.</summary>
    /// <value>0.000001 mm.</value>
    public static Length Join => Length.FromMillimeters(JoinMm);
}
