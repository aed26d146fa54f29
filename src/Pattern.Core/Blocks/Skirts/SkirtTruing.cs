using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Trues the hand draft: exact waistlines, side seams that match. Makes the panels.</summary>
internal sealed class SkirtTruing
{
    private readonly SkirtDraft _draft;
    private readonly BlockDraft _block;
    private readonly double _sideLengthMm;

    private SkirtTruing(SkirtDraft draft, BlockDraft block)
    {
        _draft = draft;
        _block = block;

        _sideLengthMm = draft.SideTargetMm;
        BackWaist = TrueWaist(draft.Back);
        FrontWaist = TrueWaist(draft.Front);
        Back = ToPanel(draft.Back, BackWaist, notchCount: 2);
        Front = ToPanel(draft.Front, FrontWaist, notchCount: 1);
        block.Add(Back, 2);
        block.Add(Front, 2);
        Mark(draft.Back, Back);
        Mark(draft.Front, Front);
        draft.Sheet.TellLater(Record);
    }

    internal SkirtWaist BackWaist { get; }

    internal SkirtWaist FrontWaist { get; }

    internal Panel Back { get; }

    internal Panel Front { get; }

    internal static SkirtTruing True(SkirtDraft draft, BlockDraft block) => new(draft, block);

    private SkirtWaist TrueWaist(SkirtQuarter quarter) => SkirtWaist.Solve(
        new WaistTarget(
            quarter.Names.Panel.Text,
            quarter.CentreWaist.Position,
            quarter.LeavingCentre,
            quarter.SideFoot.Position,
            quarter.SideWaist.Position,
            _draft.WaistTargetMm / 4,
            _sideLengthMm),
        quarter.Wedges);

    private Panel ToPanel(SkirtQuarter quarter, SkirtWaist waist, int notchCount)
    {
        PanelEdge waistEdge = waist.ToEdge(EdgeName.Waist, EdgeRole.Opening);
        foreach (Dart dart in waistEdge.DartsRaw)
        {
            // A dart that cannot be folded onto its own seam line is refused here, not when somebody draws it.
            _ = dart.Cap;
        }

        Point2D foot = quarter.SideFoot.Position;
        PathSegment below = quarter.SideSeamBelow is { } curve ? PathSegment.FromCubic(curve) : Line(_draft.SideLowerHip, quarter.SideHem.Position);
        PathSegment above = PathSegment.FromCubic(waist.Side.Reversed());
        double straightMm = foot.YMm - _draft.SideLowerHip.YMm;
        CurvePath side = CurvePath.Trusted(straightMm > 0 ? [above, Line(foot, _draft.SideLowerHip), below] : [above, below], isClosed: false);
        double hipFromWaistMm = waist.Side.LengthMm() + straightMm;

        return new Panel(
            quarter.Names.Panel,
            [
                waistEdge,
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, side),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(quarter.SideHem.Position, quarter.CentreHem.Position))),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, Centre(quarter)),
            ],
            new PanelFeatures(
                Grainline(quarter),
                [new Notch(EdgeName.SideSeam, _draft.SideLowerHip, hipFromWaistMm, notchCount)],
                [
                    quarter.CentreWaist,
                    quarter.SideWaist.At(waistEdge.End),
                    new Landmark(SkirtNames.SideLowerHip, _draft.SideLowerHip),
                    quarter.CentreLowerHip,
                ],
                []));
    }

    private static CurvePath Centre(SkirtQuarter quarter)
    {
        Point2D waist = quarter.CentreWaist.Position;
        if (quarter.CentreSeamBelow is null && quarter.CentreSeam is null)
        {
            return CurvePath.FromLine(new LineSegment(quarter.CentreHem.Position, waist));
        }

        Point2D lower = quarter.CentreLowerHip.Position;
        Point2D foot = quarter.CentreFoot.Position;
        return CurvePath.Trusted(
            [
                quarter.CentreSeamBelow is { } below ? PathSegment.FromCubic(below.Reversed()) : Line(quarter.CentreHem.Position, lower),
                Line(lower, foot),
                quarter.CentreSeam is { } above ? PathSegment.FromCubic(above) : Line(foot, waist),
            ],
            isClosed: false);
    }

    // Parallel to the centre line, in the middle of the panel and clear of hip line and hem.
    private static LineSegment Grainline(SkirtQuarter quarter)
    {
        double x = quarter.CentreLowerHip.Position.XMm + (quarter.Hand * quarter.HipWidth.ValueMm * 0.5);
        double top = quarter.CentreLowerHip.Position.YMm;
        double bottom = quarter.CentreHem.Position.YMm;
        double clear = (top - bottom) * 0.15;
        return new LineSegment(new Point2D(x, top - clear), new Point2D(x, bottom + clear));
    }

    private void Record()
    {
        Record(_draft.Back, Back, BackWaist);
        Record(_draft.Front, Front, FrontWaist);
        if (_draft.Back.SideSeamBelow is not null || _draft.Back.CentreSeamBelow is not null)
        {
            _draft.Sheet.Note("Leave the hem level, though its seams lean in: cloth folds flat along a straight line only. Leave a slit, vent or pleat: a hem that comes in gives no room to walk.");
        }
    }

    private void Record(SkirtQuarter quarter, Panel panel, SkirtWaist trued)
    {
        DraftingSheet sheet = _draft.Sheet;
        bool isBack = quarter == _draft.Back;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        sheet.SayOff(quarter.Waistline, quarter.HandClosedWaistMm, WorkedLength.DrawnMm(null, waist.SewnLengthMm(), new[] { quarter.Shaping.Waist }), waist.DartsRaw.Length);
        SkirtMoves.Say(sheet, quarter, quarter.SideWaist, waist.End);
        sheet.Note(
            isBack
                ? "Draw the {0} again from {1} to {2}: a hip curve that leaves {1} straight up. It is to measure {3}, and the {4} as much. Where it does not, shorten it or carry it on beyond {2}."
                : "Draw the {0} again from {1} to {2}: a hip curve that leaves {1} straight up. It is to measure {3}, as the {4} does. Where it does not, shorten it or carry it on beyond {2}.",
            quarter.Names.SideSeam,
            quarter.SideFoot,
            quarter.SideWaist,
            WorkedLength.DrawnMm(null, _sideLengthMm, new StepWord[] { _draft.Back.Names.SideSeam, _draft.Front.Names.SideSeam }),
            isBack ? _draft.Front.Names.SideSeam : _draft.Back.Names.SideSeam);
        sheet.Redraws(RedrawnCurve.OfHip(quarter.SideFoot.Name, quarter.SideWaist.Name, CurvePath.Trusted(PathSegment.FromCubic(trued.Side))));
        sheet.DrawTrued(quarter.Waistline, waist, quarter.CentreLevel, quarter.Darts);
    }

    private void Mark(SkirtQuarter quarter, Panel panel)
    {
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        _block.Trued(quarter.SideWaist.Name, waist.End);
        foreach (Dart dart in waist.DartsRaw)
        {
            DartNames names = quarter.Names.Darts[dart.Number - 1];
            _block.Trued(names.Middle, dart.MiddleOfIntake);
            _block.Trued(names.Apex, dart.Apex);
        }
    }

    private static PathSegment Line(in Point2D from, in Point2D to) => PathSegment.FromLine(new LineSegment(from, to));
}
