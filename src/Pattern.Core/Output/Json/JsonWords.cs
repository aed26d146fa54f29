using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>The words that stand for choices in a pattern file.</summary>
internal static class JsonWords
{
    internal static readonly JsonWords<LengthUnit> Units = new(
        (LengthUnit.Millimeter, "mm"), (LengthUnit.Centimeter, "cm"), (LengthUnit.Meter, "m"), (LengthUnit.Inch, "in"), (LengthUnit.Foot, "ft"), (LengthUnit.Yard, "yd"));

    internal static readonly JsonWords<MeasurementKind> Kinds = new(
        (MeasurementKind.Girth, "girth"), (MeasurementKind.Length, "length"), (MeasurementKind.Height, "height"), (MeasurementKind.Width, "width"));

    internal static readonly JsonWords<SettingKind> SettingKinds = new(
        (SettingKind.Length, "length"), (SettingKind.Angle, "angle"), (SettingKind.Count, "count"), (SettingKind.Choice, "choice"), (SettingKind.Text, "text"), (SettingKind.Share, "share"));

    internal static readonly JsonWords<LandmarkKind> LandmarkKinds = new(
        (LandmarkKind.Point, "point"), (LandmarkKind.DartMiddle, "dart-middle"), (LandmarkKind.DartApex, "dart-apex"));

    internal static readonly JsonWords<ConstructionRole> LineRoles = new(
        (ConstructionRole.Frame, "frame"), (ConstructionRole.Level, "level"), (ConstructionRole.Guide, "guide"), (ConstructionRole.HandDrawn, "hand-drawn"));

    internal static readonly JsonWords<SeamRun> Runs = new((SeamRun.Found, "found"), (SeamRun.SameWay, "same-way"), (SeamRun.Opposite, "opposite"));

    internal static readonly JsonWords<SeamMarkKind> Marks = new(
        (SeamMarkKind.Start, "start"), (SeamMarkKind.End, "end"), (SeamMarkKind.Notch, "notch"), (SeamMarkKind.Distance, "distance"));

    internal static readonly JsonWords<TapeStep> Tapes = new(Array.ConvertAll(
        new[]
        {
            TapeStep.Half, TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.ThirtySecond, TapeStep.SixtyFourth,
            TapeStep.Millimeter, TapeStep.HalfMillimeter, TapeStep.TenthMillimeter, TapeStep.HundredthMillimeter,
        },
        step => (step, step.ToString())));

    internal static readonly JsonWords<EdgeRole> Roles = new(
        (EdgeRole.Seam, "seam"), (EdgeRole.Centre, "centre"), (EdgeRole.Hem, "hem"), (EdgeRole.Opening, "opening"));

    internal static readonly JsonWords<Toward> Ways = new((Toward.Start, "start"), (Toward.End, "end"));

    internal static readonly JsonWords<Corner> Corners = new(
        (Corner.Extended, "extended"), (Corner.SquaredOff, "squared-off"), (Corner.Mirrored, "mirrored"), (Corner.Blunt, "blunt"));

    internal static readonly JsonWords<InternalLineKind> LineKinds = new(
        (InternalLineKind.Level, "level"),
        (InternalLineKind.Placement, "placement"),
        (InternalLineKind.Stop, "stop"),
        (InternalLineKind.Fold, "fold"),
        (InternalLineKind.Stitching, "stitching"));

    internal static readonly JsonWords<NotchKind> NotchKinds = new((NotchKind.Match, "match"), (NotchKind.DartLeg, "dart-leg"), (NotchKind.Fold, "fold"), (NotchKind.Hem, "hem"));
}

/// <summary>The words for one kind of choice.</summary>
internal sealed class JsonWords<T>(params (T Value, string Word)[] words)
    where T : struct
{
    internal string All { get; } = string.Join(", ", words.Select(pair => pair.Word));

    internal string WordOf(T value) => words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Word;

    internal bool Has(T value) => words.Any(pair => EqualityComparer<T>.Default.Equals(pair.Value, value));

    internal bool TryFind(string word, out T value)
    {
        foreach ((T known, string its) in words)
        {
            if (its == word)
            {
                value = known;
                return true;
            }
        }

        value = default;
        return false;
    }
}
