using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>What a block was made from, label and value, for title block and steps.</summary>
internal static class BlockRows
{
    internal static IEnumerable<(string Label, string Value)> Measurements(Block block, TapeFigures figures)
    {
        foreach (KeyValuePair<BodyMeasurement, Length> entry in block.Body)
        {
            yield return (entry.Key.Term, figures.Of(entry.Value.Millimeters));
        }
    }

    /// <summary>A figure as it is said: what comes out negative as the opposite that it was worked from, where that has a name.</summary>
    internal static WorkedLength Said(WorkedLength figure) => figure.Opposite ?? figure;

    internal static IEnumerable<(string Label, string Value)> Settings(Block block, TapeFigures figures) => Settings(block, figures, Phrasebook.English);

    /// <summary>The settings, their values in another language.</summary>
    internal static IEnumerable<(string Label, string Value)> Settings(Block block, TapeFigures figures, Phrasebook book)
    {
        foreach (SettingValue setting in block.Method.PrintedSettings.Where(IsOneLine))
        {
            yield return (setting.Name, ValueOf(setting, figures, book));
        }

        foreach (DesignDescription design in block.Designs)
        {
            string[] values = [.. design.PrintedSettings.Where(IsOneLine).Select(setting => book.Say("{setting} {value}", ("setting", book.Say(setting.Name)), ("value", ValueOf(setting, figures, book))))];
            yield return (design.Name, values.Length == 0 ? book.Say("as usual") : book.List(values));
        }
    }

    /// <summary>The darts of each panel that has some on an edge, or could: those of one edge share their intake evenly, or are listed.</summary>
    internal static IEnumerable<(string Label, string Value)> Darts(Block block, TapeFigures figures)
    {
        if (block.Panels.Any(panel => panel.Darts.Any()))
        {
            foreach (Panel panel in block.Panels)
            {
                yield return (panel.Name.Text + " darts", Darts([.. panel.Darts], figures));
            }
        }
    }

    private static string Darts(Dart[] darts, TapeFigures figures)
    {
        if (darts.Length == 0)
        {
            return "none";
        }

        string[] intakes = [.. darts.Select(dart => figures.Near(dart.IntakeMm)).Distinct()];
        return FormattableString.Invariant($"{darts.Length} of {string.Join(", ", intakes)}, {string.Join(", ", darts.Select(dart => figures.Of(dart.LengthMm)))} long");
    }

    private static string ValueOf(SettingValue setting, TapeFigures figures, Phrasebook book)
        => !setting.IsGiven || setting.Kind != SettingKind.Length ? setting.Describe(figures.Usual, book) : setting.Raw == 0 ? book.Say("none") : figures.Of(setting.Raw);

    // A table is printed by what was read from it.
    private static bool IsOneLine(SettingValue setting) => setting.Kind != SettingKind.Text || setting.Text!.IndexOf('\n') < 0;
}
