using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Truing, as steps.</content>
public sealed partial class DraftingSheet
{
    /// <summary>Records what a hand does so that a condition holds, in the words that truing has for it.</summary>
    /// <param name="note">One of <see cref="TruingOutcome.Notes"/>.</param>
    public Step Note(TruingNote note)
        => Note(Guard.NotNull(note, nameof(note)).Template, [.. note.Words.Select(word => word is WorkedLength length ? (StepWord)length : (string)word)]);
}
