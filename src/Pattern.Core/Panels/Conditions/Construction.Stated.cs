using System;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Something drawn whole from a few unknowns, and what it has to measure. Immutable; stated once, drawn for any body, from several threads at once.</summary>
/// <typeparam name="TGiven">What the method has drawn so far.</typeparam>
/// <typeparam name="TDrawn">What is drawn.</typeparam>
/// <remarks>Unknowns begin at a guess and change as little as what must be measured allows. Each has limits, always.</remarks>
/// <example><code>
/// Construction&lt;Length, CircularArc&gt; bow = Construction
///     .Of&lt;Length, CircularArc&gt;("bow", (chord, unknowns) =&gt; CircularArc.Through(
///         Point2D.Origin, Point2D.At(chord / 2, unknowns.Length(1)), Point2D.At(chord, Length.Zero)))
///     .WithLength("height", start: chord =&gt; chord / 4, least: chord =&gt; chord / 100, most: chord =&gt; chord)
///     .MustMeasure("length of the bow", arc =&gt; arc.Length, chord =&gt; chord * 1.2);
/// CircularArc drawn = bow.Draw(Length.FromCentimeters(30));
/// </code></example>
public sealed class Construction<TGiven, TDrawn>
{
    private readonly ConstructionDrawing<TGiven, TDrawn> _draw;
    private readonly ConstructionUnknown<TGiven>[] _unknowns;
    private readonly ConstructionMeasure<TGiven, TDrawn>[] _measures;
    private readonly ConstructionRooms<TGiven, TDrawn> _rooms = new();

    internal Construction(string name, ConstructionDrawing<TGiven, TDrawn> draw)
        : this(name, draw, [], [], null)
    {
    }

    private Construction(
        string name,
        ConstructionDrawing<TGiven, TDrawn> draw,
        ConstructionUnknown<TGiven>[] unknowns,
        ConstructionMeasure<TGiven, TDrawn>[] measures,
        Action<TGiven, double[]>? firstSlopes)
    {
        Name = name;
        _draw = draw;
        _unknowns = unknowns;
        _measures = measures;
        FirstSlopes = firstSlopes;
    }

    /// <summary>What it is called, in messages.</summary>
    public string Name { get; }

    internal ConstructionDrawing<TGiven, TDrawn> Drawing => _draw;

    internal ConstructionUnknown<TGiven>[] Unknowns => _unknowns;

    internal ConstructionMeasure<TGiven, TDrawn>[] Measures => _measures;

    internal Action<TGiven, double[]>? FirstSlopes { get; }

    /// <summary>Adds an unknown length.</summary>
    /// <param name="name">What it is called, such as <c>cap height</c>.</param>
    /// <param name="start">Where it begins: what the hand would draw.</param>
    /// <param name="least">How small it may become.</param>
    /// <param name="most">How large it may become.</param>
    [Pure]
    public Construction<TGiven, TDrawn> WithLength(string name, Func<TGiven, Length> start, Func<TGiven, Length> least, Func<TGiven, Length> most)
    {
        Guard.NotNull(start, nameof(start));
        Guard.NotNull(least, nameof(least));
        Guard.NotNull(most, nameof(most));
        return WithUnknown(new ConstructionUnknown<TGiven>(
            Guard.Name(name, nameof(name)),
            false,
            given => Guard.Millimetres(start(given), nameof(start)),
            given => Guard.Millimetres(least(given), nameof(least)),
            given => Guard.Millimetres(most(given), nameof(most))));
    }

    /// <summary>Adds an unknown angle.</summary>
    /// <param name="name">What it is called, such as <c>direction at the side</c>.</param>
    /// <param name="start">Where it begins: what the hand would draw.</param>
    /// <param name="least">How small it may become.</param>
    /// <param name="most">How large it may become.</param>
    [Pure]
    public Construction<TGiven, TDrawn> WithAngle(string name, Func<TGiven, Angle> start, Func<TGiven, Angle> least, Func<TGiven, Angle> most)
    {
        Guard.NotNull(start, nameof(start));
        Guard.NotNull(least, nameof(least));
        Guard.NotNull(most, nameof(most));
        return WithUnknown(new ConstructionUnknown<TGiven>(
            Guard.Name(name, nameof(name)), true, given => Turn(start(given), nameof(start)), given => Turn(least(given), nameof(least)), given => Turn(most(given), nameof(most))));
    }

