namespace Driveline.Provenance;

/// <summary>The recorder that records nothing; a kernel compiled for it does no recording work.</summary>
internal struct NoSteps : ISteps
{
    /// <inheritdoc/>
    public readonly void Add(CalculationStep formula, double value)
    {
    }

    /// <inheritdoc/>
    public readonly void Begin(SheetEnd end)
    {
    }
}
