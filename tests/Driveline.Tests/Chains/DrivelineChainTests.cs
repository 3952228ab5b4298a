using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Chains;

public class DrivelineChainTests
{
    private static readonly Basis Told = Basis.Given("the test");

    [Fact]
    public void With_ADeviceBesideABranch_KnowsEveryElementItLists()
    {
        Branch side = Branch.Of("side", RatioBand.Exactly(0.5, Told), Part.Shaft("auger"));
        ShearBoltDevice old = Bolt("bolt");
        DrivelineChain changed = DrivelineChain.Of(old, side, Part.Shaft("rotor")).With(old, Bolt("other"));
        Assert.Equal([0, 1, 3], changed.Elements.Select(e => changed.IndexOf(e) - changed.IndexOf(changed.Elements[0])));
    }

    private static ShearBoltDevice Bolt(string name) => ShearBoltDevice.Of(name, ShearBoltJoint.Tangential(
        ShearBolt.Of(ScrewThread.Parse("M8"), Iso898.Class8_8), Length.FromMillimeters(50)));
}
