using System.Reflection;
using System.Runtime.Versioning;
using Pattern.Core.Output;

namespace Pattern.Core.Pdf.Tests;

public class TargetFrameworkTests
{
    /// <summary>So that neither of the two test projects can quietly test the other's build.</summary>
    [Fact]
    public void Libraries_AreTheBuildThatThisProjectIsFor()
    {
#if PATTERN_NETSTANDARD
        const string expected = ".NETStandard,Version=v2.0";
#else
        const string expected = ".NETCoreApp,Version=v10.0";
#endif
        Assert.Equal(expected, typeof(PdfOutput).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
        Assert.Equal(expected, typeof(Drawing).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
    }
}
