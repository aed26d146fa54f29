using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What a drafting method makes for one body: panels, how they were drafted, and the proof that they are what the method promises. Immutable.</summary>
/// <remarks>Everything that is made of a block takes any block: drawing, steps, report, pieces, files. Points and lines are kept twice, as drawn by hand
/// (<see cref="Drafted"/>) and as truing left them (<see cref="Trued"/>).</remarks>
/// <example><code>
/// Block other = block.WithPanel(block.Front.SwingDart(EdgeName.Waist.Dart(1), Angle.FromDegrees(2)));
/// bool isStillRight = other.Report.Passed;
/// </code></example>
public partial class Block
{
    private readonly BlockRecord _record;
    private readonly Panel[] _panels;
    private MethodDescription? _method;
    private BlockLines? _trued;

    internal Block(BlockRecord record, Panel[] panels)
    {
        _record = record;
        _panels = panels;
        Report = Measure();
    }

    /// <summary>The body that the block fits.</summary>
    public BodyMeasurements Body => _record.Body;

    /// <summary>The method that drafted it, with all settings.</summary>
    public MethodDescription Method => _method ??= _record.Description ?? MethodDescription.Of(_record.Method!, _record.Values!, Body.Unit, _record.Readings);

    /// <summary>What the block is called: its method's name and, where the body has one, for whom.</summary>
    public string Title => Heading + (Body.Name is { } name ? " for " + name : string.Empty);

    /// <summary>The designs that it went through, in order; none where it is as drafted.</summary>
    public IReadOnlyList<DesignDescription> Designs => _record.Designs;

    /// <summary>The panels, in the order in which the method added them.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    /// <summary>Points and lines as drawn by hand, before truing.</summary>
    public BlockLines Drafted => new(_record.Landmarks, _record.ReadLines ?? [.. _record.SheetLines.Select(line => new BlockLine(line.Name, line.Path))]);

    /// <summary>Points and lines as truing left them, and as changed panels carry them.</summary>
    /// <remarks>A straight line between landmarks goes with them. Seam lines drawn by hand are not among the lines: as trued they are the edges of the panels.</remarks>
    public BlockLines Trued => _trued ??= FindTrued();

    /// <summary>The steps that built the block, in drafting order; none where it was read from a file.</summary>
    public IReadOnlyList<Step> Steps => _record.Steps;

    /// <summary>What is sewn to what.</summary>
    public SeamPlan Seams => _record.Seams;

    /// <summary>The proof: every check that the method promised, measured on the panels of this block.</summary>
    public CheckReport Report { get; }

    /// <summary>What the hand draft was off by (<see cref="Finding.Before"/>), and what truing made of it (<see cref="Finding.Measured"/>).</summary>
    public IReadOnlyList<Finding> TruingChanges
    {
        get
        {
            var list = new CheckList(_panels, 0);
            return [.. _record.Aims.Select(aim => new Finding(
                aim.What, aim.Place, FindingKind.Length, FindingRelation.Equal, Measured(aim, list), aim.TargetMm, CheckList.ToleranceMm, aim.ByHandMm))];
        }
    }

    /// <summary>Other ways in which the block could be drafted, such as on another waistline. None is drafted before it is asked for.</summary>
    public IReadOnlyList<BlockAlternative> Alternatives => [.. _record.Alternatives.Select(plan => new BlockAlternative(ToBuilder(), plan))];

    /// <summary>What the method wants every sheet to say.</summary>
    public IReadOnlyList<string> Remarks => _record.Remarks;

    /// <summary>What it is called without whom it is for, such as <c>Skirt block</c>.</summary>
    internal string Heading => char.ToUpperInvariant(Method.Name[0]) + Method.Name.Substring(1) + string.Concat(Designs.Select(design => ", " + design.Name));

    internal BlockRecord Record => _record;

    internal Panel[] PanelsRaw => _panels;

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">The block has no such panel.</exception>
    [Pure]
    public Panel FindPanel(PanelName name) => PanelErrors.Find(_panels, name);

    /// <summary>How often a panel stands in the garment, its mirror images counted: 2 for one half of a front.</summary>
    /// <exception cref="ConstructionException">The block has no such panel.</exception>
    [Pure]
    public int TimesOf(PanelName name) => _record.Times[Array.IndexOf(_panels, FindPanel(name))];

    /// <summary>A panel as it is cut, where that differs from how it is sewn: a waist on the bias is cut smaller since it stretches. Else the panel.</summary>
    /// <exception cref="ConstructionException">The block has no such panel.</exception>
    [Pure]
    public Panel FindPanelAsCut(PanelName name)
    {
        Panel sewn = FindPanel(name);

        // A panel that was changed since is cut as it is.
        return _record.AsCut.Find(one => ReferenceEquals(one.Sewn.EdgesRaw, sewn.EdgesRaw)).Cut ?? sewn;
    }

