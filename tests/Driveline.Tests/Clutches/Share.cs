using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Clutches;

/// <summary>A number evenly spread over 0 to 1, from which properties build their inputs.</summary>
public readonly record struct Share(double Value)
{
    public double Log(double low, double high) => low * Math.Pow(high / low, Value);

    public double Between(double low, double high) => low + ((high - low) * Value);

    public int Count(int low, int high) => Math.Min(high, low + (int)(Value * (high - low + 1)));
}

public static class Shares
{
    public static Arbitrary<Share> Any() => Gen.Choose(0, 1_000_000).Select(i => new Share(i / 1e6)).ToArbitrary();
}
