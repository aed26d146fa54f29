using System.Reflection;
using System.Runtime.Versioning;

namespace Pattern.Core.Tests.Conventions;

public class TargetFrameworkTests
{
#if PATTERN_NETSTANDARD
    private const string Expected = ".NETStandard,Version=v2.0";
#else
    private const string Expected = ".NETCoreApp,Version=v10.0";
#endif

    // Both test projects share their sources; this shows that they do not share the library.
    [Fact]
    public void Library_UnderTest_IsTheBuildThatThisProjectIsFor()
        => Assert.Equal(Expected, PublicApi.Library.GetCustomAttribute<TargetFrameworkAttribute>()?.FrameworkName);
}
