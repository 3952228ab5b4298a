using System.Reflection;
using System.Runtime.Versioning;
using Driveline.Provenance;

namespace Driveline.Tests.Consistency;

public class BuildUnderTest
{
    [Fact]
    public void Library_TargetFramework_IsTheOneThisProjectNames()
    {
        string? framework = typeof(Basis).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()?.FrameworkName;
#if NETSTANDARD_BUILD
        Assert.Equal(".NETStandard,Version=v2.0", framework);
#else
        Assert.Equal(".NETCoreApp,Version=v10.0", framework);
#endif
    }
}
