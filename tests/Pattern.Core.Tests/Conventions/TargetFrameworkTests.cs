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

    // Both test projects share their sources; this shows that they do not share the libraries.
    [Fact]
    public void Libraries_UnderTest_AreTheBuildsThatThisProjectIsFor()
        => Assert.All(PublicApi.Libraries, library => Assert.Equal(Expected, library.GetCustomAttribute<TargetFrameworkAttribute>()?.FrameworkName));
}
