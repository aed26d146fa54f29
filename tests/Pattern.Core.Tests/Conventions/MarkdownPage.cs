using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;

namespace Pattern.Core.Tests.Conventions;

/// <summary>A page of documentation: its code blocks, its links, and the scripts that a reader would type in from top to bottom.</summary>
internal sealed class MarkdownPage(string path, string text)
{
    internal static IReadOnlyList<string> Paths { get; } = Repository.Files().Where(path => path.EndsWith(".md", StringComparison.Ordinal)).ToArray();

    internal static MarkdownPage Read(string path) => new(path, Repository.Read(path));

    /// <summary>Language, first line number and text of each fenced block.</summary>
    internal IReadOnlyList<(string Language, int Line, string Text)> Blocks { get; } = FencedBlocks(text).ToArray();

    /// <summary>Links and pictures that lead to a file of the repository.</summary>
    internal IEnumerable<string> LocalTargets => Regex.Matches(WithoutBlocks(text), @"\]\(([^)\s#]+)(#[^)]*)?\)|(?:src|href)=""([^""#]+)""")
        .Select(match => match.Groups[1].Success ? match.Groups[1].Value : match.Groups[3].Value)
        .Where(target => !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal));

    /// <summary>The C# blocks as a reader would use them: each goes on from the one before it, until a heading of the first or second level, or
    /// a block with using directives, begins another script.</summary>
    internal IReadOnlyList<(string Path, string Text)> Scripts(string usings, string surroundings = "")
    {
        var scripts = new List<(StringBuilder Head, StringBuilder Body)>();
        int section = -1;
        foreach ((string _, int line, string code) in Blocks.Where(block => block.Language == "csharp"))
        {
            string[] lines = code.Split('\n');
            int head = HeadLength(lines);
            int sectionHere = Sections.Count(heading => heading < line);
            if (head > 0 || section != sectionHere)
            {
                section = sectionHere;
                scripts.Add((new StringBuilder(head > 0 ? string.Join('\n', lines[..head]) + "\n" : usings), new StringBuilder()));
            }

            scripts[^1].Body.Append($"#line {line + head} \"{path}\"\n{string.Join('\n', lines[head..])}\n");
        }

        return scripts.Select((script, i) => ($"{path} script {i + 1}", script.Head.ToString() + script.Body + surroundings)).ToArray();
    }

    private int[] Sections { get; } = Headings(text).ToArray();

    // Using directives, file-based directives, and the blank or comment lines between them.
    private static int HeadLength(string[] lines)
    {
        int last = Array.FindLastIndex(lines, line => Regex.IsMatch(line, @"^(using\s+(static\s+)?[\w.]+;|using\s+\w+\s*=\s*[\w.<>]+;|#:)"));
        return last + 1;
    }

    private static IEnumerable<int> Headings(string text)
    {
        bool inBlock = false;
        foreach ((string line, int i) in text.Split('\n').Select((line, i) => (line, i)))
        {
            inBlock ^= line.TrimStart().StartsWith("```", StringComparison.Ordinal);
            if (!inBlock && Regex.IsMatch(line, "^##? "))
            {
                yield return i + 1;
            }
        }
    }

    private static IEnumerable<(string Language, int Line, string Text)> FencedBlocks(string text)
    {
        string[] lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].TrimStart().StartsWith("```", StringComparison.Ordinal))
            {
                string indent = lines[i][..^lines[i].TrimStart().Length];
                int end = Array.FindIndex(lines, i + 1, line => line.Trim() == "```");
                end = end < 0 ? lines.Length : end;
                yield return (lines[i].Trim().TrimStart('`'), i + 2, string.Join('\n', lines[(i + 1)..end].Select(line => line.StartsWith(indent, StringComparison.Ordinal) ? line[indent.Length..] : line)));
                i = end;
            }
        }
    }

    private static string WithoutBlocks(string text) => Regex.Replace(text, @"(?ms)^\s*```.*?^\s*```\s*$", string.Empty);
}
