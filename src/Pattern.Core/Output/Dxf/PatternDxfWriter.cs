using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>Writes pieces as a pattern file of the open standard.</summary>
internal sealed class PatternDxfWriter
{
    private const double BetweenPiecesMm = 50;
    private const double TypeMm = 5;
    private const double LineStepMm = 8;

    private readonly DxfOptions _options;
    private readonly IReadOnlyList<DxfBlock> _blocks;
    private readonly DxfText _text;

    internal PatternDxfWriter(IEnumerable<PatternPiece> pieces, DxfOptions options)
    {
        PatternPiece[] all = [.. Guard.NotNull(pieces, nameof(pieces)).Select(piece => Guard.NotNull(piece, nameof(pieces)))];
        if (all.Length == 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.NoPieces), nameof(pieces));
        }

        _options = options;
        _blocks = DxfBlock.Of(all);
        var known = new HashSet<(string Name, string Size, string Cloth)>();
        foreach (DxfBlock block in _blocks)
        {
            if (!known.Add((block.Piece.Name.Text, block.Size, block.Cloth)))
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.DxfPieceTwice, block.Piece.Name.Text, block.Size, block.Cloth), nameof(pieces));
            }
        }

        _text = new DxfText(new DxfUnits(options.Unit, options.Tolerance));
    }

    internal string Write()
    {
        string[] facts = [.. Facts().SelectMany(DxfWords.Split)];
        Point2D[] places = Places(out BoundingBox bounds);
        bounds = bounds.Union(new BoundingBox(0, -LineStepMm * facts.Length, 0, 0));
        _text.Header(bounds).Section("TABLES").Table("LTYPE", 1)
            .Word(0, "LTYPE").Word(2, "CONTINUOUS").Whole(70, 0).Word(3, "Solid line").Whole(72, 65).Whole(73, 0).LengthOf(40, 0).EndTable()
            .Table("LAYER", DxfLayers.All.Length + 1).Layer("0", DxfLayers.PlainColour);
        foreach (string layer in DxfLayers.All)
        {
            _text.Layer(layer, DxfLayers.ColourOf(layer));
        }

        _text.EndTable().TextStyles().EndSection().Section("BLOCKS");
        foreach (DxfBlock block in _blocks)
        {
            block.Write(_text);
        }

        _text.EndSection().Section("ENTITIES");
        for (int i = 0; i < _blocks.Count; i++)
        {
            _text.Entity("INSERT", DxfLayers.Boundary).Word(2, _blocks[i].Name).At(10, places[i]);
        }

        for (int i = 0; i < facts.Length; i++)
        {
            _text.Label(DxfLayers.Annotation, new Point2D(0, -LineStepMm * (i + 1)), TypeMm, 0, facts[i]);
        }

        return _text.EndSection().Word(0, "EOF").ToString();
    }

    private IEnumerable<string> Facts()
    {
        if (_options.Author is not null)
        {
            yield return "AUTHOR: " + PieceText.Checked(_options.Author, nameof(DxfOptions.Author));
        }

        yield return "STYLE NAME: " + (_options.StyleName is null
            ? _blocks.Select(block => block.Piece.LabelText?.Garment).FirstOrDefault(garment => garment is not null) ?? _blocks[0].Piece.Name.Text
            : PieceText.Checked(_options.StyleName, nameof(DxfOptions.StyleName)));
        if (_options.Created is { } created)
        {
            yield return "CREATION DATE: " + created.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            yield return "CREATION TIME: " + created.ToString("HH:mm", CultureInfo.InvariantCulture);
        }

        yield return "SAMPLE SIZE: " + (_options.SampleSize is null ? _blocks[0].Size : PieceText.Checked(_options.SampleSize, nameof(DxfOptions.SampleSize)));
        yield return "UNITS: " + _text.Units.Name;
        yield return "VERSION: ASTM D6673";
    }

    // Blocks keep the coordinates of the draft, in which front and back stand edge to edge: side by side, their allowances do not overlap.
    private Point2D[] Places(out BoundingBox bounds)
    {
        var places = new Point2D[_blocks.Count];
        double x = 0;
        double top = 0;
        for (int i = 0; i < places.Length; i++)
        {
            BoundingBox piece = _blocks[i].Piece.Bounds;
            places[i] = new Point2D(x - piece.LeftMm, -piece.BottomMm);
            x += piece.RightMm - piece.LeftMm + BetweenPiecesMm;
            top = Math.Max(top, piece.TopMm - piece.BottomMm);
        }

        bounds = new BoundingBox(0, 0, x - BetweenPiecesMm, top);
        return places;
    }
}
