using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Files that belong together, to be written into one folder: all of them, or none. Immutable.</summary>
/// <example><code>
/// OutputFolder.At("out")
///     .With("skirt.svg", block.Draw().ToSvg())
///     .With("report.csv", block.Report.ToCsv())
///     .Save();
/// </code></example>
public sealed class OutputFolder
{
    private readonly KeyValuePair<string, byte[]>[] _files;

    private OutputFolder(string path, KeyValuePair<string, byte[]>[] files)
    {
        Path = path;
        _files = files;
    }

    /// <summary>The folder.</summary>
    public string Path { get; }

    /// <summary>The names of the files, in the order in which they were added.</summary>
    public IReadOnlyList<string> FileNames => Array.AsReadOnly(Array.ConvertAll(_files, file => file.Key));

    /// <summary>A folder without files yet. Nothing is made before <see cref="Save"/>.</summary>
    /// <param name="path">The folder; it may not exist yet.</param>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    [Pure]
    public static OutputFolder At(string path) => new(FilePaths.Checked(path, nameof(path)), []);

    /// <summary>Adds a text file, in UTF-8.</summary>
    /// <param name="fileName">Its name in the folder.</param>
    /// <param name="text">What it holds.</param>
    /// <exception cref="ArgumentException">The name is no plain file name, or was added already.</exception>
    [Pure]
    public OutputFolder With(string fileName, string text) => With(fileName, Encoding.UTF8.GetBytes(Guard.NotNull(text, nameof(text))));

    /// <summary>Adds a file.</summary>
    /// <param name="fileName">Its name in the folder.</param>
    /// <param name="content">What it holds; it is copied.</param>
    /// <exception cref="ArgumentException">The name is no plain file name, or was added already.</exception>
    [Pure]
    public OutputFolder With(string fileName, byte[] content)
    {
        Guard.Name(fileName, nameof(fileName));
        if (fileName is "." or ".." || FilePaths.IsDevice(fileName) || fileName.IndexOfAny(['/', '\\', ':', '\0']) >= 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.FileNameUnusable, fileName), nameof(fileName));
        }

        if (_files.Any(file => string.Equals(file.Key, fileName, StringComparison.OrdinalIgnoreCase)))
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.FileTwice, fileName), nameof(fileName));
        }

        var copy = (byte[])Guard.NotNull(content, nameof(content)).Clone();
        return new OutputFolder(Path, [.. _files, new KeyValuePair<string, byte[]>(fileName, copy)]);
    }

    /// <summary>Makes the folder where needed and writes all files; older ones of the same names are replaced at the very end.</summary>
    /// <remarks>A file that is replaced keeps its rights, and a symbolic link stays one: what it points to is replaced.</remarks>
    /// <returns>The paths of the files, in order.</returns>
    /// <exception cref="IOException">One of the files cannot be written: then none is, and older ones stay as they were. (Only where the system fails while the
    /// complete files are being renamed, some may be new and some old; each is whole.)</exception>
    public IReadOnlyList<string> Save()
    {
        var files = Array.ConvertAll(_files, file => new KeyValuePair<string, byte[]>(System.IO.Path.Combine(Path, file.Key), file.Value));
        try
        {
            Directory.CreateDirectory(Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new IOException(MessageRegistry.Format(DiagnosticCode.FileNotWritten, Path, e.Message), e);
        }

        WholeFiles.Write(files);
        return Array.AsReadOnly(Array.ConvertAll(files, file => file.Key));
    }

    /// <summary>The folder and its files.</summary>
    public override string ToString()
        => Path + ": " + string.Join(", ", FileNames);
}
