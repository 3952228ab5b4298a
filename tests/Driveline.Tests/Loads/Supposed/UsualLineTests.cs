using System.Globalization;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Loads;

/// <summary>Usual stiffness and inertia against their table, and between its rows.</summary>
public class UsualLineTests
{
    [Fact]
    public void Usual_EveryRowOfTheTable_IsHeldFromMemory()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "usual-lines.csv"))
        {
            QuantityBand band = row["what"] == "PtoShaft" ? UsualStiffness.OfPtoShaft(Series(row["where"]))
                : UsualInertia.OfRotor(Machine(row["what"], row["where"]))!;
            Close.Relative(double.Parse(row["low"], CultureInfo.InvariantCulture), band.SiBand.Low, 1e-9, row["what"]);
            Close.Relative(double.Parse(row["high"], CultureInfo.InvariantCulture), band.SiBand.High, 1e-9, row["what"]);
            Assert.Equal(BasisKind.FromMemory, band.WeakestBasis.Kind);
        }
    }

    [Fact]
    public void OfRotor_CutterBetweenTwoRows_FollowsThePowerLaw()
    {
        // 1.65 m: ln(6.4/3.5)/ln(1.8/1.5) = 3.310; 3.5 · 1.1^3.310 = 4.798. ln(9.9/5.5)/ln 1.2 = 3.224; 5.5 · 1.1^3.224 = 7.478.
        Band band = UsualInertia.OfRotor(UsualMachine.Of(MachineKind.RotaryCutter).WithWidth(Length.FromMeters(1.65)))!.SiBand;
        Assert.Equal(4.798, band.Low, 3);
        Assert.Equal(7.478, band.High, 3);
        Assert.Equal(5.990, band.Expected, 3);   // √(4.798 · 7.478)
    }

    [Theory]
    [InlineData(MachineKind.RotaryCutter, 4.5)]
    [InlineData(MachineKind.RotaryCutter, null)]
    [InlineData(MachineKind.FlailMower, null)]
    [InlineData(MachineKind.SnowBlower, 1.5)]
    [InlineData(MachineKind.NotKnown, 1.5)]
    public void OfRotor_WidthOrKindWithoutARow_IsNotKnown(MachineKind kind, double? meters)
    {
        UsualMachine machine = UsualMachine.Of(kind);
        Assert.Null(UsualInertia.OfRotor(meters is { } m ? machine.WithWidth(Length.FromMeters(m)) : machine));
    }

    private static JointSeries? Series(string where) =>
        where == "not known" ? null : JointSeries.All.Single(s => "series " + s.Number == where);

    // hand: flails turn at 1800 to 3000 min⁻¹, which a PTO of 540 reaches with 3.33 to 5.56; one of 20 min⁻¹ would need 90 to 150
    [Theory]
    [InlineData(540, true)]
    [InlineData(20, false)]
    public void Ratio_ThatNoGearboxHas_IsNotSupposed(double rpm, bool supposed) =>
        Assert.Equal(supposed, UsualDrive.Ratio(UsualMachine.Of(MachineKind.FlailMower), rpm * Math.PI / 30) is not null);

    private static UsualMachine Machine(string kind, string width)
    {
        UsualMachine machine = UsualMachine.Of(Enum.Parse<MachineKind>(kind));
        return width == "any" ? machine
            : machine.WithWidth(Length.FromMeters(double.Parse(width, CultureInfo.InvariantCulture)));
    }
}
