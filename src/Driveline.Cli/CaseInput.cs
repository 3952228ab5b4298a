using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Cli;

/// <summary>A case with its verdict, from a file, from standard input or built in.</summary>
internal sealed class CaseInput
{
    private CaseInput(string name, string title, CaseFile file, ProtectionVerdict verdict)
    {
        Name = name;
        Title = title;
        File = file;
        Verdict = verdict;
    }

    /// <summary>Name for files made of it, e.g. "brush-cutter".</summary>
    public string Name { get; }

    public string Title { get; }

    /// <summary>The case as it was read.</summary>
    public CaseFile File { get; }

    public ProtectionVerdict Verdict { get; }

    /// <summary>The case of a path; "-" is standard input.</summary>
    /// <exception cref="BadInputException">It cannot be read, or anything in it is wrong.</exception>
    public static CaseInput Of(string path, Terminal terminal)
    {
        string name = path == "-" ? "case" : EmbeddedCases.NameOf(Path.GetFileName(path));
        CaseReadResult read = InputFile.Read(path, "a case file", terminal, CaseReader.Read, CaseReader.Read);
        return Assess(name, read, path == "-" ? "standard input" : path);
    }

    /// <summary>The event that the case asks to be simulated, or the one named.</summary>
    /// <exception cref="BadInputException">The facts contradict each other, or there is no such event in the case.</exception>
    public CaseSimulation Simulate(string? happened)
    {
        if (happened == "strike" && !File.IsStated("strike"))
        {
            throw new BadInputException("The case states no strike; add \"strike\", or simulate its engagement.");
        }

        CaseSimulation run = happened == "engagement" ? CaseSimulation.Engagement(File) : CaseSimulation.Of(File);
        return run.Errors.Count > 0 ? throw InputFile.Refused(Name, run.Errors) : run;
    }

    /// <summary>A case from its bytes.</summary>
    public static CaseInput Of(string name, byte[] utf8) => Assess(name, CaseReader.Read(utf8), name);

    /// <summary>A case that a program made.</summary>
    public static CaseInput Of(string name, CaseFile file) => Assess(name, file, name);

    private static CaseInput Assess(string name, CaseReadResult read, string from) =>
        Assess(name, read.Case ?? throw InputFile.Refused(from, read.Errors), from);

    private static CaseInput Assess(string name, CaseFile file, string from)
    {
        CaseQuestion asked = CaseQuestion.Of(file);
        ProtectionQuestion question = asked.Errors.Count > 0 || asked.Question is null
            ? throw InputFile.Refused(from, asked.Errors)
            : asked.Question;
        return new CaseInput(name, file.Title ?? name, file, ProtectionCheck.Run(question));
    }
}
