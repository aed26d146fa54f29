using System.Collections.Generic;
using System.Linq;
using System.Text;
using Pattern.Core.Measurement;

namespace Pattern.Core.Panels;

/// <summary>What a hand does at the table so that a condition holds: a sentence with places for its words and figures. Immutable.</summary>
public sealed class TruingNote
{
    private readonly object[] _words;

    internal TruingNote(string template, params object[] words)
    {
        Template = template;
        _words = [.. words.Select(word => word is WorkedLength ? word : word.ToString()!)];
    }

    /// <summary>The sentence, with a place <c>{0}</c> for each word.</summary>
    public string Template { get; }

    /// <summary>The words: names as text, lengths as <see cref="WorkedLength"/>.</summary>
    public IReadOnlyList<object> Words => _words;

    /// <summary>The lengths among the words.</summary>
    public IEnumerable<WorkedLength> Workings => _words.OfType<WorkedLength>();

    /// <summary>The sentence with its words, lengths read off a tape.</summary>
    /// <param name="tapeStep">How finely the tape is read, and in which unit.</param>
    public string Describe(TapeStep tapeStep)
    {
        var text = new StringBuilder();
        int from = 0;
        for (int open = Template.IndexOf('{'); open >= 0; open = Template.IndexOf('{', from))
        {
            text.Append(Template, from, open - from);
            object word = _words[Template[open + 1] - '0'];
            text.Append(word is WorkedLength length ? length.Describe(tapeStep) : word.ToString());
            from = open + 3;
        }

        return text.Append(Template, from, Template.Length - from).ToString();
    }

    /// <summary>The sentence, lengths read in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);
}
