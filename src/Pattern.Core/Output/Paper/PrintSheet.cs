using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>One sheet of paper with what is printed on it. Immutable.</summary>
/// <remarks>Its lower left corner is the origin, x runs to the right and y up. First its own marks are drawn, then above them the drawing, moved by
/// <see cref="Placement"/> and clipped to <see cref="Window"/>.</remarks>
public sealed class PrintSheet
{
    internal PrintSheet(string name, Drawing? marks, double widthMm, double heightMm, Transform2D? placement, in BoundingBox window, Drawing? drawing = null)
    {
        Drawing = drawing;
        Name = name;
        Marks = marks;
        WidthMm = widthMm;
        HeightMm = heightMm;
        Placement = placement;
        Window = window;
    }

    /// <summary>What the sheet is called: <c>2C</c> for row 2, column C; <c>map</c>, <c>sheet</c>, <c>roll</c>.</summary>
    public string Name { get; }

    /// <summary>What is printed on the sheet besides the drawing; null for nothing.</summary>
    public Drawing? Marks { get; }

    /// <summary>From side to side.</summary>
    public Length Width => Length.FromMillimeters(WidthMm);

    /// <summary>From bottom to top.</summary>
    public Length Height => Length.FromMillimeters(HeightMm);

    /// <summary>The drawing that lies on the sheet, where a layout has laid its pieces out anew or leaves parts of it to another sheet; null for the drawing that was arranged, as it is.</summary>
    public Drawing? Drawing { get; }

    /// <summary>Where the drawing lies on the sheet: a move, perhaps with a quarter turn, never a change of scale; null for a sheet without it.</summary>
    public Transform2D? Placement { get; }

    /// <summary>The part of the sheet that the drawing is clipped to; the whole sheet where there are no margins.</summary>
    public BoundingBox Window { get; }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    /// <summary>Name and size.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}, {WidthMm:0.#} mm by {HeightMm:0.#} mm");

    /// <summary>For a format whose pages have limits.</summary>
    internal void RefuseOutside(double leastMm, double mostMm)
    {
        // Sizes are sums of roundings.
        const double tolerance = 1e-6;
        if (!(Math.Max(WidthMm, HeightMm) <= mostMm + tolerance && Math.Min(WidthMm, HeightMm) >= leastMm - tolerance))
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.PageSizeImpossible, Width, Height, Length.FromMillimeters(leastMm), Length.FromMillimeters(mostMm)));
        }
    }

    internal static PrintSheet Whole(string name, double widthMm, double heightMm, in Transform2D placement)
        => new(name, null, widthMm, heightMm, placement, new BoundingBox(0, 0, widthMm, heightMm));
}
