using PublicApiGenerator;

namespace Driveline.Fleet.Tests;

/// <summary>The public surface, as a file whose diff shows every change.</summary>
/// <remarks>To accept a change, copy the received file named in the failure over tests/Driveline.Fleet.Tests/approved/.</remarks>
public class PublicApiTests
{
    [Fact]
    public void Library_PublicSurface_IsTheApprovedOne()
    {
        var options = new ApiGeneratorOptions { IncludeAssemblyAttributes = false, DenyNamespacePrefixes = ["OrleansCodeGen"] };
        string received = typeof(FleetHost).Assembly.GeneratePublicApi(options).ReplaceLineEndings("\n");
        string folder = Path.Combine(AppContext.BaseDirectory, "approved");
        string approved = Path.Combine(folder, "Driveline.Fleet.txt");
        if (!File.Exists(approved) || File.ReadAllText(approved).Trim() != received.Trim())
        {
            Directory.CreateDirectory(folder);
            string file = Path.Combine(folder, "Driveline.Fleet.received.txt");
            File.WriteAllText(file, received);
            Assert.Fail("The public surface of Driveline.Fleet changed; see " + file);
        }
    }
}
