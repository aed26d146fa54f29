using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Pieces;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

/// <summary>Writes files, and what they must measure, for tests/outside-readers/read_dxf.py.</summary>
public class DxfOutsideReaderTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "outside-readers", "dxf");

    [Fact]
    public void Files_ForTheOutsideReader_AreWrittenWithTheirFigures()
    {
        var pieces = new List<string> { "file,units,block,cut_mm,seam_mm,left_mm,bottom_mm,right_mm,top_mm,turns,notches,drill_holes,mirror_lines,internal_lines" };
        var layers = new List<string> { "file,units,layer,lines,texts,length_mm" };
        Directory.CreateDirectory(Folder);
        foreach (LengthUnit unit in new[] { LengthUnit.Millimeter, LengthUnit.Inch })
        {
            string ending = unit == LengthUnit.Inch ? "in" : "mm";
            string file = $"pieces-{ending}.dxf";
            DxfPieces.Many.SaveDxf(Path.Combine(Folder, file), new DxfOptions { Unit = unit, Author = "Zoë of the wardrobe room" });
            string[] blocks = ["back_12", "front_12_main-cloth", "front_12_lining", "front_14", "back_gr-er"];
            int[] places = [0, 1, 1, 2, 3];
            pieces.AddRange(blocks.Zip(places, (block, place) => $"{file},{ending},{block},{Figures(DxfPieces.Many[place])}"));

            file = $"drawing-{ending}.dxf";
            Drawing drawing = SamplePieces.Skirt.Draw();
            drawing.SaveDxf(Path.Combine(Folder, file), new DrawingDxfOptions { Unit = unit });
            layers.AddRange(drawing.Layers.Select(layer => $"{file},{ending},{layer.Name.Text.Replace(' ', '-')},{Figures(layer)}"));
        }

        File.WriteAllLines(Path.Combine(Folder, "pieces.csv"), pieces);
        File.WriteAllLines(Path.Combine(Folder, "layers.csv"), layers);
        Assert.Equal(11, pieces.Count);
        Assert.Equal(6, Directory.GetFiles(Folder).Length);
    }

    private static string Figures(PatternPiece piece)
    {
        BoundingBox box = piece.Bounds;
        int Corners(CurvePath path) => path.Segments.Count(segment => DxfPieces.Corners(path)(segment.End));
        return string.Format(
            CultureInfo.InvariantCulture,
            "{0:R},{1:R},{2:R},{3:R},{4:R},{5:R},{6},{7},{8},{9},{10}",
            piece.CutPerimeter.Millimeters,
            piece.SeamPerimeter.Millimeters,
            box.Left.Millimeters,
            box.Bottom.Millimeters,
            box.Right.Millimeters,
            box.Top.Millimeters,
            Corners(piece.CutLine) + Corners(piece.SeamLine),
            piece.Notches.Sum(notch => notch.Cuts.Count),
            piece.Darts.Sum(dart => dart.DrillHoles.Count),
            piece.FoldLine is null ? 0 : 1,
            piece.InternalLines.Count + piece.Darts.Sum(dart => dart.Legs.Count + 1));
    }

    private static string Figures(DrawingLayer layer) => string.Format(
        CultureInfo.InvariantCulture,
        "{0},{1},{2:R}",
        layer.Marks.OfType<PathMark>().Count(),
        layer.Marks.OfType<TextMark>().Count(),
        layer.Marks.OfType<PathMark>().Sum(mark => mark.Path.Length.Millimeters));
}
