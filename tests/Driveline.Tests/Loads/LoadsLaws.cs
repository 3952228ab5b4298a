using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class LoadsLaws
{
    [Law]
    public Property Inertia_ReferredAndBack_IsItself() => Prop.ForAll(LogUniform(1e-3, 1e3), LogUniform(0.02, 50), (kgM2, ratio) =>
    {
        InertiaBand there = RotorInertia.Stated(KgM2(kgM2)).AtPto(ratio);
        double back = RotorInertia.Stated(there).AtPto(1 / ratio).Expected!.Value.KilogramSquareMeters;
        return Math.Abs(back - kgM2) <= 1e-12 * kgM2;
    });

    [Law]
    public Property Energy_AtRotorAndAtPto_IsTheSame() =>
        Prop.ForAll(LogUniform(1e-3, 1e3), LogUniform(0.02, 50), LogUniform(1, 200), (kgM2, ratio, omega) =>
    {
        RotorInertia rotor = RotorInertia.Stated(KgM2(kgM2));
        double own = rotor.EnergyAt(RotationalSpeed.FromRadiansPerSecond(omega * ratio)).Expected!.Value.Joules;
        double pto = RotorInertia.Stated(rotor.AtPto(ratio)).EnergyAt(RotationalSpeed.FromRadiansPerSecond(omega)).Expected!.Value.Joules;
        return Math.Abs(own - pto) <= 1e-12 * own;
    });

    // Impact torque and stored twist are the same whether computed at the part or at the PTO: T_pto = T · i.
    [Law]
    public Property Impact_AtPartAndAtPto_IsTheSameBlow() =>
        Prop.ForAll(LogUniform(1e-3, 1e2), LogUniform(0.02, 50), LogUniform(10, 1e5), (kgM2, ratio, k) =>
    {
        NoSteps none = default;
        double part = StrikeKernel.ImpactNm(0, 50 * ratio, kgM2, k, ref none);
        double pto = StrikeKernel.ImpactNm(
            0,
            50,
            RotorInertia.Stated(KgM2(kgM2)).AtPto(ratio).SiBand.Expected,
            LineStiffness.Stated(NmPerRad(k)).AtPto(ratio).Stiffness.SiBand.Expected,
            ref none);
        return Math.Abs(pto - (part * ratio)) <= 1e-12 * pto;
    });

    [Law]
    public Property EngagementHeat_WithoutLoad_DoesNotDependOnTheClutch() => Prop.ForAll(
        LogUniform(10, 1e4), LogUniform(10, 1e4), LogUniform(0.05, 50), (one, other, kgM2) =>
        {
            EngagementTorque start = Start(one, kgM2, 50);
            EngagementTorque again = Start(other, kgM2, 50);
            return start.SlipHeat!.SiBand.Equals(again.SlipHeat!.SiBand)
                && Math.Abs(start.SlipHeat.SiBand.High - (kgM2 * 1250)) <= 1e-9 * kgM2 * 1250;
        });

    // Energy that leaves a drive held at its speed, T ω t, is heat plus what the rotor stores.
    [Law]
    public Property Engagement_DriveWork_IsHeatPlusStoredPlusLoadWork() => Prop.ForAll(
        LogUniform(100, 5000), LogUniform(0.05, 50), Uniform(0, 0.9), (clutch, kgM2, share) =>
        {
            double load = share * clutch;
            NoSteps none = default;
            double t = SlipKernel.TimeS(50, clutch, double.PositiveInfinity, kgM2, 0, load, ref none);
            double heat = SlipKernel.SharedJ(double.PositiveInfinity, kgM2, 50, load, 50 * t / 2, ref none);
            double work = clutch * 50 * t, stored = kgM2 * 1250, loadWork = load * 50 * t / 2;
            return Math.Abs(work - heat - stored - loadWork) <= 1e-9 * work;
        });

    [Law]
    public Property EngagementPeak_WithoutARise_DoesNotDependOnSpeed() =>
        Prop.ForAll(LogUniform(100, 5000), LogUniform(1, 60), LogUniform(1, 60), (clutch, slow, fast) =>
        Start(clutch, 2, slow).Peak.SiBand.Equals(Start(clutch, 2, fast).Peak.SiBand));

    [Law]
    public Property ClutchTorque_WithARise_NeverAboveCapacityAndFallsWithTime() =>
        Prop.ForAll(LogUniform(100, 5000), LogUniform(0.01, 10), LogUniform(1, 10), (clutch, rise, times) =>
    {
        double fast = Start(clutch, 2, 50).WithRise(Seconds(rise)).ClutchTorque.SiBand.High;
        double slow = Start(clutch, 2, 50).WithRise(Seconds(rise * times)).ClutchTorque.SiBand.High;
        return slow <= fast && fast <= clutch;
    });

    // An unknown fact of the engagement never lowers what is expected or the high end.
    [Law]
    public Property EngagementPeak_WithoutCapacity_NeverLowersExpectedOrHigh() => Prop.ForAll(Facts(), facts =>
    {
        Engagement through = Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Abrupt);
        Band with = Complete(EngagementTorque.Of(through.WithCapacity(Spread(facts[0])), Rated), facts).Peak.SiBand;
        Band without = Complete(EngagementTorque.Of(through, Rated), facts).Peak.SiBand;
        return without.Expected >= with.Expected && without.High >= with.High;
    });

    [Law]
    public Property Strike_EachQuantityLarger_IsNeverWeaker() => Prop.ForAll(Facts(), LogUniform(1, 3), (facts, times) =>
    {
        Band before = Strike(facts).Peak.SiBand;
        for (int k = 0; k < facts.Length; k++)
        {
            double[] more = (double[])facts.Clone();
            more[k] *= times;
            Band after = Strike(more).Peak.SiBand;
            if (!(NotBelow(after.Low, before.Low) && NotBelow(after.Expected, before.Expected) && NotBelow(after.High, before.High)))
            {
                return false;
            }
        }

        return true;
    });

    [Law]
    public Property Strike_CapacityUnknown_NeverLowersAnyEnd() =>
        Prop.ForAll(Facts(), Gen.Elements(true, false).ToArbitrary(), (facts, dead) =>
    {
        StrikeEstimate with = StrikeEstimate.Of(StrikePlace.Blade, Side(facts, true));
        StrikeEstimate without = StrikeEstimate.Of(StrikePlace.Blade, Side(facts, false));
        Band a = (dead ? with.WithDeadStop() : with).Peak.SiBand;
        Band b = (dead ? without.WithDeadStop() : without).Peak.SiBand;
        return b.Low >= a.Low && b.Expected >= a.Expected && b.High >= a.High;
    });

    // The peak lies between the steady torque and both of its bounds.
    [Law]
    public Property Strike_Peak_LiesWithinItsBounds() => Prop.ForAll(Facts(), facts =>
    {
        Band peak = Strike(facts).Peak.SiBand;
        double omega = facts[1], steady = facts[2], line = facts[3], engine = facts[4], k = facts[5];
        double withoutSlip = (steady * 1.1) + (omega * Math.Sqrt((line + engine) * 1.1 * k * 1.1));
        double withSlip = (facts[0] * 1.1) + (omega * Math.Sqrt(line * 1.1 * k * 1.1));
        double bound = Math.Max(steady * 1.1, Math.Min(withoutSlip, withSlip));
        return peak.Low >= steady * 0.9 * (1 - 1e-12) && Math.Abs(peak.High - bound) <= 1e-9 * bound;
    });

    [Law]
    public Property Strike_InPoundsAndInches_IsTheSameBlow() => Prop.ForAll(Facts(), facts =>
    {
        DrivingSide us = DrivingSide.At(
                RotationalSpeed.FromRevolutionsPerMinute(facts[1] * 30 / Math.PI),
                TorqueBand.Exactly(Torque.FromPoundForceFeet(facts[2] / (4.4482216152605 * 0.3048)), Given))
            .WithLineInertia(InertiaBand.Exactly(MassMomentOfInertia.FromPoundSquareFeet(facts[3] / (0.45359237 * 0.3048 * 0.3048)), Given))
            .WithEngineInertia(KgM2(facts[4]))
            .WithStiffness(StiffnessBand.Exactly(RotationalStiffness.FromNewtonMetersPerDegree(facts[5] * Math.PI / 180), Given));
        DrivingSide si = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(facts[1]), Nm(facts[2]))
            .WithLineInertia(KgM2(facts[3])).WithEngineInertia(KgM2(facts[4])).WithStiffness(NmPerRad(facts[5]));
        double a = StrikeEstimate.Of(StrikePlace.Blade, us).Peak.SiBand.High, b = StrikeEstimate.Of(StrikePlace.Blade, si).Peak.SiBand.High;
        return Math.Abs(a - b) <= 1e-9 * b;
    });

    [Law]
    public Property Power_InFeetAndPounds_IsTheSame() => Prop.ForAll(LogUniform(0.5, 12), LogUniform(0.5, 60), (meters, tonnes) =>
    {
        PowerRow mower = ImplementPower.Of("mower", "flail"), baler = ImplementPower.Of("baler", "large rectangular");
        double a = PowerNeed.Of(mower, Length.FromFeet(meters / 0.3048)).Power.SiBand.High,
            b = PowerNeed.Of(mower, Length.FromMeters(meters)).Power.SiBand.High;
        double c = PowerNeed.Of(baler, MassFlow.FromPoundsPerHour(tonnes * 1000 / 0.45359237)).Power.SiBand.High;
        double d = PowerNeed.Of(baler, MassFlow.FromTonnesPerHour(tonnes)).Power.SiBand.High;
        return Math.Abs(a - b) <= 1e-9 * b && Math.Abs(c - d) <= 1e-9 * d;
    });

    // A wider machine or more crop never needs less.
    [Law]
    public Property Power_MoreWidthOrFeed_NeverNeedsLess() =>
        Prop.ForAll(LogUniform(0.5, 12), LogUniform(1, 3), (value, times) => ImplementPower.All.All(row =>
        row switch
        {
            { NeedsWidth: true } => PowerNeed.Of(row, Length.FromMeters(value)).Power.SiBand.Low <= PowerNeed.Of(
                row, Length.FromMeters(value * times)).Power.SiBand.Low,
            { NeedsFeed: true } => PowerNeed.Of(row, MassFlow.FromTonnesPerHour(value)).Power.SiBand.High
                <= PowerNeed.Of(row, MassFlow.FromTonnesPerHour(value * times)).Power.SiBand.High,
            _ => PowerNeed.Of(row).Power.SiBand.Low > 0,
        }));

    // A blade free to swing is never felt more in a shock than flung out.
    [Law]
    public Property Blade_InAShock_IsNeverFeltMore() =>
        Prop.ForAll(LogUniform(0.1, 30), LogUniform(0.05, 1), Uniform(0, 1), (kg, length, pivot) =>
    {
        RotatingBody blade = RotatingBody.SwingingBlade(Mass.FromKilograms(kg), Length.FromMeters(length), Length.FromMeters(pivot));
        RotatingBody point = RotatingBody.OfGyration(Mass.FromKilograms(kg), Length.FromMeters(pivot + length));
        return blade.Shock.SiBand.High < blade.Inertia.SiBand.Low && blade.Inertia.SiBand.High < point.Inertia.SiBand.Low;
    });

    // Capacity, ω, T₀, J line, J engine, k.
    private static Arbitrary<double[]> Facts() => Gen.Choose(0, int.MaxValue - 1).Select(seed =>
    {
        var random = new System.Random(seed);
        double Between(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
        return new[] { Between(200, 5000), Between(5, 120), Between(10, 2000), Between(1e-3, 5), Between(0.1, 50), Between(100, 1e5) };
    }).ToArbitrary();

    private static DrivingSide Side(double[] facts, bool withCapacity)
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(facts[1]), Spread(facts[2]))
            .WithLineInertia(KgM2(facts[3] * 0.9, facts[3], facts[3] * 1.1))
            .WithEngineInertia(KgM2(facts[4] * 0.9, facts[4], facts[4] * 1.1))
            .WithStiffness(NmPerRad(facts[5] * 0.9, facts[5], facts[5] * 1.1));
        return withCapacity ? side.WithClutchCapacity(Spread(facts[0])) : side;
    }

    private static StrikeEstimate Strike(double[] facts) => StrikeEstimate.Of(StrikePlace.Blade, Side(facts, true)).WithDeadStop();

    private static EngagementTorque Complete(EngagementTorque start, double[] facts) =>
        start.WithRotor(KgM2(facts[3])).WithStiffness(NmPerRad(facts[5])).WithRise(Seconds(facts[4] / 10));

    private static EngagementTorque Start(double clutch, double kgM2, double radPerS) => EngagementTorque
        .Of(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(clutch)), RotationalSpeed.FromRadiansPerSecond(radPerS))
        .WithRotor(KgM2(kgM2)).WithLoad(Nm(0));

    private static TorqueBand Spread(double nm) => Nm(nm * 0.9, nm, nm * 1.1);

    private static bool NotBelow(double after, double before) => after >= before * (1 - 1e-12);

    private static Arbitrary<double> Uniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low + ((high - low) * i / 1e6)).ToArbitrary();

    private static Arbitrary<double> LogUniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low * Math.Pow(high / low, i / 1e6)).ToArbitrary();
}
