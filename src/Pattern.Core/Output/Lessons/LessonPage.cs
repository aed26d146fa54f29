using System.Collections.Generic;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>A lesson in no file format: what every writer writes. Immutable.</summary>
internal sealed class LessonPage(string title, Phrasebook book, IReadOnlyList<LessonPart> parts)
{
    /// <summary>What the document is called.</summary>
    internal string Title { get; } = title;

    /// <summary>The tag of its language.</summary>
    internal string Language { get; } = book.Language;

    /// <summary>What is read aloud where the reader is to write.</summary>
    internal string Blank { get; } = book.Say("blank");

    internal IReadOnlyList<LessonPart> Parts { get; } = parts;

    /// <summary>What stands at the foot of a sheet of paper.</summary>
    internal string Foot(string number, string count) => book.Say("Page {number} of {count}", ("number", number), ("count", count));

    /// <summary>An entry of the contents on paper.</summary>
    internal string OnPage(string entry, string number) => book.Say("{entry}, page {number}", ("entry", entry), ("number", number));
}
