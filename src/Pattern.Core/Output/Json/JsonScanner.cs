using System;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Reads JSON by the letter of RFC 8259, and refuses what is larger than a pattern can be.</summary>
/// <remarks>Half a surrogate pair is refused although the RFC leaves it open: no file in UTF-8 can hold it.</remarks>
internal sealed class JsonScanner
{
    private const char Mark = '\uFEFF';

    private readonly string _text;
    private readonly string _endFound;

    // The object or list that is open at each depth, and in it the name token or the number of the entry that is being read.
    private readonly bool[] _isObject = new bool[JsonLimits.Depth];
    private readonly int[] _place = new int[JsonLimits.Depth];

    private JsonToken[] _tokens = new JsonToken[256];
    private int _count;
    private int _depth;
    private int _at;

    private JsonScanner(string text, string endFound)
    {
        _text = text;
        _endFound = endFound;
    }

    /// <summary>Reads a whole text.</summary>
    /// <param name="text">With or without a byte order mark.</param>
    /// <param name="endFound">What stands where the text ends, if it is not its end.</param>
    internal static JsonText Scan(string text, string? endFound = null)
    {
        var scanner = new JsonScanner(text, endFound ?? "the end of the text");
        if (text.Length > JsonLimits.Bytes)
        {
            throw scanner.Fault(DiagnosticCode.JsonTooLarge, Number(text.Length) + " characters", Number(JsonLimits.Bytes));
        }

        scanner._at = text.Length > 0 && text[0] == Mark ? 1 : 0;
        scanner.SkipSpaces();
        scanner.Value();
        scanner.SkipSpaces();
        return scanner._at == text.Length && endFound is null
            ? new JsonText(text, scanner._tokens)
            : throw scanner.Malformed("the end of the text");
    }

    private void Value()
    {
        char first = _at < _text.Length ? _text[_at] : '\0';
        switch (first)
        {
            case '{':
                Object();
                break;
            case '[':
                List();
                break;
            case '"':
                Text(JsonKind.Text, JsonLimits.TextLength);
                break;
            case '-' or (>= '0' and <= '9'):
                NumberToken();
                break;
            case 't':
                Word("true", JsonKind.True);
                break;
            case 'f':
                Word("false", JsonKind.False);
                break;
            case 'n':
                Word("null", JsonKind.Null);
                break;
            default:
                throw Malformed("a value");
        }
    }

    private void Object()
    {
        int token = Open(isObject: true);
        int count = 0;
        if (Here('}'))
        {
            Close(token, count);
            return;
        }

        while (true)
        {
            _place[_depth - 1] = -1;
            if (!Here('"'))
            {
                throw Malformed(count == 0 ? "a name in quotation marks, or }" : "a name in quotation marks");
            }

            int name = _count;
            Text(JsonKind.Name, JsonLimits.NameLength);
            _place[_depth - 1] = name;
            SkipSpaces();
            Expect(':', "a colon");
            SkipSpaces();
            Value();
            count++;
            SkipSpaces();
            if (Here('}'))
            {
                Close(token, count);
                return;
            }

            Expect(',', "a comma or }");
            SkipSpaces();
        }
    }

    private void List()
    {
        int token = Open(isObject: false);
        int count = 0;
        if (Here(']'))
        {
            Close(token, count);
            return;
        }

        while (true)
        {
            _place[_depth - 1] = count;
            Value();
            count++;
            SkipSpaces();
            if (Here(']'))
            {
                Close(token, count);
                return;
            }

            Expect(',', "a comma or ]");
            SkipSpaces();
        }
    }

    private int Open(bool isObject)
    {
        if (_depth == JsonLimits.Depth)
        {
            throw Fault(DiagnosticCode.JsonTooLarge, "an object or list inside " + Number(_depth) + " others", Number(_depth));
        }

        int token = Add(isObject ? JsonKind.Object : JsonKind.List, _at, _at + 1);
        _isObject[_depth] = isObject;
        _place[_depth] = isObject ? -1 : 0;
        _depth++;
        _at++;
        SkipSpaces();
        return token;
    }

    private void Close(int token, int count)
    {
        _at++;
        _depth--;
        _tokens[token].End = _at;
        _tokens[token].Next = _count;
        _tokens[token].Count = count;
    }

