using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The darts of one panel. What is left out follows the shaping table and the lengths below.</summary>
public sealed record DartPlan
{
    /// <summary>The most darts that one panel takes.</summary>
    public const int MostDarts = 4;

    /// <summary>How many darts share the intake evenly; 0 gives all of it to the side seam.</summary>
    /// <value>Default: as many as keep each within the largest single dart.</value>
    public int? Count
    {
        get;
        init => field = value is { } count ? Guard.InRange(count, 0, MostDarts, nameof(Count)) : null;
    }

    /// <summary>The intake of all darts of the panel together, straight from leg to leg.</summary>
    /// <value>Default: what the shaping table says, within the caps for side seam and dart.</value>
    public Length? Intake
    {
        get => AsLength(IntakeMm);
        init => IntakeMm = Checked(value, 0, nameof(Intake));
    }

    /// <summary>From the middle of the intake to the apex, for the dart nearest the centre.</summary>
    /// <value>Default: front 5 in (12.5 cm), over the belly; back 6 in (15 cm), since the seat is fullest lower down; but never more than eight times the intake of the dart: a
    /// longer one is a tuck that shows. Common practice, no source.</value>
    public Length? Length
    {
        get => AsLength(LengthMm);
        init => LengthMm = Checked(value, 10, nameof(Length));
    }

    /// <summary>How much shorter each further dart is than the one before it, counted from the centre.</summary>
    /// <value>Default 3/4 in (2 cm for a body in centimetres), the middle of the usual 1/2 to 1 in: the hip bone is nearer the waist than the seat.</value>
    public Length Shortening
    {
        get => UnitsNet.Length.FromMillimeters(ShorteningMm);
        init => GivenShorteningMm = Guard.Millimetres(value, 0, 100, nameof(Shortening));
    }

    internal double? IntakeMm { get; private init; }

    internal double? LengthMm { get; private init; }

    internal double? GivenShorteningMm { get; private init; }

    internal double ShorteningMm => GivenShorteningMm ?? 0.75 * 25.4;

    /// <summary>What was said, lengths in millimetres, whatever the culture.</summary>
    public override string ToString()
    {
        string count = Count is { } darts ? FormattableString.Invariant($"{darts} darts") : "darts as needed";
        string intake = IntakeMm is { } wide ? FormattableString.Invariant($"intake {wide:0.##} mm") : "intake as the table says";
        string length = LengthMm is { } deep ? FormattableString.Invariant($"length {deep:0.##} mm") : "usual length";
        return FormattableString.Invariant($"{count}, {intake}, {length}, each {ShorteningMm:0.##} mm shorter than the one before");
    }

    private static double? Checked(Length? value, double leastMm, string parameter)
        => value is { } given ? Guard.Millimetres(given, leastMm, 500, parameter) : null;

    private static Length? AsLength(double? millimetres) => millimetres is { } given ? UnitsNet.Length.FromMillimeters(given) : null;
}
