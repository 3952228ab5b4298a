namespace Driveline.Provenance;

/// <summary>One number as printed, with its unit and its basis.</summary>
/// <remarks>The printed unit is kept in the data and converted in code, so that a reader can hold the page beside the file.</remarks>
public sealed class Sourced
{
    /// <summary>A number as printed.</summary>
    /// <param name="value">The value as printed; finite.</param>
    /// <param name="unit">The unit as printed; "1" for a ratio.</param>
    /// <param name="basis">Where it comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public Sourced(double value, string unit, Basis basis)
    {
        if (double.IsNaN(value) || double.IsInfinity(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A sourced number must be finite.");
        }

        Value = value;
        Unit = unit ?? throw new ArgumentNullException(nameof(unit));
        Basis = basis ?? throw new ArgumentNullException(nameof(basis));
    }

    /// <summary>The value as printed.</summary>
    public double Value { get; }

    /// <summary>The unit as printed; "1" for a ratio.</summary>
    public string Unit { get; }

    /// <summary>Where it comes from.</summary>
    public Basis Basis { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Value} {Unit} ({Basis})");
}
