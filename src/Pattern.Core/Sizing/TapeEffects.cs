using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>What drafting to the nearest mark of a tape does to a method, over many bodies: the usual and the worst case of each measure that it aims at. Immutable.</summary>
/// <remarks>Each body is drafted a second time by hand, every distance laid off to the nearest mark; see <see cref="Block.ReadOffTape"/>. One pass, and no more room for a million bodies than for ten.</remarks>
/// <example><code>
/// IEnumerable&lt;Trial&gt; trials = new[] { Trial.Of(BodyRow.Of(1, body), BuiltInMethods.Skirt) };
/// TapeEffects effects = TapeEffects.Of(trials, TapeStep.Eighth);
/// Length worst = effects.Worst;
/// </code></example>
public sealed class TapeEffects
{
    // Counted in bins of 0.01 mm up to 20 mm, far more than any tape rounds.
    private const double BinMm = 0.01;
    private const int Bins = 2000;

    private TapeEffects(TapeStep tape, TapeEffect[] effects)
    {
        Tape = tape;
        Effects = Array.AsReadOnly(effects);
    }

    /// <summary>The finest mark that distances were laid off to.</summary>
    public TapeStep Tape { get; }

    /// <summary>One for each measure that the method aims at, in its order.</summary>
    public IReadOnlyList<TapeEffect> Effects { get; }

    /// <summary>The worst case of all measures; zero where there are none.</summary>
    public Length Worst => Length.FromMillimeters(Effects.Count == 0 ? 0 : Effects.Max(effect => effect.WorstMm));

    /// <summary>Drafts every body that came to a block again, off a tape.</summary>
    /// <param name="trials">The trials; what was refused or is no body is left out.</param>
    /// <param name="tape">The finest mark that distances are laid off to.</param>
    public static TapeEffects Of(IEnumerable<Trial> trials, TapeStep tape)
    {
        var counts = new List<Counted>();
        foreach (Trial trial in Guard.NotNull(trials, nameof(trials)))
        {
            if (trial.Block is null)
            {
                continue;
            }

            foreach (Finding effect in trial.Block.ReadOffTape(tape))
            {
                Counted? known = counts.Find(one => one.What == effect.Check && one.Place == effect.Place);
                if (known is null)
                {
                    counts.Add(known = new Counted(effect.Check, effect.Place));
                }

                known.Add(Math.Abs(effect.RawMeasured - effect.RawBefore), trial);
            }
        }

        return new TapeEffects(tape, [.. counts.Select(one => one.ToEffect())]);
    }

    /// <summary>The tape, and a line for each measure.</summary>
    public override string ToString() => string.Join("\n", new[] { "Off a tape in steps of " + Tape }.Concat(Effects.Select(effect => effect.ToString())));

    private sealed class Counted(string what, string place)
    {
        private readonly int[] _bins = new int[Bins];
        private double _worstMm = -1;
        private Trial? _worst;
        private int _count;

        internal string What { get; } = what;

        internal string Place { get; } = place;

        internal void Add(double offMm, Trial trial)
        {
            _bins[Math.Min(Bins - 1, (int)Math.Ceiling(Math.Min(offMm / BinMm, Bins)))]++;
            _count++;
            if (offMm > _worstMm)
            {
                _worstMm = offMm;
                _worst = trial;
            }
        }

        internal TapeEffect ToEffect()
        {
            int bin = 0;
            for (int below = _bins[0]; 2 * below < _count; below += _bins[bin])
            {
                bin++;
            }

            return new TapeEffect(What, Place, _count, Math.Min(bin * BinMm, _worstMm), _worstMm, _worst!);
        }
    }
}
