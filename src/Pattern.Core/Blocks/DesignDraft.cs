using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>One design under way: the block as it was, the panels as they are now, and the steps that go on from those of the block.</summary>
/// <remarks>What the block promised stays promised, and is measured on the new panels, unless the design promises it anew or says why nobody can promise it any more.</remarks>
public sealed class DesignDraft : BlockWork
{
    private readonly DesignChoice _choice;
    private readonly List<Panel> _panels;
    private readonly List<int> _times;
    private readonly List<BlockLine> _lines = [];
    private readonly int _firstStep;

    internal DesignDraft(DesignChoice choice, Block source, ListedValues values, DraftingSheet sheet)
        : base(choice.Design.Name, choice.Design.SettingsRaw, values, Continued(source, sheet), sheet)
    {
        Source = source;
        _choice = choice;
        _firstStep = sheet.Steps.Count + 1;
        _panels = [.. source.PanelsRaw];
        _times = [.. source.Record.Times];
    }

    /// <summary>The block as it was.</summary>
    public Block Source { get; }

    /// <summary>The panels as they are now.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    /// <summary>What is sewn to what now.</summary>
    public SeamPlan Seams => Open.Seams;

    /// <summary>Returns the panel of that name as it is now.</summary>
    /// <exception cref="ConstructionException">There is no such panel.</exception>
    [Pure]
    public Panel FindPanel(PanelName name) => _panels[IndexOf(name)];

    /// <summary>How often a panel stands in the garment, its mirror images counted.</summary>
    /// <exception cref="ConstructionException">There is no such panel.</exception>
    [Pure]
    public int TimesOf(PanelName name) => _times[IndexOf(name)];

    /// <summary>Puts a changed panel in the place of the one with its name.</summary>
    /// <exception cref="ConstructionException">There is no such panel.</exception>
    public void Replace(Panel panel) => _panels[IndexOf(Guard.NotNull(panel, nameof(panel)).Name)] = panel;

    /// <summary>Puts panels in the place of one that was cut apart; each stands in the garment as often as it did.</summary>
    /// <exception cref="ConstructionException">There is no such panel, or there is one of a new name already.</exception>
    public void Replace(PanelName name, params Panel[] parts)
    {
        int index = IndexOf(name);
        int times = _times[index];
        _panels.RemoveAt(index);
        _times.RemoveAt(index);
        foreach (Panel part in Guard.NotNull(parts, nameof(parts)))
        {
            Insert(index++, part, times);
        }
    }

    /// <summary>Adds a panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="times">How often it stands in the garment, its mirror images counted: 2 for one half of a front. 1 to 99.</param>
    /// <exception cref="ConstructionException">There is a panel of that name already.</exception>
    public void Add(Panel panel, int times) => Insert(_panels.Count, panel, Guard.InRange(times, 1, 99, nameof(times)));

    /// <summary>Says how a panel is cut, where that differs from how it is sewn; the pieces are made of it, everything else of the panel as it is sewn.</summary>
    /// <param name="panel">The panel as it is cut, with the name of the one that is sewn and edges of the same names.</param>
    /// <exception cref="ConstructionException">There is no panel of that name.</exception>
    /// <param name="folds">Where it is folded, as for pleats.</param>
    public void CutAs(Panel panel, params (LineName Name, CurvePath Path)[] folds)
    {
        Panel sewn = FindPanel(Guard.NotNull(panel, nameof(panel)).Name);
        Open.AsCut.RemoveAll(one => one.Cut.Name == panel.Name);
        Open.AsCut.Add((sewn, panel, [.. Guard.NotNull(folds, nameof(folds)).Select(fold => new BlockLine(fold.Name, fold.Path))]));
    }

    /// <summary>How a panel was turned, where a design turned its darts and nothing changed it since; else null.</summary>
    internal TurnedPanel? FindTurned(Panel panel) => Open.Turned.Find(one => ReferenceEquals(one.Sewn.EdgesRaw, panel.EdgesRaw));

    /// <summary>Puts a panel with turned darts in its place, and keeps how it was turned.</summary>
    internal void Replace(TurnedPanel turned)
    {
        Replace(turned.Sewn);
        Open.Turned.RemoveAll(one => one.Sewn.Name == turned.Sewn.Name);
        Open.Turned.Add(turned);
    }

    /// <summary>Takes a panel away.</summary>
    /// <exception cref="ConstructionException">There is no such panel.</exception>
    public void Drop(PanelName name)
    {
        int index = IndexOf(name);
        _panels.RemoveAt(index);
        _times.RemoveAt(index);
    }

    /// <summary>Says what is sewn to what now, and promises that it fits.</summary>
    public void Sew(SeamPlan plan)
    {
        Open.Seams = Guard.NotNull(plan, nameof(plan));
        Check(BlockRecord.SeamsPromise, list => plan.Check(list, list.PanelsRaw));
    }

