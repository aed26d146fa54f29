using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>What stands on a page on taking measurements.</summary>
internal static class MeasuringContent
{
    // Common practice, no source; in our own words.
    private static readonly string[] Before =
    [
        "Wear thin, close clothes or underwear, with what will be worn beneath the garment, and no shoes. Empty the pockets.",
        "Let somebody else measure: it is hard to keep a tape level around oneself. Ask before you touch, say what you will measure next, and let the person hold the tape where she would rather.",
        "Tie a cord around the natural waist before anything else. Stand upright and at ease, feet together, arms hanging, looking ahead, and breathe out as usual.",
        "Keep the tape level and close to the body, but not tight: it must slide. Take no ease into a measurement, the method adds it.",
        "Measure each one twice. Where the two differ by more than {little}, measure a third time and take the two that agree. Write down what the tape shows, not a round figure.",
    ];

    internal static LessonPage Of(MeasuringGuide guide)
    {
        Phrasebook book = guide.Phrases;
        TapeStep tape = TapeStep.For(guide.Unit);
        string title = book.Say("Taking the measurements");
        var parts = new List<LessonPart>
        {
            new LessonTitle(title, null, string.Empty),
            new LessonFields([book.Say("Name"), book.Say("Date")]),
            new LessonHeading("before", book.Say("Before you begin")),
        };
        string little = tape.IsMetric ? "0.5 cm" : "1/4 in";
        parts.AddRange(Before.Select(sentence => new LessonParagraph(book.Say(sentence, ("little", little)))));
        parts.Add(new LessonHeading("where", book.Say("Where the tape lies")));
        var figure = new MeasuringFigure(book);
        for (int i = 0; i < guide.Measurements.Count; i++)
        {
            parts.Add(Entry(guide.Measurements[i], i + 1, tape, figure, book));
        }

        parts.Add(new LessonParagraph(book.Say("A tape stretches with age: lay it beside a steel rule before a class measures with it.")));
        return new LessonPage(title, book, parts);
    }

    private static LessonEntry Entry(BodyMeasurement measurement, int number, TapeStep tape, MeasuringFigure figure, Phrasebook book)
    {
        string term = book.Say(measurement.Term);
        MeasuringPlace? place = MeasuringPlace.Of(measurement);
        string alt = place is null ? book.Say("A figure from the front and from behind.") : book.Say("A figure from the front and from behind. The heavy line is the tape of the {measurement}.", ("measurement", term));
        return new LessonEntry(
            "measure-" + number.ToString(CultureInfo.InvariantCulture),
            char.ToUpperInvariant(term[0]) + term.Substring(1),
            figure.With(place, alt),
            "measure-" + number.ToString(CultureInfo.InvariantCulture).PadLeft(2, '0'),
            [
                new LessonParagraph(place is null ? book.Say("A measurement of this method's own: its author says where the tape lies.") : book.Say(place.Words)),
                new LessonParagraph(WorkedText.Blank + TapeText.UnitSuffix(tape, TapeStyle.Plain), LessonTone.Figure, term),
            ]);
    }
}
