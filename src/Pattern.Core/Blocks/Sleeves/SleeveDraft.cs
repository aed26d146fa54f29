using System;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The sleeve drawn on the sheet, step by step, both its seams straight; the elbow is shaped after.</summary>
/// <remarks>Back to the left, front to the right, the back underarm point at the origin. Height of the cap, or its width, and the place of the crown are found first, so that each half of the
/// head is as long as its armhole and its ease; a hand lays them off and measures the head.</remarks>
internal sealed class SleeveDraft
{
    private readonly BlockDraft _block;

    private SleeveDraft(BlockDraft block, SleeveOptions options)
    {
        _block = block;
        Options = options;
        Armhole = options.Armhole ?? throw new ConstructionException(DiagnosticCode.ArmholeMissing, block.By) { Step = "taking the armhole" };
        Customs = SleeveCustoms.Of(block.Body.Unit, options.Fit);
        Arm = ArmMeasures.Of(block);
        ElbowGirthMm = block.Body.TryFindMm(BodyMeasurement.ElbowGirth, out double girthMm) ? girthMm : null;
    }

    internal SleeveOptions Options { get; }

    internal Armhole Armhole { get; }

    internal SleeveCustoms Customs { get; }

    internal ArmMeasures Arm { get; }

    internal double FrontEaseMm { get; private set; }

    internal double BackEaseMm { get; private set; }

    internal double FrontHeadMm => Armhole.FrontHalf.LengthMm + FrontEaseMm;

    internal double BackHeadMm => Armhole.BackHalf.LengthMm + BackEaseMm;

    internal double WidthMm { get; private set; }

    internal double CapHeightMm { get; private set; }

    /// <summary>From the underarm line to the elbow and to the lower edge.</summary>
    internal double ElbowDepthMm { get; private set; }

    internal double HemDepthMm { get; private set; }

    /// <summary>Whether the sleeve ends at the wrist, so that its lower edge is called so.</summary>
    internal bool ReachesWrist { get; private set; }

    internal EdgeName LowerEdge => ReachesWrist ? EdgeName.Wrist : EdgeName.Hem;

    /// <summary>As drafted with straight seams.</summary>
    internal double LowerWidthMm => FrontLower.XMm - BackLower.XMm;

    internal double WristMm { get; private set; }

    /// <summary>How wide the sleeve with straight seams is at the elbow line.</summary>
    internal double ElbowWidthMm => WidthMm - ((WidthMm - LowerWidthMm) * ElbowDepthMm / HemDepthMm);

    /// <summary>Null where it was not measured.</summary>
    internal double? ElbowGirthMm { get; }

    private DraftingSheet Sheet => _block.Sheet;

    private DraftedLine BackHead { get; set; } = null!;

    private DraftedLine FrontHead { get; set; } = null!;

    private Point2D BackLower { get; set; }

    private Point2D FrontLower { get; set; }

    private Point2D Crown => BackHead.To.Position;

    internal static SleeveDraft Draw(BlockDraft block, SleeveOptions options)
    {
        var draft = new SleeveDraft(block, options);
        draft.DrawAll();
        return draft;
    }

