using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Layout;
using Pattern.Core.Pdf;

namespace Pattern.Core.Tests.Conventions;

/// <summary>What a caller of the libraries can see.</summary>
internal static class PublicApi
{
    internal const BindingFlags Visible = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    internal static readonly Assembly Core = typeof(SkirtBlock).Assembly;

    /// <summary>The core, and each package that stands beside it.</summary>
    internal static readonly IReadOnlyList<Assembly> Libraries = [Core, typeof(PdfOutput).Assembly, typeof(ClothLaying).Assembly];

    /// <summary>The libraries' own types, without what the compiler adds.</summary>
    internal static IReadOnlyList<Type> Types { get; } = Libraries.SelectMany(library => library.GetExportedTypes())
        .Where(type => !type.Name.StartsWith('<'))
        .OrderBy(type => type.FullName, StringComparer.Ordinal)
        .ToArray();

    internal static bool IsOurs(Type type) => Inside(type).Any(part => Libraries.Contains(part.Assembly));

    /// <summary>A type and all that its generic arguments, elements and references are made of.</summary>
    internal static IEnumerable<Type> Inside(Type type)
    {
        IEnumerable<Type> parts = type.HasElementType ? [type.GetElementType()!] : type.IsGenericType ? type.GetGenericArguments() : [];
        return parts.SelectMany(Inside).Prepend(type);
    }

    /// <summary>A member as a reader would write it: <c>CubicBezier.Split(double t)</c>.</summary>
    internal static string NameOf(MemberInfo member)
    {
        var text = new StringBuilder(Short(member.DeclaringType!));
        if (member is not ConstructorInfo)
        {
            text.Append('.').Append(member.Name);
        }

        return member is MethodBase method
            ? text.Append('(').Append(string.Join(", ", method.GetParameters().Select(p => Short(p.ParameterType) + " " + p.Name))).Append(')').ToString()
            : text.ToString();
    }

    private static string Short(Type type) => type switch
    {
        _ when type == typeof(double) => "double",
        _ when type == typeof(int) => "int",
        _ when type == typeof(string) => "string",
        { IsByRef: true } => Short(type.GetElementType()!) + "&",
        { IsArray: true } => Short(type.GetElementType()!) + "[]",
        { IsGenericType: true } => $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(Short))}>",
        _ => type.Name,
    };
}
