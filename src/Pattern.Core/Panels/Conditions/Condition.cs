using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Something that must hold on panels, to a millionth of a micrometre. Immutable.</summary>
/// <remarks>Everything is measured on the panel as it lies open: the closed length of an edge is the sum of its stretches, and smooth across a closed dart, or
/// across a joined seam, is a sum of the angles at its legs or corners.</remarks>
/// <example><code>
/// EdgeOf back = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
/// EdgeOf front = EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam);
/// Condition equal = Condition.Sewn(Seam.Between(back, front).Named("side seam"));
/// </code></example>
public sealed class Condition
{
    private readonly EdgeOf[] _edges;
    private readonly CornerOf[] _corners;

    private Condition(ConditionKind kind, string name, EdgeOf[] edges, CornerOf[] corners)
    {
        Kind = kind;
        Name = name;
        _edges = edges;
        _corners = corners;
    }

    private Condition(Condition from, string name)
        : this(from.Kind, name, from._edges, from._corners)
    {
        Length = from.Length;
        AngleRad = from.AngleRad;
        Seam = from.Seam;
        Dart = from.Dart;
    }

    /// <summary>What it is called in outcomes and steps.</summary>
    public string Name { get; }

    internal ConditionKind Kind { get; }

    internal IReadOnlyList<EdgeOf> Edges => _edges;

    internal IReadOnlyList<CornerOf> Corners => _corners;

    internal WorkedLength? Length { get; private init; }

    internal double AngleRad { get; private init; }

    internal Seam? Seam { get; private init; }

    internal DartOf Dart { get; private init; }

    /// <summary>An edge, or several together, have a sewn length: all stretches, darts closed.</summary>
    /// <param name="length">The length, with its working where it has one.</param>
    /// <param name="edges">The edge; or the edges whose lengths add up to it, such as the back and the front waist.</param>
    public static Condition SewnLength(WorkedLength length, params EdgeOf[] edges)
    {
        Guard.InRange(Guard.NotNull(edges, nameof(edges)).Length, 1, 99, nameof(edges));
        return new(ConditionKind.SewnLength, "sewn length of the " + string.Join(" and ", edges), [.. edges], []) { Length = Guard.NotNull(length, nameof(length)) };
    }

    /// <summary>The edges of a seam fit each other, stretch by stretch between their notches: equally long, but for the ease that the seam asks for.</summary>
    /// <param name="seam">The seam.</param>
    public static Condition Sewn(Seam seam) => new(ConditionKind.Sewn, Guard.NotNull(seam, nameof(seam)).Name, [seam.First, seam.Second], []) { Seam = seam };

    /// <summary>A corner is square.</summary>
    /// <param name="corner">The corner.</param>
    public static Condition Square(CornerOf corner) => Corner(corner, Angle.FromDegrees(90));

    /// <summary>A corner has an angle.</summary>
    /// <param name="corner">The corner.</param>
    /// <param name="angle">Inside the panel, more than 0 and less than 360 degrees.</param>
    public static Condition Corner(CornerOf corner, Angle angle) => JoinedAngle(angle, corner);

    /// <summary>A line runs smoothly over seams: the corners that meet there, once they are sewn, add up to 180 degrees.</summary>
    /// <param name="corners">One corner of each panel that meets there.</param>
    public static Condition SmoothOverSeam(params CornerOf[] corners) => JoinedAngle(Angle.FromDegrees(180), corners);

    /// <summary>Corners that meet at a seam make an angle together, once it is sewn.</summary>
    /// <param name="angle">The angle, more than 0 and less than 360 degrees: 180 is smooth.</param>
    /// <param name="corners">One corner of each panel that meets there.</param>
    public static Condition JoinedAngle(Angle angle, params CornerOf[] corners)
    {
        Guard.InRange(Guard.NotNull(corners, nameof(corners)).Length, 1, 9, nameof(corners));
        double radians = angle.Radians;
        if (!(radians > 0 && radians < 2 * Math.PI))
        {
            throw new ArgumentOutOfRangeException(
                nameof(angle), MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(angle), angle, Angle.Zero, Angle.FromDegrees(360)));
        }

        string where = string.Join(" and the ", corners);
        return new(ConditionKind.JoinedAngle, (corners.Length == 1 ? "corner at the " : "line over the seam at the ") + where, [], [.. corners]) { AngleRad = radians };
    }

    /// <summary>An edge runs smoothly across each of its darts once they are folded closed.</summary>
    /// <param name="edge">The edge.</param>
    public static Condition SmoothOverDarts(EdgeOf edge) => new(ConditionKind.SmoothOverDarts, edge + " smooth over its darts", [edge], []);

    /// <summary>The legs of a dart are equally long.</summary>
    /// <param name="dart">The dart.</param>
    public static Condition LegsEqual(DartOf dart) => new(ConditionKind.LegsEqual, "legs of " + dart + " equal", [EdgeOf.Panel(dart.PanelName, dart.DartName.Edge)], []) { Dart = dart };

    /// <summary>A dart takes out a width, straight from leg to leg.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="intake">The width.</param>
    public static Condition Intake(DartOf dart, WorkedLength intake)
        => new(ConditionKind.Intake, "intake of " + dart, [EdgeOf.Panel(dart.PanelName, dart.DartName.Edge)], []) { Dart = dart, Length = Guard.NotNull(intake, nameof(intake)) };

    /// <summary>The same condition under a name of your own.</summary>
    /// <param name="name">What it is called in outcomes and steps.</param>
    [Pure]
    public Condition Named(string name) => new(this, Guard.Name(name, nameof(name)));

    /// <summary>Its name.</summary>
    public override string ToString() => Name;

    /// <summary>The same condition with another length to be met.</summary>
    internal Condition Asking(WorkedLength length) => new(this, Name) { Length = length };

    /// <summary>Nobody states it: a line that runs smoothly inside an edge still does.</summary>
    internal static Condition Inside(string name) => new(ConditionKind.Inside, name, [], []);

    internal IEnumerable<PanelName> Panels => _edges.Select(e => e.PanelName).Concat(_corners.Select(c => c.Edge.PanelName));
}
