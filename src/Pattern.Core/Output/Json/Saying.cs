using System;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>Says what stands in a file, one thing after the other, to an immutable thing; each refusal has its own place.</summary>
internal sealed class Saying<T>(T said)
{
    internal T Said { get; private set; } = said;

    internal void Say(JsonValue value, Func<T, T> say) => Said = value.Make(() => say(Said));

    internal void Say(JsonValue value, Func<T, Length, T> say)
    {
        Length length = value.Length();
        Say(value, thing => say(thing, length));
    }

    internal void SayText(JsonValue value, Func<T, string, T> say)
    {
        string text = value.Text();
        Say(value, thing => say(thing, text));
    }

    internal void SayTextUnlessNull(JsonValue value, Func<T, string, T> say)
    {
        if (!value.IsNull)
        {
            SayText(value, say);
        }
    }
}
