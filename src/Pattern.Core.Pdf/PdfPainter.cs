using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using PdfSharp.Drawing;
using UnitsNet.Units;

namespace Pattern.Core.Pdf;

/// <summary>Paints the marks of a layer. PDFsharp counts in points, y down from the upper edge of the page.</summary>
internal sealed class PdfPainter
{
    internal const double MmPerPoint = 25.4 / 72;
    private const double PointsPerMm = 72 / 25.4;

    private readonly InterFaces _faces = new();
    private readonly Dictionary<(double SizeMm, TextWeight Weight), XFont> _fonts = [];
    private readonly Dictionary<LineRole, XPen> _pens = [];
    private readonly Dictionary<Ink, XSolidBrush> _brushes = [];

    /// <summary>Paints what of a layer is seen in the clip; all of it without a clip.</summary>
    /// <returns>Whether anything was painted.</returns>
    internal bool Paint(XGraphics graphics, DrawingLayer layer, in Transform2D placement, BoundingBox? clip, double pageHeightMm)
    {
        BoundingBox? seen = clip is { } window ? Seen(window, placement) : null;
        bool isPainted = false;
        foreach (DrawingMark mark in layer.Marks)
        {
            if (seen is { } part && !mark.Bounds.IsNear(part, mark is PathMark path ? path.Role.WeightMm / 2 : 0))
            {
                continue;
            }

            if (!isPainted && clip is { } box)
            {
                graphics.IntersectClip(new XRect(
                    box.LeftMm * PointsPerMm,
                    (pageHeightMm - box.TopMm) * PointsPerMm,
                    (box.RightMm - box.LeftMm) * PointsPerMm,
                    (box.TopMm - box.BottomMm) * PointsPerMm));
            }

            isPainted = true;
            Paint(graphics, mark, placement, pageHeightMm);
        }

        return isPainted;
    }

    // The clip in the coordinates of the drawing; a placement turns by quarters only, so that a box stays a box.
    private static BoundingBox Seen(in BoundingBox window, in Transform2D placement)
    {
        Transform2D back = placement.Inverted();
        return BoundingBox.Around(back.Apply(window.LowerLeft), back.Apply(window.UpperRight));
    }

    private void Paint(XGraphics graphics, DrawingMark mark, in Transform2D placement, double pageHeightMm)
    {
        switch (mark)
        {
            case PathMark path:
                graphics.DrawPath(PenFor(path.Role), Convert(path.Path, placement, pageHeightMm));
                foreach (CurvePath head in path.ArrowHeads())
                {
                    graphics.DrawPath(BrushFor(path.Role.Ink), Convert(head, placement, pageHeightMm));
                }

                break;
            case PointMark point:
                Point2D middle = placement.Apply(point.Position);
                double radius = point.DiameterMm / 2;
                graphics.DrawEllipse(
                    BrushFor(point.Ink),
                    (middle.XMm - radius) * PointsPerMm,
                    (pageHeightMm - middle.YMm - radius) * PointsPerMm,
                    point.DiameterMm * PointsPerMm,
                    point.DiameterMm * PointsPerMm);
                break;
            case TextMark text:
                PaintText(graphics, text, placement, pageHeightMm);
                break;
        }
    }

    private void PaintText(XGraphics graphics, TextMark text, in Transform2D placement, double pageHeightMm)
    {
        PaintPaper(graphics, text, placement, pageHeightMm);
        Point2D anchor = placement.Apply(text.Anchor);
        Vector2D along = placement.Apply(new Vector2D(Math.Cos(text.AngleRad), Math.Sin(text.AngleRad)));
        double degrees = -Math.Atan2(along.YMm, along.XMm) * 180 / Math.PI;
        XStringFormat format = text.Alignment switch
        {
            TextAlignment.Start => XStringFormats.BaseLineLeft,
            TextAlignment.Middle => XStringFormats.BaseLineCenter,
            _ => XStringFormats.BaseLineRight,
        };
        var at = new XPoint(anchor.XMm * PointsPerMm, (pageHeightMm - anchor.YMm) * PointsPerMm);
        string words = PdfWords.Clean(text.Text);
        if (Math.Abs(degrees) < 1e-9)
        {
            graphics.DrawString(words, FontFor(text), BrushFor(text.Ink), at, format);
            return;
        }

        XGraphicsState state = graphics.Save();
        graphics.TranslateTransform(at.X, at.Y);
        graphics.RotateTransform(degrees);
        graphics.DrawString(words, FontFor(text), BrushFor(text.Ink), new XPoint(0, 0), format);
        graphics.Restore(state);
    }

