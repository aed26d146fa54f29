using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Tests.Output;

/// <summary>Writes files, and what they must measure, for tests/outside-readers/read_json.py.</summary>
public class JsonOutsideReaderTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "outside-readers", "json");

    [Fact]
    public void Files_ForTheOutsideReader_AreWrittenWithTheirFigures()
    {
        var pieces = new List<string> { "file,piece,cut_mm,seam_mm,notches,drill_holes" };
        var edges = new List<string> { "file,panel,edge,sewn_mm,darts" };
        Directory.CreateDirectory(Folder);
        foreach ((string file, PatternDocument document) in new[] { ("plain.json", JsonSamples.Plain), ("full.json", JsonSamples.Full), ("small.json", JsonSamples.Small) })
        {
            document.SaveJson(Path.Combine(Folder, file));
            pieces.AddRange(document.Pieces.Pieces.Select((piece, i) => $"{file},{i},{Figures(piece)}"));
            edges.AddRange(document.Panels.SelectMany((panel, i) => panel.Edges.Select(edge => $"{file},{i},{edge.Name},{Figures(edge)}")));
        }

        File.WriteAllLines(Path.Combine(Folder, "pieces.csv"), pieces);
        File.WriteAllLines(Path.Combine(Folder, "edges.csv"), edges);
        Assert.Equal(12, pieces.Count);
        Assert.Equal(25, edges.Count);
        Assert.Equal(5, Directory.GetFiles(Folder).Length);
    }

    private static string Figures(PatternPiece piece) => string.Format(
        CultureInfo.InvariantCulture,
        "{0:R},{1:R},{2},{3}",
        piece.CutPerimeter.Millimeters,
        piece.SeamPerimeter.Millimeters,
        piece.Notches.Sum(notch => notch.Cuts.Count),
        piece.Darts.Sum(dart => dart.DrillHoles.Count));

    private static string Figures(PanelEdge edge) => string.Format(CultureInfo.InvariantCulture, "{0:R},{1}", edge.SewnLength.Millimeters, edge.Darts.Count);
}
