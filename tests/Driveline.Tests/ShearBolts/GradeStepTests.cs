using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class GradeStepTests
{
    [Theory]
    [InlineData("1/2-13 UNC", "SAE 2", "SAE 1", "SAE 5")]
    [InlineData("1/2-13 UNC", "SAE 5", "SAE 2", "SAE 8")]
    [InlineData("1/2-13 UNC", "SAE 8", "SAE 5", null)]
    [InlineData("M10", "ISO 4.6", null, "ISO 5.8")]
    [InlineData("M10", "ISO 8.8", "ISO 5.8", "ISO 10.9")]
    [InlineData("M10", "ISO 12.9", "ISO 10.9", null)]
    [InlineData("M10", "ISO 6.8", "ISO 5.8", "ISO 8.8")]
    [InlineData("1/2-13 UNC", "ASTM A574", null, null)]
    public void Of_Grade_ShowsItsNeighbours(string thread, string grade, string? weaker, string? stronger)
    {
        GradeStep step = GradeStep.Of(ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse(thread), BoltGrade.Parse(grade)).With(PlaneThrough.Shank), Length.FromMillimeters(60))
                .WithHub(HubState.Free));
        Assert.Equal(weaker, step.Weaker?.Joint.Bolt.Grade?.Designation);
        Assert.Equal(stronger, step.Stronger?.Joint.Bolt.Grade?.Designation);
        Assert.Equal(grade, step.Fitted.Joint.Bolt.Grade!.Designation);
    }

    [Fact]
    public void Of_UnmarkedBolt_HasNoNeighbours()
    {
        GradeStep step = GradeStep.Of(ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M10"), FastenerMaterial.UnmarkedMetricBolt), Length.FromMillimeters(60)));
        Assert.Null(step.Weaker);
        Assert.Null(step.Stronger);
    }
}
