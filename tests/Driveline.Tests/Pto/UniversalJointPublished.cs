using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class UniversalJointPublished
{
    private const string Khurmi = "R. S. Khurmi & J. K. Gupta, Theory of Machines, 14th ed. 2009, ";
    private const string Copy = "; open textbook-companion transcription";

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

    // Total fluctuation of 12 % of the speed, of 100 in 1200 min⁻¹, and of 24 in 240 min⁻¹.
    [Theory]
    [InlineData(0.12, 19.64, 0.005, Khurmi + "Ex 9.4 p.252" + Copy)]
    [InlineData(1 / 12.0, 16.4, 0.05, Khurmi + "Ex 9.5 p.252" + Copy)]
    [InlineData(0.1, 18.0, 0.05, Khurmi + "Ex 9.6 p.253" + Copy)]
    public void OfNonUniformity_PrintedFluctuation_IsThePrintedAngle(double share, double degrees, double tolerance, string source) =>
        Close.Absolute(degrees, UniversalJoint.OfNonUniformity(share).Angle.Degrees, tolerance, source);

    [Fact]
    public void Speeds_PrintedJoints_ArePrinted()
    {
        UniversalJoint wide = UniversalJoint.OfNonUniformity(100 / 1200.0);
        Close.Absolute(1251, 1200 * wide.MaximumSpeedRatio, 0.5, Khurmi + "Ex 9.5 p.252" + Copy);
        Close.Absolute(1151, 1200 * wide.MinimumSpeedRatio, 0.5, Khurmi + "Ex 9.5 p.252" + Copy);
    }

    [Fact]
    public void Speeds_OfAShaftAt20Degrees_ArePrinted()
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(20));
        Close.Absolute(532.1, 500 * joint.MaximumSpeedRatio, 0.05, Khurmi + "Ex 9.7 p.254" + Copy);
        Close.Absolute(469.85, 500 * joint.MinimumSpeedRatio, 0.005, Khurmi + "Ex 9.7 p.254" + Copy);
    }

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
