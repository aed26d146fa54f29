using System.Collections.Generic;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>How a paragraph of a lesson is set.</summary>
internal enum LessonTone
{
    Plain,
    Reason,
    Figure,
}

/// <summary>One part of a lesson, in the language that it is printed in. A place for the reader to write in is <see cref="Measurement.WorkedText.Blank"/>.</summary>
internal abstract record LessonPart;

/// <summary>What the lesson is, and for whom: the name stands apart from what is said before and after it.</summary>
internal sealed record LessonTitle(string Words, string? Name, string After) : LessonPart
{
    // No sentence has it.
    private const string Place = "\uE000";

    internal static LessonTitle Of(string words, string? name, Phrasebook book)
    {
        if (name is null)
        {
            return new LessonTitle(words, null, string.Empty);
        }

        string said = book.Say("{block} for {name}", ("block", words), ("name", Place));
        int at = said.IndexOf(Place, System.StringComparison.Ordinal);
        return at < 0 ? new LessonTitle(said, null, string.Empty) : new LessonTitle(said.Substring(0, at), name, said.Substring(at + Place.Length));
    }
}

/// <summary>A heading; with a name that the contents point to.</summary>
internal sealed record LessonHeading(string? Id, string Words) : LessonPart;

/// <summary>A paragraph; a figure to measure may have its name in front.</summary>
internal sealed record LessonParagraph(string Words, LessonTone Tone = LessonTone.Plain, string? Label = null) : LessonPart;

/// <summary>Lines to write on, each with its label.</summary>
internal sealed record LessonFields(IReadOnlyList<string> Labels) : LessonPart;

/// <summary>Where everything is.</summary>
internal sealed record LessonContents(string Label, IReadOnlyList<(string Id, string Words)> Entries) : LessonPart;

/// <summary>Rows of cells, the first of each its label; with or without headings.</summary>
internal sealed record LessonTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : LessonPart;

/// <summary>A picture with its words beside it: never broken over two pages.</summary>
internal sealed record LessonEntry(string Id, string Heading, LessonPicture Picture, string FileName, IReadOnlyList<LessonParagraph> Words) : LessonPart;

/// <summary>A picture that stands alone.</summary>
internal sealed record LessonFigure(LessonPicture Picture, string FileName) : LessonPart;

/// <summary>Parts in a frame.</summary>
internal sealed record LessonBox(IReadOnlyList<LessonPart> Parts) : LessonPart;
