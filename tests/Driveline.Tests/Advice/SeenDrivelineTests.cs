using Driveline.Advice;
using Driveline.Chains;
using Driveline.ShearBolts;

namespace Driveline.Tests.Advice;

public class SeenDrivelineTests
{
    private static readonly FittedBolt Free = FittedBolt.Undated("main bolt").WithHub(HubState.Free).WithHoleFit(HoleFit.Worn);

    [Fact]
    public void OneBolt_TellsAllThatIsSeenOfIt() => Assert.Contains(OwnerFacts.HubTurns.Freely, SeenDriveline.OfBolts([Free]));

    // A complaint of bolts that break does not say which of two it means.
    [Theory]
    [InlineData(HubState.NotKnown)]
    [InlineData(HubState.Seized)]
    public void SeveralBolts_OneHubFree_DoesNotSayThatHubsTurn(HubState other)
    {
        FittedBolt second = FittedBolt.Undated("auger bolt").WithHub(other).WithHoleFit(HoleFit.Worn);
        IReadOnlyList<Fact> seen = SeenDriveline.OfBolts([Free, second]);
        Assert.DoesNotContain(seen, f => f.Question == OwnerFacts.HubTurns.Freely.Question);
        Assert.Contains(seen, f => f.Question == OwnerFacts.Holes.Oval.Question);   // both are worn
    }

    [Fact]
    public void NoBolt_TellsNothing() => Assert.Empty(SeenDriveline.OfBolts([]));
}
