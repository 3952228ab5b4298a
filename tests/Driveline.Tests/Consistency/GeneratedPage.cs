using System.Text;

namespace Driveline.Tests.Consistency;

/// <summary>A page of shared/docs that tests make: the received one is written beside, to be copied over it.</summary>
internal static class GeneratedPage
{
    public static void IsTheOneIn(string file, string received)
    {
        string page = Path.Combine(AppContext.BaseDirectory, "docs", file);
        string approved = File.Exists(page)
            ? File.ReadAllText(page, Encoding.UTF8).Replace("\r\n", "\n", StringComparison.Ordinal) : string.Empty;
        if (received == approved)
        {
            return;
        }

        string folder = Path.Combine(AppContext.BaseDirectory, "generated-pages");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, file), received);
        string[] old = approved.Split('\n');
        string[] now = received.Split('\n');
        Assert.Fail(Path.Combine(folder, file) + " differs\n" + string.Join("\n", now.Except(old).Take(10).Select(l => "+ " + l)
            .Concat(old.Except(now).Take(10).Select(l => "- " + l))));
    }
}
