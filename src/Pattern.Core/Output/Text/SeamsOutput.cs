using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>What is sewn to what in a block, as a table.</summary>
public static class SeamsOutput
{
    private const string Columns = "seam,panel_a,edge_a,length_a_mm,panel_b,edge_b,length_b_mm,ease_mm,ok";

    /// <summary>The seams of a block, walked, as comma-separated values (RFC 4180, but lines end in a line feed alone).</summary>
    /// <remarks>Columns: <c>seam,panel_a,edge_a,length_a_mm,panel_b,edge_b,length_b_mm,ease_mm,ok</c>. One row for each seam; the lengths are those that are sewn, darts closed, pleats folded
    /// or gathers flat as the panels are drawn. <c>ease_mm</c> is the first length less the second; <c>ok</c> says whether every stretch has the ease that the seam asks for. Six decimals.</remarks>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">A panel, edge or mark of a seam is missing.</exception>
    [Pure]
    public static string SeamsToCsv(this Block block)
    {
        Guard.NotNull(block, nameof(block));
        var text = new StringBuilder(Columns).Append('\n');
        foreach (SeamWalk walk in block.Seams.Walk([.. block.Panels]))
        {
            Seam seam = walk.Seam;
            WalkedStretch whole = walk.Whole;
            Field(text, seam.Name).Append(',');
            Field(text, seam.First.PanelName.Text).Append(',');
            Field(text, seam.First.EdgeName.Text).Append(',');
            Number(text, whole.FirstMm).Append(',');
            Field(text, seam.Second.PanelName.Text).Append(',');
            Field(text, seam.Second.EdgeName.Text).Append(',');
            Number(text, whole.SecondMm).Append(',');
            Number(text, whole.FirstMm - whole.SecondMm).Append(',');
            text.Append(walk.Passed ? "true" : "false").Append('\n');
        }

        return text.ToString();
    }

    private static StringBuilder Field(StringBuilder text, string words)
        => words.IndexOfAny([',', '"', '\n', '\r']) < 0 ? text.Append(words) : text.Append('"').Append(words.Replace("\"", "\"\"")).Append('"');

    // The F format writes a minus before a zero that a small negative was rounded to.
    private static StringBuilder Number(StringBuilder text, double value) => text.Append(Math.Abs(value) < 0.5e-6 ? "0.000000" : value.ToString("F6", CultureInfo.InvariantCulture));
}
