namespace Driveline.Provenance;

/// <summary>The recorder that keeps every step in order, for a calculation sheet.</summary>
internal readonly struct StepList : ISteps
{
    private readonly List<CalculationLine> lines;

    private StepList(List<CalculationLine> lines) => this.lines = lines;

    /// <summary>The steps recorded so far, in order; empty for a default recorder.</summary>
    public IReadOnlyList<CalculationLine> Lines => (IReadOnlyList<CalculationLine>?)lines ?? [];

    /// <summary>An empty recorder.</summary>
    public static StepList New() => new([]);

    /// <inheritdoc/>
    public void Add(CalculationStep formula, double value) => lines?.Add(new CalculationLine(formula, value));
}
