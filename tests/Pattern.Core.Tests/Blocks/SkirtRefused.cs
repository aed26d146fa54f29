using Pattern.Core.Diagnostics;

namespace Pattern.Core.Tests.Blocks;

/// <summary>With which codes a random skirt may be refused. A refusal with any other is a fault.</summary>
internal static class SkirtRefused
{
    /// <summary>This body cannot be drafted with these settings.</summary>
    internal static bool IsDraft(ConstructionException refusal) => refusal.Code
        is DiagnosticCode.HipLevelsCrossed or DiagnosticCode.SkirtTooShort or DiagnosticCode.PanelTooNarrow or DiagnosticCode.DartLengthImpossible
        or DiagnosticCode.DartOffWaistline or DiagnosticCode.DartsTurnTooFar or DiagnosticCode.WaistWiderThanHip or DiagnosticCode.WaistAtHip
        or DiagnosticCode.HemTooSteep or DiagnosticCode.HemTooNarrow or DiagnosticCode.WaistNotTrued or DiagnosticCode.ShapingOutsideTable or DiagnosticCode.DartWiderThanStretch;

    /// <summary>The design cannot be made of this block.</summary>
    internal static bool IsDesign(ConstructionException refusal) => refusal.Code is DiagnosticCode.DesignRefused;

    /// <summary>No cut line goes around this panel with its allowances.</summary>
    internal static bool IsCut(ConstructionException refusal) => refusal.Code
        is DiagnosticCode.CutLineCrosses or DiagnosticCode.CutLineTooNear or DiagnosticCode.EdgeVanishes or DiagnosticCode.SeamLineCrosses or DiagnosticCode.DartWiderThanStretch;
}
