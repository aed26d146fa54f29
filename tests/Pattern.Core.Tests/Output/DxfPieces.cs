using System;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Pieces;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

/// <summary>Pieces of skirts with all that a pattern file can carry.</summary>
internal static class DxfPieces
{
    internal static PatternPiece Back { get; } = Of(SamplePieces.Skirt.Back, "12");

    internal static PatternPiece Front { get; } = Of(SamplePieces.Skirt.Front, "12").CutOnFold(EdgeName.Centre);

    internal static PatternPiece[] Skirt { get; } = [Back, Front];

    /// <summary>A back cut twice, a front on the fold, an unfolded front in another size, a lining, hard names.</summary>
    internal static PatternPiece[] Many { get; } =
    [
        Back.Cut(2, ClothName.Main).WithInternalLine("hip line, 100 % straight", InternalLineKind.Level, CurvePath.FromLine(SamplePieces.Skirt.Back.Grainline)),
        Front.Cut(1, ClothName.Main).Cut(1, ClothName.Lining),
        Of(SamplePieces.Skirt.Front, "14").CutOnFold(EdgeName.Centre).Unfolded(),
        SamplePieces.WithTradeAllowances(SamplePieces.Rectangle).WithLabel(PieceLabel.For("Titania's cape ☾ \\ 100 %%").ForWhom("Zoë 李 ^").WithSize("größer")),
    ];

    internal static PatternPiece Of(Panel panel, string size) => SamplePieces.WithTradeAllowances(panel)
        .WithLabel(PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize(size).WithNote("Make a toile first"));

    internal static PatternPiece[] Of(SkirtBlock block) =>
    [
        PatternPiece.From(block.Back).WithAllowance(Length.FromMillimeters(10)),
        PatternPiece.From(block.Front).WithAllowance(Length.FromMillimeters(10)).CutOnFold(EdgeName.Centre),
    ];

    /// <summary>The points where a line of segments turns or a straight stretch ends, by the public directions alone.</summary>
    internal static Func<Point2D, bool> Corners(CurvePath path)
    {
        var corners = new System.Collections.Generic.List<Point2D>();
        int count = path.Segments.Count;
        for (int i = 0; i < count; i++)
        {
            PathSegment before = path.Segments[i];
            PathSegment after = path.Segments[(i + 1) % count];
            double turn = Math.Abs((after.StartDirection.Angle - before.EndDirection.Angle).Degrees) % 360;
            bool isStraight = before.Kind == PathSegmentKind.Line || after.Kind == PathSegmentKind.Line;
            if (isStraight || Math.Min(turn, 360 - turn) > 0.5)
            {
                corners.Add(before.End);
            }
        }

        return point => corners.Exists(corner => corner.DistanceTo(point).Millimeters < 0.001);
    }
}
