using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>A curve that truing draws again over the draft: a hip curve from its foot, or a whole edge with its darts open.</summary>
internal sealed class RedrawnCurve
{
    private RedrawnCurve(LandmarkName from, LandmarkName to, CurvePath? hipCurve, PanelEdge? edge)
    {
        From = from;
        To = to;
        HipCurve = hipCurve;
        Edge = edge;
    }

    internal LandmarkName From { get; }

    internal LandmarkName To { get; }

    internal CurvePath? HipCurve { get; }

    internal PanelEdge? Edge { get; }

    internal static RedrawnCurve OfHip(LandmarkName foot, LandmarkName end, CurvePath curve) => new(foot, end, curve, null);

    internal static RedrawnCurve Of(LandmarkName from, LandmarkName to, PanelEdge edge) => new(from, to, null, edge);
}
