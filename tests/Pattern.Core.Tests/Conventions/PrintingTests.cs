using System;
using System.Linq;

namespace Pattern.Core.Tests.Conventions;

/// <summary>Whoever prints an object, logs it or looks at it in a debugger, which shows ToString, reads what it is, never the name of its type.</summary>
public class PrintingTests
{
    [Fact]
    public void Types_ThatAreVisible_SayWhatTheyAre()
        => Rule.Holds(PublicApi.Types.Where(IsPrinted).Where(PrintsItsTypeName).Select(type => type.FullName!));

    [Fact]
    public void Rule_OnTypesThatBreakIt_FindsThem()
    {
        Assert.True(PrintsItsTypeName(typeof(Silent)));
        Assert.True(PrintsItsTypeName(typeof(SilentValue)));
        Assert.False(PrintsItsTypeName(typeof(Said)));
        Assert.False(PrintsItsTypeName(typeof(Inherits)));
    }

    // Enums print their names, exceptions their messages; a static class has no objects, an interface is printed by what implements it.
    private static bool IsPrinted(Type type)
        => !type.IsEnum && !type.IsInterface && !(type.IsAbstract && type.IsSealed) && !typeof(Delegate).IsAssignableFrom(type) && !typeof(Exception).IsAssignableFrom(type)
            && !(type.IsAbstract && !HasSaid(type) && PublicApi.Types.Any(other => other.BaseType == type));

    private static bool PrintsItsTypeName(Type type) => !HasSaid(type);

    private static bool HasSaid(Type type)
        => type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType is { } declared && declared != typeof(object) && declared != typeof(ValueType);

    private sealed class Silent;

    private readonly struct SilentValue;

    private class Said
    {
        public override string ToString() => "said";
    }

    private sealed class Inherits : Said;
}
