using System.Text;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Cli;

/// <summary>A case with its verdict, from a file, from standard input or built in.</summary>
internal sealed class CaseInput
{
    // Nobody reads more, and a hostile file could hold a hundred thousand.
    private const int MostProblems = 1000;

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
        if (path == "-")
        {
            return Assess("case", CaseReader.Read(ReadAll(terminal.Input)), "standard input");
        }

        if (Directory.Exists(path))
        {
            throw new BadInputException("'" + path + "' is a folder; a case file is wanted.");
        }

        if (!System.IO.File.Exists(path))
        {
            throw new BadInputException("There is no file '" + path + "'.");
        }

        try
        {
            using FileStream stream = System.IO.File.OpenRead(path);
            return Assess(EmbeddedCases.NameOf(Path.GetFileName(path)), CaseReader.Read(stream), path);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException("'" + path + "' cannot be read: " + failed.Message);
        }
    }

    /// <summary>A case from its bytes.</summary>
    public static CaseInput Of(string name, byte[] utf8) => Assess(name, CaseReader.Read(utf8), name);

    /// <summary>A case that a program made.</summary>
    public static CaseInput Of(string name, CaseFile file) => Assess(name, file, name);

    private static CaseInput Assess(string name, CaseReadResult read, string from) =>
        Assess(name, read.Case ?? throw Refused(from, read.Errors), from);

    private static CaseInput Assess(string name, CaseFile file, string from)
    {
        CaseQuestion asked = CaseQuestion.Of(file);
        ProtectionQuestion question = asked.Errors.Count > 0 || asked.Question is null
            ? throw Refused(from, asked.Errors)
            : asked.Question;
        return new CaseInput(name, file.Title ?? name, file, ProtectionCheck.Run(question));
    }

    /// <summary>A case whose facts are wrong: one line each.</summary>
    internal static BadInputException Refused(string from, IReadOnlyList<CaseError> errors)
    {
        List<string> problems = [.. errors.Take(MostProblems).Select(e => from + ": " + e)];
        if (errors.Count > MostProblems)
        {
            problems.Add(FormattableString.Invariant($"{from}: and {errors.Count - MostProblems} more."));
        }

        return new BadInputException(problems);
    }

    // One character more than is allowed is enough to be refused.
    private static string ReadAll(TextReader input)
    {
        var text = new StringBuilder();
        char[] buffer = new char[65536];
        int count;
        while (text.Length <= CaseReader.LargestBytes && (count = input.Read(buffer, 0, buffer.Length)) > 0)
        {
            text.Append(buffer, 0, count);
        }

        return text.ToString();
    }
}
