using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Reads the reference vectors; their README says where they come from.</summary>
internal static class GeometryData
{
    internal static readonly IReadOnlyList<CurveRow> Curves =
    [
        .. Rows("cubics.csv").Select(r => new CurveRow(r)
        {
            PartLength = r.Number("length_t037"),
            Box = [r.Number("min_x"), r.Number("min_y"), r.Number("max_x"), r.Number("max_y")],
            MaxCurvature = r.Number("max_curvature"),
        }),
        .. Rows("set-2/curves.csv").Select(r => new CurveRow(r)
        {
            PartLength = r.Number("length_0_037"),
            Box = [r.Number("xmin"), r.Number("ymin"), r.Number("xmax"), r.Number("ymax")],
            MaxCurvature = r.Number("max_abs_curvature"),
            At037 = [r.Number("x_037"), r.Number("y_037"), r.Number("tan_x_037"), r.Number("tan_y_037"), r.Number("curvature_037")],
            MinSpeed = r.Number("min_speed"),
        }),
    ];

    internal static TheoryData<string> Ids => new(Curves.Select(c => c.Id));

    internal static CurveRow Curve(string id) => Curves.First(c => c.Id == id);

    internal static IReadOnlyList<CsvRow> Rows(string file)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", "Geometry", file));
        string[] names = lines[0].Split(',');
        return lines.Skip(1).Where(l => l.Length > 0).Select(l => new CsvRow(names, l.Split(','))).ToList();
    }
}

internal sealed class CsvRow(string[] names, string[] fields)
{
    internal string Text(string name) => fields[Array.IndexOf(names, name)];

    internal bool Has(string name) => Array.IndexOf(names, name) >= 0;

    internal double Number(string name) => Text(name) switch
    {
        "" => double.NaN,
        "inf" => double.PositiveInfinity,
        string text => double.Parse(text, CultureInfo.InvariantCulture),
    };

    internal CubicBezier Cubic()
    {
        string p = Has("p0x") ? "p{1}{0}" : "{0}{1}";
        double N(string axis, int i) => Number(string.Format(CultureInfo.InvariantCulture, p, axis, i));
        return new CubicBezier(N("x", 0), N("y", 0), N("x", 1), N("y", 1), N("x", 2), N("y", 2), N("x", 3), N("y", 3));
    }
}

internal sealed class CurveRow(CsvRow row)
{
    internal string Id { get; } = row.Text("id");

    internal string Class { get; } = row.Text("class");

    internal CubicBezier Cubic { get; } = row.Cubic();

    internal double Length { get; } = row.Number("length");

    internal double HalfParameter { get; } = row.Number("t_half");

    internal double Area { get; } = row.Number("area");

    internal double PartLength { get; init; }

    internal double[] Box { get; init; } = [];

    internal double MaxCurvature { get; init; }

    internal double[] At037 { get; init; } = [];

    internal double MinSpeed { get; init; } = double.NaN;
}
