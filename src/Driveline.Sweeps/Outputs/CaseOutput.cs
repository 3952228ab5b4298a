using Driveline.Cases;

namespace Driveline.Sweeps.Outputs;

/// <summary>An output that a case answers: its name, and how it is read off the answers.</summary>
internal sealed class CaseOutput
{
    public CaseOutput(string name, CaseOutputRow row, string? of)
    {
        Name = name;
        Row = row;
        Of = of;
    }

    /// <summary>As it was asked for.</summary>
    public string Name { get; }

    public bool IsWord => Row.Word is not null;

    public CaseOutputRow Row { get; }

    /// <summary>The part or device it is of; null when none was named.</summary>
    public string? Of { get; }

    public double Number(CaseAssessment asked, CancellationToken stop) => Row.Number!(asked, Of, stop);

    public string? Word(CaseAssessment asked, CancellationToken stop) => Row.Word!(asked, Of, stop);
}
