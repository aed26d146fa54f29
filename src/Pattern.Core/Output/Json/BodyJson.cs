using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>A body in a pattern file.</summary>
internal static class BodyJson
{
    // The value in its own unit and the millimetres say the same but for the last digits of a double.
    private const double SameMm = 1e-9;

    internal static void Write(JsonWriter json, BodyMeasurements body)
    {
        json.Begin('{').Name("name").Text(body.Name);
        json.Name("unit").Text(JsonWords.Units.WordOf(body.Unit));
        json.Name("measurements").RequireEntries(body.Count);
        json.Begin('[');
        int place = 0;
        foreach (KeyValuePair<BodyMeasurement, Length> taken in body)
        {
            // A unit that no tape is marked in is not kept.
            double mm = body.MillimetresAt(place++);
            bool isKept = JsonWords.Units.Has(taken.Value.Unit);
            json.Begin('{').Name("term").Text(taken.Key.Term);
            json.Name("value").Number(isKept ? (double)taken.Value.Value : mm);
            json.Name("unit").Text(JsonWords.Units.WordOf(isKept ? taken.Value.Unit : LengthUnit.Millimeter));
            json.Name("millimetres").Number(mm);
            json.Name("defined");
            if (BodyMeasurement.TryFind(taken.Key.Term, out _))
            {
                json.Null();
            }
            else
            {
                json.Begin('{').Name("kind").Text(JsonWords.Kinds.WordOf(taken.Key.Kind));
                json.Name("least").Number(taken.Key.LeastMm);
                json.Name("most").Number(taken.Key.MostMm);
                json.End('}');
            }

            json.End('}');
        }

        json.End(']').End('}');
    }

    internal static BodyMeasurements Read(JsonValue value)
    {
        JsonObject body = value.Object("name", "unit", "measurements");
        BodyMeasurements read = BodyMeasurements.In(body["unit"].Choice(JsonWords.Units));
        if (!body["name"].IsNull)
        {
            string name = body["name"].Text();
            read = body["name"].Make(() => read.Named(name));
        }

        foreach (JsonValue measurement in body["measurements"].List())
        {
            read = Measured(read, measurement);
        }

        return read;
    }

    private static BodyMeasurements Measured(BodyMeasurements body, JsonValue value)
    {
        JsonObject measurement = value.Object("term", "value", "unit", "millimetres", "defined");
        BodyMeasurement key = Key(measurement["term"], measurement["defined"]);
        if (body.TryFind(key, out _))
        {
            throw measurement["term"].Fault(DiagnosticCode.JsonSaidTwice, measurement["term"].Described() + " again", "once");
        }

        double number = measurement["value"].Mm();
        double mm = measurement["millimetres"].Mm();
        Length taken = Length.From(number, measurement["unit"].Choice(JsonWords.Units));
        return Math.Abs(taken.Millimeters - mm) <= SameMm
            ? measurement["millimetres"].Make(() => body.With(key, taken, mm, key.Term))
            : throw measurement["millimetres"].Fault(DiagnosticCode.JsonValueWrong, measurement["millimetres"].Described(), JsonValue.Number(taken.Millimeters) + ", as value and unit say");
    }

    private static BodyMeasurement Key(JsonValue term, JsonValue defined)
    {
        string text = term.Text();
        bool isKnown = BodyMeasurement.TryFind(text, out BodyMeasurement? known);
        if (isKnown && known!.Term != text)
        {
            throw term.Fault(DiagnosticCode.JsonValueWrong, term.Described(), known.Term);
        }

        if (isKnown && defined.IsNull)
        {
            return known!;
        }

        JsonObject own = defined.Object("kind", "least", "most");
        MeasurementKind kind = own["kind"].Choice(JsonWords.Kinds);
        Length least = own["least"].Length();
        Length most = own["most"].Length();

        // A term that somebody defined before the library knew it.
        return isKnown ? known! : defined.Make(() => BodyMeasurement.Define(text, kind, least, most));
    }
}
