using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using Pattern.Core.Measurement;

namespace Pattern.Core.Tests.Output;

/// <summary>A language that nobody speaks: every letter of the English is another one, so that a Latin letter left over is a word that no phrase covers.</summary>
internal static class InventedLanguage
{
    private const char First = '\u13A0';

    /// <summary>The language as a book that is asked for each phrase.</summary>
    internal static Phrasebook Book { get; } = Phrasebook.Of("x-invented", phrase => Said(phrase.English));

    /// <summary>The phrase in the language: its places stay.</summary>
    internal static string Said(string english) => Regex.Replace(english, @"\{[a-z0-9]+\}|[A-Za-z]", part => part.Length > 1 ? part.Value : Letter(part.Value[0]).ToString());

    /// <summary>What of a text is still Latin, units of the tape left out.</summary>
    internal static IEnumerable<string> LeftOver(string text) => Regex.Matches(text, "[A-Za-z]+").Select(match => match.Value).Where(word => word is not ("in" or "cm" or "mm"));

    private static char Letter(char c) => (char)(First + (char.ToLowerInvariant(c) - 'a'));
}
