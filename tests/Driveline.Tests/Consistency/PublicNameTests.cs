using Driveline.Cases;
using Driveline.Reports;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Tests.Consistency;

/// <summary>A caller imports many namespaces at once: no name of ours may become ambiguous then.</summary>
public class PublicNameTests
{
    private static readonly string[] Imported =
    [
        "System", "System.Buffers", "System.Collections", "System.Collections.Generic", "System.Collections.Immutable",
        "System.ComponentModel", "System.ComponentModel.DataAnnotations", "System.Data", "System.Diagnostics", "System.Drawing",
        "System.Globalization", "System.IO", "System.IO.Pipelines", "System.Linq", "System.Net", "System.Net.Http", "System.Numerics",
        "System.Reflection", "System.Text", "System.Text.Json", "System.Text.Json.Nodes", "System.Text.RegularExpressions",
        "System.Threading", "System.Threading.Channels", "System.Threading.Tasks", "System.Xml", "System.Xml.Linq",
        "UnitsNet", "UnitsNet.Units", "MathNet.Numerics", "MathNet.Numerics.LinearAlgebra", "MathNet.Numerics.Distributions",
    ];

    private static IEnumerable<Type> Ours => new[]
        { typeof(Driveline.Provenance.Basis), typeof(CaseReader), typeof(VerdictText), typeof(Texts) }
        .SelectMany(t => t.Assembly.GetExportedTypes()).Where(t => !t.IsNested);

    [Fact]
    public void PublicType_OfAnyNamespace_HasANameOfItsOwn() =>
        Assert.Empty(Ours.Select(t => t.Name).GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void PublicType_BesideWhatCallersImport_StaysUnambiguous()
    {
        string[] framework = [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(p => Path.GetFileName(p).StartsWith("System.", StringComparison.Ordinal))];
        HashSet<string> theirs = [.. framework.SelectMany(Exported).Concat(typeof(object).Assembly.GetExportedTypes())
            .Concat(typeof(Torque).Assembly.GetExportedTypes())
            .Concat(typeof(MathNet.Numerics.Constants).Assembly.GetExportedTypes())
            .Where(t => t is { IsNested: false, Namespace: not null } && Imported.Contains(t.Namespace)).Select(t => t.Name)];
        Assert.Contains("Power", theirs);
        Assert.Contains("Task", theirs);
        Assert.Contains("Matrix3x2", theirs);
        Assert.All(Ours, t => Assert.DoesNotContain(t.Name, theirs));
    }

    private static IEnumerable<Type> Exported(string path)
    {
        try
        {
            return System.Reflection.Assembly.LoadFrom(path).GetExportedTypes();
        }
        catch (Exception e) when (e is BadImageFormatException or FileLoadException or FileNotFoundException)
        {
            return [];
        }
    }
}
