#if !NETSTANDARD_BUILD
using Driveline.Cases;
using Driveline.Provenance;
using Driveline.Reports;
using Driveline.Wording;
using PublicApiGenerator;

namespace Driveline.Tests.Consistency;

/// <summary>The public surface of each library, as a file whose diff shows every change.</summary>
/// <remarks>
/// To accept a change, copy the received file named in the failure over tests/Driveline.Tests/Consistency/approved/.
/// Package validation keeps the netstandard2.0 build's surface equal to this one.
/// </remarks>
public class PublicApiTests
{
    [Theory]
    [InlineData("Driveline", typeof(Basis))]
    [InlineData("Driveline.Wording", typeof(Texts))]
    [InlineData("Driveline.Cases", typeof(CaseReader))]
    [InlineData("Driveline.Reports", typeof(VerdictText))]
    public void Library_PublicSurface_IsTheApprovedOne(string library, Type inside)
    {
        string received = inside.Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false })
            .Replace("\r\n", "\n", StringComparison.Ordinal);
        string folder = Path.Combine(AppContext.BaseDirectory, "approved");
        string approved = Path.Combine(folder, library + ".txt");
        string expected = File.Exists(approved) ? File.ReadAllText(approved) : string.Empty;
        if (received.Trim() != expected.Trim())
        {
            string file = Path.Combine(folder, library + ".received.txt");
            Directory.CreateDirectory(folder);
            File.WriteAllText(file, received);
            string[] old = expected.Split('\n');
            string[] now = received.Split('\n');
            IEnumerable<string> change = now.Except(old).Take(20).Select(l => "+ " + l)
                .Concat(old.Except(now).Take(20).Select(l => "- " + l));
            Assert.Fail("The public surface of " + library + " changed; see " + file + "\n" + string.Join("\n", change));
        }
    }
}
#endif
