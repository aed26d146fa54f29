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

    // Numbers of the format's own table: red, green, cyan, blue, magenta; 7 is black or white, whichever the screen is not; 8 is grey.
    internal const int CutColour = 1;
    internal const int SewColour = 3;
    internal const int MarkColour = 4;
    internal const int FoldColour = 5;
    internal const int InternalColour = 6;
    internal const int PlainColour = 7;
    internal const int VertexColour = 8;

    /// <summary>A colour for each layer, so that lines can be told apart on a screen. The standard goes by layers, and any colour will do for it.</summary>
    internal static int ColourOf(string layer) => layer switch
    {
        Boundary => CutColour,
        SewLine => SewColour,
        Notches or DrillHoles => MarkColour,
        MirrorLine => FoldColour,
        InternalLines or Cutouts => InternalColour,
        TurnPoints or CurvePoints => VertexColour,
        _ => PlainColour,
    };

    internal static string[] All { get; } =
    [
        Boundary, TurnPoints, CurvePoints, Notches, GradeReference, MirrorLine, Grainline, InternalLines, StripeLine, PlaidLine, Cutouts, DrillHoles, SewLine,
        Annotation,
    ];
}
