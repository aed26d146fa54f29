namespace Pattern.Core.Output;

/// <summary>How much a pattern file may hold. What is read and what is written keep the same limits, so that whatever was written can be read.</summary>
/// <remarks>Far above any garment, and low enough that a hostile file costs neither much memory nor much time.</remarks>
internal static class JsonLimits
{
    /// <summary>Of the text, in bytes of UTF-8.</summary>
    internal const int Bytes = 16 * 1024 * 1024;

    /// <summary>Objects, lists, names, texts, numbers and so on, all together.</summary>
    internal const int Values = 1_000_000;

    internal const int Depth = 32;

    internal const int NameLength = 100;

    internal const int TextLength = 10_000;

    /// <summary>Seventeen digits and an exponent say any double; some programs write more.</summary>
    internal const int NumberLength = 100;

    /// <summary>Entries of one list, and segments of one panel.</summary>
    internal const int Entries = 1_000;

    /// <summary>Lines of one text that is kept line by line, such as a table.</summary>
    internal const int Lines = 10_000;

    /// <summary>Coordinates and lengths in millimetres, either sign: a hundred metres.</summary>
    internal const double FarthestMm = 100_000;

    /// <summary>The centre and the radius of an arc, which may be nearly straight: over a chord of a metre it is bent by a ten-thousandth of a millimetre then.</summary>
    internal const double FarthestCentreMm = 1e9;
}