    /// <summary>Says what a length of the drawing has to be.</summary>
    /// <param name="name">What is measured, such as <c>front cap</c>.</param>
    /// <param name="measured">Measures it on what was drawn.</param>
    /// <param name="wanted">How long it has to be.</param>
    [Pure]
    public Construction<TGiven, TDrawn> MustMeasure(string name, Func<TDrawn, Length> measured, Func<TGiven, Length> wanted)
    {
        Guard.NotNull(measured, nameof(measured));
        Guard.NotNull(wanted, nameof(wanted));
        return MustBe(new ConstructionMeasure<TGiven, TDrawn>(
            Guard.Name(name, nameof(name)), false, (given, drawn) => measured(drawn).Millimeters - Guard.Millimetres(wanted(given), nameof(wanted))));
    }

    /// <summary>Says what an angle of the drawing has to be.</summary>
    /// <param name="name">What is measured, such as <c>corner at the underarm</c>.</param>
    /// <param name="measured">Measures it on what was drawn.</param>
    /// <param name="wanted">How large it has to be; whole turns do not count.</param>
    [Pure]
    public Construction<TGiven, TDrawn> MustTurn(string name, Func<TDrawn, Angle> measured, Func<TGiven, Angle> wanted)
    {
        Guard.NotNull(measured, nameof(measured));
        Guard.NotNull(wanted, nameof(wanted));
        return MustBe(new ConstructionMeasure<TGiven, TDrawn>(
            Guard.Name(name, nameof(name)),
            true,
            (given, drawn) => Math.IEEERemainder(measured(drawn).Radians - Guard.Finite(wanted(given).Radians, nameof(wanted)), 2 * Math.PI) * LeastChange.MmPerRad));
    }

    /// <summary>Draws what measures as it has to.</summary>
    /// <param name="given">What is given.</param>
    /// <exception cref="ConstructionException">Nothing within the limits measures as it has to, or nothing can be drawn from the first guess.</exception>
    [Pure]
    public TDrawn Draw(TGiven given)
    {
        if (TryDraw(given, out ConstructionOutcome<TDrawn> outcome))
        {
            return outcome.Drawn!;
        }

        throw new ConstructionException(DiagnosticCode.ConstructionNotMet, Name, string.Join("; ", outcome.Off), string.Join(", ", outcome.AtLimit.DefaultIfEmpty("nothing"))) { Step = Name };
    }

    /// <summary>Draws, and says as data what cannot be met.</summary>
    /// <param name="given">What is given.</param>
    /// <param name="outcome">What was drawn: what measures as it has to, or what comes nearest.</param>
    /// <returns>Whether it measures as it has to.</returns>
    public bool TryDraw(TGiven given, out ConstructionOutcome<TDrawn> outcome)
    {
        ConstructionRoom<TGiven, TDrawn> room = _rooms.Rent(this);
        room.Solve(given);
        outcome = room.Outcome();
        _rooms.Return(room);
        return outcome.IsMet;
    }

    /// <summary>Draws without an outcome: for a method's own hot path, where what is given keeps what was drawn.</summary>
    internal LeastChangeEnd Draw(TGiven given, int mostDrawings, out int drawings)
    {
        ConstructionRoom<TGiven, TDrawn> room = _rooms.Rent(this);
        LeastChangeEnd end = room.Solve(given, mostDrawings);
        drawings = room.Drawings;
        _rooms.Return(room);
        return end;
    }

    /// <summary>Adds an unknown in millimetres, or in turns that count as <see cref="LeastChange.MmPerRad"/> says.</summary>
    internal Construction<TGiven, TDrawn> WithUnknown(ConstructionUnknown<TGiven> unknown) => new(Name, _draw, [.. _unknowns, unknown], _measures, FirstSlopes);

    internal Construction<TGiven, TDrawn> MustBe(ConstructionMeasure<TGiven, TDrawn> measure) => new(Name, _draw, _unknowns, [.. _measures, measure], FirstSlopes);

    /// <summary>Slopes that are known well enough to begin with, and spare the differences.</summary>
    internal Construction<TGiven, TDrawn> BeginningWithSlopes(Action<TGiven, double[]> slopes) => new(Name, _draw, _unknowns, _measures, slopes);

    private static double Turn(Angle angle, string parameter) => Guard.Finite(angle.Radians, parameter) * LeastChange.MmPerRad;

    /// <summary>What it is called.</summary>
    public override string ToString() => Name;
}
