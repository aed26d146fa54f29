using System;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
#if !PATTERN_NETSTANDARD
using System.IO;
using Microsoft.CodeAnalysis.CSharp;
#endif

namespace Pattern.Core.Tests.Conventions;

/// <summary>Same input, same bytes out: on any day, any machine, in any culture.</summary>
public class PlatformUseTests
{
    /// <summary>What the compiled code of the library may not use, with the reason.</summary>
    private static readonly (string Pattern, string Reason)[] Forbidden =
    [
        (@"System\.DateTime(Offset)?\.get_(Now|UtcNow|Today)", "the clock: take the date from the caller"),
        (@"System\.TimeProvider\b|System\.Diagnostics\.Stopwatch\b|System\.Environment\.get_TickCount", "the clock"),
        (@"System\.Random\b|System\.Guid\.(NewGuid|CreateVersion7)|RandomNumberGenerator\b", "chance"),
        (@"System\.Environment\.(GetEnvironmentVariable|get_MachineName|get_UserName|get_NewLine)|System\.TimeZoneInfo\b", "the machine"),
        (@"CultureInfo\.get_(CurrentCulture|CurrentUICulture|InstalledUICulture)|NumberFormatInfo\.get_CurrentInfo|StringComparer\.get_CurrentCulture", "the culture of the machine"),
#if !PATTERN_NETSTANDARD
        // There it is what an interpolated string turns into; those are looked at in the sources.
        (@"System\.String\.Format\(System\.String,", "formats by the culture of the machine: pass CultureInfo.InvariantCulture"),
#endif
        (@"System\.String\.(ToUpper|ToLower)\(\)|System\.Char\.To(Upper|Lower)\(System\.Char\)", "the culture of the machine: use the ...Invariant method"),
        (@"System\.String\.Compare(To)?\((System\.String|System\.Object)(,System\.String)?(,System\.Boolean)?\)|System\.String\.(StartsWith|EndsWith|IndexOf|LastIndexOf)\(System\.String\)", "compares by the culture of the machine: pass a StringComparison"),
        (@"System\.(Double|Single|Decimal)\.(ToString\((System\.String)?\)|(Try)?Parse\(System\.String[,)](?!.*IFormatProvider))", "formats or reads by the culture of the machine: pass CultureInfo.InvariantCulture"),
        (@"StringBuilder\.(Append|Insert)\((System\.Int32,)?System\.(Double|Single|Decimal)\)|StringBuilder\.AppendFormat\(System\.String", "formats by the culture of the machine"),
        (@"System\.String\.Concat\(System\.Object", "formats what it joins by the culture of the machine: write the numbers out first"),
        (@"UnitsNet\.\w+\.ToString\((System\.String)?\)|UnitsNet\.\w+\.(Try)?Parse\(System\.String[,)](?!.*IFormatProvider)", "UnitsNet asks the culture of the machine"),
        (@"ThrowIf(Null|NullOrEmpty|NullOrWhiteSpace|Negative|Zero|GreaterThan|LessThan|Equal|NotEqual)\w*[<(]", "the platform's messages are translated and have no code: use Guard"),
        (@"System\.Console\b|System\.Diagnostics\.(Debug|Trace)\b", "a library writes only where it is told to"),
        (@"System\.Threading\.Thread\.Sleep|System\.GC\.Collect", "a library does not hold its caller up"),
    ];

    /// <summary>The uses that are allowed all the same, as <see cref="AssemblyReference"/> writes them, each with its reason.</summary>
    private static readonly (string Pattern, string Reason)[] Allowed =
    [
        (@"^Pattern\.Core\.Pdf\.PdfComposer uses System\.Globalization\.CultureInfo\.get_CurrentCulture\(\)", "PDFsharp asks the culture of the thread: it is made invariant, and then what it was"),
        (@"^Pattern\.Core\.Layout\.LayLimit uses System\.Diagnostics\.Stopwatch\b", "a caller may limit the time of a search: the limit ends it early and changes nothing else"),
    ];

    [Fact]
    public void CompiledLibraries_UseNothingThatDependsOnClockChanceOrMachine()
        => Rule.Holds(LibraryViolations().Where(found => !Allowed.Any(allowed => Regex.IsMatch(found, allowed.Pattern))));

    [Fact]
    public void Exceptions_AreAllNeeded()
        => Rule.Holds(Allowed.Where(allowed => !LibraryViolations().Any(found => Regex.IsMatch(found, allowed.Pattern))).Select(allowed => allowed.Pattern));

    /// <summary>A busy machine must not make a test fail.</summary>
    [Fact]
    public void CompiledTests_LookAtNoClock()
    {
        const string Clock = @"^System\.(DateTime(Offset)?\.get_(Now|UtcNow|Today)|TimeProvider\b|Diagnostics\.Stopwatch\b|Environment\.get_TickCount|Threading\.Thread\.Sleep|Threading\.Tasks\.Task\.Delay|Threading\.CancellationTokenSource\.CancelAfter)";

        Assert.Matches(Clock, "System.Diagnostics.Stopwatch.StartNew()");
        Rule.Holds(AssemblyScan.Of(typeof(PlatformUseTests).Assembly.Location).Where(found => Regex.IsMatch($"{found.ToNamespace}.{found.To}.{found.Member}", Clock)).Select(found => found.ToString()));
    }

