using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>Whether the darts of a panel can be folded onto their seam lines, and which way.</summary>
internal static class DartFolds
{
    /// <summary>The panel with its darts pressed to where their edges have room; a dart that has none on one side is pressed to the other.</summary>
    /// <exception cref="ConstructionException">A dart has room on neither side, or would lie over another one.</exception>
    internal static Panel Folding(DesignDraft work, Panel panel)
    {
        foreach (Dart dart in panel.Darts.ToArray())
        {
            if (TryFold(dart) is { } refusal)
            {
                panel = panel.WithDartPressed(dart.Name, dart.PressedToward == Toward.Start ? Toward.End : Toward.Start);
                if (TryFold(panel.FindDart(dart.Name)) is not null)
                {
                    throw work.Refusal(FormattableString.Invariant(
                        $"The {dart.Name} would be {dart.IntakeMm:0.#} mm wide, and its edge is too short beside it to fold that onto. Turn a part of it, or choose another place along the edge. {refusal.Message}"));
                }
            }
        }

        return panel.CapOutline().IsSimple()
            ? panel
            : throw work.Refusal("Folded, a dart would lie over the cap of another one. Choose another place along the edge, or make one dart of both.");
    }

    private static ConstructionException? TryFold(Dart dart)
    {
        try
        {
            _ = dart.Cap;
            return null;
        }
        catch (ConstructionException refusal) when (refusal.Code == DiagnosticCode.DartWiderThanStretch)
        {
            return refusal;
        }
    }
}