    // Paper under the words, so that no line strikes them through. What is faint lies under everything and hides nothing.
    private void PaintPaper(XGraphics graphics, TextMark text, in Transform2D placement, double pageHeightMm)
    {
        if (text.Ink == Ink.Faint)
        {
            return;
        }

        TurnedBox box = text.Box;
        Point2D[] corners = [box.At(0, 0), box.At(box.WidthMm, 0), box.At(box.WidthMm, box.HeightMm), box.At(0, box.HeightMm)];
        var points = new XPoint[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            Point2D corner = placement.Apply(corners[i]);
            points[i] = new XPoint(corner.XMm * PointsPerMm, (pageHeightMm - corner.YMm) * PointsPerMm);
        }

        graphics.DrawPolygon(BrushFor(Ink.Paper), points, XFillMode.Winding);
    }

    private static XGraphicsPath Convert(CurvePath path, in Transform2D placement, double pageHeightMm)
    {
        var sink = new PathSink(placement, pageHeightMm);
        path.WriteTo(ref sink, LengthUnit.Millimeter);
        return sink.Path;
    }

    private XFont FontFor(TextMark text)
    {
        (double SizeMm, TextWeight Weight) key = (text.SizeMm, text.Weight);
        if (!_fonts.TryGetValue(key, out XFont? font))
        {
            double sizePt = text.SizeMm * PointsPerMm;
            font = text.Weight == TextWeight.Bold ? _faces.Bold(sizePt) : _faces.Regular(sizePt);
            _fonts.Add(key, font);
        }

        return font;
    }

    private XPen PenFor(LineRole role)
    {
        if (!_pens.TryGetValue(role, out XPen? pen))
        {
            pen = new XPen(ColorOf(role.Ink), role.WeightMm * PointsPerMm) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Round };
            if (role.DashesMm.Count > 0)
            {
                // PDFsharp takes dashes in widths of the pen.
                double[] dashes = new double[role.DashesMm.Count];
                for (int i = 0; i < dashes.Length; i++)
                {
                    dashes[i] = role.DashesMm[i] / role.WeightMm;
                }

                pen.LineCap = XLineCap.Flat;
                pen.DashPattern = dashes;
            }

            _pens.Add(role, pen);
        }

        return pen;
    }

    private XSolidBrush BrushFor(Ink ink)
    {
        if (!_brushes.TryGetValue(ink, out XSolidBrush? brush))
        {
            brush = new XSolidBrush(ColorOf(ink));
            _brushes.Add(ink, brush);
        }

        return brush;
    }

    private static XColor ColorOf(Ink ink) => XColor.FromArgb(ink.Red, ink.Green, ink.Blue);

    /// <summary>Takes a path as cubics and lines onto the page.</summary>
    private struct PathSink : IPathSink
    {
        private readonly Transform2D _placement;
        private readonly double _pageHeightMm;
        private XPoint _last;

        internal PathSink(in Transform2D placement, double pageHeightMm)
        {
            _placement = placement;
            _pageHeightMm = pageHeightMm;
        }

        internal XGraphicsPath Path { get; } = new();

        public void MoveTo(double x, double y)
        {
            Path.StartFigure();
            _last = At(x, y);
        }

        public void LineTo(double x, double y)
        {
            XPoint end = At(x, y);
            Path.AddLine(_last, end);
            _last = end;
        }

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
        {
            XPoint end = At(x, y);
            Path.AddBezier(_last, At(startControlX, startControlY), At(endControlX, endControlY), end);
            _last = end;
        }

        // Never called: Convert asks for arcs as cubics, since PDF knows no others.
        public readonly void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y)
            => throw new NotSupportedException(MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(ArcOutput), ArcOutput.Arcs));

        public readonly void Close() => Path.CloseFigure();

        private readonly XPoint At(double x, double y)
        {
            Point2D point = _placement.Apply(new Point2D(x, y));
            return new XPoint(point.XMm * PointsPerMm, (_pageHeightMm - point.YMm) * PointsPerMm);
        }
    }
}
