using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Draws edges in one sweep across their darts: closed as one curve first, then opened. What a <see cref="Construction"/> draws a waist with.</summary>
public static class SweptEdge
{
    /// <summary>Draws an edge.</summary>
    /// <remarks>The curve is the edge with its darts closed, so there is no corner at a dart and the sewn length is the length of the curve. The start stays; what lies
    /// beyond a dart turns open about its apex.</remarks>
    /// <param name="name">The name of the edge.</param>
    /// <param name="role">What becomes of it.</param>
    /// <param name="closed">The edge with its darts closed. It runs across the sheet, to the right or to the left.</param>
    /// <param name="darts">The darts, in the order of the edge, pointing down the sheet.</param>
    /// <exception cref="ConstructionException">A dart does not meet the edge.</exception>
    public static PanelEdge Across(EdgeName name, EdgeRole role, CubicBezier closed, params UprightDart[] darts)
    {
        double hand = closed.X3 >= closed.X0 ? 1 : -1;
        var sweep = new DartSweep(
            [.. Guard.NotNull(darts, nameof(darts)).Select(d => new DartWedge(closed.X0 + (hand * d.Middle.Millimeters), d.Intake.Millimeters, d.DartLength.Millimeters))], hand);
        return sweep.TryDraw(closed)
            ? sweep.ToEdge(name, role)
            : throw new ConstructionException(DiagnosticCode.DartMissesSweep, name) { Step = "sweeping an edge across its darts", Landmark = name.Text };
    }
}
