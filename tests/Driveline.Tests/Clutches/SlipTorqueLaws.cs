using Driveline.Clutches;
using Driveline.Quantities;
using FsCheck.Xunit;
using UnitsNet;

namespace Driveline.Tests.Clutches;

[Properties(Arbitrary = [typeof(Shares)])]
public class SlipTorqueLaws
{
    [Law]
    public void Torque_FrictionClampAndFaces_IsLinear(Share mu, Share force, Share faces, Share ratio, Share factor)
    {
        double f = mu.Between(0.05, 0.6);
        double n = force.Log(10, 1e5);
        double k = factor.Between(0.2, 2.5); // friction and breakaway stay below the permitted 2
        int count = faces.Count(1, 12);
        double inner = 0.12 * ratio.Between(0.2, 0.95);
        double one = Nm(f, n, 1, inner);
        Assert.Equal(1, Nm(f, n, count, inner) / (count * one), 1e-12);
        Assert.Equal(1, Nm(f, n * k, 1, inner) / (k * one), 1e-12);
        Assert.Equal(1, Nm(f * k, n, 1, inner) / (k * one), 1e-12);
    }

    [Law]
    public void UniformPressure_AnyRing_IsNotBelowUniformWear(Share ratio)
    {
        DiscClutch clutch = Build.Pressed(0.35, 0.12, 0.12 * ratio.Between(0.01, 0.999), 2, 6000);
        double wear = Build.Expected(SlipTorque.Of(clutch, Build.Clean(RunInState.RunIn)).Running);
        double pressure = Build.Expected(SlipTorque.Of(clutch, Build.Clean(RunInState.New)).Running);
        Assert.True(pressure >= wear, $"{pressure} < {wear}");
        Assert.True(wear / pressure >= 0.75, "the least is 0.75, of a full disc");
    }

