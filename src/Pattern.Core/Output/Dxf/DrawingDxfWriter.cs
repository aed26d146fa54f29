using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Writes a drawing for general drawing programs.</summary>
internal sealed class DrawingDxfWriter
{
    private const double CapitalHeight = 0.7;
    private const double LineSpacing = 1.3;

    private readonly Drawing _drawing;
    private readonly DxfText _text;

    internal DrawingDxfWriter(Drawing drawing, DrawingDxfOptions options)
    {
        _drawing = drawing;
        _text = new DxfText(new DxfUnits(options.Unit, options.Tolerance));
    }

    internal string Write()
    {
        _text.Header(_drawing.Bounds).Section("TABLES");
        WriteLineTypes();
        _text.Table("LAYER", _drawing.Layers.Count + 1).Layer("0", Colour(Ink.Strong));
        foreach (DrawingLayer layer in _drawing.Layers)
        {
            _text.Layer(Plain(layer.Name.Text), Colour(Ink.Strong));
        }

        _text.EndTable().TextStyles().EndSection().Section("ENTITIES");
        foreach (DrawingLayer layer in _drawing.Layers)
        {
            foreach (DrawingMark mark in layer.Marks)
            {
                WriteMark(Plain(layer.Name.Text), mark);
            }
        }

        return _text.EndSection().Word(0, "EOF").ToString();
    }

    // The names of layers and line roles: blanks are no part of names in this release.
    private static string Plain(string name) => name.Replace(' ', '-');

    // The numbered colours that every program knows: 7 is black or white, whichever the screen is not; 8 and 9 are greys.
    private static int Colour(in Ink ink) => ink == Ink.Accent ? 1 : ink == Ink.Cool ? 5 : ink == Ink.Quiet ? 8 : ink == Ink.Faint ? 9 : 7;

    private static string? LineType(LineRole role) => role.DashesMm.Count == 0 ? null : Plain(role.Name);

    private void WriteLineTypes()
    {
        LineRole[] dashed = [.. _drawing.Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Select(mark => mark.Role).Where(role => role.DashesMm.Count > 0).Distinct()];
        _text.Table("LTYPE", dashed.Length + 1)
            .Word(0, "LTYPE").Word(2, "CONTINUOUS").Whole(70, 0).Word(3, "Solid line").Whole(72, 65).Whole(73, 0).LengthOf(40, 0);
        foreach (LineRole role in dashed)
        {
            IReadOnlyList<double> dashes = role.DashesMm;
            _text.Word(0, "LTYPE").Word(2, Plain(role.Name)).Whole(70, 0).Word(3, role.Name).Whole(72, 65).Whole(73, dashes.Count).LengthOf(40, dashes.Sum());
            for (int i = 0; i < dashes.Count; i++)
            {
                // A gap is a negative length.
                _text.LengthOf(49, i % 2 == 0 ? dashes[i] : -dashes[i]);
            }
        }

        _text.EndTable();
    }

    private void WriteMark(string layer, DrawingMark mark)
    {
        switch (mark)
        {
            case PathMark path:
                WritePath(layer, path);
                break;
            case PointMark point:
                DxfPolyline.Attributes(_text.Entity("CIRCLE", layer), null, Colour(point.Ink)).At(10, point.Position).LengthOf(40, point.DiameterMm / 2);
                break;
            case TextMark words:
                WriteText(layer, words);
                break;
        }
    }

    private void WritePath(string layer, PathMark mark)
    {
        string? lineType = LineType(mark.Role);
        int colour = Colour(mark.Role.Ink);
        PathSegment[] segments = mark.Path.SegmentsRaw;
        if (segments.Length == 1 && segments[0].Kind == PathSegmentKind.Line)
        {
            DxfPolyline.Attributes(_text.Entity("LINE", layer), lineType, colour).At(10, segments[0].Start).At(11, segments[0].End);
        }
        else
        {
            new DxfPolyline(mark.Path, _text.Units).Write(_text, layer, lineType, colour);
        }

        foreach (CurvePath head in mark.ArrowHeads())
        {
            // A filled triangle: the format asks for four corners, the last one twice.
            PathSegment[] sides = head.SegmentsRaw;
            DxfPolyline.Attributes(_text.Entity("SOLID", layer), null, colour)
                .At(10, sides[0].Start).At(11, sides[1].Start).At(12, sides[2].Start).At(13, sides[2].Start);
        }
    }

    // What is too long for one text goes on in others below it.
    private void WriteText(string layer, TextMark mark)
    {
        Vector2D down = Direction.FromRadians(mark.AngleRad).TurnedRight.TimesMm(mark.SizeMm * LineSpacing);
        Point2D at = mark.Anchor;
        foreach (string words in DxfWords.Split(mark.Text))
        {
            DxfPolyline.Attributes(_text.Entity("TEXT", layer), null, Colour(mark.Ink)).At(10, at)
                .LengthOf(40, mark.SizeMm * CapitalHeight).Words(1, words).Degrees(50, mark.AngleRad * 180 / Math.PI);
            if (mark.Alignment != TextAlignment.Start)
            {
                _text.Whole(72, mark.Alignment == TextAlignment.Middle ? 1 : 2).At(11, at);
            }

            at += down;
        }
    }
}
