using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>A dimension with the type that callers get: SI number in, quantity out.</summary>
internal sealed class QuantityType<T>
    where T : struct
{
    public QuantityType(Dimension dimension, Func<double, T> ofSi)
    {
        Dimension = dimension;
        OfSi = ofSi;
    }

    public Dimension Dimension { get; }

    public Func<double, T> OfSi { get; }
}
