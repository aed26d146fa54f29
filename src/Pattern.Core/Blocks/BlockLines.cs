using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The named points and the lines of a block, either as drawn by hand or as truing left them.</summary>
public sealed class BlockLines
{
    internal BlockLines(IReadOnlyList<Landmark> landmarks, IReadOnlyList<BlockLine> lines)
    {
        Landmarks = landmarks;
        Lines = lines;
    }

    /// <summary>The named points, in drafting order.</summary>
    public IReadOnlyList<Landmark> Landmarks { get; }

    /// <summary>The lines, in drafting order.</summary>
    public IReadOnlyList<BlockLine> Lines { get; }

    /// <summary>Returns the landmark of that name.</summary>
    /// <exception cref="ConstructionException">No such landmark was drawn.</exception>
    [Pure]
    public Landmark Find(LandmarkName name)
    {
        Guard.NotNull(name, nameof(name));
        foreach (Landmark landmark in Landmarks)
        {
            if (landmark.Name.Equals(name))
            {
                return landmark;
            }
        }

        throw new ConstructionException(DiagnosticCode.LandmarkNotDrawn, name) { Landmark = name.Text };
    }

    /// <summary>How many there are.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Landmarks.Count} landmarks, {Lines.Count} lines");
}
