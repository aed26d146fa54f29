using System;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>What a stretch of JSON text is.</summary>
internal enum JsonKind : byte
{
    Object,
    List,
    Name,
    Text,
    Number,
    True,
    False,
    Null,
}

/// <summary>One object, list, name or value of a JSON text, by its place in it.</summary>
internal struct JsonToken
{
    internal JsonKind Kind;

    /// <summary>Whether a name or text has escapes, so that it must be decoded.</summary>
    internal bool IsEscaped;

    internal int Start;

    /// <summary>After its last character; of a name or text, the closing quotation mark included.</summary>
    internal int End;

    /// <summary>The token after this one and all that lies in it.</summary>
    internal int Next;

    /// <summary>How many entries or properties it has.</summary>
    internal int Count;
}

/// <summary>A JSON text that was found to be well-formed, and its tokens in order: an object is followed by name, value, name, value.</summary>
internal sealed class JsonText
{
    private readonly string _source;
    private readonly JsonToken[] _tokens;

    internal JsonText(string source, JsonToken[] tokens)
    {
        _source = source;
        _tokens = tokens;
    }

    internal JsonValue Root => new(this, 0);

    internal ref readonly JsonToken this[int index] => ref _tokens[index];

    internal string TextOf(int index) => Decoded(_source, _tokens[index]);

    internal bool TryNumber(int index, out double number)
    {
        JsonToken token = _tokens[index];

        // The platform's reader of some years ago loses the sign of nothing.
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
#if NET
        bool isNumber = double.TryParse(_source.AsSpan(token.Start, token.End - token.Start), style, CultureInfo.InvariantCulture, out number);
#else
        bool isNumber = double.TryParse(_source.Substring(token.Start, token.End - token.Start), style, CultureInfo.InvariantCulture, out number);
#endif
        if (number == 0 && _source[token.Start] == '-')
        {
            number = -0.0;
        }

        return isNumber && Guard.IsFinite(number);
    }

    /// <summary>The text as it stands in the file.</summary>
    internal string Raw(int index) => _source.Substring(_tokens[index].Start, _tokens[index].End - _tokens[index].Start);

    internal DocumentFormatException Fault(DiagnosticCode code, string path, int at, string found, string allowed, Exception? cause = null)
        => Fault(_source, code, path, at, found, allowed, cause);

    internal static DocumentFormatException Fault(string source, DiagnosticCode code, string path, int at, string found, string allowed, Exception? cause = null)
    {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < at; i++)
        {
            if (source[i] == '\n' || (source[i] == '\r' && !(i + 1 < source.Length && source[i + 1] == '\n')))
            {
                line++;
                lineStart = i + 1;
            }
        }

        return new DocumentFormatException(code, path, line, at - lineStart + 1, found, allowed, cause);
    }

    /// <summary>The JSON Pointer (RFC 6901) of a token; of a name, that of its value.</summary>
    internal string PathOf(int index)
    {
        var path = new StringBuilder();
        int at = 0;
        while (at != index)
        {
            bool isObject = _tokens[at].Kind == JsonKind.Object;
            int child = at + 1;
            for (int place = 0; ; place++)
            {
                int value = isObject ? child + 1 : child;
                if (index < _tokens[value].Next)
                {
                    AppendStep(path, isObject ? TextOf(child) : place.ToString(CultureInfo.InvariantCulture));
                    at = isObject && index == child ? index : value;
                    break;
                }

                child = _tokens[value].Next;
            }
        }

        return path.ToString();
    }

    internal static void AppendStep(StringBuilder path, string step) => path.Append('/').Append(step.Replace("~", "~0").Replace("/", "~1"));

    internal static string Decoded(string source, in JsonToken token)
    {
        int start = token.Start + 1;
        int end = token.End - 1;
        if (!token.IsEscaped)
        {
            return source.Substring(start, end - start);
        }

        var text = new StringBuilder(end - start);
        for (int i = start; i < end; i++)
        {
            if (source[i] != '\\')
            {
                text.Append(source[i]);
                continue;
            }

            i++;
            switch (source[i])
            {
                case 'b': text.Append('\b'); break;
                case 'f': text.Append('\f'); break;
                case 'n': text.Append('\n'); break;
                case 'r': text.Append('\r'); break;
                case 't': text.Append('\t'); break;
                case 'u':
                    text.Append((char)((Hex(source[i + 1]) << 12) | (Hex(source[i + 2]) << 8) | (Hex(source[i + 3]) << 4) | Hex(source[i + 4])));
                    i += 4;
                    break;
                default: text.Append(source[i]); break;
            }
        }

        return text.ToString();
    }

    /// <summary>The value of a hexadecimal digit, or -1.</summary>
    internal static int Hex(char digit) => digit switch
    {
        >= '0' and <= '9' => digit - '0',
        >= 'a' and <= 'f' => digit - 'a' + 10,
        >= 'A' and <= 'F' => digit - 'A' + 10,
        _ => -1,
    };
}
