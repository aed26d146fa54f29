using System.Collections.Generic;
using System.Linq;
using System.Text;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>One thing that was done to the draft, with the arithmetic behind it. The block is built by its steps.</summary>
public sealed class Step
{
    private readonly string _template;
    private readonly object[] _words;

    /// <summary>Trusted: the template has a place <c>{0}</c> for each word; no text is formed until it is asked for.</summary>
    internal Step(int number, string template, object[] words)
    {
        Number = number;
        _template = template;
        _words = words;
    }

    /// <summary>The place of the step in drafting order, from 1.</summary>
    public int Number { get; }

    /// <summary>The lengths measured off in this step, each with its working.</summary>
    public IEnumerable<WorkedLength> Workings => _words.OfType<WorkedLength>();

    /// <summary>The landmarks that the step speaks of, in order.</summary>
    public IEnumerable<LandmarkName> Landmarks => _words.OfType<LandmarkName>();

    /// <summary>The step as one would say it at the table, lengths read off the tape.</summary>
    /// <param name="tapeStep">How finely the tape is read, and in which unit.</param>
    public string Describe(TapeStep tapeStep)
    {
        var text = new StringBuilder();
        int from = 0;
        for (int open = _template.IndexOf('{'); open >= 0; open = _template.IndexOf('{', from))
        {
            text.Append(_template, from, open - from);
            object word = _words[_template[open + 1] - '0'];
            text.Append(word is WorkedLength length ? length.Describe(tapeStep) : word.ToString());
            from = open + 3;
        }

        return text.Append(_template, from, _template.Length - from).ToString();
    }

    /// <summary>Number and description, read in sixteenths of an inch.</summary>
    public override string ToString() => $"{Number}. {Describe(TapeStep.Sixteenth)}";
}
