using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Which part of a panel or piece a line is, so that a reader of the drawing can measure it with tools of their own.</summary>
public sealed class MarkFacts
{
    private MarkFacts(PanelName panel, MarkPart part, EdgeName edge, int? dart, string? toward, int? times = null)
    {
        Panel = panel;
        Part = part;
        Edge = edge;
        Dart = dart;
        Toward = toward;
        Times = times;
    }

    /// <summary>The panel, or the piece.</summary>
    public PanelName Panel { get; }

    /// <summary>What of the panel.</summary>
    public MarkPart Part { get; }

    /// <summary>The edge that a stretch of seam line or cut line belongs to, or that a corner comes after, or that a dart stands on.</summary>
    public EdgeName Edge { get; }

    /// <summary>The number of the dart on its edge, starting at 1; null for a stretch of seam line.</summary>
    public int? Dart { get; }

    /// <summary>Which leg of the dart, in the word of <see cref="Panels.Panel.WordFor"/>; for a cap, which way the dart is pressed; null for a stretch of seam line.</summary>
    public string? Toward { get; }

    /// <summary>How often the panel of a stretch of seam line stands in the garment, its mirror images counted; null where nobody said, and for other parts.</summary>
    public int? Times { get; }

    /// <summary>A stretch of the seam line of an edge.</summary>
    public static MarkFacts OfSeam(PanelName panel, EdgeName edge) => new(panel, MarkPart.Seam, edge, null, null);

    /// <summary>A stretch of the seam line of an edge.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="times">How often the panel stands in the garment, its mirror images counted.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The number is less than 1.</exception>
    public static MarkFacts OfSeam(PanelName panel, EdgeName edge, int times) => new(panel, MarkPart.Seam, edge, null, null, Guard.InRange(times, 1, int.MaxValue, nameof(times)));

    /// <summary>The cut line of a piece along an edge.</summary>
    public static MarkFacts OfCut(PanelName piece, EdgeName edge) => new(piece, MarkPart.Cut, edge, null, null);

    /// <summary>The cut line of a piece at the corner after an edge.</summary>
    public static MarkFacts OfCutCorner(PanelName piece, EdgeName edge) => new(piece, MarkPart.CutCorner, edge, null, null);

    /// <summary>A leg of a dart.</summary>
    /// <param name="panel">The panel that the dart is on.</param>
    /// <param name="dart">The dart.</param>
    /// <param name="leg">Which leg, in the word of <see cref="Panels.Panel.WordFor"/>.</param>
    /// <exception cref="System.ArgumentException">The word is no name of an edge.</exception>
    public static MarkFacts OfDartLeg(PanelName panel, DartName dart, string leg)
        => new(panel, MarkPart.DartLeg, dart.Edge, dart.Number, Guard.Identifier(leg, nameof(leg)));

    /// <summary>The cap of a dart.</summary>
    /// <param name="panel">The panel that the dart is on.</param>
    /// <param name="dart">The dart.</param>
    /// <param name="pressed">Which way the dart is pressed, in the word of <see cref="Panels.Panel.WordFor"/>.</param>
    /// <exception cref="System.ArgumentException">The word is no name of an edge.</exception>
    public static MarkFacts OfDartCap(PanelName panel, DartName dart, string pressed)
        => new(panel, MarkPart.DartCap, dart.Edge, dart.Number, Guard.Identifier(pressed, nameof(pressed)));

    /// <summary>Panel and part.</summary>
    public override string ToString()
        => Panel + ", " + Part;
}
