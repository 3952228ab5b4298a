using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class UniversalJointPublished
{
    public static TheoryData<double, string, double, string> Table()
    {
        var data = new TheoryData<double, string, double, string>();
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "ujoint.csv").Where(r => r["kind"] == "table"))
        {
            data.Add(row.Number("joint_angle_deg"), row["quantity"], row.Number("value"), "ujoint " + row["id"]);
        }

        return data;
    }

    [Fact]
    public void Table_Rows_AreAllThere() => Assert.Equal(27, Table().Count);

    // Five decimals as printed.
    [Theory]
    [MemberData(nameof(Table))]
    public void UniversalJoint_TabulatedAngle_Matches(double degrees, string quantity, double expected, string source)
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(degrees));
        double actual = quantity switch
        {
            "w2max/w1" => joint.MaximumSpeedRatio,
            "w2min/w1" => joint.MinimumSpeedRatio,
            _ => joint.NonUniformity,
        };
        Close.Absolute(expected, actual, 0.5e-5 + 1e-12, source);
    }

    [Fact]
    public void UniversalJoint_25DegreesAt100RadPerSecond_FastestIs11034()
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(25));
        Close.Relative(110.34, 100 * joint.SpeedRatioAt(Angle.Zero), 0.0005, "textbook question: maximum output speed");
        Close.Relative(90.63, 100 * joint.SpeedRatioAt(Angle.FromDegrees(90)), 0.0005, "textbook question: minimum output speed");
    }

    [Fact]
    public void OfNonUniformity_OneEighth_Is2004Degrees() => Close.Relative(
        20.04, UniversalJoint.OfNonUniformity(0.125).Angle.Degrees, 0.001,
            "textbook question: 12.5 % fluctuation, 20.04° remembered answer");

    [Theory]
    [InlineData(15)]
    [InlineData(35)]
    public void SpeedRatio_WhereTanIsRootOfCos_IsOne(double degrees)
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(degrees));
        double theta = Math.Atan(Math.Sqrt(Math.Cos(degrees * Math.PI / 180)));
        Close.Absolute(1, joint.SpeedRatioAt(Angle.FromRadians(theta)), 1e-12, "examination question: equal speeds at tan θ = √cos β");
    }
}
