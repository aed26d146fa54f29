using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>An edge with one of its stretches drawn otherwise.</summary>
internal static class EdgeStretches
{
    /// <summary>The same edge with another stretch; its darts stay, so the ends at darts must too.</summary>
    internal static PanelEdge WithStretch(this PanelEdge edge, int index, CurvePath stretch)
    {
        var stretches = new CurvePath[edge.Stretches.Count];
        for (int i = 0; i < stretches.Length; i++)
        {
            stretches[i] = i == index ? stretch : edge.Stretches[i];
        }

        return new PanelEdge(edge.Name, edge.Role, stretches, edge.Shapes());
    }

    internal static DartShape[] Shapes(this PanelEdge edge)
    {
        var shapes = new DartShape[edge.Darts.Count];
        for (int i = 0; i < shapes.Length; i++)
        {
            shapes[i] = edge.Darts[i].Shape;
        }

        return shapes;
    }
}
