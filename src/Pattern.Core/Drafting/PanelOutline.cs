using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>How a panel is traced off the sheet: its edges in order around it, along drawn lines or straight to landmarks, with darts, notches and grain. Immutable.</summary>
/// <example><code>
/// var sheet = new DraftingSheet();
/// WorkedLength side = WorkedLength.Given("side", Tape.Inches("10"));
/// Landmark a = sheet.Mark("top left", Point2D.Origin);
/// Landmark b = sheet.SquareAcross(a, Across.Right, side, "top right");
/// Landmark c = sheet.SquareDown(b, side, "bottom right");
/// Panel pocket = sheet.Trace(PanelOutline.Of(PanelName.Of("pocket"), a)
///     .Straight(EdgeName.Of("top"), EdgeRole.Opening, b)
///     .Straight(EdgeName.SideSeam, EdgeRole.Seam, c)
///     .Straight(EdgeName.Of("slant"), EdgeRole.Seam, a));
/// </code></example>
public sealed class PanelOutline
{
    private PanelOutline(PanelName name, Landmark from, OutlineEdge[] edges, OutlineDart[] darts, OutlineNotch[] notches, Landmark[] landmarks, Landmark[] grain)
    {
        Name = name;
        From = from;
        Edges = edges;
        Darts = darts;
        Notches = notches;
        Landmarks = landmarks;
        Grain = grain;
    }

    /// <summary>What the panel is called.</summary>
    public PanelName Name { get; }

    /// <summary>The landmark in which the first edge begins.</summary>
    public Landmark From { get; }

    internal OutlineEdge[] Edges { get; }

    internal OutlineDart[] Darts { get; }

    internal OutlineNotch[] Notches { get; }

    internal Landmark[] Landmarks { get; }

    /// <summary>Both ends of the grainline, or none.</summary>
    internal Landmark[] Grain { get; }

    /// <summary>Begins an outline.</summary>
    /// <param name="name">What the panel is called.</param>
    /// <param name="from">Where its first edge begins.</param>
    [Pure]
    public static PanelOutline Of(PanelName name, Landmark from) => new(name, from, [], [], [], [], []);

    /// <summary>Adds the next edge, along drawn lines head to tail; a line that was drawn the other way is traced backwards.</summary>
    /// <param name="name">What the edge is called.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="lines">One line or more, in order.</param>
    [Pure]
    public PanelOutline Along(EdgeName name, EdgeRole role, params DraftedLine[] lines)
    {
        Guard.InRange(Guard.NotNull(lines, nameof(lines)).Length, 1, 99, nameof(lines));
        return new(Name, From, [.. Edges, new OutlineEdge(name, role, (DraftedLine[])lines.Clone(), null)], Darts, Notches, Landmarks, Grain);
    }

    /// <summary>Adds the next edge, straight to a landmark.</summary>
    /// <param name="name">What the edge is called.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="to">Where it ends.</param>
    [Pure]
    public PanelOutline Straight(EdgeName name, EdgeRole role, Landmark to)
        => new(Name, From, [.. Edges, new OutlineEdge(name, role, [], to)], Darts, Notches, Landmarks, Grain);

    /// <summary>Adds a dart that was drawn on a line of an edge.</summary>
    /// <remarks>The legs begin where they were drawn; the apex moves the little that makes them equal, and the step says how far.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="dart">The dart.</param>
    /// <param name="pressed">The way its intake is pressed.</param>
    [Pure]
    public PanelOutline WithDart(EdgeName edge, DraftedDart dart, Toward pressed = Toward.Start)
        => new(Name, From, Edges, [.. Darts, new OutlineDart(edge, Guard.NotNull(dart, nameof(dart)), pressed)], Notches, Landmarks, Grain);

    /// <summary>Adds a notch on an edge at a landmark.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="at">A landmark that lies on it, outside its darts.</param>
    /// <param name="count">How many cuts make the mark, 1 to 3.</param>
    [Pure]
    public PanelOutline WithNotch(EdgeName edge, Landmark at, int count = 1)
        => new(Name, From, Edges, Darts, [.. Notches, new OutlineNotch(edge, at, Guard.InRange(count, 1, 3, nameof(count)))], Landmarks, Grain);

    /// <summary>Adds a landmark that the panel keeps, besides the corners where its edges begin.</summary>
    /// <param name="landmark">The landmark.</param>
    [Pure]
    public PanelOutline WithLandmark(Landmark landmark) => new(Name, From, Edges, Darts, Notches, [.. Landmarks, landmark], Grain);

    /// <summary>Says where the straight grain lies.</summary>
    /// <remarks>Default: upright in the middle of the panel.</remarks>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    [Pure]
    public PanelOutline WithGrainline(Landmark from, Landmark to) => new(Name, From, Edges, Darts, Notches, Landmarks, [from, to]);

    /// <summary>The panel and its edges so far.</summary>
    public override string ToString()
        => "outline of " + Name + " from " + From.Name;
}

/// <summary>An edge to trace: along lines, or straight to a landmark.</summary>
internal readonly record struct OutlineEdge(EdgeName Name, EdgeRole Role, DraftedLine[] Lines, Landmark? To);

/// <summary>A dart to trace on an edge.</summary>
internal readonly record struct OutlineDart(EdgeName Edge, DraftedDart Dart, Toward Pressed);

/// <summary>A notch to trace on an edge.</summary>
internal readonly record struct OutlineNotch(EdgeName Edge, Landmark At, int Count);
