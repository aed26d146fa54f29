using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace Pattern.Core.Tests.Docs;

/// <summary>A page of the documentation, for tests that hold it to its word.</summary>
internal sealed class DocPage
{
    private readonly string[] _lines;

    private DocPage(string[] lines) => _lines = lines;

    internal static DocPage Load(string name) => new(File.ReadAllLines(Path.Combine(Root(), "docs", name)));

    /// <summary>The cells of the table whose first heading is this, without back-ticks.</summary>
    internal IReadOnlyList<string[]> Table(string firstHeading)
    {
        int heading = Array.FindIndex(_lines, line => line.StartsWith("| " + firstHeading + " |", StringComparison.Ordinal));
        Assert.True(heading >= 0, "The page has no table headed " + firstHeading);
        return _lines.Skip(heading + 2).TakeWhile(line => line.StartsWith('|')).Select(Cells).ToArray();
    }

    /// <summary>The text of all fenced blocks in a language.</summary>
    internal IReadOnlyList<string> Blocks(string language)
    {
        var blocks = new List<string>();
        for (int i = 0; i < _lines.Length; i++)
        {
            if (_lines[i] == "```" + language)
            {
                blocks.Add(string.Join("\n", _lines.Skip(i + 1).TakeWhile(line => line != "```")) + "\n");
            }
        }

        return blocks;
    }

    /// <summary>Fails unless each line of code on the page stands in a source file of the tests, where the compiler sees it. Comments at the end of a line do not count.</summary>
    internal void AssertCodeIsCompiledIn(params string[] pathBelowTests)
    {
        string path = Path.Combine([Root(), "tests", "Pattern.Core.Tests", .. pathBelowTests]);
        var compiled = new HashSet<string>(File.ReadAllLines(path).Select(Statement), StringComparer.Ordinal);
        string[] code = Blocks("csharp").SelectMany(block => block.Split('\n')).Select(Statement).Where(line => line.Length > 0).ToArray();
        Assert.NotEmpty(code);
        Assert.All(code, line => Assert.Contains(line, compiled));
    }

    private static string Statement(string line)
    {
        int comment = line.IndexOf("   //", StringComparison.Ordinal);
        string statement = (comment < 0 ? line : line.Substring(0, comment)).Trim();
        return statement.StartsWith("_ = ", StringComparison.Ordinal) ? statement.Substring(4) : statement;
    }

    private static string[] Cells(string row) => row.Trim().Trim('|').Split('|').Select(cell => cell.Trim().Trim('`')).ToArray();

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Pattern.Core.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new DirectoryNotFoundException("No folder above the tests holds Pattern.Core.sln.");
    }
}
