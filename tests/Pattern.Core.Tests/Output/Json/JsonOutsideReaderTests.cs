using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;

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
        var settings = new List<string> { "file,name,value" };
        var marks = new List<string> { "file,name,x,y" };
        Directory.CreateDirectory(Folder);
        foreach ((string file, PatternDocument document) in new[] { ("plain.json", JsonSamples.Plain), ("full.json", JsonSamples.Full), ("small.json", JsonSamples.Small) })
        {
            document.SaveJson(Path.Combine(Folder, file));
            pieces.AddRange(document.Pieces.Pieces.Select((piece, i) => $"{file},{i},{Figures(piece)}"));
            edges.AddRange(document.Block.Panels.SelectMany((panel, i) => panel.Edges.Select(edge => $"{file},{i},{edge.Name},{Figures(edge)}")));
            settings.AddRange(document.Block.Method.Settings.Where(setting => setting.Quantity is not null).Select(setting => $"{file},{setting.Name},{Figure(setting)}"));
            marks.AddRange(document.Block.Trued.Landmarks.Select(mark => string.Format(
                CultureInfo.InvariantCulture, "{0},{1},{2:R},{3:R}", file, mark.Name, mark.Position.X.Millimeters, mark.Position.Y.Millimeters)));
        }

        File.WriteAllLines(Path.Combine(Folder, "settings.csv"), settings);
        File.WriteAllLines(Path.Combine(Folder, "landmarks.csv"), marks);
        File.WriteAllLines(Path.Combine(Folder, "pieces.csv"), pieces);
        File.WriteAllLines(Path.Combine(Folder, "edges.csv"), edges);
        Assert.Equal(12, pieces.Count);
        Assert.Equal(25, edges.Count);
        Assert.Equal(7, Directory.GetFiles(Folder).Length);
    }

    private static string Figures(PatternPiece piece) => string.Format(
        CultureInfo.InvariantCulture,
        "{0:R},{1:R},{2},{3}",
        piece.CutPerimeter.Millimeters,
        piece.SeamPerimeter.Millimeters,
        piece.Notches.Sum(notch => notch.Cuts.Count),
        piece.Darts.Sum(dart => dart.DrillHoles.Count));

    // Millimetres, radians, or how many.
    private static string Figure(SettingValue setting) => (setting.Quantity switch
    {
        Length length => length.Millimeters,
        Angle angle => angle.Radians,
        IQuantity count => (double)count.Value,
        _ => double.NaN,
    }).ToString("R", CultureInfo.InvariantCulture);

    private static string Figures(PanelEdge edge) => string.Format(CultureInfo.InvariantCulture, "{0:R},{1}", edge.SewnLength.Millimeters, edge.Darts.Count);
}
