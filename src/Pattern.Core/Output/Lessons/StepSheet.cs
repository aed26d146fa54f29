using System.Diagnostics.Contracts;
using System.IO;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>A block as a sheet to draft by: each step with a small picture, its sentence, and the figure to measure in large type. Immutable.</summary>
/// <remarks>Of any block, whatever its method. The sheet of a block that was read from a file has no steps: a file keeps none.</remarks>
/// <example><code>
/// StepSheet sheet = StepSheet.Of(block).WithReasons();
/// File.WriteAllText("steps.html", sheet.ToHtml());
/// File.WriteAllText("exercise.html", sheet.AsExercise().ToHtml());
/// </code></example>
public sealed class StepSheet
{
    private StepSheet(Block block, TapeStep tape, bool showsReasons, bool isExercise)
    {
        Block = block;
        Tape = tape;
        ShowsReasons = showsReasons;
        IsExercise = isExercise;
    }

    /// <summary>The block.</summary>
    public Block Block { get; }

    /// <summary>The tape that figures are read off, and its finest mark. A figure that it cannot show exactly carries a <c>~</c>.</summary>
    public TapeStep Tape { get; }

    /// <summary>Whether each step says why it is done, where its method says so.</summary>
    /// <value>Default: no.</value>
    public bool ShowsReasons { get; }

    /// <summary>Whether figures are left blank for the reader to work out.</summary>
    /// <value>Default: no.</value>
    public bool IsExercise { get; }

    /// <summary>The sheet of a block, read off the tape that suits the unit of its body measurements.</summary>
    /// <param name="block">The block.</param>
    [Pure]
    public static StepSheet Of(Block block) => Of(block, TapeStep.For(Guard.NotNull(block, nameof(block)).Body.Unit));

    /// <summary>The sheet of a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="tape">The finest mark of the tape that figures are read off. Darts are read no more coarsely than in sixteenths of an inch.</param>
    [Pure]
    public static StepSheet Of(Block block, TapeStep tape) => new(Guard.NotNull(block, nameof(block)), tape, false, false);

    /// <summary>Shows the reason of each step beside it, where its method gives one.</summary>
    [Pure]
    public StepSheet WithReasons() => new(Block, Tape, true, IsExercise);

    /// <summary>Leaves the figures blank: workings stay, in words, and so does what is given, the measurements, settings and the row of the table.</summary>
    /// <remarks>This sheet is its answer key. Guide points of curves, what rounding does and what the checks ask for stand in the key only.</remarks>
    [Pure]
    public StepSheet AsExercise() => new(Block, Tape, ShowsReasons, true);

    /// <summary>The sheet as one HTML page that needs nothing beside it: no script, no fonts and no files from elsewhere.</summary>
    /// <remarks>Black on white, for A4 and Letter; no step is broken over two pages. On a phone picture and words stand one below the other. Each picture says in words what
    /// it shows. The page is well-formed XML too. Same sheet, same characters, in any culture.</remarks>
    [Pure]
    public string ToHtml() => new StepSheetPage(this).Write();

    /// <summary>Writes the page to a file, as a whole or not at all.</summary>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="System.ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public void SaveHtml(string path)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, ToHtml());
    }

    /// <summary>What it is and of which block.</summary>
    public override string ToString() => (IsExercise ? "Exercise sheet: " : "Step sheet: ") + Block.Title;
}
