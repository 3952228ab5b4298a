using Driveline.Clutches;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipHeatPublished
{
    private static readonly Basis Printed = Basis.Given("the printed example");

    // Ex 10.27: I 800 · 0.2² = 32 and 1300 · 0.18² = 42.12 kg·m², 1250 rpm, clutch 220/160 mm, 570 N, μ 0.35, 2 faces: 37.9 N·m.
    [Theory]
    [InlineData(0, 62.8, 0.05, "SH01 Khurmi & Gupta, Theory of Machines, Ex 10.27, free")]
    [InlineData(-60, 33.1, 0.05, "SH01, 60 N·m resisting the motor shaft")]
    [InlineData(60, 624, 1, "SH01, 60 N·m driving the motor shaft; exact 624.9 with the torque not rounded")]
    public void TwoInertias_PrintedExample_TakesPrintedTime(double drivingNm, double seconds, double tolerance, string source)
    {
        SlipEvent slip = Engage(drivingNm);
        Close.Absolute(seconds, slip.Duration!.Value.Seconds, tolerance, source);
    }

    [Fact]
    public void TwoInertias_PrintedExample_GivesPrintedHeat()
    {
        Close.Cite("SH01");   // 156000 N·m, rounded to thousands
        Close.Within(156000.0, Engage(0).Energy!.Value.Joules, 500.0);
    }

    [Theory]
    [InlineData(44.33, 7.2, 300, 5.1, 0.05, 3553.06, 0.01, "SH02 Jindal, Machine Design, Ex 22-1")]
    [InlineData(7.824, 0.30375, 1000, 4.1, 0.05, 1674, 8.6, "SH03 Khurmi & Gupta, Ex 10.34: printed from 7.8 N·m and 4.1 s, both rounded")]
    [InlineData(35.343, 9.375, 1440, 40, 0.005, 106592, 5, "SH04 Bhandari, Ex 11.11: 106.59 kJ in 40 s")]
    [InlineData(3454.36, 141.372, 350, 1.5, 0.0005, 94956.7, 0.5, "SH05 Bhandari, Ex 12.1: a brake, same arithmetic")]
    public void StartUp_PrintedExample_Matches(double nm, double inertia, double rpm, double seconds, double secondsTolerance,
        double joules, double joulesTolerance, string source)
    {
        SlipEvent slip = SlipEvent.StartUp(
            Torque.FromNewtonMeters(nm), MassMomentOfInertia.FromKilogramSquareMeters(inertia),
                RotationalSpeed.FromRevolutionsPerMinute(rpm), Torque.Zero);
        Close.Absolute(seconds, slip.Duration!.Value.Seconds, secondsTolerance, source);
        Close.Absolute(joules, slip.Energy!.Value.Joules, joulesTolerance, source);
    }

    [Fact]
    public void LumpedRise_PrintedBrake_Matches()
    {
        Close.Cite("SH07");

        // SH07 Wentzell, Ex 16.5: 289619.6 ft·lb into 40 lb of drums, c = 93 ft·lb/(lb·°F): 77.85 °F = 43.25 K.
        RepeatedSlips brake = RepeatedSlips.Of(
            Energy.FromFootPounds(289619.6),
            Mass.FromPounds(40),
            Material(93 * 1.3558179483 / (0.45359237 / 1.8)),
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(20),
            Area.FromSquareMeters(1),
            Temperature.FromDegreesCelsius(20),
            Duration.FromMinutes(10));
        Close.Within(43.25, brake.RisePerSlip.Kelvins, 0.006);
    }

    [Fact]
    public void LumpedRise_PrintedDrum_Matches()
    {
        Close.Cite("SH11");   // Jindal, Ex 23-5: 49307.97 N·m into a drum of 12 kg, c = 460 J/(kg·K): 8.93 K.
        RepeatedSlips brake = RepeatedSlips.Of(
            Energy.FromJoules(49307.97),
            Mass.FromKilograms(12),
            Material(460),
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(20),
            Area.FromSquareMeters(1),
            Temperature.FromDegreesCelsius(20),
            Duration.FromMinutes(10));
        Close.Within(8.93, brake.RisePerSlip.Kelvins, 0.005);
    }

    [Theory]
    [InlineData(0.025, 79.3, 0.05, "SH09 Holman, Ex 4.2: at 25 mm")]
    [InlineData(0, 199.4, 0.05, "SH09 Holman, Ex 4.2: face")]
    public void SemiInfinite_ConstantFlux_MatchesPrinted(double depthM, double celsius, double tolerance, string source)
    {
        double rise = PlateHeating.SemiInfiniteRise(3.2e5, 30, depthM, 45, 1.4e-5);
        Close.Absolute(celsius, 35 + rise, tolerance, source);
    }

    [Fact]
    public void SemiInfinite_Pulse_MatchesPrinted()
    {
        Close.Cite("SH10");
        Close.Within(513, 40 + PlateHeating.PulseRise(1e7, 2, 0.002, 7800.0 * 460, 0.44e-5), 0.5);
    }

    [Theory]
    [InlineData(0.8828, 0.00006, "P1: cast iron 4 % C and moulded facing")]
    [InlineData(0.9170, 0.00006, "P2: carbon steel 0.5 % and woven facing")]
    [InlineData(0.6875, 0.00006, "P3: carbon steel 0.5 % and sintered facing")]
    public void PlateShare_PrintedPair_Matches(double expected, double tolerance, string source)
    {
        (ThermalMaterial plate, ThermalMaterial facing) = source[..2] switch
        {
            "P1" => (ThermalMaterials.HighCarbonCastIron, ThermalMaterials.MouldedFacing),
            "P2" => (ThermalMaterials.MediumCarbonSteel, ThermalMaterials.WovenFacing),
            _ => (ThermalMaterials.MediumCarbonSteel, ThermalMaterials.SinteredFacing),
        };
        HeatPath path = HeatPath.Of(Area.FromSquareMeters(0.02), 2, plate, Length.FromMillimeters(5), facing);
        Close.Absolute(expected, path.PlateShare, tolerance, source);
    }

    [Theory]
    [InlineData("M1", "resin-based facing, moulded", 1673.3)]
    [InlineData("M2", "resin-based facing, woven or wound", 1264.9)]
    [InlineData("M3", "sintered metal facing", 6349.8)]
    [InlineData("M6", "plain carbon steel", 14360)]
    [InlineData("M8", "grey cast iron", 12937)]
    [InlineData("M9", "steel, 0.5 % carbon", 13972)]
    [InlineData("M10", "cast iron, 4 % carbon", 12602)]
    public void ThermalMaterial_Held_IsTheReferenceRow(string id, string name, double effusivity)
    {
        ReferenceRow row = ReferenceTable.Read("clutch", "slip-heat-examples.csv").Single(r => r["id"] == id);
        ThermalMaterial held = ThermalMaterials.All.Single(m => m.Name == name);
        Close.Within(row.Number("k_W_per_mK"), held.Conductivity.WattsPerMeterKelvin, 1e-9);
        Close.Within(row.Number("rho_kg_per_m3"), held.Density.KilogramsPerCubicMeter, 1e-9);
        Close.Within(row.Number("c_J_per_kgK"), held.HeatCapacity.JoulesPerKilogramKelvin, 1e-9);
        Close.Within(effusivity, held.Effusivity, effusivity * 1e-4);
        BasisKind kind = row["confidence"].StartsWith("primary", StringComparison.Ordinal) ? BasisKind.Published
            : row["confidence"].StartsWith("secondary", StringComparison.Ordinal) ? BasisKind.CommonPractice
            : BasisKind.FromMemory;
        Assert.Equal(kind, held.Basis.Kind);
    }

    [Theory]
    [InlineData("organic clutch lining, new", 8.3e-7, 0.005e-7, "M4 Applied Sciences 9, 4287, Table A2")]
    [InlineData("organic clutch lining, worn", 4.6e-7, 0.005e-7, "M5 Applied Sciences 9, 4287, Table A2")]
    public void ThermalMaterial_OrganicLining_HasPrintedDiffusivity(string name, double expected, double tolerance, string source)
    {
        ThermalMaterial held = ThermalMaterials.All.Single(m => m.Name == name);
        Close.Absolute(expected, held.DiffusivityM2PerS, tolerance, source);
    }

    private static SlipEvent Engage(double drivingNm)
    {
        double nm = Build.Expected(SlipTorque.Of(Build.Pressed(0.35, 0.11, 0.08, 2, 570), Build.Trusted(RunInState.RunIn)).Running);
        return SlipEvent.TwoInertias(
            Torque.FromNewtonMeters(nm),
            MassMomentOfInertia.FromKilogramSquareMeters(32),
            MassMomentOfInertia.FromKilogramSquareMeters(42.12),
            RotationalSpeed.FromRevolutionsPerMinute(1250),
            Torque.FromNewtonMeters(drivingNm),
            Torque.Zero);
    }

    internal static ThermalMaterial Material(double jPerKgK) => ThermalMaterial.Of(
        "printed", ThermalConductivity.FromWattsPerMeterKelvin(50), Density.FromKilogramsPerCubicMeter(7800),
            SpecificEntropy.FromJoulesPerKilogramKelvin(jPerKgK), Printed);
}
