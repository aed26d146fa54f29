using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>What a line on a drawing is for, and how it is drawn for that: weight, dash and ink.</summary>
/// <remarks>Weights and dashes alone tell the roles apart, so a copy in black and white says the same. There is one object per role.</remarks>
public sealed class LineRole
{
    private readonly double[] _dashesMm;

    private LineRole(string name, double weightMm, Ink ink, params double[] dashesMm)
    {
        Name = name;
        WeightMm = weightMm;
        Ink = ink;
        _dashesMm = dashesMm;
        Dashes = Array.AsReadOnly(dashesMm.Select(dash => Length.FromMillimeters(dash)).ToArray());
    }

    /// <summary>Where cloth is sewn: the strongest line.</summary>
    public static LineRole Seam { get; } = new("seam line", 0.9, Ink.Strong);

    /// <summary>Where cloth is cut: as strong as the seam line of a block, which no sheet has beside it.</summary>
    public static LineRole Cut { get; } = new("cut line", 0.9, Ink.Strong);

    /// <summary>Where cloth is sewn inside a cut line: dashed.</summary>
    public static LineRole Stitching { get; } = new("stitching line", 0.45, Ink.Strong, 5, 2);

    /// <summary>The bracket whose arrows point to an edge that lies on the fold of the cloth.</summary>
    public static LineRole FoldSign { get; } = new("fold sign", 0.5, Ink.Strong);

    /// <summary>Where something is sewn on, or where an opening ends: short dashes.</summary>
    public static LineRole Placement { get; } = new("placement line", 0.35, Ink.Strong, 2, 1.5);

    /// <summary>The ring around a drill hole.</summary>
    public static LineRole DrillHole { get; } = new("drill hole", 0.3, Ink.Strong);

    /// <summary>A leg of a dart, sewn to the other leg.</summary>
    public static LineRole DartLeg { get; } = new("dart leg", 0.6, Ink.Strong);

    /// <summary>The edge across the intake of a dart.</summary>
    public static LineRole DartCap { get; } = new("dart cap", 0.6, Ink.Strong);

    /// <summary>The small arrow across a dart: the way in which it is pressed.</summary>
    public static LineRole PressArrow { get; } = new("press arrow", 0.5, Ink.Strong);

    /// <summary>Where cloth is folded: long dash, short dash.</summary>
    public static LineRole Fold { get; } = new("fold line", 0.35, Ink.Strong, 7, 2, 2, 2);

    /// <summary>A mark across an edge that has to meet its twin.</summary>
    public static LineRole Notch { get; } = new("notch", 0.6, Ink.Strong);

    /// <summary>The direction of the straight grain.</summary>
    public static LineRole Grain { get; } = new("grainline", 0.5, Ink.Cool);

    /// <summary>A line that the block would have if it were drafted otherwise: dashed.</summary>
    public static LineRole Alternative { get; } = new("alternative", 0.35, Ink.Middle, 4, 2.5);

    /// <summary>A level across the body.</summary>
    public static LineRole Level { get; } = new("level", 0.25, Ink.Quiet);

    /// <summary>The box that a draft stands in: a hair line that runs through, since seam lines lie on it.</summary>
    public static LineRole Frame { get; } = new("frame", 0.15, Ink.Quiet);

    /// <summary>A line drawn on the way.</summary>
    public static LineRole Construction { get; } = new("construction line", 0.2, Ink.Quiet, 3, 1.5);

    /// <summary>A seam line as a hand drew it before truing: dots.</summary>
    public static LineRole HandDrawn { get; } = new("hand-drawn line", 0.2, Ink.Quiet, 0.6, 1.2);

    /// <summary>From a point to its name, where the name found no room beside it.</summary>
    public static LineRole Leader { get; } = new("leader", 0.15, Ink.Quiet);

    /// <summary>The outline of a test square and the marks on it.</summary>
    public static LineRole TestSquare { get; } = new("test square", 0.35, Ink.Strong);

    /// <summary>A rule between parts of the title block.</summary>
    public static LineRole Rule { get; } = new("rule", 0.3, Ink.Strong);

