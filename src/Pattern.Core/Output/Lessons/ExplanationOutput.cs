using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>How something came about, as a picture and as a page.</summary>
public static class ExplanationOutput
{
    /// <summary>A small picture of just the steps that matter: the lines that they drew and the points that they marked, each with the number of its step; what was asked for is heavy, the finished
    /// panels are dotted. Never to cut from.</summary>
    /// <param name="explanation">What is explained.</param>
    [Pure]
    public static string ToSvg(this Explanation explanation) => new ExplanationPicture(Guard.NotNull(explanation, nameof(explanation))).Write(isAlone: true);

    /// <summary>One HTML page that needs nothing beside it: what the chain ends in, the picture, the steps that matter with their reasons, and the tree.</summary>
    /// <remarks>Black on white, so that it prints as it looks. No script, no fonts and no files from elsewhere. Same block, same characters, in any culture.</remarks>
    /// <param name="explanation">What is explained.</param>
    /// <param name="tape">The finest mark of the tape that figures are read off; one that it cannot show exactly carries a <c>~</c>.</param>
    [Pure]
    public static string ToHtml(this Explanation explanation, TapeStep tape)
    {
        Guard.NotNull(explanation, nameof(explanation));
        var page = new PlainPage("How it came about: " + explanation.Root.Describe(tape));
        page.Paragraph(explanation.Block.Title + ". " + explanation.Block.Body.Describe(tape) + ".");
        page.Heading("What was put in").Table(["Kind", "What"], OriginText.Ends(explanation, tape).Select(kind => new[] { kind.Kind, kind.Ends }));
        if (explanation.Steps.Count > 0)
        {
            page.Heading("The steps that matter");
            page.Raw.Append("<figure>\n").Append(new ExplanationPicture(explanation).Write(isAlone: false)).Append("</figure>\n<ol class=\"steps\">\n");
            foreach (Step step in explanation.Steps)
            {
                page.Raw.Append("<li value=\"").Append(step.Number.ToString(CultureInfo.InvariantCulture)).Append("\">").Escaped(step.Describe(tape));
                if (step.Reason is { } reason)
                {
                    page.Raw.Append(" <span class=\"why\">").Escaped(reason).Append("</span>");
                }

                page.Raw.Append("</li>\n");
            }

            page.Raw.Append("</ol>\n");
        }

        page.Heading("From what it is made");
        page.Raw.Append("<pre>");
        foreach ((int depth, string line) in OriginText.Tree(explanation.Root, tape))
        {
            page.Raw.Append(' ', 2 * System.Math.Min(depth, OriginText.DeepestIndent)).Escaped(line).Append('\n');
        }

        page.Raw.Append("</pre>\n");
        return page.Write();
    }
}
