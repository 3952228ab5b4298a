using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Cli;

/// <summary>A case with its answers, from a file, from standard input or built in.</summary>
internal sealed class CaseInput
{
    private CaseInput(string name, CaseAssessment asked, CaseFile file)
    {
        Name = name;
        Asked = asked;
        File = file;
    }

    /// <summary>Name for files made of it, e.g. "brush-cutter".</summary>
    public string Name { get; }

    public string Title => File.Title ?? Name;

    /// <summary>The case as it was read.</summary>
    public CaseFile File { get; }

    /// <summary>What the case answers.</summary>
    public CaseAssessment Asked { get; }

    public ProtectionVerdict Verdict => Asked.Verdict();

    /// <summary>The case of a path; "-" is standard input, the bare name of a built-in case that case when there is no such file.</summary>
    /// <exception cref="BadInputException">It cannot be read, or anything in it is wrong.</exception>
    public static CaseInput Of(string path, Terminal terminal)
    {
        if (path != "-" && !System.IO.File.Exists(path) && EmbeddedCases.Names.Contains(path, StringComparer.OrdinalIgnoreCase))
        {
            return EmbeddedCases.Of(path);
        }

        string name = path == "-" ? "case" : EmbeddedCases.NameOf(Path.GetFileName(path));
        CaseReadResult read = InputFile.Read(path, "a case file", terminal, CaseReader.Read, CaseReader.Read);
        return Of(name, CaseAssessment.Of(read), path == "-" ? "standard input" : path);
    }

    /// <summary>A case from its bytes.</summary>
    public static CaseInput Of(string name, byte[] utf8) => Of(name, CaseAssessment.Of(utf8), name);

    /// <summary>A case that a program made.</summary>
    public static CaseInput Of(string name, CaseFile file) => Of(name, CaseAssessment.Of(file), name);

    /// <summary>The event that the case asks to be simulated, or the one named.</summary>
    /// <exception cref="BadInputException">There is no such event in the case.</exception>
    public CaseSimulation Simulate(string? happened) => happened switch
    {
        "strike" when !File.IsStated("strike") =>
            throw new BadInputException("The case states no strike; add \"strike\", or simulate its engagement."),
        "engagement" => Asked.Simulation(SimulatedEvent.Engagement, CancellationToken.None),
        _ => Asked.Simulation(),
    };

    private static CaseInput Of(string name, CaseAssessment asked, string from) =>
        new(name, asked, asked.File ?? throw InputFile.Refused(from, asked.Errors));
}
