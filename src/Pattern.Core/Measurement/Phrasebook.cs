using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Measurement;

/// <summary>The language that a sheet speaks. English ships; any other is made by who needs it, out of whole sentences. Immutable.</summary>
/// <remarks>The English sentence is the key. Its places, in braces, may stand in any order in the other language, more than once, or not at all. Names, such as those of landmarks, measurements and
/// settings, are phrases without places. A phrase that a book does not know is said in English. Units stay <c>in</c> and <c>cm</c>.</remarks>
/// <example><code>
/// Phrasebook german = Phrasebook.Of("de", new Dictionary&lt;string, string&gt;
/// {
///     ["Steps"] = "Schritte",
///     ["hip girth"] = "H&#252;ftumfang",
///     ["Square down from {0}: {1}. Mark {2}."] = "Von {0} rechtwinklig nach unten: {1}. Punkt {2}.",
/// });
/// </code></example>
public sealed class Phrasebook
{
    private readonly Func<Phrase, string?>? _translate;

    private Phrasebook(string language, Func<Phrase, string?>? translate)
    {
        Language = language;
        _translate = translate;
    }

    /// <summary>The language of the library.</summary>
    public static Phrasebook English { get; } = new("en", null);

    /// <summary>The tag of the language, as in BCP 47: <c>en</c>, <c>pt-BR</c>.</summary>
    public string Language { get; }

    /// <summary>A language that has one form of each phrase.</summary>
    /// <param name="language">Its tag, as in BCP 47: letters, digits and hyphens.</param>
    /// <param name="phrases">Each phrase by its English sentence. It is copied.</param>
    /// <exception cref="ArgumentException">The tag is unusable, or a phrase has a place that its English sentence does not have.</exception>
    [Pure]
    public static Phrasebook Of(string language, IReadOnlyDictionary<string, string> phrases)
    {
        var copy = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (KeyValuePair<string, string> phrase in Guard.NotNull(phrases, nameof(phrases)))
        {
            Guard.Name(phrase.Value, nameof(phrases));
            string[] places = [.. PlacesOf(phrase.Key)];
            if (PlacesOf(phrase.Value).FirstOrDefault(place => Array.IndexOf(places, place) < 0) is { } strange)
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PhrasePlaceUnknown, phrase.Value, strange, phrase.Key), nameof(phrases));
            }

            copy.Add(phrase.Key, phrase.Value);
        }

        return new Phrasebook(Checked(language), phrase => copy.TryGetValue(phrase.English, out string? said) ? said : null);
    }

    /// <summary>A language that chooses a form by what fills the places: one part, two parts, five parts.</summary>
    /// <param name="language">Its tag, as in BCP 47: letters, digits and hyphens.</param>
    /// <param name="say">Gives the sentence with its places still in braces; null where it has none, and English stands. The same phrase must give the same answer.</param>
    /// <exception cref="ArgumentException">The tag is unusable.</exception>
    [Pure]
    public static Phrasebook Of(string language, Func<Phrase, string?> say) => new(Checked(language), Guard.NotNull(say, nameof(say)));

    /// <summary>The language.</summary>
    public override string ToString() => Language;

    /// <summary>A name, or a sentence without places.</summary>
    internal string Say(string english) => _translate is null || !HasLetter(english) ? english : _translate(new Phrase(english, [])) ?? english;

    /// <summary>A sentence with what fills its places.</summary>
    /// <exception cref="FormatException">The other language has a place that the phrase has not.</exception>
    internal string Say(string english, params (string Name, string Value)[] places)
    {
        string sentence = _translate is null || !HasLetter(english) ? english : _translate(new Phrase(english, places)) ?? english;
        var text = new StringBuilder();
        int from = 0;
        foreach ((int open, int close) in Braces(sentence))
        {
            string name = sentence.Substring(open + 1, close - open - 1);
            int index = Array.FindIndex(places, place => place.Name == name);
            if (index < 0)
            {
                throw new FormatException(MessageRegistry.Format(DiagnosticCode.PhrasePlaceUnknown, sentence, name, english));
            }

            text.Append(sentence, from, open - from).Append(places[index].Value);
            from = close + 1;
        }

        return text.Append(sentence, from, sentence.Length - from).ToString();
    }

    /// <summary>The same language, writing down the English of all that it is asked to say.</summary>
    internal Phrasebook Recording(ICollection<string> asked) => new(Language, phrase =>
    {
        asked.Add(phrase.English);
        return _translate?.Invoke(phrase);
    });

    /// <summary>Things one after the other.</summary>
    internal string List(IEnumerable<string> things)
        => things.Aggregate(string.Empty, (one, other) => one.Length == 0 ? other : Say("{first}, {next}", ("first", one), ("next", other)));

    private static IEnumerable<string> PlacesOf(string sentence) => Braces(sentence).Select(brace => sentence.Substring(brace.Open + 1, brace.Close - brace.Open - 1));

    private static IEnumerable<(int Open, int Close)> Braces(string sentence)
    {
        for (int open = sentence.IndexOf('{'); open >= 0; open = sentence.IndexOf('{', open + 1))
        {
            int close = open + 1;
            while (close < sentence.Length && IsNameCharacter(sentence[close]))
            {
                close++;
            }

            if (close > open + 1 && close < sentence.Length && sentence[close] == '}')
            {
                yield return (open, close);
            }
        }
    }

    private static bool IsNameCharacter(char c) => c is (>= 'a' and <= 'z') or (>= '0' and <= '9');

    private static bool HasLetter(string text)
    {
        foreach (char c in text)
        {
            if (char.IsLetter(c))
            {
                return true;
            }
        }

        return false;
    }

    private static string Checked(string language)
    {
        Guard.Name(language, nameof(language));
        foreach (char c in language)
        {
            if (c is not ((>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '-'))
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.LanguageUnusable, language), nameof(language));
            }
        }

        return language;
    }
}
