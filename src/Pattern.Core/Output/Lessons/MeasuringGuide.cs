using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>A page on taking measurements: what to wear, where the tape lies, a figure from the front and from behind, and a place to write each one down. Immutable.</summary>
/// <remarks>Only the measurements that are asked for. Terms after ISO 8559-1; the figure and the sentences are the library's own. The package Pattern.Core.Pdf prints it.</remarks>
/// <example><code>
/// MeasuringGuide guide = MeasuringGuide.For(block);
/// guide.SaveHtml("measuring.html");
/// </code></example>
public sealed class MeasuringGuide
{
    private readonly BodyMeasurement[] _measurements;

    private MeasuringGuide(IEnumerable<BodyMeasurement> measurements, LengthUnit unit, Phrasebook phrases)
    {
        _measurements = [.. measurements];
        Unit = unit;
        Phrases = phrases;
    }

    /// <summary>The measurements, in the order in which the page shows them.</summary>
    public IReadOnlyList<BodyMeasurement> Measurements => _measurements;

    /// <summary>The unit that is written down.</summary>
    public LengthUnit Unit { get; }

    /// <summary>The language of the page.</summary>
    /// <value>Default: English.</value>
    public Phrasebook Phrases { get; }

    /// <summary>The measurements that the draft of a block was worked out from; where its steps tell none, as in a block out of a file, all that its body has.</summary>
    /// <remarks>A method that takes a measurement where it was taken, and does without where not, asks for it here only where this body has it.</remarks>
    /// <param name="block">A block of the method.</param>
    [Pure]
    public static MeasuringGuide For(Block block)
    {
        Guard.NotNull(block, nameof(block));
        HashSet<string> used = UsedBy(block);
        BodyMeasurement[] all = [.. block.Body.Select(entry => entry.Key)];
        BodyMeasurement[] asked = [.. all.Where(measurement => used.Contains(measurement.Term))];
        return new MeasuringGuide(asked.Length > 0 ? asked : all, block.Body.Unit, Phrasebook.English);
    }

    /// <summary>Measurements of your choice.</summary>
    /// <param name="unit">The unit that is written down.</param>
    /// <param name="measurements">Which, in the order in which they are taken.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    [Pure]
    public static MeasuringGuide Of(LengthUnit unit, params BodyMeasurement[] measurements)
        => new(Guard.NotNull(measurements, nameof(measurements)).Select(one => Guard.NotNull(one, nameof(measurements))).Distinct(), Tape.KnownUnit(unit, nameof(unit)), Phrasebook.English);

    /// <summary>Speaks another language.</summary>
    /// <param name="phrases">The language. What it does not know is said in English.</param>
    [Pure]
    public MeasuringGuide WithPhrases(Phrasebook phrases) => new(_measurements, Unit, Guard.NotNull(phrases, nameof(phrases)));

    /// <summary>Every phrase that the page says, in English and in alphabetical order.</summary>
    [Pure]
    public IReadOnlyList<string> ListPhrases()
    {
        var asked = new HashSet<string>();
        MeasuringContent.Of(WithPhrases(Phrases.Recording(asked)));
        return [.. asked.OrderBy(phrase => phrase, System.StringComparer.Ordinal)];
    }

    /// <summary>The page in HTML, as a step sheet is: nothing beside it, black on white, for paper and for a phone.</summary>
    [Pure]
    public string ToHtml() => LessonHtml.Write(ToLesson());

    /// <summary>Writes the page in HTML to a file, as a whole or not at all.</summary>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="System.ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public void SaveHtml(string path)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, ToHtml());
    }

    /// <summary>The page in Markdown, each picture a file of its own.</summary>
    [Pure]
    public MarkdownPage ToMarkdown() => LessonMarkdown.Write(ToLesson());

    /// <summary>Which measurements it shows.</summary>
    public override string ToString() => "Taking the measurements: " + string.Join(", ", _measurements.Select(measurement => measurement.Term));

    internal LessonPage ToLesson() => MeasuringContent.Of(this);

    // What the steps and the readings of tables were worked out from, by name: each is looked at once.
    private static HashSet<string> UsedBy(Block block)
    {
        var used = new HashSet<string>();
        var seen = new HashSet<WorkedLength>();
        var open = new Stack<WorkedLength>(block.Steps.SelectMany(step => step.Workings).Concat(block.Method.Readings.SelectMany(reading => reading.Value.Figures)));
        while (open.Count > 0)
        {
            WorkedLength length = open.Pop();
            if (!seen.Add(length))
            {
                continue;
            }

            if (length is { Operation: WorkedOperation.Measured, Name: { } name })
            {
                used.Add(name);
            }

            foreach (WorkedLength operand in length.Operands)
            {
                open.Push(operand);
            }
        }

        return used;
    }
}