    /// <summary>The panel with straight seams.</summary>
    internal Panel ToPanel()
    {
        double wholeMm = BackHeadMm + FrontHeadMm;
        ArmholeNotch[] backs = Armhole.BackHalf.Notches;
        ArmholeNotch[] fronts = Armhole.FrontHalf.Notches;
        CurvePath head = CurvePath.Trusted([BackHead.OnlyRaw, FrontHead.OnlyRaw], isClosed: false);
        var edge = new PanelEdge(EdgeName.SleeveHead, EdgeRole.Seam, head);
        var notches = new Notch[backs.Length + 1 + fronts.Length + (HasElbow ? 2 : 0)];
        for (int i = 0; i < backs.Length; i++)
        {
            notches[i] = On(edge, Armhole.BackHalf.OnHeadMm(backs[i].FromSideMm, BackEaseMm), backs[i].Count);
        }

        notches[backs.Length] = new Notch(EdgeName.SleeveHead, Crown, head.LengthMm - FrontHead.LengthMm(), 1);
        for (int i = 0; i < fronts.Length; i++)
        {
            notches[backs.Length + fronts.Length - i] = On(edge, wholeMm - Armhole.FrontHalf.OnHeadMm(fronts[i].FromSideMm, FrontEaseMm), fronts[i].Count);
        }

        var frontSeam = new PanelEdge(EdgeName.FrontUnderarm, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(head.End, FrontLower)));
        var backSeam = new PanelEdge(EdgeName.BackUnderarm, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(BackLower, head.Start)));
        if (HasElbow)
        {
            double alongMm = frontSeam.SewnLengthMm() * ElbowDepthMm / HemDepthMm;
            notches[notches.Length - 2] = On(frontSeam, alongMm, 1);
            notches[notches.Length - 1] = On(backSeam, backSeam.SewnLengthMm() - alongMm, 1);
        }

        return new Panel(
            SleeveNames.Sleeve,
            [edge, frontSeam, new PanelEdge(LowerEdge, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(FrontLower, BackLower))), backSeam],
            new PanelFeatures(
                new LineSegment(new Point2D(Crown.XMm, Crown.YMm * 0.5), new Point2D(Crown.XMm, -0.75 * HemDepthMm)),
                notches,
                [BackHead.From, BackHead.To, FrontHead.To],
                []));
    }

    /// <summary>The elbow on the front seam, which begins at the underarm.</summary>
    internal EdgePlace FrontElbow(Panel panel) => EdgeName.FrontUnderarm.At(Mm(panel.FindEdge(EdgeName.FrontUnderarm).SewnLengthMm() * ElbowDepthMm / HemDepthMm));

    /// <summary>The elbow on the back seam, which ends at the underarm.</summary>
    internal EdgePlace BackElbow(Panel panel) => EdgeName.BackUnderarm.At(Mm(panel.FindEdge(EdgeName.BackUnderarm).SewnLengthMm() * (1 - (ElbowDepthMm / HemDepthMm))));

    internal bool IsInTwo => Options.Elbow == ElbowShaping.TwoPiece;

    /// <summary>Whether the sleeve reaches below the elbow by enough to mark it.</summary>
    internal bool HasElbow => HemDepthMm > ElbowDepthMm + Customs.ClearMm;

    internal static Notch On(PanelEdge edge, double alongMm, int count) => new(edge.Name, edge.PointAtSewnMm(alongMm), alongMm, count);

    private void DrawAll()
    {
        WorkedLength front = WorkedLength.MeasuredMm("front armhole", Armhole.FrontHalf.LengthMm);
        WorkedLength back = WorkedLength.MeasuredMm("back armhole", Armhole.BackHalf.LengthMm);
        WorkedLength ease = Given("cap ease", Options.CapEaseMm ?? Customs.CapEaseMm);
        WorkedLength frontEase = ease.Times(Options.FrontShare).Named("front cap ease");
        WorkedLength backEase = (ease - frontEase).Named("back cap ease");
        FrontEaseMm = frontEase.ValueMm;
        BackEaseMm = backEase.ValueMm;
        WorkedLength frontHead = (front + frontEase).Named("front head");
        WorkedLength backHead = (back + backEase).Named("back head");
        WorkedLength length = Options.LengthMm is { } asked && asked >= Arm.Length.ValueMm ? Given("sleeve length", asked) : Arm.Length;
        WorkedLength wrist = (Arm.Wrist + Given("wrist ease", Options.WristEaseMm ?? Customs.WristEaseMm)).Named("wrist width");
        WorkedLength width = (Arm.UpperArm + Given("upper arm ease", Options.WidthEaseMm ?? Customs.WidthEaseMm)).Named("sleeve width");
        DrawnCap cap = FindCap(width, length, wrist, ease);
        if (Options.CapHeightMm is not null)
        {
            width = WorkedLength.DrawnMm("sleeve width", cap.Front.X3);
        }

        WidthMm = width.ValueMm;
        Sheet.Note("Measure the armhole along its seam line, from the side seam up to the shoulder: {0}, {1}.", front, back);
        DrawHead(cap, width, frontHead, backHead);
        DrawSeams(length - CapHeight(cap), wrist.AtMost(width).Named("wrist width"), width);
    }

    private WorkedLength CapHeight(DrawnCap cap) => Options.CapHeightMm is { } mm ? Given("cap height", mm) : WorkedLength.DrawnMm("cap height", cap.Crown.YMm);

    private DrawnCap FindCap(WorkedLength width, WorkedLength length, WorkedLength wrist, WorkedLength ease)
    {
        CapCurve asked = CapCurve.Over(Armhole.FrontLength, Armhole.BackLength).WithEase(Mm(FrontEaseMm), Mm(BackEaseMm)).SquareToSeams(length.Value, wrist.Value);
        ConstructionOutcome<DrawnCap> outcome;
        if (Options.CapHeightMm is { } heightMm)
        {
            return asked.TryDrawUpTo(Mm(heightMm), out outcome) ? Checked(outcome.Drawn!, length) : throw _block.Refusal(
                "A cap so high cannot be drawn over this armhole with " + Text(ease) + " of ease. Take a third of the armhole, or leave the cap height out.", Mm(heightMm), Mm(Armhole.LengthMm / 3));
        }

        if (asked.TryDrawAcross(width.Value, out outcome))
        {
            return Checked(outcome.Drawn!, length);
        }

        // At the height that is least or most for this armhole the head is as wide as it can be.
        double crownMm = outcome.Drawn!.Crown.YMm;
        bool isTooWide = crownMm < Armhole.LengthMm * 0.28;
        double limitMm = Armhole.LengthMm * (isTooWide ? CapCurve.LeastHeight : CapCurve.MostHeight);
        bool hasLimit = asked.TryDrawUpTo(Mm(limitMm), out ConstructionOutcome<DrawnCap> atLimit);
        throw _block.Refusal(
            isTooWide
                ? "The arm with its ease is too wide for a cap over this armhole. Deepen the armhole, or take less upper arm ease or more cap ease."
                : "The arm with its ease is too narrow for a cap over this armhole. Take more upper arm ease or less cap ease, or raise the armhole.",
            width.Value,
            hasLimit ? atLimit.Drawn!.Width : Armhole.FrontLength + Armhole.BackLength);
    }

    private DrawnCap Checked(DrawnCap cap, WorkedLength length) => length.ValueMm - cap.Crown.YMm >= Customs.LeastSeamMm
        ? cap
        : throw _block.Refusal("The cap leaves no room for an underarm seam. Make the sleeve longer, or the cap lower.", length.Value, Mm(cap.Crown.YMm + Customs.LeastSeamMm));

    private void DrawHead(DrawnCap cap, WorkedLength width, WorkedLength frontHead, WorkedLength backHead)
    {
        WorkedLength height = CapHeight(cap);
        Landmark back = Sheet.Mark(SleeveNames.BackUnderarm, Point2D.Origin);
        Sheet.Because("Near the left edge of the paper, with the cap above it and the rest of the sleeve below.");
        Landmark front = Sheet.SquareAcross(back, Across.Right, width, SleeveNames.FrontUnderarm, SleeveNames.UnderarmLine);
        Landmark foot = Sheet.SquareAcross(back, Across.Right, WorkedLength.DrawnMm("back width", cap.Crown.XMm), SleeveNames.CrownFoot);
        Sheet.Because("Found with the cap height: nowhere else do front and back both get their own ease.");
        Landmark crown = Sheet.SquareUp(foot, height, SleeveNames.Crown, SleeveNames.CrownLine);
        CapHeightMm = height.ValueMm;

        // From the points as they lie, so that a sheet that reads a tape draws what a hand would.
        double leanRad = cap.Back.StartDirection.AngleRad - CapBend.Back.RiseRad;
        CubicBezier behind = CapCurve.Half(CapBend.Back, crown.Position.XMm, crown.Position.YMm, leanRad);
        CubicBezier ahead = CapCurve.Half(CapBend.Front, front.Position.XMm - crown.Position.XMm, crown.Position.YMm, leanRad).Transformed(
            Transform2D.Mirror(Line.Vertical(new Point2D(front.Position.XMm / 2, 0)))).Reversed();
        BackHead = Sheet.Draw(SleeveNames.BackHead, CurvePath.FromCubic(behind), back, crown);
        Sheet.Because("Level at the crown, and square to the underarm seam.");
        FrontHead = Sheet.Draw(SleeveNames.FrontHead, CurvePath.FromCubic(ahead), crown, front);
        Sheet.Because("It leaves the crown in line with the back, and is hollowed out more.");
        Sheet.Note("Measure both halves: {0}, {1}. Where one is not, draw its hollow a little deeper or flatter.", frontHead, backHead);
        Sheet.Note(
            "Mark the notches of the armhole on the head: those of the back from {0}, those of the front from {1}, as far along as they lie from the side seam. Nothing is eased below the first of each; "
            + "the ease lies between there and the crown, {2}, {3}. Mark the crown for the shoulder.",
            back,
            front,
            Given("front cap ease", FrontEaseMm),
            Given("back cap ease", BackEaseMm));
        Aim("front head", FrontHead.LengthMm(), FrontHeadMm, list => Measured(list).FrontMm);
        Aim("back head", BackHead.LengthMm(), BackHeadMm, list => Measured(list).BackMm);
    }

    private void DrawSeams(WorkedLength underarm, WorkedLength wrist, WorkedLength width)
    {
        WristMm = wrist.ValueMm;
        Landmark middle = Sheet.Midpoint(BackHead.From, FrontHead.To, SleeveNames.UnderarmMiddle);
        Landmark wristMiddle = Sheet.SquareDown(middle, underarm.Named("underarm length"), SleeveNames.WristMiddle, SleeveNames.MiddleLine);
        Landmark backWrist = Sheet.SquareAcross(wristMiddle, Across.Left, wrist.Half(), SleeveNames.BackWrist);
        Landmark frontWrist = Sheet.SquareAcross(wristMiddle, Across.Right, wrist.Half(), SleeveNames.FrontWrist);
        DraftedLine backSeam = Sheet.Join(BackHead.From, backWrist, SleeveNames.BackSeam);
        DraftedLine frontSeam = Sheet.Join(FrontHead.To, frontWrist, SleeveNames.FrontSeam);
        Sheet.Because("Both seams lean alike, so they are equally long.");

        double underarmMm = underarm.ValueMm;
        WorkedLength elbow = underarm.Half().Named("elbow depth");
        if (_block.Body.TryFindMm(BodyMeasurement.UpperArmLength, out double upperArmMm)
            && upperArmMm - CapHeightMm > 0.25 * underarmMm && upperArmMm - CapHeightMm < 0.75 * underarmMm)
        {
            elbow = (_block.Take(BodyMeasurement.UpperArmLength) - WorkedLength.DrawnMm("cap height", CapHeightMm)).Named("elbow depth");
        }

        ElbowDepthMm = elbow.ValueMm;
        WorkedLength hem = HemDepth(underarm, elbow);
        HemDepthMm = hem.ValueMm;
        ReachesWrist = HemDepthMm >= underarmMm;
        if (HasElbow)
        {
            DrawLevel(SleeveNames.Elbow, elbow, width, backSeam, frontSeam);
        }

        if (ReachesWrist)
        {
            Sheet.Join(backWrist, frontWrist, SleeveNames.WristLine);
            BackLower = backWrist.Position;
            FrontLower = frontWrist.Position;
        }
        else
        {
            (BackLower, FrontLower) = DrawLevel(SleeveNames.Hem, hem.Named("hem depth"), width, backSeam, frontSeam);
            Sheet.Because("The sleeve ends here: its seams stay those of the long one.");
        }
    }

    private WorkedLength HemDepth(WorkedLength underarm, WorkedLength elbow)
    {
        if (Options.LengthMm is { } asked && asked < Arm.Length.ValueMm)
        {
            double depthMm = asked - CapHeightMm;
            return depthMm >= Customs.LeastSeamMm
                ? Given("sleeve length", asked) - WorkedLength.DrawnMm("cap height", CapHeightMm)
                : throw _block.Refusal("So short a sleeve ends above its underarm. Make it longer, or the cap lower.", Mm(asked), Mm(CapHeightMm + Customs.LeastSeamMm));
        }

        return Options.LengthMm is not null ? underarm : Options.Length switch
        {
            SleeveLength.Short => elbow.Half(),
            SleeveLength.ThreeQuarter => (elbow + underarm).Half(),
            _ => underarm,
        };
    }

    private (Point2D Back, Point2D Front) DrawLevel(LevelNames names, WorkedLength depth, WorkedLength width, DraftedLine backSeam, DraftedLine frontSeam)
    {
        Landmark level = Sheet.SquareDown(BackHead.From, depth, names.BackLevel);
        Sheet.SquareAcross(level, Across.Right, width, names.FrontLevel, names.Line);
        DraftedLine line = Sheet.FindLine(names.Line);
        return (Sheet.Intersect(line, backSeam, names.Back).Position, Sheet.Intersect(line, frontSeam, names.Front).Position);
    }

    private SleeveHead Measured(CheckList list)
    {
        _ = SleeveHead.TryMeasure(list, IsInTwo, Armhole.BackHalf.Notches.Length, Armhole.FrontHalf.Notches.Length, out SleeveHead head);
        return head;
    }

    private void Aim(string what, double byHandMm, double targetMm, Func<CheckList, double> measure) => _block.AimMm(what, SleeveNames.Sleeve.Text, byHandMm, targetMm, measure);

    private static WorkedLength Given(string name, double mm) => WorkedLength.GivenMm(name, mm);

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static string Text(WorkedLength length) => (length.ValueMm / 10).ToString("0.#", CultureInfo.InvariantCulture) + " cm";
}
