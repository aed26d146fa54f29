using System;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

public class DrawingTests
{
    private static readonly BoundingBox Sheet = BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(100, 100));

    [Fact]
    public void Of_TwoLayersOfOneName_Refuses()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => Drawing.Of(
            "sheet", "a sheet", Sheet, [DrawingLayer.Of(LayerName.Darts, []), DrawingLayer.Of(LayerName.Of("darts"), [])]));

        Assert.Contains("PC7001", refusal.Message);
    }

    [Fact]
    public void Without_ALayer_LeavesItOutAndTheOriginalAsItWas()
    {
        Drawing drawing = DrawnSkirts.Drawn("default");
        int count = drawing.Layers.Count;

        Drawing less = drawing.Without(LayerName.Construction, LayerName.Of("nothing"));

        Assert.Equal(count - 1, less.Layers.Count);
        Assert.False(less.TryFindLayer(LayerName.Construction, out _));
        Assert.Equal(count, drawing.Layers.Count);
    }

    [Fact]
    public void TextMark_Of_RefusesWhatCannotBeSet()
    {
        TextMark Set(string text, double size, double angle) => TextMark.Of(
            text, Point2D.Origin, Length.FromMillimeters(size), Angle.FromDegrees(angle), TextAlignment.Start, TextWeight.Regular, Ink.Strong);

        Assert.Throws<ArgumentException>(() => Set(" ", 5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Set("hem", 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PointMark.Of(Point2D.Origin, Length.FromMillimeters(-1), Ink.Strong));
    }

    // Helvetica, Adobe font metrics of the core fonts, from memory: H 722, e 556, m 833 thousandths.
    [Fact]
    public void TextMark_Width_IsNoLessThanInHelvetica()
    {
        TextMark mark = TextMark.Of("Hem", Point2D.Origin, Length.FromMillimeters(10), Angle.Zero, TextAlignment.Start, TextWeight.Regular, Ink.Strong);

        Assert.InRange(mark.Width.Millimeters, 21.11, 1.2 * 21.11);
    }

    // Closed form: a quarter turn makes width of height.
    [Theory]
    [InlineData(TextAlignment.Start, 0, 0)]
    [InlineData(TextAlignment.Middle, 0.5, 0)]
    [InlineData(TextAlignment.End, 1, 0)]
    [InlineData(TextAlignment.Start, 0, 90)]
    [InlineData(TextAlignment.End, 1, 90)]
    [InlineData(TextAlignment.Middle, 0.5, 180)]
    public void TextMark_Bounds_LieAroundTheAnchor(TextAlignment alignment, double before, double degrees)
    {
        TextMark mark = TextMark.Of("side seam", Point2D.FromMillimeters(10, 20), Length.FromMillimeters(10), Angle.FromDegrees(degrees), alignment, TextWeight.Bold, Ink.Strong);
        double width = mark.Width.Millimeters;
        (double left, double bottom, double right, double top) = degrees switch
        {
            0 => (-before * width, -2.4, (1 - before) * width, 8.2),
            90 => (-8.2, -before * width, 2.4, (1 - before) * width),
            _ => (-(1 - before) * width, -8.2, before * width, 2.4),
        };

        Assert.Equal(10 + left, mark.Bounds.Left.Millimeters, 1e-9);
        Assert.Equal(20 + bottom, mark.Bounds.Bottom.Millimeters, 1e-9);
        Assert.Equal(10 + right, mark.Bounds.Right.Millimeters, 1e-9);
        Assert.Equal(20 + top, mark.Bounds.Top.Millimeters, 1e-9);
    }
}
