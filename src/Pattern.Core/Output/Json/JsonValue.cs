using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>One value of a JSON text, asked for what it should be. Every refusal says where it stands.</summary>
internal readonly struct JsonValue
{
    private const int EchoedText = 40;

    private readonly JsonText _text;
    private readonly int _index;

    internal JsonValue(JsonText text, int index)
    {
        _text = text;
        _index = index;
    }

    internal bool IsNull => Token.Kind == JsonKind.Null;

    private ref readonly JsonToken Token => ref _text[_index];

    /// <summary>The properties of an object that has exactly these, in any order.</summary>
    internal JsonObject Object(params string[] names)
    {
        Require(JsonKind.Object, "an object");
        var places = new int[names.Length];
        int name = _index + 1;
        for (int i = 0; i < Token.Count; i++)
        {
            string found = _text.TextOf(name);
            int place = Array.IndexOf(names, found);
            if (place < 0)
            {
                throw new JsonValue(_text, name).Fault(DiagnosticCode.JsonPropertyUnknown, Quoted(found), string.Join(", ", names));
            }

            if (places[place] != 0)
            {
                throw new JsonValue(_text, name).Fault(DiagnosticCode.JsonSaidTwice, Quoted(found) + " again", "once");
            }

            places[place] = name + 1;
            name = _text[name + 1].Next;
        }

        int missing = Array.IndexOf(places, 0);
        return missing < 0
            ? new JsonObject(_text, names, places)
            : throw Fault(DiagnosticCode.JsonPropertyMissing, "/" + names[missing], "nothing", names[missing], null);
    }

    /// <summary>The first property of that name of an object; else nothing is known of it.</summary>
    internal bool TryProperty(string name, out JsonValue value)
    {
        value = default;
        int at = _index + 1;
        for (int i = 0; Token.Kind == JsonKind.Object && i < Token.Count; i++)
        {
            if (_text.TextOf(at) == name)
            {
                value = new JsonValue(_text, at + 1);
                return true;
            }

            at = _text[at + 1].Next;
        }

        return false;
    }

    internal JsonValue[] List(int least = 0, int most = JsonLimits.Entries)
    {
        Require(JsonKind.List, "a list");
        int count = Token.Count;
        if (count < least || count > most)
        {
            throw Fault(DiagnosticCode.JsonValueWrong, "a list of " + Number(count), least == most ? Number(least) + " entries" : Number(least) + " to " + Number(most) + " entries");
        }

        var values = new JsonValue[count];
        int at = _index + 1;
        for (int i = 0; i < count; i++)
        {
            values[i] = new JsonValue(_text, at);
            at = _text[at].Next;
        }

        return values;
    }

    /// <summary>The entries of a list, each made into something.</summary>
    internal T[] List<T>(Func<JsonValue, T> make, int least = 0, int most = JsonLimits.Entries) => Array.ConvertAll(List(least, most), value => make(value));

    internal string Text()
    {
        Require(JsonKind.Text, "a text");
        return _text.TextOf(_index);
    }

    /// <summary>A name, by the rules of its kind.</summary>
    internal T Name<T>(Func<string, T> of)
    {
        string text = Text();
        return Make(() => of(text));
    }

    /// <summary>A name that stands once among its kind.</summary>
    internal T NameOnce<T>(Func<string, T> of, HashSet<T> known)
    {
        T name = Name(of);
        return known.Add(name) ? name : throw Fault(DiagnosticCode.JsonSaidTwice, Described() + " again", "once");
    }

    internal double Number(double least, double most)
    {
        Require(JsonKind.Number, "a number");
        return _text.TryNumber(_index, out double number) && number >= least && number <= most
            ? number
            : throw Fault(DiagnosticCode.JsonValueWrong, Described(), Number(least) + " to " + Number(most));
    }

    /// <summary>A length or a coordinate in millimetres.</summary>
    internal double Mm() => Number(-JsonLimits.FarthestMm, JsonLimits.FarthestMm);

    internal Length Length() => UnitsNet.Length.FromMillimeters(Mm());

    internal int Whole(int least, int most)
    {
        double number = Number(least, most);
        return number == Math.Floor(number) ? (int)number : throw Fault(DiagnosticCode.JsonValueWrong, Described(), "a whole number");
    }

    internal bool Flag() => Token.Kind == JsonKind.True || (Token.Kind == JsonKind.False ? false : throw Wrong("true or false"));

    internal T Choice<T>(JsonWords<T> words)
        where T : struct
        => words.TryFind(Text(), out T value) ? value : throw Fault(DiagnosticCode.JsonValueWrong, Described(), words.All);

    /// <summary>What the library makes of this value; what it refuses is refused here, with the place.</summary>
    internal T Make<T>(Func<T> make)
    {
        try
        {
            return make();
        }
        catch (Exception e) when (e is ConstructionException || (e is ArgumentException or FormatException && e is not DocumentFormatException))
        {
            throw Fault(DiagnosticCode.JsonContentRefused, string.Empty, Described(), Worded(e), e);
        }
    }

    internal void Make(Action check) => Make(() =>
    {
        check();
        return true;
    });

    internal DocumentFormatException Fault(DiagnosticCode code, string found, string allowed) => Fault(code, string.Empty, found, allowed, null);

    internal string Described() => Token.Kind switch
    {
        JsonKind.Object => "an object",
        JsonKind.List => "a list of " + Number(Token.Count),
        JsonKind.Text or JsonKind.Name => Quoted(_text.TextOf(_index)),
        JsonKind.Number => "the number " + _text.Raw(_index),
        _ => _text.Raw(_index),
    };

    internal static string Number(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private DocumentFormatException Fault(DiagnosticCode code, string below, string found, string allowed, Exception? cause)
        => _text.Fault(code, _text.PathOf(_index) + below, Token.Start, found, allowed, cause);

    private DocumentFormatException Wrong(string expected) => Fault(DiagnosticCode.JsonValueWrong, Described(), expected);

    private void Require(JsonKind kind, string expected)
    {
        if (Token.Kind != kind)
        {
            throw Wrong(expected);
        }
    }

    // Hostile text stays on one line, and short.
    private static string Quoted(string text)
    {
        string shown = Plain(text.Length > EchoedText ? text.Substring(0, EchoedText) : text);
        return "\"" + shown + (text.Length > EchoedText ? "...\"" : "\"");
    }

    // Nothing that breaks a line, hides, or turns what stands beside it.
    private static string Plain(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            bool isShown = char.GetUnicodeCategory(c) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
            shown.Append(isShown ? c.ToString() : "\\u" + ((int)c).ToString("X4", CultureInfo.InvariantCulture));
        }

        return shown.ToString();
    }

    // Without what the platform adds about the parameter of a method that no reader of a file has called.
    private static string Worded(Exception refusal)
    {
        string message = refusal.Message;
        int end = refusal is ArgumentException { ParamName: { } parameter } ? message.LastIndexOf(" (Parameter '" + parameter, StringComparison.Ordinal) : -1;
        return Plain(end < 0 ? message : message.Substring(0, end));
    }
}

/// <summary>The values of an object that has exactly the properties that were asked for.</summary>
internal readonly struct JsonObject
{
    private readonly JsonText _text;
    private readonly string[] _names;
    private readonly int[] _places;

    internal JsonObject(JsonText text, string[] names, int[] places)
    {
        _text = text;
        _names = names;
        _places = places;
    }

    internal JsonValue this[string name] => new(_text, _places[Array.IndexOf(_names, name)]);
}
