using Driveline.Findings;

namespace Driveline.Tests.Findings;

public class FindingTests
{
    [Fact]
    public void NotKnown_SaidNothingElse_WarnsAndBarsBoth()
    {
        Finding finding = Finding.NotKnown("made.up");
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(Bars.Both, finding.Bars);
    }

    [Theory]
    [InlineData("bolt.madeUpNotKnown", Bars.Both)]
    [InlineData("bolt.madeUp", Bars.Nothing)]
    public void Of_Code_BarsBothOnlyWhenNotKnown(string code, Bars expected) =>
        Assert.Equal(expected, Finding.Of(code, Severity.Danger).Bars);

    [Fact]
    public void Barring_Guards_BarsNoQuiet()
    {
        Finding finding = Finding.NotKnown("made.up").Barring(Bars.Guards);
        Assert.True(finding.IsBarring(Bars.Guards));
        Assert.True(finding.IsBarring(Bars.Both));
        Assert.False(finding.IsBarring(Bars.Quiet));
        Assert.False(finding.BarringNothing().IsBarring(Bars.Both));
    }

    [Fact]
    public void With_AfterBarsAndPaths_KeepsThem()
    {
        Finding finding = Finding.NotKnown("made.up").Barring(Bars.Quiet).WithSettledBy(Measurements.HubTurn).WithBecause("a.b", "c")
            .With("name", "bolt");
        Assert.Equal(Bars.Quiet, finding.Bars);
        Assert.Equal(Measurements.HubTurn, finding.SettledBy);
        Assert.Equal(["a.b", "c"], finding.Because);
        Assert.Equal("bolt", finding.Parameter("name")?.Text);
    }

    [Fact]
    public void Equals_SameMadeTwice_IsTrueAndHashesAlike()
    {
        Assert.Equal(Full(), Full());
        Assert.Equal(Full().GetHashCode(), Full().GetHashCode());
        Assert.Single(new[] { Full(), Full() }.Distinct());
    }

    [Fact]
    public void Equals_AnythingElse_IsFalse() => Assert.All(
        new Finding?[]
        {
            Finding.Of("other.code", Severity.Danger),
            Full(Severity.Note),
            Full().BarringNothing(),
            Full().WithSettledBy(Measurements.FreeHub),
            Full().WithBecause("another.path"),
            Full().With("more", "text"),
            null,
        },
        other => Assert.False(Full().Equals(other)));

    [Fact]
    public void Equals_OtherNumberNameKindOrText_IsFalse()
    {
        Finding one = Finding.Of("made.up", Severity.Note);
        Finding[] all =
        [
            one.With("trip", QuantityKind.Torque, 1), one.With("trip", QuantityKind.Torque, 2), one.With("trip", QuantityKind.Force, 1),
            one.With("work", QuantityKind.Torque, 1), one.With("trip", "1"), one.With("trip", "2"),
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
    }

    private static Finding Full(Severity severity = Severity.Danger) => Finding.Of("made.up", severity).Barring(Bars.Guards)
        .WithSettledBy(Measurements.HubTurn).WithBecause("a.path").With("name", "bolt").With("trip", QuantityKind.Torque, 950);
}
