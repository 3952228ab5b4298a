using Driveline.Provenance;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearPinSizePublished
{
    private const string Homework = "mechanics homework: mower shear pin, 60 hp at 540 min-1, 1.25 in shaft, 26 ksi, answer 0.5238 in";

    // 60 hp × 550 ft·lbf/s over 540 min⁻¹ is 583.57 lbf·ft.
    [Fact]
    public void Diameter_MowerShearPin_IsThePublishedAnswer()
    {
        Length pin = ShearPinSize.Diameter(
            Torque.FromPoundForceFeet(583.57), 2, Length.FromInches(1.25 / 2), Pressure.FromKilopoundsForcePerSquareInch(26));
        Close.Relative(0.5238, pin.Inches, 0.001, Homework);
        Close.Relative(13.304, pin.Millimeters, 0.001, Homework);
    }

    [Fact]
    public void BreakTorque_PublishedPin_GivesTheTorqueBack()
    {
        NoSteps none = default;
        double radius = 0.625 * 0.0254, diameter = 0.5238 * 0.0254;
        double nm = BreakTorque.NewtonMeters(2, Math.PI / 4 * diameter * diameter, 26e3 * 6894.757, radius, ref none);
        Close.Relative(791.2, nm, 0.001, Homework + "; torque computed in the pack");
    }
}
