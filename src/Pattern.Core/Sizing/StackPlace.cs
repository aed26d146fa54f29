using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>What the sizes of a panel are laid on: a point that all have, or a line. Immutable.</summary>
public sealed class StackPlace
{
    private readonly EdgeName _first;
    private readonly EdgeName _second;
    private readonly LandmarkName? _landmark;
    private readonly bool _isLine;

    private StackPlace(EdgeName first, EdgeName second, LandmarkName? landmark, bool isLine)
    {
        _first = first;
        _second = second;
        _landmark = landmark;
        _isLine = isLine;
    }

    /// <summary>The corner where two edges of each panel meet.</summary>
    /// <param name="first">One edge.</param>
    /// <param name="second">The edge that it meets.</param>
    [Pure]
    public static StackPlace Corner(EdgeName first, EdgeName second) => new(first, second, null, isLine: false);

    /// <summary>An edge of each panel: its start at one place, its end in one direction, so that panels that lean are turned upright.</summary>
    /// <param name="edge">The edge.</param>
    [Pure]
    public static StackPlace Along(EdgeName edge) => new(edge, edge, null, isLine: true);

    /// <summary>A landmark that each panel carries.</summary>
    /// <param name="landmark">Its name.</param>
    [Pure]
    public static StackPlace On(LandmarkName landmark) => new(default, default, Guard.NotNull(landmark, nameof(landmark)), isLine: false);

    /// <summary>The place in words: <c>where centre meets hem</c>.</summary>
    public override string ToString() => _landmark is not null ? "at " + _landmark : _isLine ? "along " + _first : $"where {_first} meets {_second}";

    /// <summary>The point of a panel that lies on the point of all others.</summary>
    internal Point2D PointOn(Panel panel)
    {
        if (_landmark is not null)
        {
            foreach (Landmark landmark in panel.Landmarks)
            {
                if (landmark.Name.Equals(_landmark))
                {
                    return landmark.Position;
                }
            }

            throw Missing(panel, string.Join(", ", panel.Landmarks.Select(landmark => landmark.Name.ToString())));
        }

        PanelEdge first = panel.FindEdge(_first);
        PanelEdge second = panel.FindEdge(_second);
        return _isLine ? first.Start
            : panel.Neighbour(_first, Toward.End) == _second ? first.End
            : panel.Neighbour(_second, Toward.End) == _first ? second.End
            : throw Missing(panel, string.Join(", ", panel.Edges.Select(edge => edge.Name + " meets " + panel.Neighbour(edge.Name, Toward.End))));
    }

    /// <summary>The motion that lays a panel on another.</summary>
    internal Transform2D Motion(Panel panel, Panel onto)
    {
        Point2D from = PointOn(panel);
        Transform2D motion = Transform2D.Translation(PointOn(onto) - from);
        if (!_isLine)
        {
            return motion;
        }

        PanelEdge edge = panel.FindEdge(_first);
        PanelEdge line = onto.FindEdge(_first);
        Vector2D own = edge.End - edge.Start;
        Vector2D its = line.End - line.Start;
        return Transform2D.Rotation(from, UnitsNet.Angle.FromRadians(System.Math.Atan2(own.CrossMm2(its), own.DotMm2(its)))).Then(motion);
    }

    private ConstructionException Missing(Panel panel, string has) => new(DiagnosticCode.StackPlaceMissing, panel.Name, ToString(), has);
}
