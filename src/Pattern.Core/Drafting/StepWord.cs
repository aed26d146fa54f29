using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>What fills a place in the sentence of a step: a landmark, a line, a dart, a length with its working, a count, or plain words.</summary>
/// <remarks>A step keeps its words as what they are, so that it can print a length for any tape and say which landmarks it speaks of.</remarks>
public readonly struct StepWord
{
    private readonly object? _value;

    private StepWord(object value) => _value = value;

    /// <summary>The landmark's name, or null where the word is another thing.</summary>
    public LandmarkName? Landmark => _value as LandmarkName;

    /// <summary>The line's name, or null where the word is another thing.</summary>
    public LineName? Line => _value as LineName;

    /// <summary>The length, or null where the word is another thing.</summary>
    public WorkedLength? Length => _value as WorkedLength;

    internal DraftedDart? Dart => _value as DraftedDart;

    /// <summary>The word as it is printed.</summary>
    /// <param name="tapeStep">How finely lengths are read off the tape, and in which unit.</param>
    public string Describe(TapeStep tapeStep) => _value is WorkedLength length ? length.Describe(tapeStep) : Words(Phrasebook.English);

    internal string Describe(TapeStep tapeStep, NamedFigures? figures)
    {
        if (_value is not WorkedLength length)
        {
            return Words(figures?.Book ?? Phrasebook.English);
        }

        string text = WorkedText.Describe(length, tapeStep, TapeStyle.Plain, figures, out TapeStep shown);
        figures?.Add(length, shown);
        return text;
    }

    /// <summary>The word, lengths read in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);

    private string Words(Phrasebook book) => _value switch
    {
        Heading heading => heading.Say(book),
        DraftedDart dart => DraftedDart.NameOf(dart.Middle.Name, book),
        null => string.Empty,
        _ => book.Say(_value.ToString()!),
    };

    internal static StepWord Of(Heading heading) => new(heading);

    /// <summary>Plain words.</summary>
    public static implicit operator StepWord(string words) => new(Guard.NotNull(words, nameof(words)));

    /// <summary>A landmark by its name.</summary>
    public static implicit operator StepWord(LandmarkName name) => new(Guard.NotNull(name, nameof(name)));

    /// <summary>A landmark.</summary>
    public static implicit operator StepWord(Landmark landmark) => new(Guard.NotNull(landmark.Name, nameof(landmark)));

    /// <summary>A line by its name.</summary>
    public static implicit operator StepWord(LineName name) => new(Guard.NotNull(name, nameof(name)));

    /// <summary>A line.</summary>
    public static implicit operator StepWord(DraftedLine line) => new(Guard.NotNull(line, nameof(line)).Name);

    /// <summary>A dart, as it is called.</summary>
    public static implicit operator StepWord(DraftedDart dart) => new(Guard.NotNull(dart, nameof(dart)));

    /// <summary>A length with its working.</summary>
    public static implicit operator StepWord(WorkedLength length) => new(Guard.NotNull(length, nameof(length)));

    /// <summary>A count.</summary>
    public static implicit operator StepWord(int count) => new(count.ToString(CultureInfo.InvariantCulture));
}
