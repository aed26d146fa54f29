using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace Pattern.Core.Tests.Conventions;

/// <summary>The files that the conventions are about, found from the test's own folder, so that any clone serves.</summary>
internal static class Repository
{
    private static readonly string[] NotOurs = [".git", ".vs", ".idea", "bin", "obj", "out", "artifacts", "BenchmarkDotNet.Artifacts", "TestResults"];

    internal static string Root { get; } = FindRoot();

    /// <summary>Path and text of each C# file of the libraries.</summary>
    internal static IEnumerable<(string Path, string Text)> Sources =>
        Files().Where(path => path.StartsWith("src/Pattern.Core", StringComparison.Ordinal) && path.EndsWith(".cs", StringComparison.Ordinal)).Select(path => (path, Read(path)));

    internal static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Every file that is not made by a build, relative to the root, with forward strokes, in order.</summary>
    internal static IReadOnlyList<string> Files()
    {
        var found = new List<string>();
        Collect(new DirectoryInfo(Root), string.Empty, found);
        found.Sort(StringComparer.Ordinal);
        return found;
    }

    private static void Collect(DirectoryInfo folder, string prefix, List<string> found)
    {
        found.AddRange(folder.GetFiles().Where(file => file.Name != ".git").Select(file => prefix + file.Name));
        foreach (DirectoryInfo inner in folder.GetDirectories().Where(inner => !NotOurs.Contains(inner.Name)))
        {
            Collect(inner, prefix + inner.Name + "/", found);
        }
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Pattern.Core.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The conventions are read from the source tree: run the tests inside it.");
    }
}
