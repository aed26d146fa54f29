using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using UnitsNet;

namespace Pattern.Core.Tests.Conventions;

/// <summary>Compiles sources in memory, as the language version of the solution.</summary>
internal static class Compiler
{
    private static readonly ConditionalWeakTable<SyntaxTree, SemanticModel> Models = [];

    private static readonly Lazy<CSharpCompilation> AllLibraries = new(CompileLibraries);

    /// <summary>The options of a file that may hold file-based directives (<c>#:package</c>).</summary>
    internal static CSharpParseOptions Parsing { get; } = new CSharpParseOptions(LanguageVersion.CSharp14, DocumentationMode.Diagnose)
        .WithFeatures([new("FileBasedProgram", "true")])
        .WithPreprocessorSymbols("NET", "NET8_0_OR_GREATER", "NET9_0_OR_GREATER", "NET10_0", "NET10_0_OR_GREATER");

    /// <summary>The sources of all libraries for net10.0, with all that their names mean. As one, because a package beside the core uses internals of the core.</summary>
    internal static CSharpCompilation Libraries => AllLibraries.Value;

    /// <summary>The platform that the tests run on, without any package.</summary>
    internal static IReadOnlyList<MetadataReference> Platform { get; } = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
        .Split(Path.PathSeparator)
        .Where(path => Path.GetDirectoryName(path) == Path.GetDirectoryName(typeof(object).Assembly.Location))
        .Select(path => (MetadataReference)MetadataReference.CreateFromFile(path))
        .ToArray();

    /// <summary>What the libraries depend on.</summary>
    internal static IReadOnlyList<MetadataReference> Dependencies { get; } =
    [
        MetadataReference.CreateFromFile(typeof(Length).Assembly.Location),
        MetadataReference.CreateFromFile(typeof(PdfSharp.Pdf.PdfDocument).Assembly.Location),
    ];

    /// <summary>The libraries as built, for code that uses them.</summary>
    internal static IReadOnlyList<MetadataReference> BuiltLibraries { get; } =
        PublicApi.Libraries.Select(library => (MetadataReference)MetadataReference.CreateFromFile(library.Location)).ToArray();

    internal static CSharpCompilation Compile(
        IEnumerable<(string Path, string Text)> sources,
        IEnumerable<MetadataReference> references,
        OutputKind kind = OutputKind.DynamicallyLinkedLibrary)
        => CSharpCompilation.Create(
            "Compiled",
            sources.Select(source => CSharpSyntaxTree.ParseText(source.Text, Parsing, source.Path)),
            references,
            new CSharpCompilationOptions(kind, allowUnsafe: true, nullableContextOptions: NullableContextOptions.Enable));

    /// <summary>The meaning of a file's names, kept: what one rule has bound, the next one finds bound.</summary>
    internal static SemanticModel Model(Compilation compilation, SyntaxTree tree) => Models.GetValue(tree, _ => compilation.GetSemanticModel(tree));

    internal static IReadOnlyList<string> Errors(Compilation compilation)
        => compilation.GetDiagnostics().Where(found => found.Severity == DiagnosticSeverity.Error).Select(found => found.ToString()).ToArray();

    private static CSharpCompilation CompileLibraries() => Compile(Repository.Sources, Platform.Concat(Dependencies));
}
