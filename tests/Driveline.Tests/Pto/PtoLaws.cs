using Driveline.Pto;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class PtoLaws
{
    [Law]
    public Property TorqueTimesSpeed_IsThePower() => Prop.ForAll(LogUniform(1, 1e6), LogUniform(0.1, 1e3), (watts, omega) =>
    {
        RotationalSpeed speed = RotationalSpeed.FromRadiansPerSecond(omega);
        double back = (double)PtoTorque.ToPower(PtoTorque.FromPower(Power.FromWatts(watts), speed), speed).Watts;
        return Math.Abs(back - watts) <= 1e-12 * watts;
    });

    [Law]
    public Property Torque_FromHorsepowerOrKilowatts_IsTheSame() =>
        Prop.ForAll(LogUniform(1, 500), LogUniform(100, 2000), (hp, perMinute) =>
    {
        double kilowatts = hp * 550 * 0.3048 * 0.45359237 * 9.80665 / 1000;
        double a = PtoTorque.FromPower(
            Power.FromMechanicalHorsepower(hp), RotationalSpeed.FromRevolutionsPerMinute(perMinute)).NewtonMeters;
        double b = PtoTorque.FromPower(
            Power.FromKilowatts(kilowatts), RotationalSpeed.FromRadiansPerSecond(perMinute * Math.PI / 30)).NewtonMeters;
        return Math.Abs(a - b) <= 1e-9 * b;
    });

    // The driven shaft makes one turn for each turn of the driving shaft: the mean of ω₂/ω₁ over a turn is 1.
    [Law(MaxTest = 50)]
    public Property Joint_MeanSpeedRatioOverATurn_IsOne() => Prop.ForAll(Uniform(0, 60), degrees =>
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(degrees));
        const int steps = 720;
        double sum = 0;
        for (int i = 0; i < steps; i++)
        {
            sum += joint.SpeedRatioAt(Angle.FromRadians(2 * Math.PI * i / steps));
        }

        return Math.Abs((sum / steps) - 1) < 1e-9;
    });

    [Law]
    public Property Joint_PowerBalance_HoldsEverywhere() => Prop.ForAll(Uniform(0, 80), Uniform(-720, 720), (beta, theta) =>
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(beta));
        Angle rotation = Angle.FromDegrees(theta);
        double ratio = joint.SpeedRatioAt(rotation);
        return Math.Abs((ratio * joint.TorqueRatioAt(rotation)) - 1) < 1e-12
            && ratio <= joint.MaximumSpeedRatio * (1 + 1e-12) && ratio >= joint.MinimumSpeedRatio * (1 - 1e-12);
    });

    [Law]
    public Property Joint_DrivenRotation_NeverRunsBackwards() => Prop.ForAll(Uniform(0, 80), Uniform(-720, 720), (beta, theta) =>
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(beta));
        double before = joint.DrivenRotation(Angle.FromDegrees(theta)).Degrees;
        double after = joint.DrivenRotation(Angle.FromDegrees(theta + 0.5)).Degrees;
        return after > before && Math.Abs(before - theta) <= 90;
    });

    [Law]
    public Property Joint_OfItsNonUniformity_IsItself() => Prop.ForAll(Uniform(0.01, 85), degrees =>
        Math.Abs(UniversalJoint.OfNonUniformity(
            UniversalJoint.At(Angle.FromDegrees(degrees)).NonUniformity).Angle.Degrees - degrees) < 1e-9);

    [Law]
    public Property Torsion_FirstYield_NeverAboveFullPlastic() => Prop.ForAll(LogUniform(5, 200), Uniform(0.01, 0.99), (mm, bore) =>
    {
        ShaftSection tube = ShaftSection.Hollow(Length.FromMillimeters(mm), Length.FromMillimeters(mm * bore));
        double elastic = tube.SectionModulus!.Value.CubicMeters, plastic = tube.PlasticModulus!.Value.CubicMeters;
        return plastic > elastic && plastic <= elastic * 4 / 3 * (1 + 1e-12);
    });

    private static Arbitrary<double> Uniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low + ((high - low) * i / 1e6)).ToArbitrary();

    private static Arbitrary<double> LogUniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low * Math.Pow(high / low, i / 1e6)).ToArbitrary();
}
