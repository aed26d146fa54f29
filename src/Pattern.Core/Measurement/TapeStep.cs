using System;
using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>The finest mark of the tape that a length is read from or printed to; it also says whether that tape is in inches or metric.</summary>
/// <remarks>The default value is <see cref="Eighth"/>, what most cutters draft in. Two steps are equal when they are the same mark of the same tape.</remarks>
public readonly struct TapeStep : IEquatable<TapeStep>
{
    private const int DefaultParts = 8;

    // Above zero: parts of an inch. Below zero: parts of a millimetre. Zero: the default.
    private readonly int _parts;

    private TapeStep(int parts) => _parts = parts;

    /// <summary>Half an inch.</summary>
    public static TapeStep Half => new(2);

    /// <summary>A quarter of an inch.</summary>
    public static TapeStep Quarter => new(4);

    /// <summary>An eighth of an inch: the default.</summary>
    public static TapeStep Eighth => new(8);

    /// <summary>A sixteenth of an inch.</summary>
    public static TapeStep Sixteenth => new(16);

    /// <summary>A thirty-second of an inch.</summary>
    public static TapeStep ThirtySecond => new(32);

    /// <summary>A sixty-fourth of an inch.</summary>
    public static TapeStep SixtyFourth => new(64);

    /// <summary>A millimetre, printed in centimetres with one decimal: 51.5 cm.</summary>
    public static TapeStep Millimeter => new(-1);

    /// <summary>Half a millimetre, printed in centimetres with two decimals: 51.55 cm.</summary>
    public static TapeStep HalfMillimeter => new(-2);

    /// <summary>A tenth of a millimetre, printed in centimetres with two decimals: 51.52 cm.</summary>
    public static TapeStep TenthMillimeter => new(-10);

    /// <summary>A hundredth of a millimetre, printed in centimetres with three decimals: 51.523 cm. What computed work holds.</summary>
    public static TapeStep HundredthMillimeter => new(-100);

    /// <summary>The distance from one mark to the next.</summary>
    public Length Size => IsMetric ? Length.FromMillimeters(SizeMm) : Length.FromInches(1.0 / Parts);

    /// <summary>The unit that lengths are printed in at this step: inch or centimetre.</summary>
    public LengthUnit Unit => IsMetric ? LengthUnit.Centimeter : LengthUnit.Inch;

    internal bool IsMetric => _parts < 0;

    // Parts of an inch, or of a millimetre.
    internal int Parts => _parts == 0 ? DefaultParts : Math.Abs(_parts);

    internal int CentimetreDecimals => Parts switch { 1 => 1, 2 or 10 => 2, _ => 3 };

    internal double SizeMm => (IsMetric ? 1.0 : Tape.MillimetresPerInch) / Parts;

    /// <summary>The marks of a tape, the finest first.</summary>
    internal static TapeStep[] Ladder(LengthUnit unit) => Tape.IsMetric(unit, nameof(unit))
        ? [HundredthMillimeter, TenthMillimeter, HalfMillimeter, Millimeter]
        : [SixtyFourth, ThirtySecond, Sixteenth, Eighth, Quarter, Half];

    /// <summary>The step that suits a unit when nobody chose one: eighths for inches, feet and yards; millimetres for the metric units.</summary>
    /// <param name="unit">Inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    public static TapeStep For(LengthUnit unit) => Tape.IsMetric(unit, nameof(unit)) ? Millimeter : Eighth;

    /// <inheritdoc/>
    public bool Equals(TapeStep other) => IsMetric == other.IsMetric && Parts == other.Parts;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TapeStep other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => IsMetric ? -Parts : Parts;

    /// <summary>The step in words: <c>1/8 in</c>, <c>0.5 mm</c>.</summary>
    public override string ToString() => IsMetric
        ? SizeMm.ToString(CultureInfo.InvariantCulture) + " mm"
        : "1/" + Parts.ToString(CultureInfo.InvariantCulture) + " in";

    /// <summary>Whether two steps are the same mark of the same tape.</summary>
    public static bool operator ==(TapeStep left, TapeStep right) => left.Equals(right);

    /// <summary>Whether two steps differ.</summary>
    public static bool operator !=(TapeStep left, TapeStep right) => !left.Equals(right);
}
