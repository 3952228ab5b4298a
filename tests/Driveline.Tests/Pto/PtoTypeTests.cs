using Driveline.Findings;
using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class PtoTypeTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(-1)]
    public void Of_NumberNotHeld_ListsWhatIsHeld(int number)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PtoTypes.Of(number));
        Assert.Contains(FormattableString.Invariant($"from 1 to 4; got {number}"), error.Message, StringComparison.Ordinal);
        Assert.Contains("PTO type 3: 45 mm, 20 splines", error.Message, StringComparison.Ordinal);
        Assert.False(PtoTypes.TryOf(number, out _));
    }

    [Theory]
    [InlineData(1, 48, 65)]
    [InlineData(2, 86, 115)]
    [InlineData(3, 185, 275)]
    [InlineData(4, 450, 450)]
    public void Limits_Conflicts_AreKeptBetweenLowestAndHighest(int number, double lowest, double highest)
    {
        PtoType type = PtoTypes.Of(number);
        Assert.Equal(lowest, type.LowestLimit.PrintedPower.Value);
        Assert.Equal(highest, type.HighestLimit.PrintedPower.Value);
    }

    // Boundary of "above the lowest limit" (48 kW for type 1): equal is allowed, one watt more is not.
    [Theory]
    [InlineData(48000, false)]
    [InlineData(48001, true)]
    public void Check_PowerAtAndAboveLowestLimit_ReportsOnlyAbove(double watts, bool reported)
    {
        IReadOnlyList<Finding> findings = PtoTypes.Of(1).Check(Power.FromWatts(watts));
        Assert.Equal(reported, findings.Any(f => f.Code == PtoFindings.PowerAboveLowestLimit));
        Assert.Equal(reported, findings.Any(f => f.Code == PtoFindings.PowerLimitsDiffer));
    }

    // The editions of the standard give type 3 from 185 to 275 kW: said as for types 1 and 2. It matters to no tractor below them all.
    [Theory]
    [InlineData(1, true)]
    [InlineData(2, true)]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void Check_LimitsOfEditions_DifferAndSaySo(int number, bool differ)
    {
        PtoType type = PtoTypes.Of(number);
        Assert.Equal(differ, type.Check(Power.FromKilowatts(500)).Any(f => f.Code == PtoFindings.PowerLimitsDiffer));
        Assert.Empty(type.Check(Power.FromKilowatts(26)));
        Assert.All(type.Limits, l => Assert.Equal(differ, l.Conflicts));
    }

    [Fact]
    public void Check_NegativePower_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PtoTypes.Of(1).Check(Power.FromWatts(-1)));
}
