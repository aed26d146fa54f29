using System;
using System.Collections;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Text;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>What was measured on one body. Only that: nothing is filled in from tables or averages.</summary>
/// <remarks>Immutable: every verb returns a new object. Lists itself in the order of <see cref="BodyMeasurement.All"/>, those that you defined last and by term, however it was put together.</remarks>
/// <example><code>
/// var body = BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind")
///     .With(BodyMeasurement.WaistGirth, "29 1/2")
///     .With(BodyMeasurement.HipGirth, "39 3/4");
/// </code></example>
public sealed class BodyMeasurements : IReadOnlyCollection<KeyValuePair<BodyMeasurement, Length>>
{
    private readonly Entry[] _entries;

    private BodyMeasurements(LengthUnit unit, string? name, Entry[] entries)
    {
        Unit = unit;
        Name = name;
        _entries = entries;
    }

    /// <summary>What numbers without a unit are in, and what the measurements are printed in.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Whose measurements they are, or null where nobody said.</summary>
    public string? Name { get; }

    /// <summary>How many measurements were taken.</summary>
    public int Count => _entries.Length;

    /// <summary>One measurement, in the unit that it was taken in.</summary>
    /// <param name="key">Which.</param>
    /// <exception cref="ConstructionException">It was not taken.</exception>
    public Length this[BodyMeasurement key] => Require(key, "this draft");

    /// <summary>No measurements yet, and the unit to take them in.</summary>
    /// <param name="unit">Inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    [Pure]
    public static BodyMeasurements In(LengthUnit unit) => new(Tape.KnownUnit(unit, nameof(unit)), null, []);

    /// <summary>Says whose measurements they are.</summary>
    /// <param name="name">For the title block of the drawing and for messages.</param>
    /// <exception cref="ArgumentException">The name is empty or blank.</exception>
    [Pure]
    public BodyMeasurements Named(string name) => new(Unit, Guard.Name(name, nameof(name)), _entries);

    /// <summary>Adds one measurement, or replaces it.</summary>
    /// <param name="key">Which.</param>
    /// <param name="text">As read from the tape: <c>29 1/2</c>, <c>29 1/2 in</c>, <c>74.9 cm</c>. Without a unit it is in <see cref="Unit"/>.</param>
    /// <exception cref="FormatException">The text cannot be read.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No human body measures that.</exception>
    [Pure]
    public BodyMeasurements With(BodyMeasurement key, string text)
    {
        Guard.NotNull(key, nameof(key));
        TapeReading reading = TapeReader.Read(Guard.NotNull(text, nameof(text)), Unit);
        return reading.IsLength
            ? With(key, reading.ToLength(), reading.Millimetres, nameof(text))
            : throw new FormatException(MessageRegistry.Format(DiagnosticCode.BodyMeasurementUnreadable, key.Term, MessageRegistry.Whole(reading.Message)));
    }

    /// <summary>Adds one measurement, or replaces it.</summary>
    /// <param name="key">Which.</param>
    /// <param name="value">More than nothing, and within what human bodies measure.</param>
    /// <exception cref="ArgumentOutOfRangeException">No human body measures that.</exception>
    [Pure]
    public BodyMeasurements With(BodyMeasurement key, Length value)
        => With(Guard.NotNull(key, nameof(key)), value, Guard.Millimetres(value, nameof(value)), nameof(value));

    /// <summary>Leaves one measurement out.</summary>
    /// <param name="key">Which; leaving out what was not taken changes nothing.</param>
    [Pure]
    public BodyMeasurements Without(BodyMeasurement key)
    {
        Guard.NotNull(key, nameof(key));
        return IndexOf(key) < 0 ? this : new(Unit, Name, Array.FindAll(_entries, entry => !entry.Key.Equals(key)));
    }

    /// <summary>Looks for one measurement.</summary>
    /// <param name="key">Which.</param>
    /// <param name="value">It, in the unit that it was taken in; zero where it was not taken.</param>
    /// <returns>Whether it was taken.</returns>
    public bool TryFind(BodyMeasurement key, out Length value)
    {
        int index = IndexOf(Guard.NotNull(key, nameof(key)));
        value = index < 0 ? Length.Zero : _entries[index].Value;
        return index >= 0;
    }