    /// <summary>Where a panel as it is cut is folded, as for pleats; none where it is not.</summary>
    /// <exception cref="ConstructionException">The block has no such panel.</exception>
    [Pure]
    public IReadOnlyList<BlockLine> FindFolds(PanelName name)
    {
        _ = FindPanel(name);
        return FoldsOf(name);
    }

    internal IReadOnlyList<BlockLine> FoldsOf(PanelName name)
    {
        Panel? sewn = Array.Find(_panels, panel => panel.Name == name);
        return sewn is null ? [] : _record.AsCut.Find(one => ReferenceEquals(one.Sewn.EdgesRaw, sewn.EdgesRaw)).Folds ?? [];
    }

    /// <summary>Makes a design of this block, with every setting as usual.</summary>
    /// <param name="design">The design.</param>
    /// <exception cref="ConstructionException">The design cannot be made of this block.</exception>
    [Pure]
    public Block With(BlockDesign design) => With(Guard.NotNull(design, nameof(design)).AsUsual());

    /// <summary>Makes a design of this block.</summary>
    /// <param name="design">The design, with what was chosen for it.</param>
    /// <exception cref="ConstructionException">The design cannot be made of this block.</exception>
    [Pure]
    public Block With(DesignChoice design) => Guard.NotNull(design, nameof(design)).Design.Style(this, design);

    /// <summary>Returns the alternative of that name.</summary>
    /// <exception cref="ConstructionException">The block has no such alternative.</exception>
    [Pure]
    public BlockAlternative FindAlternative(string name) => Alternatives.FirstOrDefault(one => one.Name == name)
        ?? throw new ConstructionException(DiagnosticCode.AlternativeUnknown, Method.Name, name, string.Join(", ", _record.Alternatives.Select(one => one.Name)));

    /// <summary>Puts a changed panel in the place of the one with its name. What the method promised is measured again.</summary>
    /// <exception cref="ConstructionException">The block has no panel of that name.</exception>
    [Pure]
    public Block WithPanel(Panel panel) => WithPanels([Guard.NotNull(panel, nameof(panel))]);

    /// <summary>Puts changed panels in the places of those with their names. What the method promised is measured again.</summary>
    /// <exception cref="ConstructionException">The block has no panel of such a name.</exception>
    [Pure]
    public Block WithPanels(IEnumerable<Panel> panels)
    {
        Panel[] changed = [.. _panels];
        foreach (Panel panel in Guard.NotNull(panels, nameof(panels)))
        {
            changed[Array.IndexOf(_panels, FindPanel(Guard.NotNull(panel, nameof(panels)).Name))] = panel;
        }

        return Remade(changed);
    }

    /// <summary>Returns a builder that says everything as this block was drafted, to change something and draft again; its designs are made again in their order.</summary>
    /// <exception cref="ConstructionException">The block was read from a file, and its method or one of its designs is not known.</exception>
    [Pure]
    public BlockBuilder ToBuilder() => new(KnownMethod(), Body, _record.Values!, [.. _record.Designs.Select(KnownDesign)]);

    /// <summary>Drafts by hand once more with every distance read off a tape, and says what all that rounding does together.</summary>
    /// <remarks>A sheet of steps that rounds each instruction owes its reader this: the errors do not simply add up. Each finding has the exact hand draft
    /// before and the one off the tape as measured, and passes where a cutter would let it, within 1/16 in.</remarks>
    /// <param name="tape">The finest mark that distances are laid off to.</param>
    /// <exception cref="ConstructionException">The block was read from a file, and its method is not known.</exception>
    [Pure]
    public IReadOnlyList<Finding> ReadOffTape(TapeStep tape)
    {
        List<BlockAim> rounded = KnownMethod().AimsOffTape(Body, _record.Values!, tape, _record.Aims.Count);
        return [.. _record.Aims.Zip(rounded, (exact, off) => new Finding(
            exact.What, exact.Place, FindingKind.Length, FindingRelation.Equal, off.ByHandMm, exact.TargetMm, Finding.HandToleranceMm, exact.ByHandMm))];
    }

