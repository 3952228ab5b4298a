namespace Driveline.Quantities;

/// <summary>Low, expected and high value as quantities of one type.</summary>
/// <typeparam name="T">The type of the quantity.</typeparam>
public abstract class QuantityBand<T> : QuantityBand
    where T : struct
{
    private protected QuantityBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public T Low => Of(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public T? Expected => HasExpected ? Of(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public T? High => IsBounded ? Of(SiBand.High) : null;

    private protected abstract T Of(double si);
}
