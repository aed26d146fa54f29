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
    /// <exception cref="IOException">A file cannot be written.</exception>
    internal static void Write(IReadOnlyList<KeyValuePair<string, byte[]>> files)
    {
        foreach (KeyValuePair<string, byte[]> file in files)
        {
            if (Directory.Exists(file.Key))
            {
                throw new IOException(MessageRegistry.Format(DiagnosticCode.FolderInTheWay, file.Key));
            }
        }

        var waiting = new List<string>(files.Count);
        string current = string.Empty;
        try
        {
            foreach (KeyValuePair<string, byte[]> file in files)
            {
                current = file.Key;
                waiting.Add(WriteBeside(current, file.Value));
            }

            for (int i = 0; i < files.Count; i++)
            {
                current = files[i].Key;
                Replace(waiting[i], current);
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

    private static void Replace(string complete, string path)
    {
#if NET
        File.Move(complete, path, overwrite: true);
#else
        if (File.Exists(path))
        {
            File.Replace(complete, path, null);
        }
        else
        {
            File.Move(complete, path);
        }
#endif
    }
}
