namespace Driveline.Provenance;

/// <summary>The recorder that keeps every step in order, for a calculation sheet.</summary>
internal struct StepList : ISteps
{
    private readonly List<CalculationLine> lines;
    private SheetEnd end;

    private StepList(List<CalculationLine> lines)
    {
        this.lines = lines;
        end = SheetEnd.Whole;
    }

    /// <summary>The steps recorded so far, in order; empty for a default recorder.</summary>
    public readonly IReadOnlyList<CalculationLine> Lines => (IReadOnlyList<CalculationLine>?)lines ?? [];

    /// <summary>An empty recorder.</summary>
    public static StepList New() => new([]);

    /// <inheritdoc/>
    public readonly void Add(CalculationStep formula, double value) => lines?.Add(new CalculationLine(formula, value, end));

    /// <inheritdoc/>
    public void Begin(SheetEnd end) => this.end = end;
}
