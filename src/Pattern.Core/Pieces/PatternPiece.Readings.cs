using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <content>What can be read off a piece.</content>
public sealed partial class PatternPiece
{
    /// <summary>The name of the piece: that of its panel, unless it was given its own.</summary>
    public PanelName Name => _settings.Name ?? _half.Name;

    /// <summary>What is sewn: the panel, or both halves of it where the piece was unfolded.</summary>
    public Panel Panel => _settings.IsUnfolded ? _lines.Value.Panel : _half;

    /// <summary>The edges in order around the piece, with their allowances.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public IReadOnlyList<PieceEdge> Edges => _lines.Value.Edges;

    /// <summary>The seam line all around, across the caps of the darts. An edge on the fold is part of it.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public CurvePath SeamLine => _lines.Value.SeamLine;

    /// <summary>The line to cut along, all around. An edge on the fold is part of it.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public CurvePath CutLine => _lines.Value.CutOutline;

    /// <summary>What is marked of each dart.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public IReadOnlyList<PieceDart> Darts => _lines.Value.Darts;

    /// <summary>The notches in order around the piece.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public IReadOnlyList<PieceNotch> Notches => _lines.Value.Notches;

    /// <summary>The lines inside the piece.</summary>
    public IReadOnlyList<InternalLine> InternalLines => _lines.Value.InternalLines;

    /// <summary>Where the straight grain lies.</summary>
    public LineSegment Grainline => _half.Grainline;

    /// <summary>The edge that lies on the fold of the cloth, from seam line to seam line, or null.</summary>
    public LineSegment? FoldLine => _settings is { Fold: { } fold, IsUnfolded: false }
        ? new LineSegment(_half.FindEdge(fold).Start, _half.FindEdge(fold).End)
        : null;

    /// <summary>How often the piece is cut, cloth by cloth.</summary>
    public IReadOnlyList<CutCount> Cuts => _settings.Cuts;

    /// <summary>What was asked to be printed on the piece, or null.</summary>
    public PieceLabel? LabelText => _settings.Label;

    /// <summary>The tape of who makes the piece, or null where nobody said.</summary>
    public TapeStep? Tape => _settings.Tape;

    /// <summary>The label where it stands; null where none was asked for, or where the piece has no room for it.</summary>
    public LabelBlock? Label => _label.Value;

    /// <summary>The proof of the piece: that each edge has its allowance, measured on the lines as drawn, and that nothing is left out.</summary>
    /// <exception cref="ConstructionException">The cut line cannot be drawn.</exception>
    public CheckReport Report => _report.Value;

    /// <summary>All around along the seam line, across the caps of the darts.</summary>
    public Length SeamPerimeter => SeamLine.Length;

    /// <summary>All around along the cut line.</summary>
    public Length CutPerimeter => CutLine.Length;

    /// <summary>The cloth inside the cut line. Of a piece on the fold, the half that is drawn.</summary>
    public Area CutArea => Area.FromSquareMillimeters(Math.Abs(CutLine.SignedAreaMm2));

    /// <summary>The smallest upright box around the cut line.</summary>
    public BoundingBox Bounds => CutLine.Bounds;

    /// <summary>Returns the edge of that name.</summary>
    /// <exception cref="ConstructionException">The piece has no such edge.</exception>
    [System.Diagnostics.Contracts.Pure]
    public PieceEdge FindEdge(EdgeName name) => _lines.Value.Edges[_lines.Value.Panel.IndexOf(name)];

    /// <summary>The panel that the piece was made from, before any unfolding.</summary>
    internal Panel Half => _half;

    internal PieceSettings Settings => _settings;

    internal IEnumerable<string> CuttingLines() => _settings.Cuts.Select(CuttingLine);

    internal string CuttingLine(CutCount cut)
    {
        string pairs = cut.Count == 2 ? ", as a pair" : ", in pairs";
        string how = FoldLine is not null ? " on the fold" : cut.Count > 1 && !_settings.IsUnfolded ? pairs : string.Empty;
        return "cut " + cut + how;
    }

    private LabelBlock? PlaceLabel() => _settings.Label is { } label ? LabelSearch.Place(this, label) : null;

    /// <summary>The name, and how often it is cut.</summary>
    public override string ToString()
        => "piece " + Name + (Cuts.Count == 0 ? string.Empty : ": " + string.Join(", ", Cuts));
}
