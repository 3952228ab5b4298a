using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>Clutches and conditions that several tests start from.</summary>
internal static class Build
{
    public static readonly DateTime Today = new(2026, 5, 4);

    public static readonly Basis Stated = Basis.Given("the test");

    public static readonly LengthBand NoWear = LengthBand.Exactly(Length.Zero, Stated);

    public static ClutchCondition Clean(RunInState runIn) => ClutchCondition.AsOf(Today)
        .WithSurface(SurfaceState.Dry).WithRunIn(runIn).WithWear(NoWear);

    public static ClutchCondition Trusted(RunInState runIn) =>
        Clean(runIn).WithStorage(Today.AddDays(-40), 5).WithSlipTest(SlipTest.Slipped(Today.AddDays(-2)));

    /// <summary>A clutch of exact friction whose springs press with a force when 5 mm compressed.</summary>
    public static DiscClutch Pressed(double mu, double outerRadiusM, double innerRadiusM, int faces, double forceN) => DiscClutch.Of(
            Length.FromMeters(2 * outerRadiusM), Length.FromMeters(2 * innerRadiusM), faces, Exact(mu), Springs(forceN))
        .WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(45), Stated));

    public static Facing Exact(double mu) => Facing.OfFriction("exact", RatioBand.Exactly(mu, Stated))
        .WithBreakaway(RatioBand.Exactly(mu * 1.2, Stated));

    /// <summary>One spring 50 mm free, 40 mm solid, that gives a force at 45 mm.</summary>
    public static SpringPack Springs(double forceN) => SpringPack.Of(
        CoilSpring.OfRate(ForcePerLength.FromNewtonsPerMillimeter(Math.Max(forceN, 1e-9) / 5), Length.FromMillimeters(50),
            Length.FromMillimeters(40), Stated), 1);

    /// <summary>250/175 mm, 2 faces, μ 0.35, 9 springs of 160 N/mm set to 5 mm of deflection.</summary>
    public static DiscClutch NineSprings() =>
        DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Exact(0.35), NinePack())
        .WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(45), Stated));

    public static SpringPack NinePack() => SpringPack.Of(
        CoilSpring.OfRate(ForcePerLength.FromNewtonsPerMillimeter(160), Length.FromMillimeters(50), Length.FromMillimeters(40), Stated), 9);

    public static double Expected(TorqueBand band) => band.Expected!.Value.NewtonMeters;
}
