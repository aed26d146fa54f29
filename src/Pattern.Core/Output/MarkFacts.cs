using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Which part of a panel or piece a line is, so that a reader of the drawing can measure it with tools of their own.</summary>
public sealed class MarkFacts
{
    private MarkFacts(PanelName panel, MarkPart part, EdgeName? edge, int? dart, Toward? toward)
    {
        Panel = panel;
        Part = part;
        Edge = edge;
        Dart = dart;
        Toward = toward;
    }

    /// <summary>The panel, or the piece.</summary>
    public PanelName Panel { get; }

    /// <summary>What of the panel.</summary>
    public MarkPart Part { get; }

    /// <summary>The edge that a stretch of seam line or cut line belongs to, or that a corner comes after; null for parts of a dart.</summary>
    public EdgeName? Edge { get; }

    /// <summary>The number of the dart, from the centre, starting at 1; null for a stretch of seam line.</summary>
    public int? Dart { get; }

    /// <summary>Which leg of the dart; for a cap, which way the dart is pressed; null for a stretch of seam line.</summary>
    public Toward? Toward { get; }

    /// <summary>A stretch of the seam line of an edge.</summary>
    public static MarkFacts OfSeam(PanelName panel, EdgeName edge) => new(panel, MarkPart.Seam, edge, null, null);

    /// <summary>The cut line of a piece along an edge.</summary>
    public static MarkFacts OfCut(PanelName piece, EdgeName edge) => new(piece, MarkPart.Cut, edge, null, null);

    /// <summary>The cut line of a piece at the corner after an edge.</summary>
    public static MarkFacts OfCutCorner(PanelName piece, EdgeName edge) => new(piece, MarkPart.CutCorner, edge, null, null);

    /// <summary>A leg of a dart.</summary>
    /// <param name="panel">The panel that the dart is on.</param>
    /// <param name="dart">Its number, from the centre, starting at 1.</param>
    /// <param name="leg">Which leg.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The number is less than 1.</exception>
    public static MarkFacts OfDartLeg(PanelName panel, int dart, Toward leg) => OfDart(panel, MarkPart.DartLeg, dart, leg);

    /// <summary>The cap of a dart.</summary>
    /// <param name="panel">The panel that the dart is on.</param>
    /// <param name="dart">Its number, from the centre, starting at 1.</param>
    /// <param name="pressed">Which way the dart is pressed.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The number is less than 1.</exception>
    public static MarkFacts OfDartCap(PanelName panel, int dart, Toward pressed) => OfDart(panel, MarkPart.DartCap, dart, pressed);

    private static MarkFacts OfDart(PanelName panel, MarkPart part, int dart, Toward toward)
        => new(panel, part, null, Guard.InRange(dart, 1, int.MaxValue, nameof(dart)), (Toward)Guard.Choice((int)toward, 2, nameof(toward)));
}
