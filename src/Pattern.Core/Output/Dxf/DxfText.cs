using System.Globalization;
using System.Text;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>The text of a DXF file as it grows: pairs of a group code and a value, on a line each.</summary>
/// <remarks>Release 12 of the format: the newest that needs neither handles nor object tables, and what the pattern standard builds on. All characters are ASCII.</remarks>
internal sealed class DxfText
{
    // The format comes from DOS, and some readers still look for both characters.
    private const string LineEnd = "\r\n";

    private readonly StringBuilder _text = new(64 * 1024);
    private readonly DxfUnits _units;

    internal DxfText(in DxfUnits units) => _units = units;

    internal DxfUnits Units => _units;

    public override string ToString() => _text.ToString();

    /// <summary>A value that is ASCII already.</summary>
    internal DxfText Word(int code, string value)
    {
        Code(code);
        _text.Append(value).Append(LineEnd);
        return this;
    }

    internal DxfText Whole(int code, int value) => Word(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Words for people, escaped.</summary>
    internal DxfText Words(int code, string words)
    {
        Code(code);
        _text.Append(DxfWords.Escaped(words)).Append(LineEnd);
        return this;
    }

    internal DxfText LengthOf(int code, double mm)
    {
        Code(code);
        Number(_units.Steps(mm), _units.StepsPerUnit, _units.Decimals);
        _text.Append(LineEnd);
        return this;
    }

    internal DxfText Degrees(int code, double degrees)
    {
        Code(code);
        Number((long)System.Math.Round((decimal)degrees * 10_000, System.MidpointRounding.AwayFromZero), 10_000, 4);
        _text.Append(LineEnd);
        return this;
    }

    /// <summary>A point: x under the code, y under the code and 10, z, which is 0, under the code and 20.</summary>
    internal DxfText At(int code, double xMm, double yMm) => LengthOf(code, xMm).LengthOf(code + 10, yMm).LengthOf(code + 20, 0);

    internal DxfText At(int code, in Point2D point) => At(code, point.XMm, point.YMm);

    internal DxfText Entity(string type, string layer) => Word(0, type).Word(8, layer);

    internal DxfText Section(string name) => Word(0, "SECTION").Word(2, name);

    internal DxfText EndSection() => Word(0, "ENDSEC");

    internal DxfText Table(string name, int entries) => Word(0, "TABLE").Word(2, name).Whole(70, entries);

    internal DxfText EndTable() => Word(0, "ENDTAB");

    /// <summary>Version, units and extents.</summary>
    internal DxfText Header(in BoundingBox bounds)
    {
        Section("HEADER").Word(9, "$ACADVER").Word(1, "AC1009");

        // 1 inch, 4 millimetres; 0 English, 1 metric.
        Word(9, "$INSUNITS").Whole(70, _units.IsMetric ? 4 : 1).Word(9, "$MEASUREMENT").Whole(70, _units.IsMetric ? 1 : 0);
        Word(9, "$EXTMIN").At(10, bounds.LeftMm, bounds.BottomMm).Word(9, "$EXTMAX").At(10, bounds.RightMm, bounds.TopMm);
        Word(9, "$LIMMIN").LengthOf(10, bounds.LeftMm).LengthOf(20, bounds.BottomMm).Word(9, "$LIMMAX").LengthOf(10, bounds.RightMm).LengthOf(20, bounds.TopMm);
        return EndSection();
    }

    internal DxfText Layer(string name, int colour) => Word(0, "LAYER").Word(2, name).Whole(70, 0).Whole(62, colour).Word(6, "CONTINUOUS");

    internal DxfText TextStyles() => Table("STYLE", 1).Word(0, "STYLE").Word(2, "STANDARD").Whole(70, 0).Whole(40, 0).Whole(41, 1).Whole(50, 0).Whole(71, 0)
        .LengthOf(42, 5).Word(3, "txt").Word(4, string.Empty).EndTable();

    internal DxfText Line(string layer, in LineSegment line, int colour = -1) => DxfPolyline.Attributes(Entity("LINE", layer), null, colour).At(10, line.Start).At(11, line.End);

    internal DxfText Point(string layer, in Point2D point) => Entity("POINT", layer).At(10, point);

    internal DxfText Label(string layer, in Point2D start, double heightMm, double angleDegrees, string words)
        => Entity("TEXT", layer).At(10, start).LengthOf(40, heightMm).Words(1, words).Degrees(50, angleDegrees);

    private void Code(int code)
    {
        // Right-aligned in three columns, as the format asks.
        _text.Append(code < 10 ? "  " : code < 100 ? " " : string.Empty).Append(code.ToString(CultureInfo.InvariantCulture)).Append(LineEnd);
    }

    // Whole numbers throughout: no exponent, no minus zero, the same digits on every runtime.
    private void Number(long steps, int stepsPerUnit, int decimals)
    {
        if (steps < 0)
        {
            _text.Append('-');
            steps = -steps;
        }

        _text.Append((steps / stepsPerUnit).ToString(CultureInfo.InvariantCulture)).Append('.');
        string digits = (steps % stepsPerUnit).ToString(CultureInfo.InvariantCulture).PadLeft(decimals, '0').TrimEnd('0');
        _text.Append(digits.Length == 0 ? "0" : digits);
    }
}
