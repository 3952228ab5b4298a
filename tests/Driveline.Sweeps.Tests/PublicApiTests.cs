using PublicApiGenerator;

namespace Driveline.Sweeps.Tests;

/// <summary>The public surface, as a file whose diff shows every change.</summary>
/// <remarks>To accept a change, copy the received file named in the failure over tests/Driveline.Sweeps.Tests/approved/.</remarks>
public class PublicApiTests
{
    [Fact]
    public void Library_PublicSurface_IsTheApprovedOne()
    {
        string received = typeof(Sweep).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false })
            .ReplaceLineEndings("\n");
        string folder = Path.Combine(AppContext.BaseDirectory, "approved");
        string approved = Path.Combine(folder, "Driveline.Sweeps.txt");
        if (!File.Exists(approved) || File.ReadAllText(approved).Trim() != received.Trim())
        {
            Directory.CreateDirectory(folder);
            string file = Path.Combine(folder, "Driveline.Sweeps.received.txt");
            File.WriteAllText(file, received);
            Assert.Fail("The public surface of Driveline.Sweeps changed; see " + file);
        }
    }
}
