using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>What is left to do when all steps are drawn, in sentences.</summary>
internal static class BlockEnding
{
    internal static IEnumerable<string> Of(Block block, TapeStep tape, Phrasebook book, bool leavesBlank)
    {
        foreach (Panel panel in block.Panels)
        {
            (string, string) name = ("panel", book.Say(panel.Name.Text));
            yield return book.Say("Trace off the {panel} as a piece of its own, with its darts, its grainline and its notches.", name);
            foreach (Notch notch in panel.Notches)
            {
                yield return book.Say(
                    notch.Count == 1 ? "{panel}: {count} notch on the {edge}, {distance} from the {start}." : "{panel}: {count} notches on the {edge}, {distance} from the {start}.",
                    name,
                    ("count", notch.Count.ToString(CultureInfo.InvariantCulture)),
                    ("edge", book.Say(notch.Edge.Text)),
                    ("distance", leavesBlank ? WorkedText.Blank + TapeText.UnitSuffix(tape, TapeStyle.Plain) : FindingLines.Fine(notch.FromStartMm, tape, book)),
                    ("start", book.Say(StartOf(panel, notch.Edge))));
            }
        }

        yield return book.Say("Lines are seam lines: seam allowance and hem are not included. A straight centre without a seam lies on a fold of the cloth.");
    }

    // The edge before it ends where this one begins.
    private static string StartOf(Panel panel, EdgeName edge)
    {
        int at = Array.FindIndex(panel.EdgesRaw, e => e.Name == edge);
        return panel.EdgesRaw[at == 0 ? panel.EdgesRaw.Length - 1 : at - 1].Name.Text;
    }
}
