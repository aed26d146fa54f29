using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>What came of reading a text: a length, or the reason why it is none.</summary>
internal readonly struct TapeReading
{
    private readonly DiagnosticCode _code;
    private readonly object[]? _facts;

    internal TapeReading(double value, LengthUnit unit, double millimetres, decimal numerator, int denominator)
    {
        Numerator = numerator;
        Denominator = denominator;
        Value = value;
        Unit = unit;
        Millimetres = millimetres;
        _code = default;
        _facts = null;
    }

    internal TapeReading(DiagnosticCode code, params object[] facts)
    {
        Numerator = 0m;
        Denominator = 1;
        Value = 0.0;
        Unit = LengthUnit.Millimeter;
        Millimetres = 0.0;
        _code = code;
        _facts = facts;
    }

    internal bool IsLength => _facts is null;

    /// <summary>Over <see cref="Denominator"/> exactly what the text says, in <see cref="Unit"/>.</summary>
    internal decimal Numerator { get; }

    internal int Denominator { get; }

    internal double Value { get; }

    internal LengthUnit Unit { get; }

    internal double Millimetres { get; }

    /// <summary>Why it is none.</summary>
    internal DiagnosticCode Code => _code;

    internal string Message => MessageRegistry.Format(_code, _facts ?? []);

    internal Length ToLength() => Length.From(Value, Unit);
}
