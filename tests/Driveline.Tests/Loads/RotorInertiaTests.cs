using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class RotorInertiaTests
{
    public static TheoryData<string, object, double, double, string> Bodies() => new()
    {
        { "bar", RotatingBody.Bar(Kg(20), M(0.9)), 1.35, 1.35, "hand: 20 × 0.81 / 12" },
        { "wide bar", RotatingBody.Bar(Kg(20), M(0.9), M(0.15)), 1.3875, 1.3875, "hand: 20 × (0.81 + 0.0225) / 12" },
        { "disc", RotatingBody.Disc(Kg(30), M(0.4)), 2.4, 2.4, "hand: 30 × 0.16 / 2" },
        { "ring", RotatingBody.Ring(Kg(25), M(0.3), M(0.25)), 1.90625, 1.90625, "hand: 25 × (0.09 + 0.0625) / 2" },
        { "thin ring", RotatingBody.Ring(Kg(25), M(0.3), M(0.3)), 2.25, 2.25, "hand: 25 × 0.09" },
        { "swinging blade", RotatingBody.SwingingBlade(Kg(6), M(0.45), M(0.3)), 1.755, 0.135,
            "hand: 6 × (0.2025 / 12 + 0.525²); 6 / 4 × 0.09" },
        { "fixed blade", RotatingBody.FixedBlade(Kg(6), M(0.45), M(0.3)), 1.755, 1.755, "hand: 6 × (0.2025 / 12 + 0.525²)" },
        { "blade on the axis", RotatingBody.SwingingBlade(Kg(6), M(0.45), M(0)), 0.405, 0, "hand: 6 × 0.2025 / 3" },
        { "flail", RotatingBody.Flail(Kg(0.8), M(0.22), M(0.12)), 0.03872, 0.00288, "hand: 0.8 × 0.0484; 0.2 × 0.0144" },
        { "gyration", RotatingBody.OfGyration(Kg(40), M(0.35)), 4.9, 4.9, "hand: 40 × 0.1225" },
    };

    [Theory]
    [MemberData(nameof(Bodies))]
    public void RotatingBody_Shape_HasItsInertia(string name, object shape, double kgM2, double shockKgM2, string source)
    {
        var body = (RotatingBody)shape;
        Assert.NotEmpty(name);
        Close.Relative(kgM2, body.Inertia.Expected!.Value.KilogramSquareMeters, 1e-12, source);
        Close.Absolute(shockKgM2, body.Shock.Expected!.Value.KilogramSquareMeters, 1e-12, source);
        Assert.Equal(name.StartsWith("swinging", StringComparison.Ordinal) || name is "flail" or "blade on the axis", body.IsSwinging);
        Assert.NotEmpty(body.Lines);
    }

    // An even disc is the least a dished pan has, a rim the most.
    [Fact]
    public void Pan_OfMassAndRadius_LiesBetweenDiscAndRim()
    {
        RotatingBody pan = RotatingBody.Pan(Kg(30), M(0.4));
        Close.Relative(2.4, pan.Inertia.Low.KilogramSquareMeters, 1e-12, "hand: 30 × 0.16 / 2");
        Close.Relative(4.8, pan.Inertia.High!.Value.KilogramSquareMeters, 1e-12, "hand: 30 × 0.16");
        Assert.Equal(BasisKind.CommonPractice, pan.Inertia.WeakestBasis.Kind);
    }

    // Two swinging blades, a carrier bar and a pan: 2 × 1.755 + 1.35 + 2.4 = 7.26; in a shock 2 × 0.135 + 1.35 + 2.4 = 4.02.
    [Fact]
    public void RotorInertia_OfBladesBarAndPan_IsTheirSum()
    {
        RotorInertia rotor = RotorInertia.Of(2, RotatingBody.SwingingBlade(Kg(6), M(0.45), M(0.3)))
            .And(RotatingBody.Bar(Kg(20), M(0.9)))
            .And(RotatingBody.Pan(Kg(30), M(0.4)));
        Close.Relative(7.26, rotor.Inertia.Low.KilogramSquareMeters, 1e-12, "hand");
        Close.Relative(9.66, rotor.Inertia.High!.Value.KilogramSquareMeters, 1e-12, "hand: the pan as a rim, 4.8");
        Close.Relative(4.02, rotor.ShockInertia.Low.KilogramSquareMeters, 1e-12, "hand");
        Assert.True(rotor.HasSwingingBlades);
        Close.Relative(7.26 * 2.1609, rotor.AtPto(1.47).Low.KilogramSquareMeters, 1e-12, "hand: × 1.47²");
        Close.Relative(4.02 * 2.1609, rotor.ShockAtPto(1.47).Low.KilogramSquareMeters, 1e-12, "hand: × 1.47²");
    }

    [Fact]
    public void WithTolerance_Share_WidensBothEnds()
    {
        InertiaBand disc = RotatingBody.Disc(Kg(30), M(0.4)).WithTolerance(0.25).Inertia;
        Close.Relative(1.8, disc.Low.KilogramSquareMeters, 1e-12, "hand: 2.4 × 0.75");
        Close.Relative(2.4, disc.Expected!.Value.KilogramSquareMeters, 1e-12, "hand");
        Close.Relative(3.0, disc.High!.Value.KilogramSquareMeters, 1e-12, "hand: 2.4 × 1.25");
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Disc(Kg(1), M(1)).WithTolerance(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Disc(Kg(1), M(1)).WithTolerance(-0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Disc(Kg(1), M(1)).WithTolerance(double.NaN));
    }

    [Fact]
    public void RotatingBody_BadSizes_AreRefusedByName()
    {
        Assert.Contains("Mass must be a finite value above 0 kg; got 0 kg",
            Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Disc(Kg(0), M(1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Bar(Kg(1), M(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.SwingingBlade(Kg(1), M(0.4), M(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Ring(Kg(1), M(0.3), M(0.31)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotatingBody.Flail(Kg(1), M(0.1), M(0.12)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotorInertia.Of(0, RotatingBody.Disc(Kg(1), M(1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotorInertia.Of(1001, RotatingBody.Disc(Kg(1), M(1))));
        Assert.Throws<ArgumentNullException>(() => RotorInertia.Of(null!));
    }

    [Theory]
    [InlineData(0.009)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void AtPto_RatioOutOfRange_IsRefused(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RotorInertia.Stated(KgM2(1)).AtPto(ratio));

    // Hand: ½ × 2 × (80² − 70²) = 1500 J; back: 2 × 1500 / 1500 = 2 kg·m².
    [Fact]
    public void EnergyOfDip_LoggedSpeeds_GivesEnergyAndInertiaBack()
    {
        RotorInertia rotor = RotorInertia.Stated(KgM2(2));
        Close.Relative(1500, rotor.EnergyOfDip(RadPerS(80), RadPerS(70)).Expected!.Value.Joules, 1e-12, "hand");
        Close.Relative(2, RotorInertia.FromDip(Energy.FromJoules(1500), RadPerS(80), RadPerS(70)).KilogramSquareMeters, 1e-12, "hand");
        Assert.Throws<ArgumentOutOfRangeException>(() => rotor.EnergyOfDip(RadPerS(70), RadPerS(70)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RotorInertia.FromDip(Energy.Zero, RadPerS(80), RadPerS(70)));
    }

    [Theory]
    [InlineData(96.5, 0)]
    [InlineData(96.6, 1)]
    [InlineData(20, 0)]
    [InlineData(19.9, 1)]
    public void TipSpeed_AtTheEdges_IsNoticedOnOneSide(double metersPerSecond, int findings) =>
        Assert.Equal(findings, TipSpeed.Stated(Speed.FromMetersPerSecond(metersPerSecond)).Check().Count);

    private static Mass Kg(double value) => Mass.FromKilograms(value);

    private static Length M(double value) => Length.FromMeters(value);

    private static RotationalSpeed RadPerS(double value) => RotationalSpeed.FromRadiansPerSecond(value);
}