    [Fact]
    public void Torque_NoClamp_IsZero()
    {
        DiscClutch loose = Build.NineSprings().WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(50), Build.Stated));
        SlipTorque torque = SlipTorque.Of(loose, Build.Trusted(RunInState.NotKnown));
        Assert.Equal(0, torque.Running.High!.Value.NewtonMeters);
        Assert.Equal(0, torque.Breakaway.High!.Value.NewtonMeters);
    }

    [Law]
    public void Wear_CoilSprings_NeverRaisesTorque(Share wear, Share more)
    {
        double first = wear.Between(0, 6);
        double second = first + more.Between(0, 6);
        SlipTorque less = SlipTorque.Of(Build.NineSprings(), Worn(first));
        SlipTorque worn = SlipTorque.Of(Build.NineSprings(), Worn(second));
        Assert.True(worn.Running.Low <= less.Running.Low && worn.Running.Expected <= less.Running.Expected
            && worn.Running.High <= less.Running.High);

        static ClutchCondition Worn(double mm) => Build.Clean(RunInState.RunIn)
            .WithWear(LengthBand.Exactly(Length.FromMillimeters(mm), Build.Stated));
    }

    [Law]
    public void Length_WiderBand_NeverNarrowsTorque(Share length, Share tolerance, Share disc)
    {
        SpringPack pack = disc.Value < 0.5 ? Build.NinePack() : SpringPack.Of(SoftDisc());
        double travel = pack.TravelM * 1e3;
        double mm = (pack.SolidM * 1e3) + (travel * length.Between(0.1, 0.9));
        DiscClutch clutch = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Build.Exact(0.35), pack);
        SlipTorque exact = SlipTorque.Of(clutch.WithSpringLength(Length.FromMillimeters(mm), Length.Zero), Build.Trusted(RunInState.RunIn));
        SlipTorque wide = SlipTorque.Of(
            clutch.WithSpringLength(Length.FromMillimeters(mm), Length.FromMillimeters(travel * tolerance.Between(0, 0.09))),
            Build.Trusted(RunInState.RunIn));
        Assert.True(wide.Running.Low <= exact.Running.Low);
        Assert.True(wide.Running.High >= exact.Running.High);
    }

    [Law]
    public void SetThenPredict_AnyTorque_Closes(Share torque, Share disc, Share runIn)
    {
        SpringPack pack = disc.Value < 0.5 ? Build.NinePack() : DiscPack.Of(SoftDisc(), 2, 2, 1);
        var clutch = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Facings.MouldedLining, pack);
        ClutchCondition condition = Build.Trusted(runIn.Value < 0.5 ? RunInState.RunIn : RunInState.New)
            .WithSurface(SurfaceState.CleanInWork);
        double nm = torque.Between(0.02, 0.98) * pack.LargestN * 2 * 0.35 * 0.10625;
        ClutchSetting setting = ClutchSetting.For(clutch, Torque.FromNewtonMeters(nm), condition);
        Assert.True(setting.IsReached);
        SlipTorque back = SlipTorque.Of(
            clutch.WithSpringLength(LengthBand.Exactly(setting.SpringLength!.Value, Build.Stated)), condition.WithWear(Build.NoWear));
        Assert.Equal(1, Build.Expected(back.Running) / nm, 1e-9);
        Assert.Equal(1, Build.Expected(setting.Predicted!.Running) / nm, 1e-9);
    }

    [Law]
    public void Breakaway_AnySurface_IsNotBelowRunning(Share mu, Share state, Share runIn)
    {
        var surface = (SurfaceState)state.Count(0, 6);
        Facing facing = mu.Value < 0.3 ? Facings.SinteredMetal : mu.Value < 0.6 ? Facings.WovenLining : Facings.OfFrictionCode("FE");
        ClutchCondition condition = Build.Trusted((RunInState)runIn.Count(0, 2)).WithSurface(surface);
        SlipTorque torque = SlipTorque.Of(Build.NineSprings().WithFacing(facing), condition);
        Assert.True(torque.Breakaway.Low >= torque.Running.Low * 0.999999);
        Assert.True(torque.Breakaway.Expected >= torque.Running.Expected * 0.999999);
        Assert.True(torque.Breakaway.High >= torque.Running.High * 0.999999);
    }

    [Law]
    public void DroppingAFact_NeverNarrowsTheBand(Share which, Share facing, Share state, Share runIn, Share wear, Share disc)
    {
        SpringPack pack = disc.Value < 0.5 ? Build.NinePack() : SpringPack.Of(SoftDisc());
        var clutch = DiscClutch.Of(
            Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Facings.All[facing.Count(0, Facings.All.Count - 1)], pack)
            .WithSpringLength(LengthBand.Exactly(Length.FromMeters(pack.FreeM - (0.75 * pack.TravelM)), Build.Stated));
        ClutchCondition known = Build.Trusted((RunInState)runIn.Count(0, 2)).WithSurface((SurfaceState)state.Count(0, 6))
            .WithWear(LengthBand.Exactly(Length.FromMillimeters(wear.Between(0, 6.35)), Build.Stated));
        SlipTorque full = SlipTorque.Of(clutch, known);
        SlipTorque less = which.Count(0, 4) switch
        {
            0 => SlipTorque.Of(clutch, known.WithSurface(SurfaceState.NotKnown)),
            1 => SlipTorque.Of(clutch, known.WithRunIn(RunInState.NotKnown)),
            2 => SlipTorque.Of(clutch, ClutchCondition.AsOf(known.Day).WithSurface(known.Surface).WithRunIn(known.RunIn)),
            3 => SlipTorque.Of(clutch.WithFacing(Facings.NotKnown), known),
            _ => SlipTorque.Of(DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, clutch.Facing, pack), known),
        };
        Assert.True(less.Running.SiBand.Low <= full.Running.SiBand.Low + 1e-9);
        Assert.True(less.Running.SiBand.High >= full.Running.SiBand.High - 1e-9);
        Assert.True(less.Breakaway.SiBand.High >= full.Breakaway.SiBand.High - 1e-9);
    }

    internal static DiscSpring SoftDisc() => Din2093.Find('C', Length.FromMillimeters(100)).Spring;

    private static double Nm(double mu, double force, int faces, double innerM) =>
        Build.Expected(SlipTorque.Of(Build.Pressed(mu, 0.12, innerM, faces, force), Build.Clean(RunInState.RunIn)).Running);
}
