using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Refusals that several panel operations share.</summary>
internal static class PanelErrors
{
    internal static ConstructionException OffEdge(PanelName panel, in EdgePlace place, double measuredMm, double lengthMm, string step)
        => place.MeetingMm is not { } asked ? OffEdge(panel, place.Edge, measuredMm, lengthMm, step) : new(DiagnosticCode.PlaceOffEdge, FormattableString.Invariant($"{asked.Mm:0.###} mm ({asked.Mm / 25.4:0.0##} in) from {asked.Edge}"), place.Edge, panel, Millimetres(lengthMm))
        {
            Step = step,
            Landmark = place.Edge.Text,
            Measured = Millimetres(asked.Mm),
            Allowed = Millimetres(lengthMm),
        };

    internal static ConstructionException OffEdge(PanelName panel, EdgeName edge, double measuredMm, double lengthMm, string step)
        => new(DiagnosticCode.PlaceOffEdge, Millimetres(measuredMm), edge, panel, Millimetres(lengthMm))
        {
            Step = step,
            Landmark = edge.Text,
            Measured = Millimetres(measuredMm),
            Allowed = Millimetres(lengthMm),
        };

    internal static ConstructionException TooWide(PanelName panel, EdgeName edge, double intakeMm, double roomMm, string step)
        => new(DiagnosticCode.DartWiderThanEdge, Millimetres(intakeMm), edge, panel, Millimetres(roomMm))
        {
            Step = step,
            Landmark = edge.Text,
            Measured = Millimetres(intakeMm),
            Allowed = Millimetres(roomMm),
        };

    /// <summary>The panel of that name among others.</summary>
    internal static Panel Find(Panel[] panels, PanelName name) => TryFind(panels, name)
        ?? throw new ConstructionException(DiagnosticCode.PanelMissing, name, string.Join(", ", Array.ConvertAll(panels, p => p.Name.Text))) { Landmark = name.Text };

    internal static Panel? TryFind(Panel[] panels, PanelName name)
    {
        foreach (Panel panel in panels)
        {
            if (panel.Name == name)
            {
                return panel;
            }
        }

        return null;
    }

    internal static Length Millimetres(double value) => Length.FromMillimeters(value);
}
