using System.Collections.Generic;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>A block as a small picture inside a page: its seam lines, darts and levels, without words.</summary>
internal sealed class SmallPicture
{
    private readonly List<PathMark> _lines = [];
    private readonly BoundingBox _box;

    private SmallPicture(Drawing drawing)
    {
        foreach (LayerName name in new[] { LayerName.Levels, LayerName.Darts, LayerName.SeamLines })
        {
            if (drawing.TryFindLayer(name, out DrawingLayer? layer))
            {
                foreach (DrawingMark mark in layer!.Marks)
                {
                    if (mark is PathMark path)
                    {
                        _box = _lines.Count == 0 ? path.Bounds : _box.Union(path.Bounds);
                        _lines.Add(path);
                    }
                }
            }
        }
    }

    internal double WidthMm => _box.RightMm - _box.LeftMm;

    internal double HeightMm => _box.TopMm - _box.BottomMm;

    internal static SmallPicture Of(Block block) => new(block.Draw());

    /// <summary>Writes it in the middle of a field, so that pictures with one field have one scale.</summary>
    internal void WriteTo(StringBuilder text, string words, double widthMm, double heightMm)
    {
        const double Margin = 8;
        double left = _box.LeftMm - Margin - ((widthMm - WidthMm) / 2);
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"").Escaped(words).Append("\" viewBox=\"0 0 ").Number(widthMm + (2 * Margin)).Append(' ').Number(heightMm + (2 * Margin))
            .Append("\" fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\">\n");
        foreach (PathMark line in _lines)
        {
            bool isSeam = line.Role == LineRole.Seam;
            text.Append("<path vector-effect=\"non-scaling-stroke\" stroke-width=\"").Append(isSeam ? "1.5" : line.Role == LineRole.Level ? "0.5" : "1").Append('"')
                .Append(line.Role == LineRole.Level || line.Role == LineRole.Fold ? " stroke-dasharray=\"3 2\"" : string.Empty).Append(" d=\"");
            var sink = new PathData(text, left, _box.TopMm + Margin, decimals: 1);
            line.Path.WriteTo(ref sink, LengthUnit.Millimeter, ArcOutput.Cubics);
            text.Append("\"/>\n");
        }

        text.Append("</svg>\n");
    }
}
