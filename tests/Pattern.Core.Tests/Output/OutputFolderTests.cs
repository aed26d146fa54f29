using System;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Output;

namespace Pattern.Core.Tests.Output;

public sealed class OutputFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-core-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Save_NewFolder_WritesEveryFileAsUtf8WithoutMark()
    {
        string target = Path.Combine(_folder, "new", "skirt");

        var paths = OutputFolder.At(target).With("a.txt", "4\u215D\u2033").With("b.bin", [1, 2, 3]).Save();

        Assert.Equal([Path.Combine(target, "a.txt"), Path.Combine(target, "b.bin")], paths);
        Assert.Equal(Encoding.UTF8.GetBytes("4\u215D\u2033"), File.ReadAllBytes(paths[0]));
        Assert.Equal([1, 2, 3], File.ReadAllBytes(paths[1]));
        Assert.Equal(2, Directory.GetFileSystemEntries(target).Length);
    }

    [Fact]
    public void Save_OneFileCannotBeWritten_WritesNoneAndLeavesOldOnesAndNoDebris()
    {
        File.WriteAllText(Path.Combine(_folder, "a.txt"), "old");
        Directory.CreateDirectory(Path.Combine(_folder, "b.txt"));

        IOException refusal = Assert.Throws<IOException>(() => OutputFolder.At(_folder).With("a.txt", "new").With("b.txt", "new").With("c.txt", "new").Save());

        Assert.Contains("PC7006", refusal.Message);
        Assert.Contains("b.txt", refusal.Message);
        Assert.Equal("old", File.ReadAllText(Path.Combine(_folder, "a.txt")));
        Assert.Equal(["a.txt", "b.txt"], Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName).OrderBy(name => name, StringComparer.Ordinal));
    }

    [Fact]
    public void Save_FolderIsAFile_Refuses()
    {
        string file = Path.Combine(_folder, "taken");
        File.WriteAllText(file, "old");

        Assert.Throws<IOException>(() => OutputFolder.At(file).With("a.txt", "new").Save());

        Assert.Equal("old", File.ReadAllText(file));
    }

    [Fact]
    public void SaveSvg_OlderFileAndForeignPart_ReplacesOneAndLeavesTheOther()
    {
        string path = Path.Combine(_folder, "skirt.svg");
        File.WriteAllText(path, "old");
        File.WriteAllText(path + ".1.part", "someone else's");
        Drawing drawing = DrawnSkirts.Drawn("default");

        drawing.SaveSvg(path);

        Assert.Equal(drawing.ToSvg(), File.ReadAllText(path));
        Assert.Equal("someone else's", File.ReadAllText(path + ".1.part"));
        Assert.Equal(2, Directory.GetFiles(_folder).Length);
    }

    [Fact]
    public void SaveSvg_FolderMissing_RefusesAndMakesNothing()
    {
        IOException refusal = Assert.Throws<IOException>(() => DrawnSkirts.Drawn("default").SaveSvg(Path.Combine(_folder, "none", "skirt.svg")));

        Assert.Contains("skirt.svg", refusal.Message);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    // The name is longer than file systems take: the fault comes when the first file already lies complete beside its place.
    [Fact]
    public void Save_LaterFileFails_LeavesNothingOfTheEarlierOnes()
    {
        File.WriteAllText(Path.Combine(_folder, "a.txt"), "old");

        IOException refusal = Assert.Throws<IOException>(() => OutputFolder.At(_folder).With("a.txt", "new").With(new string('b', 300), "new").Save());

        Assert.Contains("PC7002", refusal.Message);
        Assert.Equal("old", File.ReadAllText(Path.Combine(_folder, "a.txt")));
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("..")]
    [InlineData("../skirt.svg")]
    [InlineData("a/b.txt")]
    [InlineData("a\\b.txt")]
    [InlineData("c:b.txt")]
    [InlineData("nul.txt")]
    [InlineData("CON")]
    [InlineData("com\u00B9.svg")]
    public void With_NoPlainFileName_Refuses(string name) => Assert.Throws<ArgumentException>(() => OutputFolder.At(_folder).With(name, "text"));

    [Fact]
    public void With_SameNameTwice_Refuses() => Assert.Throws<ArgumentException>(() => OutputFolder.At(_folder).With("a.txt", "1").With("A.txt", "2"));

    [Fact]
    public void With_LeavesTheFolderBeforeAsItWas()
    {
        OutputFolder one = OutputFolder.At(_folder).With("a.txt", "1");
        byte[] bytes = [1];
        OutputFolder two = one.With("b.txt", bytes);
        bytes[0] = 2;

        two.Save();

        Assert.Equal(["a.txt"], one.FileNames);
        Assert.Equal([1], File.ReadAllBytes(Path.Combine(_folder, "b.txt")));
    }

    // Microsoft, "Naming Files, Paths, and Namespaces": CON, PRN, AUX, NUL, COM0 to COM9, LPT0 to LPT9, the raised digits too, with any ending.
    [Theory]
    [InlineData("skirt\0.svg")]
    [InlineData("nul")]
    [InlineData("CON.svg")]
    [InlineData("prn .svg")]
    [InlineData("Lpt9.tar.gz")]
    [InlineData("COM\u00B3")]
    [InlineData("aux/skirt.svg")]
    [InlineData("out\\COM1.txt")]
    [InlineData("/dev/null")]
    public void SaveSvg_NoFileCanHaveThatPath_IsTheCallersMistake(string path)
    {
        string target = path.StartsWith('/') ? path : Path.Combine(_folder, path);

        ArgumentException refusal = Assert.Throws<ArgumentException>(() => DrawnSkirts.Draft("default").Draw().SaveSvg(target));

        Assert.Contains("PC7004", refusal.Message);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [InlineData("console.svg")]
    [InlineData("COM10.svg")]
    [InlineData("nullify")]
    public void SaveSvg_NameThatOnlyBeginsLikeADevice_IsWritten(string name)
    {
        DrawnSkirts.Draft("default").Draw().SaveSvg(Path.Combine(_folder, name));

        Assert.Single(Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("skirt\0")]
    [InlineData("nul")]
    public void At_NoFolderCanHaveThatPath_Refuses(string name) => Assert.Contains("PC7004", Assert.Throws<ArgumentException>(() => OutputFolder.At(Path.Combine(_folder, name))).Message);

    [Fact]
    public void Save_ThroughALink_WritesWhatItPointsTo()
    {
        string real = Path.Combine(_folder, "real");
        Directory.CreateDirectory(real);
        string target = Path.Combine(real, "skirt.txt");
        File.WriteAllText(target, "old");
        File.CreateSymbolicLink(Path.Combine(_folder, "one.txt"), target);
        File.CreateSymbolicLink(Path.Combine(_folder, "two.txt"), "one.txt");
        File.CreateSymbolicLink(Path.Combine(_folder, "dangling.txt"), Path.Combine(real, "later.txt"));

        OutputFolder.At(_folder).With("two.txt", "new").With("dangling.txt", "first").Save();

        Assert.Equal("new", File.ReadAllText(target));
        Assert.Equal("first", File.ReadAllText(Path.Combine(real, "later.txt")));
        Assert.All(new[] { "one.txt", "two.txt", "dangling.txt" }, link => Assert.NotNull(new FileInfo(Path.Combine(_folder, link)).LinkTarget));
        Assert.Equal(2, Directory.GetFileSystemEntries(real).Length);
    }

    [Fact]
    public void Save_LinksInARing_Refuses()
    {
        File.CreateSymbolicLink(Path.Combine(_folder, "a.txt"), "b.txt");
        File.CreateSymbolicLink(Path.Combine(_folder, "b.txt"), "a.txt");

        Assert.Throws<IOException>(() => OutputFolder.At(_folder).With("a.txt", "new").Save());
        Assert.Equal(2, Directory.GetFileSystemEntries(_folder).Length);
    }

#if !PATTERN_NETSTANDARD
    // netstandard2.0 knows no rights of POSIX.
    [Fact]
    public void Save_OlderFile_KeepsItsRights()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string path = Path.Combine(_folder, "a.txt");
        File.WriteAllText(path, "old");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);

        OutputFolder.At(_folder).With("a.txt", "new").Save();

        Assert.Equal(("new", UnixFileMode.UserRead | UnixFileMode.UserWrite), (File.ReadAllText(path), File.GetUnixFileMode(path)));
    }
#endif
}
