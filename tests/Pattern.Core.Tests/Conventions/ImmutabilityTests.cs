#define CONTRACTS_FULL // Else the compiler drops [Pure] from the types below.
using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Tests.Conventions;

/// <summary>After a draft exists nothing changes: a verb returns a new object, and nobody may overlook it.</summary>
public class ImmutabilityTests
{
    /// <summary>The types that change by design. Each says so in its documentation.</summary>
    private static readonly Type[] Changeable = [typeof(DraftingSheet), typeof(BlockWork), typeof(BlockDraft), typeof(DesignDraft), typeof(CheckList)];

    /// <summary>Fields that are filled when first asked for, with a value that depends on the others only: seen from outside nothing changes.</summary>
    private static readonly string[] Caches = ["CurvePath._lengthsMm", "CurvePath._list", "Dart._cap", "DraftedLine._path", "Block._method", "Block._trued"];

    /// <summary>What others derive from by design: a drafting method, a design, a shaping law, what a table of theirs said. Each says that it holds nothing that changes.</summary>
    private static readonly Type[] ForOthers = [typeof(DraftingMethod), typeof(BlockDesign), typeof(ShapingTable), typeof(TableReading)];

    /// <summary>Structs with fixed room inside, which the language does not let be readonly: each of their visible members is instead, and
    /// only the library fills the room before it hands the value out.</summary>
    private static readonly Type[] WithRoomInside = [typeof(CurveIntersections)];

    private static IEnumerable<Type> Immutable => PublicApi.Types.Where(type => !Changeable.Contains(type) && !type.IsEnum && !typeof(Delegate).IsAssignableFrom(type));

    [Fact]
    public void Types_ThatAreImmutable_HaveNoSetters()
        => Rule.Holds(Immutable.SelectMany(Setters));

    [Fact]
    public void Types_ThatAreImmutable_HaveOnlyReadonlyFields()
        => Rule.Holds(Immutable.Except(WithRoomInside).SelectMany(ChangeableFields).Except(Caches));

    [Fact]
    public void Caches_AreStillThere()
        => Rule.Holds(Caches.Except(Immutable.SelectMany(ChangeableFields)));

    [Fact]
    public void Types_ThatAreStructs_AreReadonly()
        => Rule.Holds(Immutable.Except(WithRoomInside).Where(type => type.IsValueType && !IsReadOnly(type)).Select(type => type.Name));

    [Fact]
    public void Types_WithRoomInside_HaveOnlyReadonlyMembers()
        => Rule.Holds(WithRoomInside.SelectMany(type => type.GetMethods(PublicApi.Visible).Where(method => !method.IsStatic && !IsReadOnly(method)).Select(PublicApi.NameOf)));

    [Fact]
    public void Types_ThatAreClasses_CannotBeDerivedFromOutside()
        => Rule.Holds(PublicApi.Types.Where(type => type.IsClass && !type.IsSealed && !HasNoConstructorForOthers(type) && !ForOthers.Contains(type)).Select(type => type.Name));

    [Fact]
    public void Members_ThatAreVisible_HandOutNoArrays()
    {
        IEnumerable<string> arrays = PublicApi.Types.SelectMany(type => type.GetProperties(PublicApi.Visible).Where(p => p.PropertyType.IsArray)
            .Concat<MemberInfo>(type.GetFields(PublicApi.Visible).Where(f => f.FieldType.IsArray))).Select(PublicApi.NameOf);

        Rule.Holds(arrays);
    }

    [Fact]
    public void Methods_ThatReturnSomethingNew_ArePure()
        => Rule.Holds(Immutable.SelectMany(Unmarked).OrderBy(name => name, StringComparer.Ordinal));

    // The rules themselves, tested on types that break them.
    [Fact]
    public void Rules_OnTypesThatBreakThem_FindThem()
    {
        Assert.Equal(["Breaks.Open"], Setters(typeof(Breaks)));
        Assert.Equal(["Breaks.Field", "Breaks.<Open>k__BackingField"], ChangeableFields(typeof(Breaks)));
        Assert.Equal(["Breaks.Turned()", "Breaks.All()"], Unmarked(typeof(Breaks), type => type == typeof(Breaks)));
        Assert.False(HasNoConstructorForOthers(typeof(Derivable)));
    }

    private static IEnumerable<string> Setters(Type type) => type.GetProperties(PublicApi.Visible)
        .Where(property => property.SetMethod is { IsPublic: true } setter && !setter.ReturnParameter.GetRequiredCustomModifiers().Any(m => m.Name == "IsExternalInit"))
        .Select(PublicApi.NameOf);

    private static IEnumerable<string> ChangeableFields(Type type) => type
        .GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        .Where(field => !field.IsInitOnly && !field.IsLiteral && !field.IsDefined(typeof(CompilerGeneratedAttribute), false) == !field.Name.StartsWith('<'))
        .Where(field => !IsInitOnlyProperty(field))
        .Select(PublicApi.NameOf);

    /// <summary>An init-only property keeps its value in a field that the compiler cannot mark readonly.</summary>
    private static bool IsInitOnlyProperty(FieldInfo field)
        => field.Name.StartsWith('<')
            && field.DeclaringType!.GetProperty(field.Name[1..field.Name.IndexOf('>')], PublicApi.Visible | BindingFlags.NonPublic)?.SetMethod is { } setter
            && setter.ReturnParameter.GetRequiredCustomModifiers().Any(m => m.Name == "IsExternalInit");

    private static bool HasNoConstructorForOthers(Type type) => type
        .GetConstructors(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
        .All(constructor => constructor.IsPrivate || constructor.IsAssembly || constructor.IsFamilyAndAssembly);

    private static IEnumerable<string> Unmarked(Type type) => Unmarked(type, PublicApi.IsOurs);

    private static IEnumerable<string> Unmarked(Type type, Func<Type, bool> isOurs) => type.GetMethods(PublicApi.Visible)
        .Where(method => !method.IsStatic && !method.IsSpecialName && !method.Name.StartsWith('<') && !IsOverride(method) && !IsEnumeration(method))
        .Where(method => !method.IsDefined(typeof(PureAttribute)))
        .Where(method => PublicApi.Inside(method.ReturnType).Any(isOurs))
        .Select(PublicApi.NameOf);

    private static bool IsOverride(MethodInfo method) => method.GetBaseDefinition() != method;

    // By name: for netstandard2.0 the compiler puts an attribute of its own into the library.
    private static bool IsReadOnly(MemberInfo member) => member.CustomAttributes.Any(mark => mark.AttributeType.FullName == typeof(IsReadOnlyAttribute).FullName);

    private static bool IsEnumeration(MethodInfo method) => method.Name == nameof(IEnumerable<int>.GetEnumerator);

    private sealed class Breaks
    {
        public int Field;

        public int Open { get; set; }

        public int Kept { get; init; }

        public int Given { get; } = 1;

        public Breaks Turned() => new() { Field = Given };

        public IReadOnlyList<Breaks> All() => [this];

        [Pure]
        public Breaks Marked() => new();

        public int Count() => Field;
    }

    private abstract class Derivable;
}