    private void Text(JsonKind kind, int longest)
    {
        int start = _at;
        int token = Add(kind, start, start);
        bool isAfterHigh = false;
        int length = 0;
        _at++;
        while (true)
        {
            if (_at >= _text.Length || _text[_at] < ' ')
            {
                throw Malformed("more of the text in quotation marks, control characters as escapes");
            }

            if (_text[_at] == '"' && !isAfterHigh)
            {
                _at++;
                _tokens[token].End = _at;
                return;
            }

            int place = _at;
            char unit = _text[_at] == '\\' ? Escape(token) : _text[_at++];
            if (isAfterHigh != char.IsLowSurrogate(unit))
            {
                _at = place;
                throw Fault(DiagnosticCode.JsonMalformed, "half of a surrogate pair", "both halves");
            }

            isAfterHigh = char.IsHighSurrogate(unit);
            if (++length > longest)
            {
                _at = start;
                throw Fault(DiagnosticCode.JsonTooLarge, (kind == JsonKind.Name ? "a name" : "a text") + " of more than " + Number(longest) + " characters", Number(longest));
            }
        }
    }

    private char Escape(int token)
    {
        _tokens[token].IsEscaped = true;
        _at++;
        char escape = _at < _text.Length ? _text[_at] : '\0';
        if (escape == 'u')
        {
            int unit = 0;
            for (int i = 0; i < 4; i++)
            {
                _at++;
                int digit = _at < _text.Length ? JsonText.Hex(_text[_at]) : -1;
                unit = digit >= 0 ? (unit << 4) | digit : throw Malformed("four hexadecimal digits");
            }

            _at++;
            return (char)unit;
        }

        if (@"""\/bfnrt".IndexOf(escape) < 0)
        {
            throw Malformed("one of \" \\ / b f n r t u after a backslash");
        }

        _at++;
        return escape;
    }

    private void NumberToken()
    {
        int start = _at;
        _at += Here('-') ? 1 : 0;
        if (Here('0'))
        {
            _at++;
        }
        else
        {
            Digits();
        }

        if (Here('.'))
        {
            _at++;
            Digits();
        }

        if (Here('e') || Here('E'))
        {
            _at++;
            _at += Here('-') || Here('+') ? 1 : 0;
            Digits();
        }

        int length = _at - start;
        if (length > JsonLimits.NumberLength)
        {
            _at = start;
            throw Fault(DiagnosticCode.JsonTooLarge, "a number of " + Number(length) + " characters", Number(JsonLimits.NumberLength));
        }

        Add(JsonKind.Number, start, _at);
    }

    private void Digits()
    {
        int start = _at;
        while (_at < _text.Length && _text[_at] is >= '0' and <= '9')
        {
            _at++;
        }

        if (_at == start)
        {
            throw Malformed("a digit");
        }
    }

    private void Word(string word, JsonKind kind)
    {
        if (string.CompareOrdinal(_text, _at, word, 0, word.Length) != 0)
        {
            throw Malformed("a value");
        }

        Add(kind, _at, _at + word.Length);
        _at += word.Length;
    }

    private int Add(JsonKind kind, int start, int end)
    {
        if (_count == JsonLimits.Values)
        {
            throw Fault(DiagnosticCode.JsonTooLarge, "one more than " + Number(_count) + " values", Number(JsonLimits.Values));
        }

        if (_count == _tokens.Length)
        {
            Array.Resize(ref _tokens, 2 * _count);
        }

        _tokens[_count] = new JsonToken { Kind = kind, Start = start, End = end, Next = _count + 1 };
        return _count++;
    }

    private bool Here(char sign) => _at < _text.Length && _text[_at] == sign;

    private void Expect(char sign, string expected)
    {
        if (!Here(sign))
        {
            throw Malformed(expected);
        }

        _at++;
    }

    private void SkipSpaces()
    {
        while (_at < _text.Length && _text[_at] is ' ' or '\t' or '\n' or '\r')
        {
            _at++;
        }
    }

    private DocumentFormatException Malformed(string expected) => Fault(DiagnosticCode.JsonMalformed, Found(), expected);

    private DocumentFormatException Fault(DiagnosticCode code, string found, string allowed)
    {
        var path = new StringBuilder();
        for (int i = 0; i < _depth; i++)
        {
            if (!_isObject[i])
            {
                JsonText.AppendStep(path, Number(_place[i]));
            }
            else if (_place[i] >= 0)
            {
                JsonText.AppendStep(path, JsonText.Decoded(_text, _tokens[_place[i]]));
            }
        }

        return JsonText.Fault(_text, code, path.ToString(), Math.Min(_at, _text.Length), found, allowed);
    }

    private string Found() => _at >= _text.Length ? _endFound
        : _text[_at] is > ' ' and < '\u007F' ? "'" + _text[_at] + "'"
        : "U+" + ((int)_text[_at]).ToString("X4", CultureInfo.InvariantCulture);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
