namespace Driveline.Quantities;

/// <summary>A unit as people write it: SI value = (value + offset) × numerator ÷ denominator.</summary>
/// <remarks>Numerator and denominator are kept apart so that 12.7 mm becomes exactly the double nearest to 0.0127 m.</remarks>
internal sealed class WrittenUnit
{
    public WrittenUnit(Dimension dimension, string symbol, double numerator, double denominator, double offset)
    {
        Dimension = dimension;
        Symbol = symbol;
        Numerator = numerator;
        Denominator = denominator;
        Offset = offset;
    }

    public Dimension Dimension { get; }

    /// <summary>The spelling we write ourselves.</summary>
    public string Symbol { get; }

    public double Numerator { get; }

    public double Denominator { get; }

    public double Offset { get; }

    public double ToSi(double value) => (value + Offset) * Numerator / Denominator;

    public double FromSi(double si) => (si * Denominator / Numerator) - Offset;

    public override string ToString() => Symbol;
}
