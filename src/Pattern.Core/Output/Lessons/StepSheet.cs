using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>A block as a sheet to draft by: each step with a small picture, its sentence, and the figure to measure in large type. Immutable.</summary>
/// <remarks>Of any block, whatever its method. The sheet of a block that was read from a file has no steps: a file keeps none. The package Pattern.Core.Pdf prints it.</remarks>
/// <example><code>
/// StepSheet sheet = StepSheet.Of(block).WithReasons();
/// File.WriteAllText("steps.html", sheet.ToHtml());
/// File.WriteAllText("exercise.html", sheet.AsExercise().ToHtml());
/// File.WriteAllText("form.html", sheet.AsForm().ToHtml());
/// </code></example>
public sealed class StepSheet
{
    private StepSheet(Block block, TapeStep tape)
    {
        Block = block;
        Tape = tape;
    }

    private StepSheet(StepSheet from)
        : this(from.Block, from.Tape)
    {
        Phrases = from.Phrases;
        ShowsReasons = from.ShowsReasons;
        IsExercise = from.IsExercise;
        IsForm = from.IsForm;
    }

    /// <summary>The block.</summary>
    public Block Block { get; }

    /// <summary>The tape that figures are read off, and its finest mark. A figure that it cannot show exactly carries a <c>~</c>.</summary>
    public TapeStep Tape { get; }

    /// <summary>The language of the sheet.</summary>
    /// <value>Default: English.</value>
    public Phrasebook Phrases { get; private init; } = Phrasebook.English;

    /// <summary>Whether each step says why it is done, where its method says so.</summary>
    /// <value>Default: no.</value>
    public bool ShowsReasons { get; private init; }

    /// <summary>Whether figures are left blank for the reader to work out.</summary>
    /// <value>Default: no.</value>
    public bool IsExercise { get; private init; }

    /// <summary>Whether the body's figures are left out as well, so that each reader fills in her own.</summary>
    /// <value>Default: no.</value>
    public bool IsForm { get; private init; }

    /// <summary>The sheet of a block, read off the tape that suits the unit of its body measurements.</summary>
    /// <param name="block">The block.</param>
    [Pure]
    public static StepSheet Of(Block block) => Of(block, TapeStep.For(Guard.NotNull(block, nameof(block)).Body.Unit));

    /// <summary>The sheet of a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="tape">The finest mark of the tape that figures are read off. Darts are read no more coarsely than in sixteenths of an inch.</param>
    [Pure]
    public static StepSheet Of(Block block, TapeStep tape) => new(Guard.NotNull(block, nameof(block)), tape);

    /// <summary>Shows the reason of each step beside it, where its method gives one.</summary>
    [Pure]
    public StepSheet WithReasons() => new(this) { ShowsReasons = true };

    /// <summary>Speaks another language.</summary>
    /// <param name="phrases">The language. What it does not know is said in English.</param>
    [Pure]
    public StepSheet WithPhrases(Phrasebook phrases) => new(this) { Phrases = Guard.NotNull(phrases, nameof(phrases)) };

    /// <summary>Leaves the figures blank: workings stay, in words, and so does what is given, the measurements, settings and the row of the table.</summary>
    /// <remarks>This sheet is its answer key. Guide points of curves, what rounding does and what the checks ask for stand in the key only.</remarks>
    [Pure]
    public StepSheet AsExercise() => new(this) { IsExercise = true, IsForm = false };

    /// <summary>Leaves an empty column for the figures of each reader: every working is a formula in words, <c>1/2 of (hip girth + hip ease)</c>, and no figure of this body is printed but those it is drafted with.</summary>
    /// <remarks>The steps are those of this body; the sheet says so. Where a figure is no formula of the measurements, because it was found on the draft, the step says that too.</remarks>
    [Pure]
    public StepSheet AsForm() => new(this) { IsExercise = false, IsForm = true };

    /// <summary>Every phrase that the sheet says, in English and in alphabetical order: what a <see cref="Phrasebook"/> of another language has to know for it.</summary>
    [Pure]
    public IReadOnlyList<string> ListPhrases() => [.. StepSheetContent.PhrasesOf(this).OrderBy(phrase => phrase, System.StringComparer.Ordinal)];

    /// <summary>The sheet as one HTML page that needs nothing beside it: no script, no fonts and no files from elsewhere.</summary>
    /// <remarks>Black on white, for A4 and Letter; no step is broken over two pages. On a phone picture and words stand one below the other. Each picture says in words what
    /// it shows. The page is well-formed XML too. Same sheet, same characters, in any culture.</remarks>
    [Pure]
    public string ToHtml() => LessonHtml.Write(ToLesson());

    /// <summary>Writes the page to a file, as a whole or not at all.</summary>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="System.ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public void SaveHtml(string path)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, ToHtml());
    }

    /// <summary>The sheet as a page in Markdown, each picture a file of its own.</summary>
    [Pure]
    public MarkdownPage ToMarkdown() => LessonMarkdown.Write(ToLesson());

    /// <summary>What it is and of which block.</summary>
    public override string ToString() => (IsForm ? "Form to fill in: " : IsExercise ? "Exercise sheet: " : "Step sheet: ") + Block.Title;

    internal LessonPage ToLesson() => StepSheetContent.Of(this);
}
