namespace Pattern.Core.Blocks;

/// <summary>How much a shaping table in text may hold.</summary>
/// <remarks>Far above any table of the trade, and low enough that a hostile text costs neither much memory nor much time.</remarks>
internal static class ShapingCsvLimits
{
    /// <summary>Of the text, remarks included.</summary>
    internal const int Characters = 1024 * 1024;

    /// <summary>Of a table, however it is made: what was written can be read.</summary>
    internal const int Rows = 1_000;

    internal const int NameLength = 100;
}
