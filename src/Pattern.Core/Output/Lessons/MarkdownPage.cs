using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>A page in Markdown with the pictures that it shows. Immutable.</summary>
/// <example><code>
/// MarkdownPage page = StepSheet.Of(block).ToMarkdown();
/// page.Save("steps", "steps.md");   // steps/steps.md and steps/step-01.svg, ..
/// </code></example>
public sealed class MarkdownPage
{
    private readonly KeyValuePair<string, Drawing>[] _pictures;

    internal MarkdownPage(string text, IEnumerable<KeyValuePair<string, Drawing>> pictures)
    {
        Text = text;
        _pictures = [.. pictures];
    }

    /// <summary>The page, in CommonMark with tables; pictures are linked by their file names.</summary>
    public string Text { get; }

    /// <summary>The pictures by their file names, in the order in which the page shows them.</summary>
    public IReadOnlyList<KeyValuePair<string, Drawing>> Pictures => _pictures;

    /// <summary>Puts page and pictures into a folder, to be saved with what else is in it.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="fileName">What the page is called in it.</param>
    /// <exception cref="System.ArgumentException">The name is no plain file name, or the folder has a file of one of the names.</exception>
    [Pure]
    public OutputFolder AddTo(OutputFolder folder, string fileName)
    {
        OutputFolder filled = Guard.NotNull(folder, nameof(folder)).With(fileName, Text);
        foreach (KeyValuePair<string, Drawing> picture in _pictures)
        {
            filled = filled.With(picture.Key, picture.Value.ToSvg());
        }

        return filled;
    }

    /// <summary>Writes page and pictures into a folder: all of them, or none.</summary>
    /// <param name="folder">The folder; it is made where needed.</param>
    /// <param name="fileName">What the page is called in it.</param>
    /// <exception cref="System.ArgumentException">The folder or the name is unusable.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public void Save(string folder, string fileName) => AddTo(OutputFolder.At(folder), fileName).Save();

    /// <summary>How long the page is.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"Markdown page of {Text.Length} characters with {_pictures.Length} pictures");
}