    /// <summary>The text that the compiler makes for a record writes numbers and quantities in the culture of the machine.</summary>
    [Fact]
    public void Records_WithNumbers_WriteTheirOwnText() => Rule.Holds(PublicApi.Types.Where(LeavesItsTextToTheCompiler).Select(type => type.Name + " has no ToString of its own"));

    [Fact]
    public void Records_WithNumbers_ThatDoNot_AreFound()
    {
        Assert.True(LeavesItsTextToTheCompiler(typeof(Careless)));
        Assert.False(LeavesItsTextToTheCompiler(typeof(Careful)));
    }

#if !PATTERN_NETSTANDARD
    /// <summary>An interpolated string asks the culture of the machine for every number that stands in it; <c>string.Create</c> with a culture does not.</summary>
    [Fact]
    public void Sources_InterpolateNoNumbersWithoutACulture() => Rule.Holds(InterpolatedNumbers.In(Compiler.Libraries));

    [Theory]
    [InlineData("System.DateTime.Now.Ticks.ToString(System.Globalization.CultureInfo.InvariantCulture)")]
    [InlineData("System.DateTimeOffset.UtcNow")]
    [InlineData("new System.Random(1).Next()")]
    [InlineData("System.Guid.NewGuid()")]
    [InlineData("System.Globalization.CultureInfo.CurrentCulture")]
    [InlineData("string.Format(\"{0}\", 1.5)")]
    [InlineData("\"i\".ToUpper()")]
    [InlineData("string.Compare(\"a\", \"b\")")]
    [InlineData("\"a\".StartsWith(\"b\")")]
    [InlineData("1.5.ToString()")]
    [InlineData("1.5.ToString(\"0.0\")")]
    [InlineData("double.Parse(\"1.5\")")]
    [InlineData("double.TryParse(\"1.5\", out _)")]
    [InlineData("new System.Text.StringBuilder().Append(1.5)")]
    [InlineData("UnitsNet.Length.FromInches(1).ToString()")]
    [InlineData("UnitsNet.Length.Parse(\"1 in\")")]
    [InlineData("System.Console.Out")]
    public void Rule_OnCodeThatBreaksIt_FindsIt(string expression) => Assert.NotEmpty(Violations(Scan(expression)));

    [Theory]
    [InlineData("1.5.ToString(System.Globalization.CultureInfo.InvariantCulture)")]
    [InlineData("string.Format(System.Globalization.CultureInfo.InvariantCulture, \"{0}\", 1.5)")]
    [InlineData("double.Parse(\"1.5\", System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture)")]
    [InlineData("\"a\".StartsWith(\"b\", System.StringComparison.Ordinal)")]
    [InlineData("\"i\".ToUpperInvariant()")]
    public void Rule_OnCodeThatKeepsIt_LeavesItAlone(string expression) => Rule.Holds(Violations(Scan(expression)));

    [Theory]
    [InlineData("$\"{1.5}\"", 1)]
    [InlineData("$\"{UnitsNet.Length.FromInches(1)} and {2.5:0.0}\"", 2)]
    [InlineData("string.Create(System.Globalization.CultureInfo.InvariantCulture, $\"{1.5}\")", 0)]
    [InlineData("System.FormattableString.Invariant($\"{1.5}\")", 0)]
    [InlineData("$\"{\"text\"}\"", 0)]
    [InlineData("new System.Text.StringBuilder().Append($\"{1.5}\")", 1)]
    [InlineData("new System.Text.StringBuilder().Append(System.Globalization.CultureInfo.InvariantCulture, $\"{1.5}\")", 0)]
    public void InterpolatedNumbers_InCode_AreFound(string expression, int expected)
        => Assert.Equal(expected, InterpolatedNumbers.In(Compile(expression)).Count());
#endif

    private static IEnumerable<string> LibraryViolations() => PublicApi.Libraries.SelectMany(library => Violations(AssemblyScan.Of(library.Location)));

    private static IEnumerable<string> Violations(IEnumerable<AssemblyReference> references) =>
        from found in references
        let used = $"{found.ToNamespace}.{found.To}.{found.Member}"
        from rule in Forbidden
        where Regex.IsMatch(used, rule.Pattern)
        select $"{found} ({rule.Reason})";

    private static bool LeavesItsTextToTheCompiler(Type type)
        => type.GetMethod(nameof(ToString), Type.EmptyTypes) is { } text
            && text.DeclaringType == type
            && text.IsDefined(typeof(CompilerGeneratedAttribute), false)
            && type.GetProperties().SelectMany(property => PublicApi.Inside(property.PropertyType))
                .Any(part => part == typeof(double) || part == typeof(float) || part == typeof(decimal) || part.Namespace == "UnitsNet");

#if !PATTERN_NETSTANDARD
    private static IReadOnlyCollection<AssemblyReference> Scan(string expression)
    {
        using var file = new MemoryStream();
        CSharpCompilation code = Compile(expression);
        Assert.True(code.Emit(file).Success, string.Join("\n", Compiler.Errors(code)));
        file.Position = 0;
        return AssemblyScan.Of(file);
    }

    private static CSharpCompilation Compile(string expression)
        => Compiler.Compile([("Code.cs", $"internal class Code {{ internal static object M() => {expression}; }}")], Compiler.Platform.Concat(Compiler.Dependencies));
#endif

    private sealed record Careless(UnitsNet.Length? Depth);

    private sealed record Careful(UnitsNet.Length? Depth)
    {
        public override string ToString() => "careful";
    }
}
