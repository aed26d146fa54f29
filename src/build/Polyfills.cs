// What the language asks the platform for and netstandard2.0 does not have. Only what the sources use: add what is missing when a feature is used
// for the first time. Each is embedded, so that neither the tests nor a friend assembly mistakes it for the platform's own.
// Written by hand, because a source generator that hands its files over in another order each time makes other bytes of the same sources.
using System.ComponentModel;
using Microsoft.CodeAnalysis;

namespace Microsoft.CodeAnalysis
{
    /// <summary>Hides a type from every other assembly.</summary>
    [Embedded]
    internal sealed class EmbeddedAttribute : System.Attribute;
}

namespace System
{
    /// <summary>A place counted from the start or, as <c>^1</c>, from the end.</summary>
    [Embedded]
    internal readonly struct Index(int value, bool fromEnd = false)
    {
        public int Value => value;

        public bool IsFromEnd => fromEnd;

        public static implicit operator Index(int value) => new(value);

        public int GetOffset(int length) => fromEnd ? length - value : value;
    }
}

namespace System.Runtime.CompilerServices
{
    /// <summary>Marks init-only setters.</summary>
    [Embedded]
    [EditorBrowsable(EditorBrowsableState.Never)]
    internal static class IsExternalInit;

    /// <summary>Leaves a stack buffer uncleared.</summary>
    [Embedded]
    [AttributeUsage(AttributeTargets.All)]
    internal sealed class SkipLocalsInitAttribute : Attribute;
}

namespace System.Diagnostics.CodeAnalysis
{
    /// <summary>The value is not null after the call.</summary>
    [Embedded]
    [AttributeUsage(AttributeTargets.Field | AttributeTargets.Parameter | AttributeTargets.Property | AttributeTargets.ReturnValue)]
    internal sealed class NotNullAttribute : Attribute;

    /// <summary>The value is not null after a call that returned this.</summary>
    [Embedded]
    [AttributeUsage(AttributeTargets.Parameter)]
    internal sealed class NotNullWhenAttribute(bool returnValue) : Attribute
    {
        public bool ReturnValue => returnValue;
    }
}
