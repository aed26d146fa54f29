using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>What a panel carries besides its edges. All of it travels with every operation.</summary>
/// <param name="Grainline">Where the straight grain lies.</param>
/// <param name="Notches">Marks on edges.</param>
/// <param name="Landmarks">Named points.</param>
/// <param name="InsideDarts">Darts with a point at either end.</param>
internal sealed record PanelFeatures(LineSegment Grainline, Notch[] Notches, Landmark[] Landmarks, InsideDart[] InsideDarts);
