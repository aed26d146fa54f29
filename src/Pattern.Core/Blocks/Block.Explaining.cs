using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <content>How something on the block came about.</content>
public partial class Block
{
    /// <summary>The lengths that the draft worked with under a name, each name once, in drafting order; then those that its tables said.</summary>
    public IReadOnlyList<WorkedLength> Figures
    {
        get
        {
            var names = new HashSet<string>();
            var seen = new HashSet<WorkedLength>();
            var found = new List<WorkedLength>();
            var open = new Stack<WorkedLength>();
            foreach (WorkedLength said in Steps.SelectMany(step => step.Workings).Concat(Method.Readings.SelectMany(reading => reading.Value.Figures)))
            {
                open.Push(said);
                while (open.Count > 0)
                {
                    WorkedLength length = open.Pop();
                    if (!seen.Add(length))
                    {
                        continue;
                    }

                    if (length.Name is { } name && names.Add(name))
                    {
                        found.Add(length);
                    }

                    for (int i = length.Operands.Count - 1; i >= 0; i--)
                    {
                        open.Push(length.Operands[i]);
                    }
                }
            }

            return found;
        }
    }

    /// <summary>Explains a length that the draft worked with: a width, a depth, an intake.</summary>
    /// <param name="name">What the draft calls it, such as <c>box width</c>: one of <see cref="Figures"/>.</param>
    /// <exception cref="ConstructionException">The draft has no figure of that name.</exception>
    [Pure]
    public Explanation ExplainFigure(string name)
    {
        Guard.Name(name, nameof(name));
        WorkedLength figure = Figures.FirstOrDefault(one => one.Name == name) ?? throw Unknown("figure", name, Figures.Select(one => one.Name!));
        return new Explanation(this, new OriginSearch(this).OfLength(figure));
    }

    /// <summary>Explains a landmark: how it was marked by hand, and what truing did to it since.</summary>
    /// <param name="name">The landmark.</param>
    /// <exception cref="ConstructionException">No such landmark was drawn.</exception>
    [Pure]
    public Explanation ExplainLandmark(LandmarkName name)
    {
        Landmark drafted = Drafted.Find(name);
        RefuseWithoutSteps("landmark", name.Text);
        return new Explanation(this, new OriginSearch(this).OfLandmark(drafted));
    }

    /// <summary>Explains a line of the draft, as it was drawn by hand.</summary>
    /// <param name="name">The line.</param>
    /// <exception cref="ConstructionException">No such line was drawn.</exception>
    [Pure]
    public Explanation ExplainLine(LineName name)
    {
        Guard.NotNull(name, nameof(name));
        DraftedLine[] lines = [.. Steps.SelectMany(step => step.Drew)];
        DraftedLine line = Array.Find(lines, one => one.Name.Text == name.Text) ?? throw Unknown("line", name.Text, lines.Select(one => one.Name.Text));
        return new Explanation(this, new OriginSearch(this).OfLine(line));
    }

    /// <summary>Explains an edge of a finished panel: what it was drawn as by hand, and what truing or a design made of it.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="edge">The edge.</param>
    /// <exception cref="ConstructionException">The block has no such panel, the panel no such edge, or the block was read from a file, which keeps no steps.</exception>
    [Pure]
    public Explanation ExplainEdge(PanelName panel, EdgeName edge)
    {
        Panel found = FindPanel(panel);
        PanelEdge asked = found.FindEdge(edge);
        string name = EdgeOf.Panel(panel, edge).ToString();
        RefuseWithoutSteps("edge", name);
        var search = new OriginSearch(this);
        (IReadOnlyList<LandmarkName> landmarks, IReadOnlyList<DraftedLine> lines) = EdgeOrigins.Of(this, found, asked);
        LandmarkName[] moved = [.. landmarks.Where(landmark => EdgeOrigins.HasMoved(this, landmark))];
        IEnumerable<Step> changes = EdgeOrigins.Changes(this, moved, lines, name).Concat(EdgeOrigins.OfDesigns(this)).Distinct();
        return new Explanation(this, search.OfEdge(name, asked.SewnLengthMm(), [.. lines, .. landmarks, .. search.DartsOn(lines)], [.. changes.OrderBy(step => step.Number)]));
    }

    /// <summary>Explains a dart of a finished panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="dart">The dart: <c>EdgeName.Waist.Dart(1)</c>.</param>
    /// <exception cref="ConstructionException">The block has no such panel, the panel no such dart, or the dart was drawn by no step: a design made it, or the block was read from a file.</exception>
    [Pure]
    public Explanation ExplainDart(PanelName panel, DartName dart)
    {
        Panel found = FindPanel(panel);
        Dart asked = found.FindDart(dart);
        string name = new DartOf(panel, dart).ToString();
        var search = new OriginSearch(this);
        IReadOnlyList<DraftedLine> lines = EdgeOrigins.Of(this, found, found.FindEdge(dart.Edge)).Lines;
        LandmarkName? middle = search.NearestDart(lines, asked) ?? throw Unknown("dart drawn by a step", name, search.DartNames);
        return new Explanation(this, search.OfDart(middle, name, asked.IntakeMm, EdgeOrigins.Changes(this, [middle], [])));
    }

    private void RefuseWithoutSteps(string kind, string name)
    {
        if (Steps.Count == 0)
        {
            throw Unknown("step that draws the " + kind, name, []);
        }
    }

    private ConstructionException Unknown(string kind, string name, IEnumerable<string> known)
    {
        // Those that have its words in them first: a message repeats no more than so much.
        string[] names = [.. known.Distinct().OrderBy(other => other.IndexOf(name, StringComparison.OrdinalIgnoreCase) < 0)];
        return new ConstructionException(DiagnosticCode.FigureUnknown, Method.Name, kind, name, names.Length == 0 ? "none" : string.Join(", ", names)) { Landmark = name };
    }
}
