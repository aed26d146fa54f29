using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;

namespace Pattern.Core.Output;

/// <summary>What moves when a measurement or a setting moves, as a page.</summary>
public static class WhatIfOutput
{
    /// <summary>One HTML page that needs nothing beside it: which measurement matters most for which dimension, the table of moves, and what was refused.</summary>
    /// <remarks>Black on white, so that it prints as it looks. No script, no fonts and no files from elsewhere. Same block, same characters, in any culture.</remarks>
    /// <param name="whatIf">The moves.</param>
    /// <param name="tape">The finest mark of the tape that they are read off; a finer one shows what this one cannot, and a figure that was rounded carries a <c>~</c>.</param>
    [Pure]
    public static string ToHtml(this WhatIf whatIf, TapeStep tape)
    {
        Guard.NotNull(whatIf, nameof(whatIf));
        var page = new PlainPage("What if: " + whatIf.Block.Title);
        page.Paragraph(whatIf.Block.Body.Describe(tape) + ". Each measurement and each length was moved by " + WorkedLength.GivenMm(null, whatIf.ByMm).Describe(tape)
            + " either way, and the block drafted again each time.");
        page.Heading("Which measurement matters most").Paragraph("An error of the tape there is dearest.");
        page.Table(["Dimension", "Measurement", "Moves by"], whatIf.Dimensions.Select(whatIf.MattersMost).OfType<WhatIfMove>()
            .Select(move => new[] { move.Dimension, move.Change.Name, WhatIf.InWords(move, tape) }));
        foreach (WhatIfKind kind in new[] { WhatIfKind.Measurement, WhatIfKind.Setting, WhatIfKind.DesignSetting })
        {
            WriteMoves(page, whatIf, kind, tape);
        }

        IReadOnlyList<string> notes = whatIf.Notes();
        if (notes.Count > 0)
        {
            page.Heading("Refused, or drafted by other steps");
            foreach (string note in notes)
            {
                page.Paragraph(note);
            }
        }

        return page.Write();
    }

    // Only what moves something, and only what is moved: a table of noughts is not read.
    private static void WriteMoves(PlainPage page, WhatIf whatIf, WhatIfKind kind, TapeStep tape)
    {
        ILookup<WhatIfChange, WhatIfMove> moves = whatIf.Moves.Where(move => move.Change.Kind == kind && move.MostMm >= WhatIf.ShownMm).ToLookup(move => move.Change);
        WhatIfChange[] changes = [.. whatIf.Changes.Where(moves.Contains)];
        string[] dimensions = [.. whatIf.Dimensions.Where(dimension => changes.Any(change => moves[change].Any(move => move.Dimension == dimension)))];
        if (changes.Length == 0)
        {
            return;
        }

        page.Heading(kind switch { WhatIfKind.Measurement => "Measurements", WhatIfKind.Setting => "Settings of the method", _ => "Settings of the designs" });
        page.Paragraph("In each cell what the dimension moves by with more of it, then with less.");
        page.Table(changes.Select(change => change.ToString()).Prepend("Dimension"), dimensions.Select(dimension => Row(dimension, changes, moves, tape)));
    }

    private static IReadOnlyList<string> Row(string dimension, WhatIfChange[] changes, ILookup<WhatIfChange, WhatIfMove> moves, TapeStep tape)
        => [dimension, .. changes.Select(change => moves[change].FirstOrDefault(move => move.Dimension == dimension) is { } move ? Cell(move, tape) : string.Empty)];

    private static string Cell(WhatIfMove move, TapeStep tape) => (move.MoreMm, move.LessMm) switch
    {
        ({ } more, { } less) => WhatIf.Signed(more, tape) + " / " + WhatIf.Signed(less, tape),
        ({ } more, null) => WhatIf.Signed(more, tape),
        (null, { } less) => "refused / " + WhatIf.Signed(less, tape),
        _ => string.Empty,
    };
}
