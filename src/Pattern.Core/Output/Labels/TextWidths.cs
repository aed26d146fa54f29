using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>How much room text takes on a drawing.</summary>
internal static class TextWidths
{
    /// <inheritdoc cref="TypeWidths.Ascent"/>
    internal const double Ascent = TypeWidths.Ascent;

    /// <inheritdoc cref="TypeWidths.Descent"/>
    internal const double Descent = TypeWidths.Descent;

    /// <summary>The width of a line of text.</summary>
    internal static double WidthMm(string text, double sizeMm, TextWeight weight)
        => weight == TextWeight.Bold ? TypeWidths.BoldMm(text, sizeMm) : TypeWidths.RegularMm(text, sizeMm);
}
