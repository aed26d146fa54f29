using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Text.Json;

namespace Pattern.Core.Tests.Output;

/// <summary>One value of a JSON text, found by the platform's reader: its pointer, what it is, and its bytes.</summary>
/// <param name="Pointer">By RFC 6901.</param>
/// <param name="Kind">What it is.</param>
/// <param name="NameStart">Where its name begins; where it begins itself in a list.</param>
/// <param name="Start">Its first byte.</param>
/// <param name="End">After its last byte.</param>
internal sealed record JsonPlace(string Pointer, JsonValueKind Kind, int NameStart, int Start, int End)
{
    internal string Parent => Pointer[..Pointer.LastIndexOf('/')];

    internal string Name => Pointer[(Pointer.LastIndexOf('/') + 1)..];
}

internal static class JsonPlaces
{
    internal static List<JsonPlace> In(byte[] json)
    {
        var places = new List<JsonPlace>();
        var reader = new Utf8JsonReader(json);
        reader.Read();
        Value(ref reader, string.Empty, 0, places);
        return places;
    }

    /// <summary>The text with other bytes in the place of some.</summary>
    internal static string Replaced(byte[] json, int start, int end, string text)
        => Encoding.UTF8.GetString(json, 0, start) + text + Encoding.UTF8.GetString(json, end, json.Length - end);

    internal static string Replaced(string json, string pointer, string text)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(json);
        JsonPlace place = In(bytes).Single(place => place.Pointer == pointer);
        return Replaced(bytes, place.Start, place.End, text);
    }

    private static void Value(ref Utf8JsonReader reader, string pointer, int nameStart, List<JsonPlace> places)
    {
        int start = (int)reader.TokenStartIndex;
        int index = places.Count;
        places.Add(null!);
        JsonValueKind kind = reader.TokenType switch
        {
            JsonTokenType.StartObject => JsonValueKind.Object,
            JsonTokenType.StartArray => JsonValueKind.Array,
            JsonTokenType.String => JsonValueKind.String,
            JsonTokenType.Number => JsonValueKind.Number,
            JsonTokenType.True => JsonValueKind.True,
            JsonTokenType.False => JsonValueKind.False,
            _ => JsonValueKind.Null,
        };
        if (kind == JsonValueKind.Object)
        {
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                int name = (int)reader.TokenStartIndex;
                string step = reader.GetString()!.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
                reader.Read();
                Value(ref reader, pointer + "/" + step, name, places);
            }
        }
        else if (kind == JsonValueKind.Array)
        {
            for (int i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
            {
                Value(ref reader, pointer + "/" + i.ToString(CultureInfo.InvariantCulture), (int)reader.TokenStartIndex, places);
            }
        }

        places[index] = new JsonPlace(pointer, kind, nameStart, start, (int)reader.BytesConsumed);
    }
}