    /// <summary>One measurement that a draft cannot do without.</summary>
    /// <param name="key">Which.</param>
    /// <param name="purpose">What it is needed for, to complete the sentence "waist girth is needed for ...".</param>
    /// <returns>It, in the unit that it was taken in.</returns>
    /// <exception cref="ConstructionException">It was not taken.</exception>
    public Length Require(BodyMeasurement key, string purpose) => Find(key, purpose).Value;

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<BodyMeasurement, Length>> GetEnumerator()
    {
        foreach (Entry entry in _entries)
        {
            yield return new KeyValuePair<BodyMeasurement, Length>(entry.Key, entry.Value);
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>All measurements on one line, to the nearest mark: <c>waist girth 29 1/2 in, hip girth 39 3/4 in</c>.</summary>
    /// <param name="step">The tape and its finest mark.</param>
    [Pure]
    public string Describe(TapeStep step)
    {
        var text = new StringBuilder();
        foreach (Entry entry in _entries)
        {
            text.Append(text.Length == 0 ? string.Empty : ", ").Append(entry.Key.Term).Append(' ').Append(TapeText.WithUnit(entry.Millimetres, step, TapeStyle.Plain));
        }

        return text.ToString();
    }

    /// <summary>Who, and all measurements at the step that suits the unit.</summary>
    public override string ToString() => (Name is null ? string.Empty : Name + ": ") + Describe(TapeStep.For(Unit));

    internal double RequireMm(BodyMeasurement key, string purpose) => Find(key, purpose).Millimetres;

    /// <summary>Adds one measurement, or says why it is none of a body's.</summary>
    internal BodyMeasurements? TryWith(BodyMeasurement key, string text, out DiagnosticCode code, out string? fault)
    {
        TapeReading reading = TapeReader.Read(text, Unit);
        if (!reading.IsLength)
        {
            code = reading.Code;
            fault = reading.Message;
            return null;
        }

        if (Plausibility.Fault(key, reading.ToLength(), reading.Millimetres) is { } wrong)
        {
            code = wrong.Code;
            fault = MessageRegistry.Format(wrong.Code, wrong.Facts);
            return null;
        }

        code = default;
        fault = null;
        return With(key, reading.ToLength(), reading.Millimetres, nameof(text));
    }

    internal bool TryFindMm(BodyMeasurement key, out double valueMm)
    {
        int index = IndexOf(key);
        valueMm = index < 0 ? 0.0 : _entries[index].Millimetres;
        return index >= 0;
    }

    internal double MillimetresAt(int place) => _entries[place].Millimetres;

    private Entry Find(BodyMeasurement key, string purpose)
    {
        int index = IndexOf(Guard.NotNull(key, nameof(key)));
        if (index >= 0)
        {
            return _entries[index];
        }

        throw new ConstructionException(DiagnosticCode.BodyMeasurementMissing, key.Term, Guard.Name(purpose, nameof(purpose)), Name is null ? string.Empty : " on " + Name)
        {
            Landmark = key.Term,
        };
    }

    private int IndexOf(BodyMeasurement key) => Array.FindIndex(_entries, entry => entry.Key.Equals(key));

    /// <summary>Adds one measurement whose millimetres are known more exactly than the value in its own unit says.</summary>
    internal BodyMeasurements With(BodyMeasurement key, Length value, double valueMm, string parameter)
    {
        Plausibility.Check(key, value, valueMm, parameter);
        var entries = new List<Entry>(_entries.Length + 1);
        entries.AddRange(Array.FindAll(_entries, entry => !entry.Key.Equals(key)));
        int place = entries.FindIndex(entry => key.StandsBefore(entry.Key));
        entries.Insert(place < 0 ? entries.Count : place, new Entry(key, value, valueMm));
        return new BodyMeasurements(Unit, Name, entries.ToArray());
    }

    private readonly struct Entry(BodyMeasurement key, Length value, double millimetres)
    {
        internal BodyMeasurement Key { get; } = key;

        internal Length Value { get; } = value;

        internal double Millimetres { get; } = millimetres;
    }
}
