using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>What truing made, and what it changed by how much. When nothing was needed the panels are the very same and nothing is listed.</summary>
public sealed class TruingResult
{
    private readonly Panel[] _panels;
    private readonly Finding[] _changes;
    private readonly Finding[] _corners;

    internal TruingResult(Panel[] panels, Finding[] changes, Finding[] corners)
    {
        _panels = panels;
        _changes = changes;
        _corners = corners;
    }

    /// <summary>The panels that were given, in their order, each as truing left it.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    /// <summary>The first of the panels: the one that was trued, where only one was given.</summary>
    public Panel Panel => _panels[0];

    /// <summary>Every length that changed.</summary>
    public IReadOnlyList<Finding> Changes => _changes;

    /// <summary>Every angle that changed.</summary>
    public IReadOnlyList<Finding> Corners => _corners;

    /// <summary>Whether anything had to change.</summary>
    public bool HasChanged => _changes.Length > 0 || _corners.Length > 0;

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">It was not among the panels.</exception>
    [Pure]
    public Panel Find(PanelName name) => PanelErrors.Find(_panels, name);

    /// <summary>How much changed.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{_panels.Length} panels, {_changes.Length} lengths and {_corners.Length} corners trued");
}
