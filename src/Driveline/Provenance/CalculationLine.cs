namespace Driveline.Provenance;

/// <summary>A step with the value it took.</summary>
public sealed class CalculationLine
{
    /// <summary>A step with the value it took.</summary>
    public CalculationLine(CalculationStep step, double value)
        : this(step, value, SheetEnd.Whole)
    {
    }

    /// <summary>A step with the value it took at an end of a band.</summary>
    public CalculationLine(CalculationStep step, double value, SheetEnd end)
    {
        Formula = step ?? throw new ArgumentNullException(nameof(step));
        Value = value;
        End = end;
    }

    /// <summary>What was computed.</summary>
    public CalculationStep Formula { get; }

    /// <summary>Its value, in the step's SI unit.</summary>
    public double Value { get; }

    /// <summary>The end of the band it belongs to.</summary>
    public SheetEnd End { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Formula.Symbol} = {Formula.Formula} = {Value:G6} {Formula.Unit}");
}
