using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Fasteners;

public class OwnMaterialTests
{
    private static readonly Basis Sheet = Basis.Given("maker's sheet");

    [Fact]
    public void Certified_TestedAt600_IsFivePercentToEachSide()
    {
        FastenerMaterial batch = FastenerMaterial.Certified("heat 47113", ShearClass.ColdWorked48, Pressure.FromMegapascals(600));
        Assert.Equal(570e6, batch.Tensile!.SiBand.Low, 1.0);        // 600 × 0.95
        Assert.Equal(600e6, batch.Tensile.SiBand.Expected, 1.0);
        Assert.Equal(630e6, batch.Tensile.SiBand.High, 1.0);        // 600 × 1.05
        Assert.Equal("heat 47113", batch.Tensile.Basis.Expected.Document);
        Assert.Equal(BasisKind.CommonPractice, batch.Tensile.WeakestBasis.Kind);
        Assert.True(batch.IsIdentified);
    }

    [Fact]
    public void Own_AsAHeldGradePromises_BreaksAsThatGrade()
    {
        // The same band and the same shear class: whatever its name, the bolt is as strong.
        ScrewThread thread = ScrewThread.Parse("M10");
        FastenerMaterial held = FastenerMaterial.Graded(Iso898.Class4_8, thread);
        FastenerMaterial own = FastenerMaterial.Own("house grade", held.ShearClass, held.Tensile!);
        Assert.Equal(TorqueOf(ShearBolt.Of(thread, held)), TorqueOf(ShearBolt.Of(thread, own)));
        Assert.Equal(
            TorqueOf(ShearBolt.Of(thread, held)), TorqueOf(StatedBolt.OfThread(thread).With(MaterialName.Of(own)).Bolt!));
    }

    [Fact]
    public void Own_WithoutMaximum_StaysOpenUpward()
    {
        StressBand atLeast = StressBand.AtLeast(Pressure.FromMegapascals(420), Sheet);
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("M10"), FastenerMaterial.Own("house grade", ShearClass.ColdWorked48, atLeast));
        Assert.False(TorqueOf(bolt).IsBounded);
    }

    [Theory]
    [InlineData(" ", 420, 560, "Name of a material")]
    [InlineData("SAE 5", 420, 560, "none that is held here")]
    [InlineData("8.8", 420, 560, "none that is held here")]
    [InlineData("house grade", 49, 560, "from 50 to 3000 MPa; got 49 MPa")]
    [InlineData("house grade", 420, 3001, "from 50 to 3000 MPa; got 3001 MPa")]
    public void Own_OutOfItsRange_SaysWhatIsWantedAndReceived(string name, double low, double high, string words)
    {
        StressBand band = StressBand.Between(
            Pressure.FromMegapascals(low), Pressure.FromMegapascals(low), Pressure.FromMegapascals(high), Sheet);
        ArgumentException refused = Assert.ThrowsAny<ArgumentException>(() => FastenerMaterial.Own(name, ShearClass.ColdWorked48, band));
        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MaterialName_OfAGradedMaterial_IsRefused() => Assert.Throws<ArgumentException>(
        () => MaterialName.Of(FastenerMaterial.Graded(SaeJ429.Grade5, ScrewThread.Parse("1/2-13 UNC"))));

    private static TorqueBand TorqueOf(ShearBolt bolt) => BreakTorque.Of(
        ShearBoltJoint.ThroughShaft(bolt.With(PlaneThrough.Shank), Length.FromMillimeters(35)).WithHub(HubState.Free)).Torque;
}
