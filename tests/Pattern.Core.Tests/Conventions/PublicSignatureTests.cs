using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;

namespace Pattern.Core.Tests.Conventions;

/// <summary>A quantity has a unit at every door: a bare number must have a reason.</summary>
public class PublicSignatureTests
{
    /// <summary>The bare numbers that are allowed, by the member as <see cref="PublicApi.NameOf"/> writes it, each with its reason.</summary>
    private static readonly (string Pattern, string Reason)[] Allowed =
    [
        (@"^(CubicBezier|CircularArc|LineSegment|PathSegment)\.\w+\(double t[,)]", "a curve parameter from 0 to 1 has no unit"),
        (@"^((Curve|Path)Location\.Parameter|(Path)?Intersection\.(First|Second)Parameter|Overlap\.(First|Second)(From|To)|PathPosition\.T)$", "a curve parameter"),
        (@"^(IPathSink\.|CurvePath\.CopyTo\()", "hands coordinates to another program, in the unit that the caller names"),
        (@"\.FromMillimeters\(double x, double y\)$", "the name says the unit, as UnitsNet's factories do"),
        (@"^Vector2D\.op_Multiply\(", "a vector times a plain factor, as in mathematics"),
        (@"^WorkedLength\.(Factor|Times\(double factor\))$", "how many times a length is taken, as in the drafter's sum"),
    ];

    [Fact]
    public void Members_ThatAreVisible_TakeAndReturnNoBareNumbers()
        => Rule.Holds(BareNumbers().Where(name => !Allowed.Any(allowed => Regex.IsMatch(name, allowed.Pattern))));

    [Fact]
    public void Exceptions_AreAllNeeded()
        => Rule.Holds(Allowed.Where(allowed => !BareNumbers().Any(name => Regex.IsMatch(name, allowed.Pattern))).Select(allowed => allowed.Pattern));

    private static IEnumerable<string> BareNumbers() => PublicApi.Types.SelectMany(type => type.GetMembers(PublicApi.Visible))
        .Where(member => TypesOf(member).SelectMany(PublicApi.Inside).Any(type => type == typeof(double) || type == typeof(float) || type == typeof(decimal)))
        .Where(member => member is not MethodInfo { IsSpecialName: true } method || !method.Name.StartsWith("get_", StringComparison.Ordinal))
        .Select(PublicApi.NameOf)
        .OrderBy(name => name, StringComparer.Ordinal);

    private static IEnumerable<Type> TypesOf(MemberInfo member) => member switch
    {
        MethodInfo method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType),
        ConstructorInfo constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    };
}
