using System;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>What designs of a skirt promise, each measured on whatever panels the list has.</summary>
internal static class SkirtPromises
{
    internal const string Waist = "waist";
    internal const string Hip = "hip";
    internal const string Corners = "corners";
    internal const string Hem = "hem";
    internal const string Darts = "darts";
    internal const string Outline = "outline";
    internal const string Advice = "advice";
    internal const string Block = "block";

    /// <summary>The waist all around: every edge of that name, as often as its panel stands in the skirt.</summary>
    internal static void ClosedWaist(CheckList list, (PanelName Panel, int Times)[] panels, double targetMm)
        => list.Length("closed waist all around", Block, panels.Sum(one => one.Times * list.FindPanel(one.Panel).FindEdge(EdgeName.Waist).SewnLengthMm()), targetMm);

    /// <summary>The remaining waist darts of a panel can be sewn: equal legs, no corner once closed, caps that meet the seam.</summary>
    internal static void DartsCanBeSewn(CheckList list, Panel panel, int count)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.TryFindEdge(EdgeName.Waist, out PanelEdge? edge) ? edge! : SkirtStock.TopOf(panel);
        list.Count("waist darts", place, waist.Darts.Count, count);
        for (int i = 0; i < waist.Darts.Count; i++)
        {
            Dart dart = waist.Darts[i];
            string name = FormattableString.Invariant($"dart {i + 1}");
            list.Length(name + " legs", place, (dart.StartLeg - dart.Apex).LengthMm, (dart.EndLeg - dart.Apex).LengthMm);
            list.Angle(name + " closed without a corner", place, CheckList.CornerAcrossDartRad(waist, i), 0);
            list.Length(name + " cap folded onto the seam", place, CheckList.CapOffSeamMm(waist, i), 0);
        }
    }

    /// <summary>Down one leg of every dart and up the other, the outline does not cross itself.</summary>
    internal static void SimpleOutline(CheckList list, Panel panel)
    {
        CurvePath outline = panel.SeamOutline();
        list.Count("outline with darts crossing itself", panel.Name.Text, outline.IsSimple() ? 0 : outline.SelfIntersections().Points.Count, 0);
    }

    /// <summary>The top of each quarter is square to centre and side.</summary>
    internal static void SquareTop(CheckList list, PanelName[] names)
    {
        foreach (PanelName name in names)
        {
            Panel panel = list.FindPanel(name);
            PanelEdge top = SkirtStock.TopOf(panel);
            list.Angle(top.Name + " square to centre", name.Text, CheckList.CornerRad(panel.FindEdge(EdgeName.Centre).StretchesRaw[0], top.StretchesRaw[0]), SkirtStock.SquareRad);
            list.Angle(top.Name + " square to side", name.Text, CheckList.CornerRad(top.StretchesRaw[top.StretchesRaw.Length - 1], panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0]), SkirtStock.SquareRad);
        }
    }

    /// <summary>The hem of a quarter: no corner in it, square to the centre, as far below the hip at the side as at the centre.</summary>
    internal static void HemOfQuarter(CheckList list, Panel panel)
    {
        string place = panel.Name.Text;
        CurvePath hem = panel.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).StretchesRaw[0];
        list.Angle("hem without a corner", place, SharpestCornerRad(hem), 0);
        list.Angle("hem square to centre", place, CheckList.CornerRad(hem, centre), SkirtStock.SquareRad);
    }

    /// <summary>The hems of two panels run on from each other across their seam.</summary>
    internal static void HemJoined(CheckList list, Panel arriving, Panel leaving, EdgeName seam)
    {
        double first = CheckList.CornerRad(arriving.FindEdge(seam).StretchesRaw[0], arriving.FindEdge(EdgeName.Hem).StretchesRaw[0]);
        double second = CheckList.CornerRad(leaving.FindEdge(seam).StretchesRaw[0], leaving.FindEdge(EdgeName.Hem).StretchesRaw[0]);
        list.Angle("hem joined at " + seam, Block, first + second, Math.PI);
    }

    /// <summary>The sharpest corner between the segments of a line.</summary>
    internal static double SharpestCornerRad(CurvePath path)
    {
        double sharpest = 0;
        PathSegment[] segments = path.SegmentsRaw;
        for (int i = 1; i < segments.Length; i++)
        {
            sharpest = Math.Max(sharpest, Math.Abs(segments[i - 1].EndDirection.TurnRadTo(segments[i].StartDirection)));
        }

        return sharpest;
    }
}
