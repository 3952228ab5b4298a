using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class ClutchSettingTests
{
    private static readonly Length Pitch = Length.FromMillimeters(1.5);

    [Fact]
    public void For_DocumentedExample_Matches()
    {
        // hand: F = 535.5 / (2 × 0.35 × 0.10625) = 7200 N; 7200 / 1440 N/mm = 5 mm; 535.5 / 5 = 107.1 N·m for a millimeter; 160.65 N·m a
        // turn
        ClutchSetting setting = ClutchSetting.For(
            Build.NineSprings(), Torque.FromNewtonMeters(535.5), Build.Clean(RunInState.RunIn), Pitch);
        Assert.Equal(7200, setting.ClampForce.Newtons, 1e-6);
        Assert.Equal(5, setting.Deflection!.Value.Millimeters, 1e-9);
        Assert.Equal(45, setting.SpringLength!.Value.Millimeters, 1e-9);
        Assert.Equal(5, setting.TravelLeft!.Value.Millimeters, 1e-9);
        Assert.Equal(10.0 / 3, setting.NutTurns!.Value, 1e-9);
        Assert.Equal(160.65, setting.TorquePerTurn!.Value.NewtonMeters, 1e-6);
        Assert.Equal(107.1, setting.TorqueLostPerMillimeterOfWear!.Value.NewtonMeters, 1e-6);
        Assert.Equal(2, setting.TurnsFrom(Length.FromMillimeters(48))!.Value, 1e-9);
        Assert.Equal(-2, setting.TurnsFrom(Length.FromMillimeters(42))!.Value, 1e-9);
    }

    [Fact]
    public void Sheet_GoesToTheLengthAndComesBackToTheTorque()
    {
        // hand: 535.5 N·m asks for 7200 N, 5 mm and 50 - 5 = 45 mm; 1440 N/mm · 5 mm = 7200 N, 2 · 0.35 · 7200 · 0.10625 = 535.5 N·m
        IReadOnlyList<CalculationLine> lines = ClutchSetting.For(
            Build.NineSprings(), Torque.FromNewtonMeters(535.5), Build.Clean(RunInState.RunIn)).Sheet();
        Assert.Equal(0.045, lines.First(l => l.Formula.Code == "lengthNeeded").Value, 1e-9);
        Assert.Equal(7200, lines.First(l => l.Formula.Code == "clampNeeded").Value, 1e-6);
        Assert.Equal(7200, lines.First(l => l.Formula.Code == "clampForce").Value, 1e-6);
        Assert.Equal(535.5, lines[^1].Value, 1e-6);
        Assert.Empty(ClutchSetting.For(Build.NineSprings(), Torque.FromNewtonMeters(5e4), Build.Clean(RunInState.RunIn)).Sheet());
    }

    [Fact]
    public void NutTurns_CountedBack_GiveTheSameTorque()
    {
        // Example of the documentation: free length 50 mm, 4 turns of 1.5 mm pitch: 44 mm.
        Assert.Equal(44, Build.NineSprings().WithNutTurns(4, Pitch).SpringLength!.Expected!.Value.Millimeters, 1e-9);
        SlipTorque torque = SlipTorque.Of(Build.NineSprings().WithNutTurns(10.0 / 3, Pitch), Build.Clean(RunInState.RunIn));
        Assert.Equal(535.5, Build.Expected(torque.Running), 1e-6);
    }

    [Theory]
    [InlineData(1070.9, true)]
    [InlineData(1071.1, false)]
    public void For_TorqueAtSolid_IsTheLimit(double nm, bool reached)
    {
        // hand: solid at 10 mm: 14400 N × 2 × 0.35 × 0.10625 = 1071 N·m
        ClutchSetting setting = ClutchSetting.For(Build.NineSprings(), Torque.FromNewtonMeters(nm), Build.Clean(RunInState.RunIn), Pitch);
        Assert.Equal(reached, setting.IsReached);
        Assert.Equal(!reached, setting.Findings.Any(f => f.Code == ClutchFindings.SettingNotReached));
        Assert.Equal(reached, setting.SpringLength is not null && setting.NutTurns is not null && setting.Predicted is not null);
    }

    [Theory]
    [InlineData(963, false)]
    [InlineData(965, true)]
    public void For_ReserveBelowTenth_IsFound(double nm, bool little)
    {
        // hand: 9 mm of 10 mm travel: 963.9 N·m
        ClutchSetting setting = ClutchSetting.For(Build.NineSprings(), Torque.FromNewtonMeters(nm), Build.Clean(RunInState.RunIn));
        Assert.Equal(little, setting.Findings.Any(f => f.Code == ClutchFindings.LittleTravelLeft));
        Assert.Null(setting.NutTurns);
    }

    [Theory]
    [InlineData(170, ClutchFindings.NoWearTravel)]
    [InlineData(171, ClutchFindings.WearTakesTorque)]
    [InlineData(850, ClutchFindings.WearTakesTorque)]
    [InlineData(851, null)]
    public void For_WearTravel_IsJudged(double nm, string? code)
    {
        // hand: two linings lose 1.588 mm: 107.1 × 1.588 = 170.07 N·m is all of the deflection; 20 % of it at 7.94 mm = 850.4 N·m
        ClutchSetting setting = ClutchSetting.For(Build.NineSprings(), Torque.FromNewtonMeters(nm), Build.Clean(RunInState.RunIn));
        Assert.Equal(
            code, setting.Findings.FirstOrDefault(f => f.Code is ClutchFindings.NoWearTravel or ClutchFindings.WearTakesTorque)?.Code);
    }

    [Fact]
    public void For_SoftDiscSpring_HoldsTorqueThroughWear()
    {
        // hand: coils pressed 2.625 mm lose 0.3 / 2.625 = 11.4 % by 0.3 mm of wear; the soft series C near 0.75 h0 less than a third of
        // that.
        Din2093Spring soft = Din2093.Find('C', Length.FromMillimeters(100));
        DiscClutch clutch = DiscClutch.Of(
            Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Build.Exact(0.35), SpringPack.Of(soft.Spring))
            .WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(6.2 - 2.625), Build.Stated));
        double set = Build.Expected(SlipTorque.Of(clutch, Build.Clean(RunInState.RunIn)).Running);
        double worn = Build.Expected(
            SlipTorque.Of(
            clutch, Build.Clean(RunInState.RunIn).WithWear(LengthBand.Exactly(Length.FromMillimeters(0.3), Build.Stated))).Running);
        Assert.InRange(1 - (worn / set), 0, 0.114 / 3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void For_NoTorque_IsRefused(double nm) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ClutchSetting.For(Build.NineSprings(), Torque.FromNewtonMeters(nm), Build.Clean(RunInState.RunIn)));

    [Theory]
    [InlineData(0)]
    [InlineData(10.1)]
    public void For_BadPitch_IsRefused(double mm) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ClutchSetting.For(
            Build.NineSprings(), Torque.FromNewtonMeters(500), Build.Clean(RunInState.RunIn), Length.FromMillimeters(mm)));
}
