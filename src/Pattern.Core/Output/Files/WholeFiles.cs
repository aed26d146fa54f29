using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Writes files as a whole or not at all.</summary>
internal static class WholeFiles
{
    private const int MostAttempts = 1000;

    internal static void Write(string path, string text) => Write([new(path, Encoding.UTF8.GetBytes(text))]);

    /// <summary>Writes all files beside where they belong, and only when all are complete moves each to its place.</summary>
    /// <remarks>An older file keeps its rights. A symbolic link stays one: what it points to is replaced. (Built for netstandard2.0, which knows nothing of either, a
    /// link is written through in place, and on POSIX systems a replaced file gets the rights of a new one.)</remarks>
    /// <exception cref="ArgumentException">A path holds a NUL character or names a device.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    internal static void Write(IReadOnlyList<KeyValuePair<string, byte[]>> files)
    {
        foreach (KeyValuePair<string, byte[]> file in files)
        {
            FilePaths.Checked(file.Key, "path");
            if (Directory.Exists(file.Key))
            {
                throw new IOException(MessageRegistry.Format(DiagnosticCode.FolderInTheWay, file.Key));
            }
        }

        var places = new string[files.Count];
        var waiting = new List<string>(files.Count);
        string current = string.Empty;
        try
        {
            for (int i = 0; i < files.Count; i++)
            {
                current = files[i].Key;
                places[i] = Place(current);
                waiting.Add(WriteBeside(places[i], files[i].Value));
            }

            for (int i = 0; i < files.Count; i++)
            {
                current = files[i].Key;
                Replace(waiting[i], places[i]);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new IOException(MessageRegistry.Format(DiagnosticCode.FileNotWritten, current, e.Message), e);
        }
        finally
        {
            foreach (string left in waiting)
            {
                File.Delete(left);
            }
        }
    }

    // A file of the same name could be someone else's work, so the first free name is taken.
    private static string WriteBeside(string path, byte[] content)
    {
        for (int i = 1; ; i++)
        {
            string beside = FormattableString.Invariant($"{path}.{i}.part");
            FileStream stream;
            try
            {
                stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write);
            }
            catch (IOException) when (i < MostAttempts && File.Exists(beside))
            {
                continue;
            }

            try
            {
                using (stream)
                {
                    stream.Write(content, 0, content.Length);
                    stream.Flush(flushToDisk: true);
                }
            }
            catch
            {
                File.Delete(beside);
                throw;
            }

            return beside;
        }
    }

#if NET
    // Where a link leads in the end; it may lead to nothing yet.
    private static string Place(string path)
        => new FileInfo(path).LinkTarget is null ? path : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;

    private static void Replace(string complete, string path)
    {
        if (OperatingSystem.IsWindows() && File.Exists(path))
        {
            // Keeps the rights of the older one, which a move does not.
            File.Replace(complete, path, null);
            return;
        }

        if (!OperatingSystem.IsWindows() && File.Exists(path))
        {
            File.SetUnixFileMode(complete, File.GetUnixFileMode(path));
        }

        File.Move(complete, path, overwrite: true);
    }
#else
    private static string Place(string path) => path;

    private static void Replace(string complete, string path)
    {
        if (!File.Exists(path) && !IsLink(path))
        {
            File.Move(complete, path);
        }
        else if (IsLink(path))
        {
            byte[] content = File.ReadAllBytes(complete);
            File.WriteAllBytes(path, content);
        }
        else
        {
            File.Replace(complete, path, null);
        }
    }

    private static bool IsLink(string path)
    {
        try
        {
            return (File.GetAttributes(path) & FileAttributes.ReparsePoint) != 0;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return false;
        }
    }
#endif
}
