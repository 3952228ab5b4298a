using Driveline.Clutches;
using FsCheck.Xunit;
using UnitsNet;

namespace Driveline.Tests.Clutches;

[Properties(Arbitrary = [typeof(Shares)])]
public class SlipHeatLaws
{
    private static readonly ThermalMaterial Plate = ThermalMaterials.HighCarbonCastIron;
    private static readonly ThermalMaterial Lining = ThermalMaterials.MouldedFacing;

    [Law]
    public void Heat_Always_IsTorqueTimesSlipAngle(Share torque, Share inertia, Share speed, Share load)
    {
        double nm = torque.Log(10, 5000);
        SlipEvent slip = SlipEvent.StartUp(
            Torque.FromNewtonMeters(nm),
            MassMomentOfInertia.FromKilogramSquareMeters(inertia.Log(0.01, 100)),
            RotationalSpeed.FromRadiansPerSecond(speed.Log(1, 110)),
            Torque.FromNewtonMeters(nm * load.Between(0, 0.99)));
        Assert.Equal(1, slip.Energy!.Value.Joules / (nm * slip.SlipAngle!.Value.Radians), 1e-12);
    }

    [Law]
    public void StartUp_NoLoad_MakesRotorEnergyWhateverTheTorque(Share torque, Share inertia, Share speed)
    {
        double j = inertia.Log(0.01, 100);
        double w = speed.Log(1, 110);
        SlipEvent slip = SlipEvent.StartUp(
            Torque.FromNewtonMeters(torque.Log(10, 5000)), MassMomentOfInertia.FromKilogramSquareMeters(j),
                RotationalSpeed.FromRadiansPerSecond(w), Torque.Zero);
        Assert.Equal(1, slip.Energy!.Value.Joules / (j * w * w / 2), 1e-12);
    }

    // Steps of motion added one by one: an independent account of time and heat.
    [Law(MaxTest = 20)]
    public void TwoInertias_SteppedMotion_GivesSameTimeAndHeat(Share a, Share b, Share torque, Share drive, Share load)
    {
        double j1 = a.Log(0.1, 50);
        double j2 = b.Log(0.1, 50);
        double nm = torque.Log(50, 2000);
        double td = nm * drive.Between(-0.5, 0.9);
        double tl = nm * load.Between(0, 0.9);
        SlipEvent slip = SlipEvent.TwoInertias(
            Torque.FromNewtonMeters(nm), MassMomentOfInertia.FromKilogramSquareMeters(j1), MassMomentOfInertia.FromKilogramSquareMeters(j2),
            RotationalSpeed.FromRadiansPerSecond(56.5), Torque.FromNewtonMeters(td), Torque.FromNewtonMeters(tl));

        double w1 = 56.5;
        double w2 = 0;
        double heat = 0;
        double dt = slip.Duration!.Value.Seconds / 20000;
        int steps = 0;
        while (w1 > w2 && steps < 40000)
        {
            heat += nm * (w1 - w2) * dt;
            w1 += (td - nm) / j1 * dt;
            w2 += (nm - tl) / j2 * dt;
            steps++;
        }

        Assert.Equal(1, steps * dt / slip.Duration.Value.Seconds, 1e-3);
        Assert.Equal(1, heat / slip.Energy!.Value.Joules, 1e-3);
    }

    // Fourier numbers from the semi-infinite range, over the change at 0.05, to the warmed-through plate.
    [Theory]
    [InlineData(0.002)]
    [InlineData(0.02)]
    [InlineData(0.049)]
    [InlineData(0.051)]
    [InlineData(0.3)]
    [InlineData(2)]
    public void FaceRise_ConstantFlux_AgreesWithFiniteVolumes(double fourier)
    {
        const double L = 0.006;
        double t = fourier * L * L / Plate.DiffusivityM2PerS;
        double numeric = FiniteVolumeWall.One(Plate, L, 300).FaceRise(_ => 1e6, t, 700);
        Assert.Equal(1, 1e6 * PlateHeating.RisePerFlux(t, Plate, L) / numeric, 0.002);
        if (fourier < 0.05)
        {
            Assert.Equal(1, PlateHeating.SemiInfiniteRise(1e6, t, 0, Plate.WPerMK, Plate.DiffusivityM2PerS) / numeric, 0.002);
        }
    }

