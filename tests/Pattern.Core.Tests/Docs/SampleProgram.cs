using System;
using System.Globalization;
using System.IO;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Pattern.Core.Tests.Conventions;

namespace Pattern.Core.Tests.Docs;

/// <summary>A sample as it stands, compiled and run as its reader runs it: arguments in, exit code and what it prints out.</summary>
internal sealed class SampleProgram
{
    // The console is one for all tests.
    private static readonly object TheConsole = new();

    private readonly MethodInfo _entry;

    private SampleProgram(MethodInfo entry) => _entry = entry;

    internal static SampleProgram Of(string path)
    {
        var code = Compiler.Compile([(path, Repository.Read(path))], [.. Compiler.Platform, .. Compiler.Dependencies, .. Compiler.BuiltLibraries], OutputKind.ConsoleApplication);
        Assert.Empty(Compiler.Errors(code));
        using var file = new MemoryStream();
        Assert.True(code.Emit(file).Success);
        return new SampleProgram(Assembly.Load(file.ToArray()).EntryPoint!);
    }

    internal (int ExitCode, string Printed, string Errors) Run(params string[] arguments)
    {
        lock (TheConsole)
        {
            (TextWriter before, TextWriter beforeErrors) = (Console.Out, Console.Error);
            using var printed = new StringWriter(CultureInfo.InvariantCulture);
            using var errors = new StringWriter(CultureInfo.InvariantCulture);
            try
            {
                Console.SetOut(printed);
                Console.SetError(errors);
                int code = (int)_entry.Invoke(null, [arguments])!;
                return (code, printed.ToString().ReplaceLineEndings("\n"), errors.ToString().ReplaceLineEndings("\n"));
            }
            finally
            {
                Console.SetOut(before);
                Console.SetError(beforeErrors);
            }
        }
    }
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class ScratchFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("pattern-").FullName;

    internal string Write(string name, string text)
    {
        string path = System.IO.Path.Combine(Path, name);
        File.WriteAllText(path, text);
        return path;
    }

    internal string Read(params string[] names) => File.ReadAllText(System.IO.Path.Combine([Path, .. names]));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
