using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Refusals that several panel operations share.</summary>
internal static class PanelErrors
{
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

    internal static Length Millimetres(double value) => Length.FromMillimeters(value);
}
