using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps.Tests;

public class PhiloxTests
{
    [Theory]
    [InlineData(0UL, 0UL, 0u, 0u, 0xe169c58d6627e8d5, 0x9b00dbd8bc57ac4c,
        "Random123 known answers: philox4x32 10, all bits clear: 6627e8d5 e169c58d bc57ac4c 9b00dbd8")]
    [InlineData(0xffffffffffffffffUL, 0xffffffffffffffffUL, 0xffffffffu, 0xffffffffu, 0x41c83b0e408f276d, 0x6d5451fda20bc7c6,
        "Random123 known answers: philox4x32 10, all bits set: 408f276d 41c83b0e a20bc7c6 6d5451fd")]
    public void Philox_KnownAnswer_Matches(ulong key, ulong row, uint column, uint stream, ulong first, ulong second, string source)
    {
        Assert.Equal((first, second), Philox.Draw(key, row, column, stream));
        Assert.NotEmpty(source);
    }

    [Fact]
    public void Unit_Extremes_StayWithin()
    {
        Assert.InRange(Philox.Unit(0), double.Epsilon, 1e-15);
        Assert.InRange(Philox.Unit(ulong.MaxValue), 1 - 1e-15, Math.BitDecrement(1.0));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(64)]
    [InlineData(1000)]
    [InlineData(4097)]
    public void Permutation_EveryPlace_StandsOnce(int count)
    {
        var order = new Permutation(count, 7, 3);
        Assert.Equal(Enumerable.Range(0, count).Select(k => (long)k), Enumerable.Range(0, count).Select(k => order[k]).Order());
    }
}
