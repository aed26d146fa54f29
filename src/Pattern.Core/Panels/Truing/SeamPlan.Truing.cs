using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <content>Truing lines that run over the seams of the plan.</content>
public sealed partial class SeamPlan
{
    /// <summary>Returns the panels with a line that runs over seams, such as a hem or a waist, smooth at each of them.</summary>
    /// <remarks>A pegged hem is drafted level, so that it folds flat, and meets itself over a seam at a straight angle and the lean of both seams; smooth, it would bend.
    /// Ask for that angle with <see cref="LineTruing.JoinedAngle"/>, or leave such a hem as it is.</remarks>
    /// <param name="line">The edges that make the line, in its order; each two that follow each other meet at one end of a seam of the plan.</param>
    /// <param name="panels">The panels that carry the edges.</param>
    /// <exception cref="ConstructionException">An edge is missing, or two edges do not meet at a seam.</exception>
    [Pure]
    public TruingResult TrueLine(IReadOnlyList<EdgeOf> line, params Panel[] panels) => TrueLine(LineTruing.Default, line, panels);

    /// <summary>Returns the panels with a line that runs over seams meeting there at the angle asked for.</summary>
    /// <remarks>The ends of the edges stay where they are; only the directions in which they arrive at a seam turn, each panel taking its share.</remarks>
    /// <param name="truing">What is asked of the line.</param>
    /// <param name="line">The edges that make the line, in its order; each two that follow each other meet at one end of a seam of the plan.</param>
    /// <param name="panels">The panels that carry the edges.</param>
    /// <exception cref="ConstructionException">An edge is missing, or two edges do not meet at a seam.</exception>
    [Pure]
    public TruingResult TrueLine(LineTruing truing, IReadOnlyList<EdgeOf> line, params Panel[] panels)
    {
        Guard.NotNull(truing, nameof(truing));
        Guard.NotNull(line, nameof(line));
        var now = (Panel[])Guard.NotNull(panels, nameof(panels)).Clone();
        var changes = new ChangeList();
        for (int i = 1; i < line.Count; i++)
        {
            LineOverSeam join = _seams.Select(seam => LineOverSeam.TryFind(seam, line[i - 1], line[i], now)).FirstOrDefault(found => found is not null)
                ?? throw new ConstructionException(DiagnosticCode.LinesNotJoined, line[i - 1], line[i]) { Step = LineOverSeam.Step, Landmark = line[i].ToString() };
            changes.Add(join.True(truing, now));
        }

        return new TruingResult(now, changes.Lengths(), changes.Angles());
    }

    /// <summary>Returns the panels with the edges of every seam of the plan equally long, but for the ease asked for, seam after seam.</summary>
    /// <param name="panels">The panels that carry the edges.</param>
    /// <exception cref="ConstructionException">An edge or mark is missing, notches do not pair, or an edge is too short for what would be taken off it.</exception>
    [Pure]
    public TruingResult TrueLengths(params Panel[] panels)
    {
        var now = Guard.NotNull(panels, nameof(panels));
        var changes = new ChangeList();
        foreach (Seam seam in _seams)
        {
            TruingResult result = seam.TrueLengths(LengthTruing.Default, now);
            changes.Add(result);
            now = [.. result.Panels];
        }

        return new TruingResult((Panel[])now.Clone(), changes.Lengths(), changes.Angles());
    }
}
