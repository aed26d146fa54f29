using System;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Writes JSON: two blanks for each depth, line feeds, numbers of one point or curve on one line. Same calls, same characters.</summary>
internal sealed class JsonWriter
{
    private const int UsualLength = 65_536;

    private readonly StringBuilder _text = new(UsualLength);
    private string _name = string.Empty;
    private int _depth;
    private int _values;
    private bool _isFirst = true;
    private bool _isAfterName;

    internal JsonWriter Begin(char bracket)
    {
        Before();
        _text.Append(bracket);
        _depth++;
        _isFirst = true;
        return this;
    }

    internal JsonWriter End(char bracket)
    {
        _depth--;
        if (!_isFirst)
        {
            NewLine();
        }

        _text.Append(bracket);
        _isFirst = false;
        return this;
    }

    internal JsonWriter Name(string name)
    {
        Before();
        Quote(name);
        _text.Append(": ");
        _name = name;
        _isAfterName = true;
        return this;
    }

    internal void Text(string? text)
    {
        Before();
        if (text is null)
        {
            _text.Append("null");
        }
        else if (text.Length > JsonLimits.TextLength)
        {
            throw Refusal(Count(text.Length) + " characters", "a " + _name, Count(JsonLimits.TextLength));
        }
        else
        {
            Quote(text);
        }
    }

    internal void Null() => Text(null);

    internal void Flag(bool flag)
    {
        Before();
        _text.Append(flag ? "true" : "false");
    }

    internal void Whole(int number)
    {
        Before();
        _text.Append(number.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>A length, a coordinate or null.</summary>
    internal void Number(double? number)
    {
        if (number is { } given)
        {
            Before();
            Append(given);
        }
        else
        {
            Null();
        }
    }

    internal void Point(in Point2D point)
    {
        Before();
        _text.Append('[');
        Append(point.XMm);
        Then(point.YMm).Append(']');
    }

    internal void Line(in LineSegment line)
    {
        Before();
        _text.Append('[');
        Append(line.Start.XMm);
        Then(line.Start.YMm);
        Then(line.End.XMm);
        Then(line.End.YMm).Append(']');
    }

    internal void Segment(in PathSegment segment)
    {
        switch (segment.Kind)
        {
            case PathSegmentKind.Line:
                LineSegment line = segment.LineRaw;
                BeginSegment("line", line.Start.XMm);
                Then(line.Start.YMm);
                Then(line.End.XMm);
                Then(line.End.YMm);
                break;
            case PathSegmentKind.Arc:
                CircularArc arc = segment.ArcRaw;
                BeginSegment("arc", arc.CentreXMm, JsonLimits.FarthestCentreMm);
                Then(arc.CentreYMm, JsonLimits.FarthestCentreMm);
                Then(arc.RadiusMm, JsonLimits.FarthestCentreMm);
                Then(arc.StartRad);
                Then(arc.SweepRad);
                break;
            default:
                CubicBezier cubic = segment.CubicRaw;
                BeginSegment("cubic", cubic.X0);
                Then(cubic.Y0);
                Then(cubic.X1);
                Then(cubic.Y1);
                Then(cubic.X2);
                Then(cubic.Y2);
                Then(cubic.X3);
                Then(cubic.Y3);
                break;
        }

        _text.Append("] }");
    }

    /// <summary>Refuses a list that could not be read again.</summary>
    internal void RequireEntries(int count, int most = JsonLimits.Entries)
    {
        if (count > most)
        {
            throw Refusal(Count(count) + " entries", _name, Count(most));
        }
    }

    internal string Finish()
    {
        string text = _text.Append('\n').ToString();
        int bytes = Encoding.UTF8.GetByteCount(text);
        return bytes > JsonLimits.Bytes ? throw Refusal(Count(bytes) + " bytes", "a pattern", Count(JsonLimits.Bytes))
            : _values > JsonLimits.Values ? throw Refusal(Count(_values) + " values", "a pattern", Count(JsonLimits.Values))
            : text;
    }

    /// <summary>The shortest text that is read back as the same number, sign of nothing included.</summary>
    internal static string Written(double number)
    {
        // Older platforms write nothing without its sign, and for some numbers one digit too few.
        if (number == 0)
        {
            return BitConverter.DoubleToInt64Bits(number) < 0 ? "-0" : "0";
        }

        string text = number.ToString("R", CultureInfo.InvariantCulture);
#if NET
        return text;
#else
        return double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) == number ? text : number.ToString("G17", CultureInfo.InvariantCulture);
#endif
    }

    private void BeginSegment(string kind, double first, double farthest = JsonLimits.FarthestMm)
    {
        Before();
        _values += 2;
        _text.Append("{ \"").Append(kind).Append("\": [");
        Append(first, farthest);
    }

    private StringBuilder Then(double number, double farthest = JsonLimits.FarthestMm)
    {
        _text.Append(", ");
        return Append(number, farthest);
    }

    private StringBuilder Append(double number, double farthest = JsonLimits.FarthestMm)
    {
        if (!(Math.Abs(number) <= farthest))
        {
            throw Refusal("the number " + number.ToString("R", CultureInfo.InvariantCulture), _name, "a number within " + JsonValue.Number(farthest));
        }

        _values++;
        return _text.Append(Written(number));
    }

    private void Before()
    {
        _values++;
        if (_isAfterName)
        {
            _isAfterName = false;
            return;
        }

        if (!_isFirst)
        {
            _text.Append(',');
        }

        if (_depth > 0)
        {
            NewLine();
        }

        _isFirst = false;
    }

    private void NewLine() => _text.Append('\n').Append(' ', 2 * _depth);

    private void Quote(string text)
    {
        _text.Append('"');
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsSurrogate(c))
            {
                if (!char.IsSurrogatePair(text, i))
                {
                    throw Refusal("half of a surrogate pair at character " + Count(i + 1), "a " + _name, "both halves");
                }

                _text.Append(c).Append(text[++i]);
                continue;
            }

            switch (c)
            {
                case '"' or '\\':
                    _text.Append('\\').Append(c);
                    break;
                case '\n':
                    _text.Append("\\n");
                    break;
                case '\r':
                    _text.Append("\\r");
                    break;
                case '\t':
                    _text.Append("\\t");
                    break;

                // What would break a line, or hide, is written out.
                case < ' ' or (>= '\u007F' and < '\u00A0') or '\u2028' or '\u2029' or '\uFEFF':
                    _text.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture));
                    break;
                default:
                    _text.Append(c);
                    break;
            }
        }

        _text.Append('"');
    }

    private static ConstructionException Refusal(string what, string of, string allowed)
        => new(DiagnosticCode.JsonNotWritable, what, of, allowed) { Step = "writing JSON" };

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
