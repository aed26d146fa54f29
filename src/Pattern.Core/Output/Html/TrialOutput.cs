using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;

namespace Pattern.Core.Output;

/// <summary>What a method does to many bodies, as a page.</summary>
public static class TrialOutput
{
    /// <summary>The summary as one HTML page that needs nothing beside it: counts, reasons, advice, and the bodies at the ends as small pictures.</summary>
    /// <remarks>Black on white, so that it prints as it looks; on a phone the pictures stand one below the other. No script, no fonts and no files from elsewhere.
    /// Same summary, same characters, in any culture.</remarks>
    /// <param name="summary">The summary.</param>
    /// <param name="title">What was tried on whom, such as <c>Tailored skirt on the wardrobe room's cast</c>.</param>
    /// <param name="tape">How lengths are read.</param>
    /// <exception cref="System.ArgumentException">The title is empty.</exception>
    [Pure]
    public static string ToHtml(this TrialSummary summary, string title, TapeStep tape)
        => new TrialPage(Guard.NotNull(summary, nameof(summary)), Guard.Name(title, nameof(title)), tape).Write();
}
