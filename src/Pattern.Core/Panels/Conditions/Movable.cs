using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>What truing may move on a panel, along what, and how far. What is not named stays. Immutable.</summary>
/// <remarks>A limit is always given: without one, an absurd wish is met by a line in waves. Where a point moves, the curves beside it follow and keep their
/// directions there; straight lines stay straight.</remarks>
/// <example><code>
/// Movable side = Movable.Corner(EdgeOf.Panel(PanelName.Back, EdgeName.Waist).AtEnd, within: Length.FromCentimeters(4));
/// </code></example>
public sealed class Movable
{
    private Movable(MovableKind kind, string name, Length within)
    {
        Kind = kind;
        Name = name;
        WithinMm = Guard.Millimetres(within, 0, 10_000, nameof(within));
        Mobility = kind == MovableKind.Handles ? 0.5 : 1;
    }

    private Movable(Movable from)
    {
        Kind = from.Kind;
        Name = from.Name;
        WithinMm = from.WithinMm;
        Edge = from.Edge;
        End = from.End;
        Number = from.Number;
        Way = from.Way;
        Path = from.Path;
        KeepsDirections = from.KeepsDirections;
        Mobility = from.Mobility;
    }

    /// <summary>What moves, in trade words, such as <c>end of the back waist</c>.</summary>
    public string Name { get; }

    /// <summary>How far it may move at most; across and up each, where it is free. For a line drawn in one sweep, how far its ends may turn, on an arm of 100 mm.</summary>
    public Length Within => Length.FromMillimeters(WithinMm);

    internal MovableKind Kind { get; }

    internal double WithinMm { get; }

    internal EdgeOf Edge { get; private init; }

    internal EdgeEnd End { get; private init; }

    internal int Number { get; private init; }

    internal Direction? Way { get; private init; }

    internal CurvePath? Path { get; private init; }

    internal bool KeepsDirections { get; private init; }

    /// <summary>How readily it moves, next to a corner: a move counts for its length divided by this.</summary>
    internal double Mobility { get; private init; }

    /// <summary>A corner of a panel may move.</summary>
    /// <param name="corner">The corner.</param>
    /// <param name="within">How far, across and up each.</param>
    public static Movable Corner(CornerOf corner, Length within) => new(MovableKind.Corner, corner.ToString(), within) { Edge = corner.Edge, End = corner.End };

    /// <summary>The handles of the curves of an edge may move: its corners stay, its bend changes.</summary>
    /// <remarks>Where two curves of the edge run smoothly into each other they still do afterwards. Handles give way twice as reluctantly as corners,
    /// so that a point that is wrong moves before a curve is bent.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="within">How far each, across and up.</param>
    public static Movable Handles(EdgeOf edge, Length within) => new(MovableKind.Handles, "bend of the " + edge, within) { Edge = edge };

    /// <summary>A dart may move as it is: apex and legs together, its intake unchanged.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="within">How far, across and up each.</param>
    public static Movable Dart(DartOf dart, Length within)
        => new(MovableKind.Dart, dart.ToString(), within) { Edge = EdgeOf.Panel(dart.PanelName, dart.DartName.Edge), Number = dart.DartName.Number };

    /// <summary>The legs of a dart may become longer or shorter, each along its own line; the apex stays.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="within">How far each.</param>
    public static Movable Legs(DartOf dart, Length within)
        => new(MovableKind.Legs, "legs of " + dart, within) { Edge = EdgeOf.Panel(dart.PanelName, dart.DartName.Edge), Number = dart.DartName.Number };

    /// <summary>A notch may slide along its edge.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="number">Which notch, counted along the edge from its start, from 1.</param>
    /// <param name="within">How far.</param>
    public static Movable Notch(EdgeOf edge, int number, Length within)
    {
        Guard.InRange(number, 1, 99, nameof(number));
        return new(MovableKind.Notch, "notch " + number.ToString(CultureInfo.InvariantCulture) + " of the " + edge, within) { Edge = edge, Number = number };
    }

    /// <summary>An edge is drawn anew, in one sweep across its darts: closed as one curve, the fairest between its ends, and opened again.</summary>
    /// <remarks>
    /// <para>So it has no corner at a dart and the legs of each dart are equally long, whatever else is asked. Apexes, wedges and the lines of the legs stay, unless
    /// <see cref="Dart"/> lets a dart move; legs begin where they meet the new line. Corners stay unless <see cref="Corner"/> lets them move.</para>
    /// <para>However many pieces the hand drew, lines and arcs among them, each stretch is one curve afterwards. An edge that is drawn so already, and meets what must hold, is left
    /// alone.</para>
    /// </remarks>
    /// <param name="edge">The edge. Nothing else may bend it or lengthen its legs.</param>
    /// <param name="turning">How far the line may turn at each of its ends, up to 90 degrees.</param>
    public static Movable OneSweep(EdgeOf edge, Angle turning)
    {
        double turningRad = turning.Radians;
        return turningRad is >= 0 and <= Math.PI / 2
            ? new(MovableKind.OneSweep, "sweep of the " + edge, Length.FromMillimeters(turningRad * LeastChange.MmPerRad)) { Edge = edge }
            : throw new ArgumentOutOfRangeException(
                nameof(turning), MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(turning), turning, Angle.Zero, Angle.FromDegrees(90)));
    }

    /// <summary>Only along a line.</summary>
    /// <param name="direction">The way; back along it is allowed as far.</param>
    /// <exception cref="ArgumentException">Handles, legs, notches and sweeps have lines of their own.</exception>
    [Pure]
    public Movable Along(Direction direction)
    {
        Refuse(Kind is MovableKind.Corner or MovableKind.Dart, nameof(direction));
        return new Movable(this) { Way = direction, Path = null };
    }

    /// <summary>Only along a curve that the corner lies on, such as the seam line that it was marked on.</summary>
    /// <param name="path">The curve. How far is measured along it; it ends where the curve does.</param>
    /// <exception cref="ArgumentException">Only a corner can move along a curve.</exception>
    [Pure]
    public Movable Along(CurvePath path)
    {
        Refuse(Kind == MovableKind.Corner, nameof(path));
        return new Movable(this) { Path = Guard.NotNull(path, nameof(path)), Way = null };
    }

    /// <summary>The curves keep the directions in which they begin and end; only the length of each handle changes. A line drawn in one sweep keeps those of its ends.</summary>
    /// <exception cref="ArgumentException">Only handles and lines drawn in one sweep have directions.</exception>
    [Pure]
    public Movable KeepingDirections()
    {
        Refuse(Kind is MovableKind.Handles or MovableKind.OneSweep, nameof(KeepingDirections));
        return new Movable(this) { KeepsDirections = true };
    }

    /// <summary>How readily it moves, next to other things that may.</summary>
    /// <param name="mobility">Default 100 %, for handles 50 %. From 1 % to 100 %.</param>
    [Pure]
    public Movable WithMobility(Ratio mobility)
        => new(this) { Mobility = Math.Max(0.01, Guard.Share(mobility, nameof(mobility))) };

    /// <summary>What moves, and how far.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name} within {WithinMm:0.##} mm");

    private void Refuse(bool allowed, string parameter)
    {
        if (!allowed)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MoveNotOfItsKind, Name, parameter), parameter);
        }
    }
}