    /// <summary>The heavy frame around a drawing that must not be cut.</summary>
    public static LineRole Warning { get; } = new("warning", 3, Ink.Accent);

    /// <summary>Where paper is cut before sheets are joined.</summary>
    public static LineRole PaperCut { get; } = new("paper cut", 0.25, Ink.Accent);

    /// <summary>Where the cut edge of the next sheet is laid: thin dots, which no line of a pattern has.</summary>
    public static LineRole PaperJoin { get; } = new("paper join", 0.2, Ink.Accent, 0.4, 1.6);

    /// <summary>The arrows on two sheets whose tips meet when the sheets are joined.</summary>
    public static LineRole PaperArrow { get; } = new("paper arrow", 0.35, Ink.Accent);

    /// <summary>How far a sheet is drawn on: thin.</summary>
    public static LineRole PaperFrame { get; } = new("paper frame", 0.15, Ink.Quiet);

    /// <summary>The border of a sheet on the map of the sheets.</summary>
    public static LineRole MapSheet { get; } = new("sheet on the map", 0.4, Ink.Strong);

    /// <summary>The crossed-out place of a sheet that is not printed, on the map of the sheets: dots.</summary>
    public static LineRole MapEmpty { get; } = new("empty sheet on the map", 0.2, Ink.Quiet, 0.6, 1.2);

    /// <summary>The drawing itself, small, on the map of the sheets.</summary>
    public static LineRole MapDrawing { get; } = new("drawing on the map", 0.35, Ink.Cool);

    /// <summary>On the small picture of a step, what the step draws.</summary>
    internal static LineRole LessonNew { get; } = new("new line", 0.8, Ink.Strong);

    /// <summary>On a small picture, what stood there already.</summary>
    internal static LineRole LessonEarlier { get; } = new("earlier line", 0.2, Ink.Middle);

    /// <summary>On a small picture, where cloth is sewn.</summary>
    internal static LineRole LessonSeam { get; } = new("small seam line", 0.5, Ink.Strong);

    /// <summary>On a small picture, the legs of darts.</summary>
    internal static LineRole LessonDart { get; } = new("small dart leg", 0.3, Ink.Strong);

    /// <summary>On a small picture, levels and folds: short dashes.</summary>
    internal static LineRole LessonLevel { get; } = new("small level", 0.2, Ink.Strong, 1.5, 1);

    // As unlike each other as dashes can be; the first runs through.
    private static readonly double[][] SizeDashes =
    [
        [], [8, 2], [3, 1.5], [10, 2, 2, 2], [1, 1.5], [10, 2, 2, 2, 2, 2], [5, 4], [14, 3], [6, 1.5, 1, 1.5, 1, 1.5, 1, 1.5], [3, 1.5, 1, 1.5], [12, 2, 5, 2], [2, 4],
    ];

    // Thin ones, and once more as heavy ones.
    private static readonly LineRole[] Sizes = [.. Enumerable.Range(0, 24).Select(i => new LineRole(
        FormattableString.Invariant($"size line {i + 1}"), i < SizeDashes.Length ? 0.35 : 0.8, Ink.Strong, SizeDashes[i % SizeDashes.Length]))];

    /// <summary>The line of a size in a nest, by its place from 0.</summary>
    internal static LineRole OfSize(int place) => Sizes[place % Sizes.Length];

    /// <summary>The name in lower-case words.</summary>
    public string Name { get; }

    /// <summary>How wide the line is drawn.</summary>
    public Length Weight => Length.FromMillimeters(WeightMm);

    /// <summary>Dash, gap, dash, gap and so on along the line; none for a line that runs through.</summary>
    public IReadOnlyList<Length> Dashes { get; }

    /// <summary>The colour.</summary>
    public Ink Ink { get; }

    internal double WeightMm { get; }

    internal IReadOnlyList<double> DashesMm => _dashesMm;

    /// <summary>Returns <see cref="Name"/>.</summary>
    public override string ToString() => Name;
}
