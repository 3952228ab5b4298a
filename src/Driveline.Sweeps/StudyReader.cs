using System.Text;
using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Quantities;
using Driveline.Sweeps.Reading;

namespace Driveline.Sweeps;

/// <summary>Reads study files (UTF-8 JSON, *.study.json) and lists everything that is wrong with them, each with its place.</summary>
public static class StudyReader
{
    /// <summary>Reads a study from a file; a case that it names is looked for beside it.</summary>
    /// <exception cref="IOException">The study cannot be read.</exception>
    public static StudyReadResult ReadFile(string path)
    {
        byte[] utf8 = File.ReadAllBytes(Guard.NotNull(path, nameof(path)));
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return Read(utf8, name => Opened(Path.Combine(folder, name)));
    }

    /// <summary>Reads a study from JSON text; its case must stand in it.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static StudyReadResult Read(string json) => Read(json, _ => null);

    /// <summary>Reads a study from JSON text, with the cases that it may name.</summary>
    /// <param name="json">The text.</param>
    /// <param name="cases">Gives the bytes of a case by the name in the study; null when there is none of that name.</param>
    /// <exception cref="ArgumentNullException">The text or the cases are missing.</exception>
    public static StudyReadResult Read(string json, Func<string, byte[]?> cases) =>
        Read(Encoding.UTF8.GetBytes(Guard.NotNull(json, nameof(json))), Guard.NotNull(cases, nameof(cases)));

    private static StudyReadResult Read(byte[] utf8, Func<string, byte[]?> cases)
    {
        utf8 = FileBytes.WithoutMark(utf8);
        var walk = new CaseWalk(utf8);
        if (utf8.Length > CaseReader.LargestBytes)
        {
            walk.Error(CaseErrorKind.TooLarge, 0, "A study file may have at most 4 MiB (4194304 bytes); this one is larger.");
            return new StudyReadResult(null, walk.Errors());
        }

        if (!JsonSyntax.IsGood(utf8, walk))
        {
            return new StudyReadResult(null, walk.Errors());
        }

        var tables = new StudyMembers(StudyCase.Of(utf8, walk, cases));
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = CaseReader.DeepestNesting });
        reader.Read();
        CaseObject? facts = ObjectReader.Read(ref reader, tables.Study, walk);
        Study? study = facts is null || walk.HasErrors ? null : tables.StudyOf(facts, walk);
        return new StudyReadResult(study, walk.Errors());
    }

    private static byte[]? Opened(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
