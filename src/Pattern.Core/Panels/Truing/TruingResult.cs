using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>What truing made, and what it changed by how much. When nothing was needed the panels are the very same and nothing is listed.</summary>
public sealed class TruingResult
{
    private readonly Panel[] _panels;
    private readonly TruingChange[] _changes;
    private readonly CornerChange[] _corners;

    internal TruingResult(Panel[] panels, TruingChange[] changes, CornerChange[] corners)
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
    public IReadOnlyList<TruingChange> Changes => _changes;

    /// <summary>Every angle that changed.</summary>
    public IReadOnlyList<CornerChange> Corners => _corners;

    /// <summary>Whether anything had to change.</summary>
    public bool HasChanged => _changes.Length > 0 || _corners.Length > 0;

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">It was not among the panels.</exception>
    [Pure]
    public Panel Find(PanelName name) => _panels.FirstOrDefault(p => p.Name == name)
        ?? throw new ConstructionException(DiagnosticCode.PanelMissing, name, string.Join(", ", _panels.Select(p => p.Name.Text))) { Landmark = name.Text };
}