    [Fact]
    public void LumpedRise_WarmedThrough_AgreesWithFiniteVolumes()
    {
        const double L = 0.006;
        double t = 3 * L * L / Plate.DiffusivityM2PerS;
        FiniteVolumeWall wall = FiniteVolumeWall.One(Plate, L, 300);
        double face = wall.FaceRise(_ => 1e6, t, 500);
        double lumped = 1e6 * t / (Plate.KgPerM3 * Plate.JPerKgK * L);
        Assert.Equal(1, lumped / wall.FirstMean, 1e-6);
        Assert.True(lumped < face && lumped > 0.85 * face, $"lumped {lumped}, face {face}");
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.5)]
    [InlineData(3)]
    public void FaceRise_FallingFlux_AgreesWithFiniteVolumes(double fourier)
    {
        const double L = 0.006;
        double ts = fourier * L * L / Plate.DiffusivityM2PerS;
        foreach (double part in new[] { 0.25, 0.5, 1.0 })
        {
            double t = part * ts;
            double numeric = FiniteVolumeWall.One(Plate, L, 300).FaceRise(s => 1e6 * (1 - (s / ts)), t, 700);
            double ours = 1e6 * (PlateHeating.RisePerFlux(t, Plate, L) - (PlateHeating.RisePerFluxIntegral(t, Plate, L) / ts));
            Assert.Equal(1, ours / numeric, 0.003);
        }
    }

    [Fact]
    public void PlateShare_BothBodiesThick_AgreesWithFiniteVolumes()
    {
        // 5 s into 100 mm of iron and 20 mm of lining: heat has gone about 18 and 1 mm deep.
        FiniteVolumeWall walls = FiniteVolumeWall.Two(Plate, 0.1, Lining, 0.02, 800);
        double face = walls.FaceRise(_ => 1e6, 5, 500);
        double share = HeatPath.Of(Area.FromSquareMeters(1), 1, Plate, Length.FromMillimeters(100), Lining).PlateShare;
        Assert.Equal(1, walls.FirstStored / (share * 1e6 * 5), 0.003);
        Assert.Equal(1, share * 1e6 * PlateHeating.SemiInfiniteRisePerFlux(5, Plate) / face, 0.003);
    }

    [Law]
    public void StepResponse_Rate_IsItsDerivative(Share time)
    {
        const double L = 0.006;
        double t = time.Log(1e-3, 1) * L * L / Plate.DiffusivityM2PerS * 5;
        double h = t * 1e-4;
        double rate = (PlateHeating.RisePerFlux(t + h, Plate, L) - PlateHeating.RisePerFlux(t - h, Plate, L)) / (2 * h);
        Assert.Equal(1, PlateHeating.RisePerFluxRate(t, Plate, L) / rate, 1e-5);
        double back = (PlateHeating.RisePerFluxIntegral(t + h, Plate, L) - PlateHeating.RisePerFluxIntegral(t - h, Plate, L)) / (2 * h);
        Assert.Equal(1, PlateHeating.RisePerFlux(t, Plate, L) / back, 1e-5);
    }

    [Law]
    public void TimeToMaximum_MoreTorque_IsNeverLater(Share torque, Share more)
    {
        double nm = torque.Log(100, 2000);
        double first = Time(nm);
        double second = Time(nm * more.Between(1, 3));
        Assert.True(second <= first * (1 + 1e-9));

        static double Time(double nm)
        {
            SlipEvent slip = SlipEvent.Blocked(Torque.FromNewtonMeters(nm), RotationalSpeed.FromRevolutionsPerMinute(540));
            HeatPath path = HeatPath.Of(Build.NineSprings().FaceArea, 2, Plate, Length.FromMillimeters(8), Lining);
            return SlipHeat.Of(slip, path, Facings.MouldedLining, Temperature.FromDegreesCelsius(20)).TimeToMaximum!.Value.Seconds;
        }
    }
}
