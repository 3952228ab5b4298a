using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Tests.ShearBolts;

/// <summary>Ratios of the reference table that are remembered: they lie in the bands, and prove nothing.</summary>
public class ShearRatiosRememberedTests
{
    [Theory]
    [InlineData("research-council test mean", "A325, A490, single bolts", ShearClass.Quenched88)]
    [InlineData("research-council test mean", "A325, A490, single bolts", ShearClass.Quenched109)]
    [InlineData("LRFD calibration", "A325, A490", ShearClass.Quenched88)]
    [InlineData("LRFD calibration", "A325, A490", ShearClass.Quenched109)]
    [InlineData("data", "C36000 brass rod", ShearClass.Copper)]
    [InlineData("textbook estimate", "low-carbon and general steel", ShearClass.Soft46)]
    public void Band_OfClass_HoldsTheRememberedRatio(string rule, string appliesTo, ShearClass shearClass)
    {
        ReferenceRow row = Assert.Single(
            ReferenceTable.Read("fasteners", "shear-ratio.csv"), r => r["source_rule"] == rule && r["applies_to"] == appliesTo);
        Assert.True(ReferenceTable.IsRemembered(row));
        Band band = ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio.SiBand;
        Assert.True((row.NumberOrNull("ratio_tau_to_Rm") ?? row.Number("low")) >= band.Low);
        Assert.True((row.NumberOrNull("ratio_tau_to_Rm") ?? row.Number("high")) <= band.High);
    }
}
