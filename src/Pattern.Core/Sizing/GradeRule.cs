using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>How one point of a panel moves from each size to the next. Immutable.</summary>
public sealed class GradeRule
{
    private readonly Vector2D[] _moves;

    internal GradeRule(PanelName panel, string point, Vector2D[] moves)
    {
        Panel = panel;
        Point = point;
        _moves = moves;
    }

    /// <summary>The panel.</summary>
    public PanelName Panel { get; }

    /// <summary>The point, such as <c>where waist meets side</c>, <c>waist dart 1, apex</c> or the name of a landmark.</summary>
    public string Point { get; }

    /// <summary>Across (to the right) and up, one for each step of the sizes.</summary>
    public IReadOnlyList<Vector2D> Moves => _moves;

    /// <summary>Panel, point and moves.</summary>
    public override string ToString() => Panel + ", " + Point + ": " + string.Join(" ", _moves.Select(move => move.ToString()));
}
