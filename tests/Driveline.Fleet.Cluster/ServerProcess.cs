using System.Diagnostics;
using System.Globalization;

namespace Driveline.Fleet.Cluster;

/// <summary>A process that is started here, killed as a machine dies, and seen to be gone in the end.</summary>
internal sealed class ServerProcess : IDisposable
{
    private readonly Process process;

    public ServerProcess(string program, string folder, string log, IReadOnlyDictionary<string, string> environment, params string[] args)
    {
        var start = new ProcessStartInfo(program, args)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        process = Process.Start(start) ?? throw new InvalidOperationException(program + " does not start.");
        string file = Path.Combine(folder, log);
        DataReceivedEventHandler write = (_, line) =>
        {
            lock (process)
            {
                File.AppendAllText(file, line.Data + "\n");
            }
        };
        process.OutputDataReceived += write;
        process.ErrorDataReceived += write;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    public bool IsGone => process.HasExited;

    /// <summary>Memory in use, B.</summary>
    public long ResidentBytes => File.ReadLines("/proc/" + process.Id.ToString(CultureInfo.InvariantCulture) + "/status")
        .Where(line => line.StartsWith("VmRSS:", StringComparison.Ordinal))
        .Select(line => 1024 * long.Parse(line[6..^3].Trim(), CultureInfo.InvariantCulture)).FirstOrDefault();

    /// <summary>SIGKILL: it can do nothing any more.</summary>
    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            Kill();
        }

        process.Dispose();
    }
}
