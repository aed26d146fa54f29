using System;
using System.IO;
using System.Linq;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Pattern.Core.Tests.Conventions;

namespace Pattern.Core.Tests.Docs;

/// <summary>The guide to a method of one's own: its code is run as it stands, and what it prints is what the drafter's sums come to.</summary>
public class WriteYourOwnMethodTests
{
    // Waist 26: 26 / pi = 8.276, to the nearest eighth 8 1/4; the length that was asked for is 22.
    [Fact]
    public void HalfCircleSkirt_PrintsItsSteps()
    {
        string printed = Run(0);

        Assert.Contains("Half-circle skirt for Titania", printed);
        Assert.Contains("~8 9/32", printed); // 26 / pi = 8.276
        Assert.Contains("Half a circle of this radius is as long as the waist.", printed);
        Assert.Contains("length 22 in", printed);
        Assert.Contains("All 1 checks passed.", printed);
    }

    // Waist 30: 7 1/2 + 1 = 8 1/2, laid off with the dart 9 1/2. Waist 46: 12 1/2, wider than 12.
    [Fact]
    public void Apron_PrintsItsSteps_AndDeclinesAWideWaist()
    {
        string printed = Run(1);

        Assert.Contains("8 1/2", printed);
        Assert.Contains("9 1/2 in", printed);
        Assert.Contains("declines this body: Half of the apron is wider than the cloth folded. Measured 317.5 mm (12.5 in), allowed 304.8 mm (12.0 in).", printed);
    }

    private static string Run(int script)
    {
        (string path, string text) = MarkdownPage.Read("docs/write-your-own-method.md").Scripts(usings: string.Empty)[script];
        CSharpCompilation code = Compiler.Compile([(path, text)], Compiler.Platform.Concat(Compiler.Dependencies).Concat(Compiler.BuiltLibraries), OutputKind.ConsoleApplication);
        Assert.Empty(Compiler.Errors(code));
        using var file = new MemoryStream();
        Assert.True(code.Emit(file).Success);
        MethodInfo entry = Assembly.Load(file.ToArray()).EntryPoint!;
        TextWriter before = Console.Out;
        using var printed = new StringWriter();
        try
        {
            Console.SetOut(printed);
            _ = entry.Invoke(null, [Array.Empty<string>()]);
        }
        finally
        {
            Console.SetOut(before);
        }

        return printed.ToString();
    }
}
