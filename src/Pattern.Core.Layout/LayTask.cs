using System;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>What is to be laid: every copy of every piece, and the ways in which each may lie.</summary>
internal sealed class LayTask
{
    private readonly KeepOut?[][] _keepOuts;
    private readonly double _gapMm;

    /// <summary>Makes a task.</summary>
    /// <param name="shapes">All pieces in all ways in which they may lie.</param>
    /// <param name="copies">For each copy the numbers of the shapes that it may take.</param>
    /// <param name="widthMm">How much of the width of the cloth there is.</param>
    /// <param name="gapMm">How far apart the outlines stay; negative for what counts as touching.</param>
    internal LayTask(LayShape[] shapes, int[][] copies, double widthMm, double gapMm)
    {
        Shapes = shapes;
        Copies = copies;
        WidthMm = widthMm;
        _gapMm = gapMm;
        _keepOuts = [.. shapes.Select(_ => new KeepOut?[shapes.Length])];
        AreaMm2 = copies.Sum(copy => shapes[copy[0]].AreaMm2);
        CellXMm = Math.Max(shapes.Average(shape => shape.Outline.AlongMm), 1e-3);
        CellYMm = Math.Max(shapes.Average(shape => shape.Outline.AcrossMm), 1e-3);
    }

    internal LayShape[] Shapes { get; }

    internal int[][] Copies { get; }

    internal double WidthMm { get; }

    internal double AreaMm2 { get; }

    /// <summary>The mean length of a shape along the cloth.</summary>
    internal double CellXMm { get; }

    /// <summary>The mean width of a shape across it.</summary>
    internal double CellYMm { get; }

    /// <summary>Where a shape must not lie beside another; worked out when it is first asked for.</summary>
    internal KeepOut KeepOutOf(int still, int moving)
        => _keepOuts[still][moving] ??= new KeepOut(Shapes[still].Parts, Shapes[moving].Parts, _gapMm);
}
