using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Pattern.Core.Tests.Output;

/// <summary>A DXF file read by its group codes alone; knows nothing of the code that writes it.</summary>
internal sealed class DxfFile
{
    private DxfFile(List<Entity> all)
    {
        All = all;
        string section = string.Empty;
        string? block = null;
        Entity? polyline = null;
        foreach (Entity entity in all)
        {
            switch (entity.Type)
            {
                case "SECTION":
                    Assert.Equal(string.Empty, section);
                    section = entity.Text(2);
                    Sections.Add(section);
                    break;
                case "ENDSEC":
                    Assert.NotEqual(string.Empty, section);
                    Assert.Null(block);
                    Assert.Null(polyline);
                    section = string.Empty;
                    break;
                case "EOF":
                    Assert.Equal(string.Empty, section);
                    Assert.Same(all[^1], entity);
                    break;
                case "BLOCK":
                    Assert.Equal("BLOCKS", section);
                    Assert.Null(block);
                    block = entity.Text(2);
                    Blocks.Add(block, []);
                    break;
                case "ENDBLK":
                    Assert.NotNull(block);
                    block = null;
                    break;
                case "POLYLINE":
                    Assert.Null(polyline);
                    Assert.Equal(1, entity.Whole(66));
                    polyline = entity;
                    Home(section, block).Add(entity);
                    break;
                case "VERTEX":
                    Assert.NotNull(polyline);
                    Assert.Equal(polyline!.Layer, entity.Layer);
                    polyline.Vertices.Add(entity.At(10));
                    break;
                case "SEQEND":
                    Assert.NotNull(polyline);
                    polyline = null;
                    break;
                case "TABLE" or "ENDTAB":
                    Assert.Equal("TABLES", section);
                    break;
                case "LAYER":
                    Layers.Add(entity.Text(2));
                    break;
                case "LTYPE":
                    LineTypes.Add(entity.Text(2));
                    break;
                case "STYLE":
                    break;
                default:
                    Home(section, block).Add(entity);
                    break;
            }
        }

        Assert.Equal("EOF", all[^1].Type);
    }

    internal List<Entity> All { get; }

    internal List<string> Sections { get; } = [];

    internal List<string> Layers { get; } = [];

    internal List<string> LineTypes { get; } = [];

    internal Dictionary<string, List<Entity>> Blocks { get; } = new(StringComparer.Ordinal);

    internal List<Entity> Entities { get; } = [];

    /// <summary>The lines are pairs of a group code and a value, each ended by CR LF; a group code 0 begins something new.</summary>
    internal static DxfFile Read(string text)
    {
        Assert.EndsWith("\r\n", text);
        Assert.All(text, c => Assert.True(c is '\r' or '\n' or (>= ' ' and <= '~')));
        string[] lines = text[..^2].Split("\r\n");
        Assert.Equal(0, lines.Length % 2);
        var entities = new List<Entity>();
        for (int i = 0; i < lines.Length; i += 2)
        {
            Assert.True(lines[i].Length >= 3);
            int code = int.Parse(lines[i].Trim(), NumberStyles.None, CultureInfo.InvariantCulture);
            Assert.DoesNotContain('\n', lines[i + 1]);
            if (code == 0)
            {
                entities.Add(new Entity(lines[i + 1]));
            }
            else
            {
                entities[^1].Pairs.Add((code, lines[i + 1]));
            }
        }

        return new DxfFile(entities);
    }

    /// <summary>A variable of the header: the value that follows its name.</summary>
    internal string Variable(string name)
    {
        List<(int Code, string Value)> pairs = All.First(entity => entity.Type == "SECTION" && entity.Text(2) == "HEADER").Pairs;
        return pairs[pairs.FindIndex(pair => pair.Code == 9 && pair.Value == name) + 1].Value;
    }

    internal string[] Texts() => [.. Entities.Where(entity => entity.Type == "TEXT").Select(entity => entity.Text(1))];

    private List<Entity> Home(string section, string? block)
    {
        Assert.True(block is null ? section == "ENTITIES" : section == "BLOCKS");
        return block is null ? Entities : Blocks[block];
    }

    internal sealed class Entity(string type)
    {
        internal string Type { get; } = type;

        internal List<(int Code, string Value)> Pairs { get; } = [];

        internal List<(double X, double Y)> Vertices { get; } = [];

        internal string Layer => Text(8);

        internal bool IsClosed => (Whole(70) & 1) == 1;

        internal bool Has(int code) => Pairs.Any(pair => pair.Code == code);

        internal string Text(int code) => Pairs.Single(pair => pair.Code == code).Value;

        internal int Whole(int code) => int.Parse(Text(code), CultureInfo.InvariantCulture);

        internal double Number(int code) => double.Parse(Text(code), CultureInfo.InvariantCulture);

        internal (double X, double Y) At(int code) => (Number(code), Number(code + 10));

        internal double Length()
        {
            (double X, double Y)[] points = Type == "LINE" ? [At(10), At(11)] : [.. Vertices];
            double length = 0;
            for (int i = 1; i < points.Length; i++)
            {
                length += Distance(points[i - 1], points[i]);
            }

            return IsClosedLine() ? length + Distance(points[^1], points[0]) : length;
        }

        internal static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

        private bool IsClosedLine() => Type == "POLYLINE" && IsClosed;
    }
}
