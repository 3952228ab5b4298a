using System.Diagnostics;
using System.Globalization;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>NumPy doing the same beside this process: it is asked for the time of some calls, by turns with ours.</summary>
internal sealed class NumPyRows : IDisposable
{
    private const string Python = "/usr/bin/python3";

    private readonly Process process;

    private NumPyRows(Process process) => this.process = process;

    /// <summary>The script, waiting; null when there is no NumPy of Debian here.</summary>
    public static NumPyRows? Start()
    {
        if (!File.Exists(Python) || Script() is not { } script)
        {
            return null;
        }

        var start = new ProcessStartInfo(Python, [script, "--serve"]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        var rows = new NumPyRows(Process.Start(start)!);
        if (rows.process.StandardOutput.ReadLine() == "ready")
        {
            return rows;
        }

        rows.Dispose();
        return null;
    }

    /// <summary>Nanoseconds a call of "torque" or "sampled", over so many calls.</summary>
    public double Nanoseconds(string what, int calls)
    {
        process.StandardInput.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what} {calls}"));
        return double.Parse(process.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
    }

    public void Dispose()
    {
        process.StandardInput.Close();
        process.WaitForExit();
        process.Dispose();
    }

    private static string? Script()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "benchmarks", "closed_form.py");
            if (File.Exists(path))
            {
                return path;
            }
        }

        return null;
    }
}
