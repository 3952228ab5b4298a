using System.Text;

namespace Driveline.Cases;

/// <summary>One thing that is wrong with a case file, and where.</summary>
public sealed class CaseError
{
    internal CaseError(
        CaseErrorKind kind, string path, int line, int column, string message, string? permitted, string? received, string? nearest)
    {
        Kind = kind;
        Path = path;
        Line = line;
        Column = column;
        Message = message;
        Permitted = permitted;
        Received = received;
        Nearest = nearest;
    }

    /// <summary>What kind of mistake it is.</summary>
    public CaseErrorKind Kind { get; }

    /// <summary>Where in the case, e.g. "driveline[1].shearBolt.shaftDiameter"; empty for the file as a whole.</summary>
    public string Path { get; }

    /// <summary>Line in the file, from 1.</summary>
    public int Line { get; }

    /// <summary>Character in the line, from 1.</summary>
    public int Column { get; }

    /// <summary>One sentence: what is wanted and what was received.</summary>
    public string Message { get; }

    /// <summary>What is permitted here, when that is a range or a list.</summary>
    public string? Permitted { get; }

    /// <summary>What was received, as it was written.</summary>
    public string? Received { get; }

    /// <summary>The name that was probably meant, when one is close.</summary>
    public string? Nearest { get; }

    /// <summary>Messages with their place in the file, by path, in the order of the errors.</summary>
    internal static IDictionary<string, string[]> ByPath(IReadOnlyList<CaseError> errors)
    {
        var byPath = new Dictionary<string, string[]>(StringComparer.Ordinal);
        foreach (IGrouping<string, CaseError> at in errors.GroupBy(e => e.Path, StringComparer.Ordinal))
        {
            byPath.Add(at.Key, [.. at.Select(e => e.Line > 0 ? e.Message + " " + e.Place : e.Message)]);
        }

        return byPath;
    }

    private string Place => FormattableString.Invariant($"(line {Line}, column {Column})");

    /// <summary>Place and message in one line.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(Path.Length > 0 && Line > 0 ? Path + " " : Path);
        text.Append(Line > 0 ? Place + ": " : ": ");
        return text.Append(Message).ToString();
    }
}