    /// <summary>Takes a promise of the block back that this design leaves no place for; every sheet says so, with the reason.</summary>
    /// <param name="promise">The name of the promise.</param>
    /// <param name="because">A sentence, such as <c>It has no darts any more.</c></param>
    public void Release(string promise, string because)
    {
        Guard.Name(because, nameof(because));
        if (Open.Promises.RemoveAll(other => other.Name == Guard.NotNull(promise, nameof(promise))) > 0)
        {
            Remark($"Not checked any more: {promise}. {because}");
        }
    }

    /// <summary>Takes a remark of the block back that does not hold any more, such as which half is drawn.</summary>
    /// <param name="sentence">The remark.</param>
    public void Unsay(string sentence) => Open.Remarks.Remove(Guard.NotNull(sentence, nameof(sentence)));

    /// <summary>Shows a line on the drawing. The lines of the block are not shown any more: the panels have moved away from them.</summary>
    public void Show(LineName name, CurvePath path) => _lines.Add(new BlockLine(Guard.NotNull(name, nameof(name)), Guard.NotNull(path, nameof(path))));

    /// <summary>What to throw where this design cannot be made of this block.</summary>
    /// <param name="reason">Why, and what to do; sentences.</param>
    [Pure]
    public ConstructionException Refusal(string reason) => new(DiagnosticCode.DesignRefused, By, Source.Heading, MessageRegistry.Whole(Guard.Name(reason, nameof(reason)))) { Step = By };

    internal Block Finish()
    {
        if (_panels.Count == 0)
        {
            throw new ConstructionException(DiagnosticCode.DraftWithoutPanels, By);
        }

        BlockRecord record = Close();
        record.Times = [.. _times];
        Panel[] panels = WithOwnLandmarks();
        record.Landmarks = [.. panels.SelectMany(panel => panel.Landmarks).GroupBy(landmark => landmark.Name).Select(same => same.First())];
        record.ReadLines = [.. _lines];
        SettingValue[] values = ListedValues.Copy(_choice.Design.Settings, Values);
        record.Designs =
        [
            .. record.Designs,
            new DesignDescription(
                _choice.Design.Name,
                _choice.Design.Version,
                _choice,
                values,
                MethodDescription.Printed(_choice.Design.Settings, values, record.Body.Unit),
                PromisedAnew,
                _firstStep),
        ];
        return new Block(record, panels);
    }

    private static BlockRecord Continued(Block source, DraftingSheet sheet)
    {
        BlockRecord from = source.Record;
        var record = new BlockRecord(from.Body)
        {
            Method = from.Method,
            Values = from.Values,
            Description = from.Description,
            Sheet = sheet,
            Seams = from.Seams,
            Own = from.Own,
            Designs = from.Designs,
        };
        record.Promises.AddRange(from.Promises);
        record.AsCut.AddRange(from.AsCut);
        record.Turned.AddRange(from.Turned);
        record.Readings.AddRange(from.Readings);
        record.Remarks.AddRange(from.Remarks);
        record.Alternatives.AddRange(from.Alternatives);

        // What truing did was done to the block; the design came after it.
        foreach (BlockAim aim in from.Aims)
        {
            record.Aims.Add(new BlockAim(aim.What, aim.Place, aim.ByHandMm, aim.TargetMm, _ => source.MeasuredMm(aim)));
        }

        return record;
    }

    private int IndexOf(PanelName name)
    {
        int index = _panels.FindIndex(panel => panel.Name == name);
        return index >= 0
            ? index
            : throw new ConstructionException(DiagnosticCode.PanelMissing, name, string.Join(", ", _panels.Select(panel => panel.Name.Text))) { Step = By, Landmark = name.Text };
    }

    private void Insert(int index, Panel panel, int times)
    {
        Guard.NotNull(panel, nameof(panel));
        _ = Open;
        if (_panels.Exists(other => other.Name == panel.Name))
        {
            throw new ConstructionException(DiagnosticCode.PanelDraftedTwice, By, panel.Name) { Landmark = panel.Name.Text };
        }

        _panels.Insert(index, panel);
        _times.Insert(index, times);
    }

    // A point that several panels had in common, as those of a seam drawn once, and that now lies elsewhere on each, is a point of each.
    private Panel[] WithOwnLandmarks()
    {
        HashSet<LandmarkName> apart = [.. _panels.SelectMany(panel => panel.Landmarks)
            .GroupBy(landmark => landmark.Name)
            .Where(same => same.Any(landmark => landmark.Position.DistanceMm(same.First().Position) > GeometryTolerance.JoinMm))
            .Select(same => same.Key)];
        return [.. _panels.Select(panel => !panel.Landmarks.Any(landmark => apart.Contains(landmark.Name))
            ? panel
            : new Panel(panel.Name, panel.EdgesRaw, panel.Features with
            {
                Landmarks = [.. panel.Landmarks.Select(landmark => apart.Contains(landmark.Name)
                    ? new Landmark(LandmarkName.Of(panel.Name.Text + " " + landmark.Name.Text), landmark.Position, landmark.Kind)
                    : landmark)],
            }))];
    }

    /// <summary>What is changed, and how far it is.</summary>
    public override string ToString()
        => "design of " + Source.Title + ": " + Sheet;
}
