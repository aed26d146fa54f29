using System;
using System.Collections.Generic;

namespace Pattern.Core.Measurement;

/// <summary>What is to be said, for whoever says it in another language: the English sentence, and what fills its places this time.</summary>
/// <remarks>Immutable. The English sentence is the key: it is the same for every body.</remarks>
public sealed class Phrase
{
    private readonly (string Name, string Value)[] _places;

    internal Phrase(string english, (string Name, string Value)[] places)
    {
        English = english;
        _places = places;
    }

    /// <summary>The sentence in English, each place in braces: <c>Divide the {0} into {1} equal parts: {2}.</c></summary>
    public string English { get; }

    /// <summary>The names of its places, in the order in which the library lists them; none for a name or a plain sentence.</summary>
    public IReadOnlyList<string> Places => Array.ConvertAll(_places, place => place.Name);

    /// <summary>What stands in a place this time, in the language already: to choose the form that a number asks for.</summary>
    /// <param name="place">The name of the place, without braces.</param>
    /// <returns>The words, or null where the phrase has no such place.</returns>
    public string? this[string place]
    {
        get
        {
            int index = Array.FindIndex(_places, one => one.Name == place);
            return index < 0 ? null : _places[index].Value;
        }
    }

    /// <summary>Returns <see cref="English"/>.</summary>
    public override string ToString() => English;
}