    /// <summary>The coarsest tape that a hand may draft with so that no measure that the method aims at is off by more than a tolerance, all roundings together.</summary>
    /// <remarks>Compared is the draft off the tape with the exact hand draft. One body may come out well on a coarse tape by luck: a step counts only where every finer one of its tape stays
    /// within the tolerance as well. Inches from halves to sixty-fourths for a body in inches, else from a millimetre to a hundredth of one.</remarks>
    /// <param name="tolerance">How far off a measure may be; zero or more. Cutters accept 1/16 in when they walk a seam (common practice, no source).</param>
    /// <param name="tape">The step; the finest where none stays within the tolerance.</param>
    /// <returns>Whether one does.</returns>
    /// <exception cref="ConstructionException">The block was read from a file, and its method is not known.</exception>
    public bool TryFindCoarsestTape(UnitsNet.Length tolerance, out TapeStep tape)
    {
        double toleranceMm = Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance));
        TapeStep[] steps = TapeStep.Ladder(Body.Unit);
        tape = steps[0];
        bool any = false;
        foreach (TapeStep step in steps)
        {
            foreach (Finding effect in ReadOffTape(step))
            {
                if (!(Math.Abs(effect.RawMeasured - effect.RawBefore) <= toleranceMm))
                {
                    return any;
                }
            }

            tape = step;
            any = true;
        }

        return any;
    }

    /// <summary>The draft with every distance laid to the nearest mark of a tape, its designs made again: the sheet as far as it was drawn, and the block where it came to one.</summary>
    internal (DraftingSheet Sheet, Block? Block) DraftOffTape(TapeStep tape)
    {
        (DraftingSheet sheet, Block? block) = KnownMethod().DraftOffTape(Body, _record.Values!, tape);
        try
        {
            return (sheet, block is null ? null : _record.Designs.Select(KnownDesign).Aggregate(block, (made, design) => made.With(design)));
        }
        catch (ConstructionException)
        {
            return (sheet, null);
        }
    }

    /// <summary>The title and the verdict of the report.</summary>
    public override string ToString() => Title + ": " + Report.Verdict();

    /// <summary>A measure of the hand draft, measured on the panels.</summary>
    internal double MeasuredMm(in BlockAim aim) => Measured(aim, new CheckList(_panels, 0));

    private protected virtual Block Remade(Panel[] panels) => new(_record, panels);

    private DraftingMethod KnownMethod() => _record.Method
        ?? throw new ConstructionException(DiagnosticCode.MethodUnknown, Method.ToString(), "none that this block was read with");

    private static DesignChoice KnownDesign(DesignDescription design) => design.Choice
        ?? throw new ConstructionException(DiagnosticCode.DesignUnknown, design.ToString());

    // Not a number where a change of the panels took away what is to be measured.
    private static double Measured(BlockAim aim, CheckList list)
    {
        try
        {
            return aim.Measure(list);
        }
        catch (ConstructionException)
        {
            return double.NaN;
        }
    }

    private CheckReport Measure()
    {
        var list = new CheckList(_panels);
        foreach (BlockPromise promise in _record.Promises)
        {
            try
            {
                promise.Measure(list);
            }
            catch (ConstructionException refusal)
            {
                // After a change that took an edge away, what was promised of it cannot be measured, and so does not hold.
                list.Count("promise that cannot be measured: " + refusal.Message, "block", 1, 0);
            }
        }

        return list.ToReport();
    }

    private BlockLines FindTrued()
    {
        var moved = new Dictionary<Point2D, Point2D>();
        Landmark[] landmarks = [.. _record.Landmarks];
        for (int i = 0; i < landmarks.Length; i++)
        {
            Point2D now = PositionOf(landmarks[i]);
            if (now != landmarks[i].Position)
            {
                moved[landmarks[i].Position] = now;
                landmarks[i] = landmarks[i].At(now);
            }
        }

        return new BlockLines(landmarks, [.. Drafted.Lines.Where(line => line.Role != ConstructionRole.HandDrawn).Select(line => Moved(line, moved))]);
    }

    private Point2D PositionOf(Landmark drafted)
    {
        foreach (Panel panel in _panels)
        {
            foreach (Landmark landmark in panel.Landmarks)
            {
                if (landmark.Name.Equals(drafted.Name))
                {
                    return landmark.Position;
                }
            }
        }

        foreach ((LandmarkName name, Point2D position) in _record.Moved)
        {
            if (name.Equals(drafted.Name))
            {
                return position;
            }
        }

        return drafted.Position;
    }

    private static BlockLine Moved(BlockLine line, Dictionary<Point2D, Point2D> moved)
    {
        bool isStraight = line.Path.SegmentsRaw is [{ Kind: PathSegmentKind.Line }];
        if (!isStraight || line.Role != ConstructionRole.Guide || !(moved.ContainsKey(line.Path.Start) || moved.ContainsKey(line.Path.End)))
        {
            return line;
        }

        Point2D from = moved.TryGetValue(line.Path.Start, out Point2D start) ? start : line.Path.Start;
        Point2D to = moved.TryGetValue(line.Path.End, out Point2D end) ? end : line.Path.End;
        return new BlockLine(line.Name, CurvePath.FromLine(new LineSegment(from, to)));
    }
}
