using Driveline.Findings;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Loads;

public class PowerNeedTests
{
    private static readonly PowerRow DiskMower = ImplementPower.Of("mower", "disk");

    private static readonly PowerRow RoundBaler = ImplementPower.Of("baler", "large round, fixed chamber");

    [Fact]
    public void Of_RowThatNeedsAWidth_RefusesNothingAndFeed()
    {
        Assert.Contains("working width", Assert.Throws<ArgumentException>(() => PowerNeed.Of(DiskMower)).Message, StringComparison.Ordinal);
        Assert.Contains(
            "got a feed rate", Assert.Throws<ArgumentException>(() => PowerNeed.Of(DiskMower, MassFlow.FromTonnesPerHour(5))).Message,
                StringComparison.Ordinal);
    }

    [Fact]
    public void Of_RowThatNeedsAFeedRate_RefusesAWidth() => Assert.Contains(
        "its feed rate; got a width",
        Assert.Throws<ArgumentException>(() => PowerNeed.Of(RoundBaler, Length.FromMeters(2))).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-1.5)]
    public void Of_WidthNotAbove0_NamesTheQuantity(double meters)
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
            () => PowerNeed.Of(DiskMower, Length.FromMeters(meters)));
        Assert.Contains("Working width must be a finite value above 0 m; got " + (meters == 0 ? "0" : "-1.5") + " m", error.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Of_UnknownMachine_ListsWhatIsHeld() => Assert.Contains(
        "rake, rotary", Assert.Throws<ArgumentException>(() => ImplementPower.Of("hovercraft", string.Empty)).Message,
            StringComparison.Ordinal);

    // Hand: rows for rotary cutters are 11.9..18.6 kW at 1.219 m, 14.9..22.4 at 1.524 m, 3.0..3.7 at 0.305 m.
    // At 1.524 m: low min(14.877, 14.9, 14.990) = 14.88; high max(23.254, 22.4, 18.488) = 23.25.
    [Fact]
    public void Of_RotaryCutter_SpansEveryRow()
    {
        PowerNeed need = PowerNeed.Of(MachineKind.RotaryCutter, Length.FromMeters(1.524));
        Close.Absolute(14.877, (double)need.Power.Low.Kilowatts, 1e-3, "hand: 11.9 kW × 1.524 / 1.219");
        Close.Absolute(23.254, (double)need.Power.High!.Value.Kilowatts, 1e-3, "hand: 18.6 kW × 1.524 / 1.219");
        Assert.Contains(need.Findings, f => f.Code == LoadsFindings.PowerSourcesDiffer);
        Assert.Contains(need.Findings, f => f.Code == LoadsFindings.PowerIsTractorSize && f.Severity == Severity.Warning);
        Assert.Equal(BasisKind.CommonPractice, need.Power.WeakestBasis.Kind);
    }

    [Theory]
    [InlineData(MachineKind.SnowBlower)]
    [InlineData(MachineKind.PostHoleAuger)]
    [InlineData(MachineKind.RoundBaler)]
    [InlineData(MachineKind.NotKnown)]
    [InlineData(MachineKind.Other)]
    public void TryOf_KindWithoutPowerPerWidth_IsNotGuessed(MachineKind kind)
    {
        Assert.False(PowerNeed.TryOf(kind, Length.FromMeters(1.5), out PowerNeed? need));
        Assert.Null(need);
        Assert.Contains("RotaryTiller", Assert.Throws<ArgumentException>(() => PowerNeed.Of(kind, Length.FromMeters(1.5))).Message,
            StringComparison.Ordinal);
    }

    // The edge of "the printed width" is 2 % of it: 1.448 m ± 0.02896 m.
    [Theory]
    [InlineData(1.448, false)]
    [InlineData(1.476, false)]
    [InlineData(1.478, true)]
    [InlineData(1.419, true)]
    public void Of_PrintedMachineOfAnotherWidth_SaysThatItWasScaled(double meters, bool isScaled) => Assert.Equal(
        isScaled,
        PowerNeed.Of(ImplementPower.Of("rotary tiller", "57 in"), Length.FromMeters(meters)).Findings.Any(
            f => f.Code == LoadsFindings.PowerScaledByWidth));

    [Fact]
    public void Of_LeastTractor_HasNoUpperEnd()
    {
        PowerNeed need = PowerNeed.Of(ImplementPower.Of("mower-conditioner, disc", "13 ft"), Length.FromMeters(3.962));
        Close.Relative(75, (double)need.Power.Low.Kilowatts, 1e-9, "IP38: 75 kW minimum");
        Assert.False(need.Power.IsBounded);
    }

    [Fact]
    public void WithFactor_Straw_RaisesEveryEndByAFifth()
    {
        PowerNeed dry = PowerNeed.Of(ImplementPower.Of("baler", "small rectangular"), MassFlow.FromTonnesPerHour(10));
        PowerNeed straw = dry.WithFactor(RatioBand.Exactly(1.2, Basis.Given("straw")));
        Close.Relative(14.4, (double)straw.Power.Expected!.Value.Kilowatts, 1e-9, "hand: 12 kW × 1.2");
        Assert.Contains(dry.Findings, f => f.Code == LoadsFindings.PowerMoreInStraw);
    }

    [Fact]
    public void Stated_Power_HasNoFindings()
    {
        PowerNeed need = PowerNeed.Stated(PowerBand.Exactly(Power.FromKilowatts(18), Basis.Given("test")));
        Assert.Empty(need.Findings);
        Assert.Empty(need.Sheet());
        Assert.Equal(BasisKind.Given, need.Power.WeakestBasis.Kind);
    }

    [Fact]
    public void Sheet_OfParameters_ShowsPowerAndItsRange()
    {
        IReadOnlyList<CalculationLine> sheet = PowerNeed.Of(DiskMower, Length.FromMeters(2.8)).Sheet();
        Assert.Equal(["powerNeed", "powerNeedLow", "powerNeedHigh"], sheet.Select(l => l.Formula.Code));
        Assert.Equal([14000, 9800, 18200], sheet.Select(l => Math.Round(l.Value, 6)));
    }

    [Theory]
    [InlineData("mower", "disk", 2.8, 9.8, 14.0, 18.2, "WE24: 5.0 kW/m × 2.8 m, ± 30 %; D497 parameters from memory")]
    public void PowerNeed_ByWidth_IsAsWorked(
        string machine, string variant, double meters, double low, double expected, double high, string source)
    {
        PowerNeed need = PowerNeed.Of(ImplementPower.Of(machine, variant), Length.FromMeters(meters));
        Close.Relative(low, (double)need.Power.Low.Kilowatts, 1e-12, source);
        Close.Relative(expected, (double)need.Power.Expected!.Value.Kilowatts, 1e-12, source);
        Close.Relative(high, (double)need.Power.High!.Value.Kilowatts, 1e-12, source);
        Assert.Equal(BasisKind.FromMemory, need.Power.WeakestBasis.Kind);
        Assert.Contains(need.Findings, f => f.Code == LoadsFindings.PowerFromMemory && f.Severity == Severity.Warning);
    }
}
