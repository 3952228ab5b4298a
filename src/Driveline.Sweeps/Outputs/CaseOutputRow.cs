using Driveline.Cases;

namespace Driveline.Sweeps.Outputs;

/// <summary>A row of the registry of outputs.</summary>
internal sealed class CaseOutputRow
{
    public CaseOutputRow(string name, OutputCost cost, NamedKind named, string doc)
    {
        Name = name;
        Cost = cost;
        Named = named;
        Doc = doc;
    }

    public string Name { get; }

    public OutputCost Cost { get; }

    /// <summary>What may stand in brackets behind the name.</summary>
    public NamedKind Named { get; }

    /// <summary>True when a name may stand in brackets behind it.</summary>
    public bool MayName => Named != NamedKind.Nothing;

    /// <summary>True when it says nothing without a name in brackets.</summary>
    public bool MustName => Named is NamedKind.Part or NamedKind.Element;

    public string Doc { get; }

    public Func<CaseAssessment, string?, CancellationToken, double>? Number { get; init; }

    public Func<CaseAssessment, string?, CancellationToken, string?>? Word { get; init; }

    /// <summary>What a device's kernel computes for it; null when only a case can tell.</summary>
    public ClosedOutput? Closed { get; init; }
}
