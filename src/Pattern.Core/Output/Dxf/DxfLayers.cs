namespace Pattern.Core.Output;

/// <summary>The layers of pattern pieces (ASTM D6673, earlier ANSI/AAMA-292; from memory).</summary>
internal static class DxfLayers
{
    internal const string Boundary = "1";
    internal const string TurnPoints = "2";
    internal const string CurvePoints = "3";
    internal const string Notches = "4";
    internal const string GradeReference = "5";
    internal const string MirrorLine = "6";
    internal const string Grainline = "7";
    internal const string InternalLines = "8";
    internal const string StripeLine = "9";
    internal const string PlaidLine = "10";
    internal const string Cutouts = "11";
    internal const string DrillHoles = "13";
    internal const string SewLine = "14";
    internal const string Annotation = "15";

    internal static string[] All { get; } =
    [
        Boundary, TurnPoints, CurvePoints, Notches, GradeReference, MirrorLine, Grainline, InternalLines, StripeLine, PlaidLine, Cutouts, DrillHoles, SewLine,
        Annotation,
    ];
}
