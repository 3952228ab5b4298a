namespace Driveline.Provenance;

/// <summary>A step with the value it took.</summary>
public sealed class CalculationLine
{
    /// <summary>A step with the value it took.</summary>
    public CalculationLine(CalculationStep step, double value)
    {
        Formula = step ?? throw new ArgumentNullException(nameof(step));
        Value = value;
    }

    /// <summary>What was computed.</summary>
    public CalculationStep Formula { get; }

    /// <summary>Its value, in the step's SI unit.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Formula.Symbol} = {Formula.Formula} = {Value:G6} {Formula.Unit}");
}
