using System;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>Writes one drawing as SVG.</summary>
/// <remarks>Plain attributes instead of a style sheet: a sheet would reach into the page that the drawing is put on, and programs that cut or plot read attributes best.</remarks>
internal sealed class SvgWriter
{
    // Inter is what the library's other formats embed; the rest are what systems have. TypeWidths covers them.
    private const string FontFamily = "Inter, Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    private const double HaloMm = 0.5;

    private readonly Drawing _drawing;
    private readonly StringBuilder _text = new(32 * 1024);
    private LineRole? _openRole;

    internal SvgWriter(Drawing drawing) => _drawing = drawing;

    internal string Write()
    {
        BoundingBox sheet = _drawing.Bounds;
        double width = sheet.RightMm - sheet.LeftMm;
        double height = sheet.TopMm - sheet.BottomMm;
        _text.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Number(width).Append("mm\" height=\"").Number(height)
            .Append("mm\" viewBox=\"0 0 ").Number(width).Append(' ').Number(height)
            .Append("\" role=\"img\" aria-labelledby=\"drawing-title drawing-description\" font-family=\"").Append(FontFamily).Append("\">\n");
        _text.Append("<title id=\"drawing-title\">").Escaped(_drawing.Title).Append("</title>\n");
        _text.Append("<desc id=\"drawing-description\">").Escaped(_drawing.Description).Append("</desc>\n");
        _text.Append("<rect id=\"sheet\" width=\"").Number(width).Append("\" height=\"").Number(height).Append("\" fill=\"").Append(Ink.Paper.ToString()).Append("\"/>\n");
        foreach (DrawingLayer layer in _drawing.Layers)
        {
            WriteLayer(layer);
        }

        return _text.Append("</svg>\n").ToString();
    }

    private void WriteLayer(DrawingLayer layer)
    {
        _text.Append("<g id=\"").Append(layer.Name.Text.Replace(' ', '-')).Append("\">\n");
        foreach (DrawingMark mark in layer.Marks)
        {
            switch (mark)
            {
                case PathMark path:
                    WritePath(path);
                    break;
                case PointMark point:
                    CloseRole();
                    WritePoint(point);
                    break;
                case TextMark text:
                    CloseRole();
                    WriteText(text);
                    break;
            }
        }

        CloseRole();
        _text.Append("</g>\n");
    }

    // Lines of one role that follow each other share a group that carries weight, dash and ink.
    private void OpenRole(LineRole role)
    {
        if (_openRole == role)
        {
            return;
        }

        CloseRole();
        _text.Append("<g fill=\"none\" stroke=\"").Append(role.Ink.ToString()).Append("\" stroke-width=\"").Number(role.WeightMm).Append('"');
        if (role.DashesMm.Count > 0)
        {
            _text.Append(" stroke-dasharray=\"");
            for (int i = 0; i < role.DashesMm.Count; i++)
            {
                _text.Append(i == 0 ? string.Empty : " ").Number(role.DashesMm[i]);
            }

            _text.Append('"');
        }
        else
        {
            _text.Append(" stroke-linecap=\"round\"");
        }

        _text.Append(" stroke-linejoin=\"round\">\n");
        _openRole = role;
    }

    private void CloseRole()
    {
        if (_openRole is not null)
        {
            _text.Append("</g>\n");
            _openRole = null;
        }
    }

    private void WritePath(PathMark mark)
    {
        OpenRole(mark.Role);
        _text.Append("<path");
        if (mark.Facts is { } facts)
        {
            WriteFacts(facts);
        }

        _text.Append(" d=\"");
        WriteSegments(mark.Path);
        _text.Append("\"/>\n");
        foreach (CurvePath head in mark.ArrowHeads())
        {
            _text.Append("<path fill=\"").Append(mark.Role.Ink.ToString()).Append("\" stroke=\"none\" d=\"");
            WriteSegments(head);
            _text.Append("\"/>\n");
        }
    }

