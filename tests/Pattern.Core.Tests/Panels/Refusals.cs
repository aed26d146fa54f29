using Pattern.Core.Diagnostics;

namespace Pattern.Core.Tests.Panels;

/// <summary>What random darts and places may be refused for, by code: any other refusal is a fault that a test has to show.</summary>
internal static class Refusals
{
    /// <summary>A dart that has no room where it was to be taken in: its apex or its legs would lie outside the panel or over another dart, or it is wider than its edge.</summary>
    internal static bool HasNoRoom(ConstructionException refusal)
        => refusal.Code is DiagnosticCode.ApexOutsidePanel or DiagnosticCode.DartWiderThanEdge or DiagnosticCode.CutCrossesDart or DiagnosticCode.CutLeavesPanel;

    /// <summary>A dart that cannot be moved, split, opened or cut through where it was to be: the cut leaves the panel or crosses a dart, the place is off its edge or the dart's
    /// own, or what turns would lie over what stays.</summary>
    internal static bool HasNoWay(ConstructionException refusal)
        => refusal.Code is DiagnosticCode.CutCrossesDart or DiagnosticCode.CutLeavesPanel or DiagnosticCode.PlaceOffEdge or DiagnosticCode.TransferOntoItself or DiagnosticCode.OutlineWouldCross;
}
