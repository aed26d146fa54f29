using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattern.Core.Tests.Conventions;

public class FloorTests
{
    [Fact]
    public void CompiledLibrary_AnyFloor_UsesOnlyItselfAndThoseBeforeIt()
    {
        IReadOnlyCollection<AssemblyReference> references = AssemblyScan.Of(PublicApi.Core.Location);

        // The scan sees what everyone knows is there, so that an empty answer means something.
        Assert.Contains(references, found => found is { From: "BlockDraft", ToNamespace: "Pattern.Core.Drafting", To: "DraftingSheet" });
        Rule.Holds(FloorRule.Violations(references));
    }

    [Fact]
    public void Sources_AnyFloor_NameOnlyThemselvesAndThoseBeforeThem()
    {
        Rule.Holds(Compiler.Errors(Compiler.Libraries));
        Rule.Holds(FloorRule.Violations(Compiler.Libraries));
    }

    [Fact]
    public void Namespaces_OfTheLibrary_AreItsFloors()
    {
        string[] polyfills = ["System", "Microsoft"];
        IEnumerable<string> spaces = PublicApi.Core.GetTypes()
            .Where(type => !type.IsNested && type.Namespace is not null && !polyfills.Contains(type.Namespace.Split('.')[0]))
            .Select(type => type.Namespace!)
            .Distinct();

        Rule.Holds(spaces.Except(FloorRule.Floors.Select(floor => "Pattern.Core." + floor)));
    }

    [Fact]
    public void Sources_AnyFile_DeclareTheNamespaceOfTheirFloor()
    {
        foreach (SyntaxTree tree in Compiler.Libraries.SyntaxTrees)
        {
            // Below src: the project, and in the core the floor. A package beside the core is a room of its own, with the name of its project.
            string[] place = tree.FilePath.Split('/');
            string expected = place[1] == FloorRule.Library ? $"{FloorRule.Library}.{place[2]}" : place[1];
            var declared = tree.GetRoot().DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>().Select(space => space.Name.ToString()).ToArray();

            // Folders inside a floor add no namespace.
            Assert.True(declared is [var only] && only == expected, $"{tree.FilePath} declares {string.Join(", ", declared)}");
        }
    }

    [Theory]
    [InlineData("Pattern.Core", "UnitsNet")]
    [InlineData("Pattern.Core.Pdf", "Pattern.Core", "UnitsNet", "PdfSharp")]
    [InlineData("Pattern.Core.Layout", "Pattern.Core", "UnitsNet")]
    public void Library_DependsOnNothingButItsPackagesAndThePlatform(string library, params string[] allowed)
    {
        IEnumerable<string> used = PublicApi.Libraries.Single(one => one.GetName().Name == library).GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => name != "netstandard" && !name.StartsWith("System.", StringComparison.Ordinal));

        Rule.Holds(used.Except(allowed));
    }

    // The rule itself, tested on a house where each room breaks it in another way.
    [Theory]
    [InlineData("a field", "private readonly Blocks.Upper? _upper = null; public override string ToString() => \"\" + _upper;")]
    [InlineData("a local", "public static int M() { Blocks.Upper? upper = null; return upper is null ? 0 : 1; }")]
    [InlineData("a parameter", "internal static void M(global::Pattern.Core.Blocks.Upper upper) { }")]
    [InlineData("a return", "internal static Pattern.Core.Blocks.Upper[]? M() => null;")]
    [InlineData("a generic argument", "internal static object M() => new System.Collections.Generic.List<Blocks.Upper>();")]
    [InlineData("a generic call", "internal static object M() => System.Array.Empty<Blocks.Upper>();")]
    [InlineData("a constraint", "internal static void M<T>() where T : Blocks.Upper { }")]
    [InlineData("a static call in a lambda", "internal static System.Func<int> M() => () => Blocks.Upper.Count();")]
    [InlineData("an inferred type", "internal static int M() { var upper = Blocks.Maker.Make(); return upper.GetHashCode(); }")]
    [InlineData("a caught exception", "internal static void M() { try { System.GC.KeepAlive(1); } catch (Blocks.UpperException) { } }")]
    [InlineData("a type test", "internal static bool M(object o) => o is Blocks.Upper;")]
    [InlineData("an attribute", "[Blocks.Mark] internal static void M() { }")]
    [InlineData("a type in an attribute", "[System.ComponentModel.TypeConverter(typeof(Blocks.Upper))] internal static void M() { }")]
    [InlineData("a nested type", "private sealed class Inner : Blocks.Upper { }")]
    [InlineData("an iterator", "internal static System.Collections.Generic.IEnumerable<object> M() { yield return new Blocks.Upper(); }")]
    [InlineData("an alias", "internal static object M() => new Alias();", "using Alias = Pattern.Core.Blocks.Upper;")]
    public void CompiledLibrary_ThatBreaksTheOrder_IsFoundOut(string how, string member, string directive = "")
    {
        CSharpCompilation house = House(member, directive);
        using var file = new MemoryStream();
        Assert.True(house.Emit(file).Success, string.Join("\n", Compiler.Errors(house)));
        file.Position = 0;

        IReadOnlyList<string> violations = FloorRule.Violations(AssemblyScan.Of(file));

        Assert.True(violations.Count > 0, how);
        Assert.All(violations, violation => Assert.StartsWith("Pattern.Core.Geometry.Lower uses Pattern.Core.Blocks.", violation));
    }

    [Theory]
    [InlineData("a constant", "internal const int N = Blocks.Upper.Constant;")]
    [InlineData("a name", "internal const string N = nameof(Blocks.Upper);")]
    [InlineData("a link in a comment", "/// <summary><see cref=\"Pattern.Core.Blocks.Upper\"/>.</summary>\n internal const int N = 1;")]
    [InlineData("a call through a variable", "internal static int M() { var upper = Blocks.Maker.Make(); return upper.GetHashCode(); }")]
    [InlineData("an unused directive", "internal const int N = 1;", "using Pattern.Core.Blocks;")]
    [InlineData("an unused alias", "internal const int N = 1;", "using Alias = Pattern.Core.Blocks.Upper;")]
    public void Sources_ThatBreakTheOrder_AreFoundOut(string how, string member, string directive = "")
        => Assert.True(FloorRule.Violations(House(member, directive)).Any(violation => violation.StartsWith("Geometry/Lower.cs(", StringComparison.Ordinal)), how);

    [Fact]
    public void House_ThatKeepsTheOrder_IsLeftAlone()
    {
        CSharpCompilation house = Compiler.Compile([("Upper.cs", Upper), ("Geometry/Lower.cs", "namespace Pattern.Core.Geometry; internal class Lower { }")], Compiler.Platform);
        using var file = new MemoryStream();
        Assert.True(house.Emit(file).Success);
        file.Position = 0;

        Rule.Holds(FloorRule.Violations(AssemblyScan.Of(file)));
        Rule.Holds(FloorRule.Violations(house));
    }

    private const string Upper = """
        namespace Pattern.Core.Blocks;
        internal class Upper { internal const int Constant = 3; internal static int Count() => 1; internal Geometry.Lower? Below; }
        internal static class Maker { internal static Upper Make() => new(); }
        internal sealed class UpperException : System.Exception { }
        internal sealed class MarkAttribute : System.Attribute { }
        """;

    private static CSharpCompilation House(string member, string directive) => Compiler.Compile(
        [("Blocks/Upper.cs", Upper), ("Geometry/Lower.cs", $"{directive}\nnamespace Pattern.Core.Geometry;\ninternal class Lower\n{{\n {member}\n}}\n")],
        Compiler.Platform);
}
