using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>How far the fitted (pegged) variant comes in. Each blends into the straight hip stretch without a corner.</summary>
/// <remarks>A skirt narrower at the hem than at the hip gives no room to walk: it needs a slit, a vent or a pleat.</remarks>
public sealed record SkirtFit
{
    /// <summary>The usual fitted skirt off an inch tape: 1 in at the side hem and at the centre back hem, 1/2 in at the centre back waist. Common practice, no source.</summary>
    public static SkirtFit Usual { get; } = new()
    {
        SideHem = Length.FromInches(1),
        CentreBackHem = Length.FromInches(1),
        CentreBackWaist = Length.FromInches(0.5),
    };

    /// <summary>The usual fitted skirt off a centimetre tape: 2.5 cm at both hems, 1.2 cm at the centre back waist. Common practice, no source.</summary>
    public static SkirtFit UsualMetric { get; } = new()
    {
        SideHem = Length.FromCentimeters(2.5),
        CentreBackHem = Length.FromCentimeters(2.5),
        CentreBackWaist = Length.FromCentimeters(1.2),
    };

    /// <summary>A straight skirt: nothing comes in.</summary>
    public static SkirtFit Straight { get; } = new();

    /// <summary>How far each side hem comes in, front and back alike.</summary>
    /// <value>Default zero.</value>
    public Length SideHem
    {
        get => Length.FromMillimeters(SideHemMm);
        init => SideHemMm = Checked(value, nameof(SideHem));
    }

    /// <summary>How far the centre back hem comes in; the centre back is a seam then.</summary>
    /// <value>Default zero.</value>
    public Length CentreBackHem
    {
        get => Length.FromMillimeters(CentreBackHemMm);
        init => CentreBackHemMm = Checked(value, nameof(CentreBackHem));
    }

    /// <summary>How far the centre back waist comes in; the side seam takes in that much less. Never more than there is to take in between hip and waist.</summary>
    /// <value>Default zero.</value>
    public Length CentreBackWaist
    {
        get => Length.FromMillimeters(CentreBackWaistMm);
        init => CentreBackWaistMm = Checked(value, nameof(CentreBackWaist));
    }

    /// <summary>Where the shaping of the centre back waist blends into the straight centre back.</summary>
    /// <value>Default <see cref="CentreBackBlend.UpperHip"/>.</value>
    public CentreBackBlend CentreBackBlend
    {
        get;
        init => field = (CentreBackBlend)Guard.Choice((int)value, 2, nameof(CentreBackBlend));
    }

    internal double SideHemMm { get; private init; }

    internal double CentreBackHemMm { get; private init; }

    internal double CentreBackWaistMm { get; private init; }

    /// <summary>All three in millimetres, whatever the culture.</summary>
    public override string ToString()
        => FormattableString.Invariant($"side hem {SideHemMm:0.##} mm, centre back hem {CentreBackHemMm:0.##} mm, centre back waist {CentreBackWaistMm:0.##} mm");

    private static double Checked(Length value, string parameter) => Guard.Millimetres(value, 0, 150, parameter);
}
