using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Cases.TorsionModels;
using Driveline.Reports;
using Driveline.Torsion;
using Driveline.Wording;

namespace Driveline.Cli.Commands;

/// <summary>simulate --model MODEL: runs a bare torsional model.</summary>
internal static class SimulateModel
{
    public static int Run(string path, ParseResult parsed, Terminal terminal, SharedOptions shared)
    {
        TorsionModelReadResult read = InputFile.Read(path, "a torsional model", terminal, TorsionModelReader.Read, TorsionModelReader.Read);
        string from = path == "-" ? "standard input" : path;
        TorsionModelFile model = read.Model ?? throw InputFile.Refused(from, read.Errors);
        TransientResult result = model.Run();
        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, TransientJson.Of(result, shared.ResultOf(parsed).WithTitle(model.Title)));
        }
        else
        {
            Language language = shared.LanguageOf(parsed);
            terminal.Report(TransientText.Of(result, shared.ReportOf(parsed, model.Title ?? from)), language);
        }

        return ExitCode.Answered;
    }
}
