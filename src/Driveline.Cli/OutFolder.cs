using System.Text;
using Driveline.Advice;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Provenance;
using Driveline.Reports;

namespace Driveline.Cli;

/// <summary>Writes files into the folder of --out: each whole or not at all, never over a folder.</summary>
internal static class OutFolder
{
    /// <summary>Writes the picture and the reports of a case, and the calculation of each device that has one.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written.</exception>
    public static void WriteReports(string folder, CaseInput input, ReportOptions options, Terminal terminal)
    {
        string picture = input.Name + ".ladder.svg";
        Write(folder, terminal,
        [
            new(picture, TorqueLadderPicture.Svg(input.Verdict, options)),
            new(input.Name + ".report.md", VerdictMarkdown.Of(input.Verdict, options, picture)),
            new(input.Name + ".report.html", VerdictHtml.Of(input.Verdict, options)),
            .. Calculations(input, options),
        ]);
    }

    private static IEnumerable<KeyValuePair<string, string>> Calculations(CaseInput input, ReportOptions options)
    {
        string[] sheets =
        [
            .. input.Verdict.Question.Chain.Devices
                .Where(d => d.Sheet().Count > 0)
                .Select(d => CalculationSheet.Markdown(d.Name, d.Sheet(), BasesOf(d), options.Language)),
        ];
        return sheets.Length == 0 ? [] : [new(input.Name + ".calculation.md", string.Join("\n", sheets))];
    }

    private static IReadOnlyList<Basis> BasesOf(ProtectiveDevice device) =>
        device.Running?.Basis is { } basis ? [basis.Low, basis.Expected, basis.High] : [];

    /// <summary>Writes one file, whole or not at all.</summary>
    /// <exception cref="BadInputException">It is a folder or cannot be written.</exception>
    public static void WriteFile(string path, string content, string option)
    {
        if (Directory.Exists(path))
        {
            throw new BadInputException(option + " '" + path + "' is a folder; a file is wanted.");
        }

        try
        {
            WriteWhole(path, content);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException(option + " '" + path + "' cannot be written: " + failed.Message);
        }
    }

    /// <summary>Writes the answer to an owner's letter.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written.</exception>
    public static void WriteAdvice(string folder, CaseInput input, OwnerAdvice advice, ReportOptions options, Terminal terminal) =>
        Write(folder, terminal,
    [
        new(input.Name + ".advice.md", AdviceMarkdown.Of(advice, options)),
        new(input.Name + ".advice.html", AdviceHtml.Of(advice, options)),
    ]);

    /// <summary>
    /// Writes the picture, the traces and the report of a simulation; the report alone, which says why, when there is no curve to draw.
    /// </summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written.</exception>
    public static void WriteSimulation(
        string folder, CaseInput input, CaseSimulation run, string text, ReportOptions options, Terminal terminal)
    {
        string name = input.Name + "." + run.Event.ToString().ToLowerInvariant();
        var files = new List<KeyValuePair<string, string>> { new(name + ".txt", text) };
        if (run.Check is { } check && (check.With ?? check.Without) is not null)
        {
            files.Add(new(name + ".svg", SimulationPicture.Svg(check, options)));
            files.Add(new(name + ".csv", SimulationCsv.Of(check, options)));
        }

        Write(folder, terminal, files);
    }

    /// <summary>Writes files by name and content.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written.</exception>
    public static void Write(string folder, Terminal terminal, IReadOnlyList<KeyValuePair<string, string>> files)
    {
        try
        {
            if (File.Exists(folder))
            {
                throw new BadInputException("--out '" + folder + "' is a file; a folder is wanted.");
            }

            Directory.CreateDirectory(folder);
            if (files.Select(f => Path.Combine(folder, f.Key)).FirstOrDefault(Directory.Exists) is { } taken)
            {
                throw new BadInputException("'" + taken + "' is a folder; nothing was written.");
            }

            foreach ((string name, string content) in files)
            {
                WriteWhole(Path.Combine(folder, name), content);
                terminal.Progress("Wrote " + Path.Combine(folder, name));
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException("--out '" + folder + "' cannot be written: " + failed.Message);
        }
    }

    private static void WriteWhole(string path, string content)
    {
        string temporary = path + "." + Guid.NewGuid().ToString("N") + ".tmp";
        try
        {
            File.WriteAllText(temporary, content, new UTF8Encoding(false));
            File.Move(temporary, path, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