    private void WriteFacts(MarkFacts facts)
    {
        Attribute("data-panel", facts.Panel.Text);
        string edge = facts.Part switch { MarkPart.Cut => "data-cut", MarkPart.CutCorner => "data-corner", MarkPart.Seam => "data-edge", _ => "data-on" };
        Attribute(edge, facts.Edge.Text);
        if (facts.Times is { } times)
        {
            _text.Append(" data-times=\"").Number(times).Append('"');
        }

        if (facts.Dart is { } dart)
        {
            _text.Append(" data-dart=\"").Number(dart).Append('"');
        }

        if (facts.Toward is { } toward)
        {
            Attribute(facts.Part == MarkPart.DartCap ? "data-cap" : "data-leg", toward);
        }
    }

    private void Attribute(string name, string value) => _text.Append(' ').Append(name).Append("=\"").Escaped(value).Append('"');

    // Cubics stand for arcs: an arc command goes wrong by more than its rounding where it nears a half circle.
    private void WriteSegments(CurvePath path)
    {
        var sink = new PathData(this);
        path.WriteTo(ref sink, LengthUnit.Millimeter, ArcOutput.Cubics);
    }

    private StringBuilder Point(double xMm, double yMm) => _text.Number(xMm - _drawing.Bounds.LeftMm).Append(' ').Number(_drawing.Bounds.TopMm - yMm);

    private double X(in Point2D point) => point.XMm - _drawing.Bounds.LeftMm;

    private double Y(in Point2D point) => _drawing.Bounds.TopMm - point.YMm;

    private void WritePoint(PointMark mark) => _text.Append("<circle cx=\"").Number(X(mark.Position)).Append("\" cy=\"").Number(Y(mark.Position))
        .Append("\" r=\"").Number(mark.DiameterMm / 2).Append("\" fill=\"").Append(mark.Ink.ToString()).Append("\"/>\n");

    private void WriteText(TextMark mark)
    {
        double x = X(mark.Anchor);
        double y = Y(mark.Anchor);
        _text.Append("<text x=\"").Number(x).Append("\" y=\"").Number(y).Append("\" font-size=\"").Number(mark.SizeMm).Append('"');
        if (mark.Weight == TextWeight.Bold)
        {
            _text.Append(" font-weight=\"bold\"");
        }

        if (mark.Alignment != TextAlignment.Start)
        {
            _text.Append(" text-anchor=\"").Append(mark.Alignment == TextAlignment.Middle ? "middle" : "end").Append('"');
        }

        if (mark.AngleRad != 0)
        {
            _text.Append(" transform=\"rotate(").Number(-mark.AngleRad * 180 / Math.PI).Append(' ').Number(x).Append(' ').Number(y).Append(")\"");
        }

        _text.Append(" fill=\"").Append(mark.Ink.ToString()).Append('"');
        if (mark.Ink != Ink.Faint)
        {
            // Paper around the letters, under their ink, so that no line strikes them through. What is faint lies under everything and hides nothing.
            _text.Append(" stroke=\"").Append(Ink.Paper.ToString()).Append("\" stroke-width=\"").Number(2 * HaloMm).Append("\" stroke-linejoin=\"round\" paint-order=\"stroke\"");
        }

        _text.Append('>').Escaped(mark.Text).Append("</text>\n");
    }

    /// <summary>Writes a path as the content of its <c>d</c> attribute.</summary>
    private readonly struct PathData(SvgWriter writer) : IPathSink
    {
        public void MoveTo(double x, double y)
        {
            writer._text.Append('M');
            writer.Point(x, y);
        }

        public void LineTo(double x, double y)
        {
            writer._text.Append('L');
            writer.Point(x, y);
        }

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
        {
            writer._text.Append('C');
            writer.Point(startControlX, startControlY).Append(' ');
            writer.Point(endControlX, endControlY).Append(' ');
            writer.Point(x, y);
        }

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y)
            => throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.SegmentKindWrong, PathSegmentKind.Arc, PathSegmentKind.Cubic));

        public void Close() => writer._text.Append('Z');
    }
}
