using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <content>The arithmetic of peak, time and heat, end by end.</content>
internal sealed partial class EngagementTorque
{
    // A band whose ends come from the clutch torque, then the swing of the line on top.
    private Band PeakBand<S>(ref S log)
        where S : struct, ISteps
    {
        Band clutch = ClutchBand(ref log);
        Band load = Load?.SiBand ?? NoLoad;
        log.Begin(SheetEnd.Lowest);
        log.Add(LoadsSteps.SwingFactor, 1);
        log.Add(LoadsSteps.Load, load.Low);
        double low = EngagementKernel.PeakNm(clutch.Low, 1, load.Low, ref log);
        log.Begin(SheetEnd.MostLikely);
        double expected = EngagementKernel.PeakNm(clutch.Expected, FactorExpected(ref log), load.Expected, ref log);

        log.Begin(SheetEnd.Highest);
        log.Add(LoadsSteps.Load, load.Low);

        // T_l + f (T_c − T_l) falls with T_l at f > 1: the high end takes the lowest load, but never less than the highest load.
        double high = Math.Max(EngagementKernel.PeakNm(clutch.High, FactorHigh(ref log), load.Low, ref log), load.High);
        expected = Math.Max(low, expected);
        return new Band(low, expected, Math.Max(expected, high));
    }

    private Band ClutchBand<S>(ref S log)
        where S : struct, ISteps
    {
        Band capacity = Capacity, load = Load?.SiBand ?? NoLoad;
        if (Rise is not { } rise || Rotor is not { } rotor)
        {
            // Only a sudden bite is sure to reach the capacity; any other may end sooner.
            double low = Engagement.Manner == EngagementManner.Abrupt ? capacity.Low : Math.Min(load.Low, capacity.Low);
            Full(SheetEnd.Lowest, load.Low, low, ref log);
            Full(SheetEnd.MostLikely, load.Expected, capacity.Expected, ref log);
            Full(SheetEnd.Highest, load.Low, capacity.High, ref log);
            return new Band(low, capacity.Expected, capacity.High);
        }

        Band t = rise.SiBand, j = rotor.SiBand;
        return new Band(
            t.IsBounded ? Ramp(SheetEnd.Lowest, j.Low, capacity.Low, t.High, load.Low, ref log)
                : Full(SheetEnd.Lowest, load.Low, Math.Min(load.Low, capacity.Low), ref log),
            t.HasExpected ? Ramp(SheetEnd.MostLikely, j.Expected, capacity.Expected, t.Expected, load.Expected, ref log)
                : Full(SheetEnd.MostLikely, load.Expected, capacity.Expected, ref log),
            Ramp(SheetEnd.Highest, j.High, capacity.High, t.Low, load.High, ref log));
    }

    private double Ramp<S>(SheetEnd end, double rotorKgM2, double capacityNm, double riseS, double loadNm, ref S log)
        where S : struct, ISteps
    {
        log.Begin(end);
        log.Add(LoadsSteps.Load, loadNm);
        log.Add(LoadsSteps.Inertia, rotorKgM2);
        log.Add(LoadsSteps.Speed, omega);
        log.Add(LoadsSteps.Capacity, capacityNm);
        log.Add(LoadsSteps.Rise, riseS);
        return EngagementKernel.RampNm(rotorKgM2, omega, capacityNm, riseS, loadNm, ref log);
    }

    private static double Full<S>(SheetEnd end, double loadNm, double clutchNm, ref S log)
        where S : struct, ISteps
    {
        log.Begin(end);
        log.Add(LoadsSteps.Load, loadNm);
        log.Add(LoadsSteps.FullTorque, clutchNm);
        return clutchNm;
    }

    private double FactorExpected<S>(ref S log)
        where S : struct, ISteps =>
        HalfPhase(expected: true) is { } x ? EngagementKernel.RampFactor(x, ref log) : One(ref log);

    private static double One<S>(ref S log)
        where S : struct, ISteps
    {
        log.Add(LoadsSteps.SwingFactor, 1);
        return 1;
    }

    private double FactorHigh<S>(ref S log)
        where S : struct, ISteps
    {
        double factor = Engagement.IsFeathered ? 1
            : HalfPhase(expected: false) is { } x ? Math.Min(SuddenFactor, 1 + (1 / x))
            : SuddenFactor;
        log.Add(LoadsSteps.SwingFactor, factor);
        return factor;
    }

    // x = ω_n t_r / 2 from the lowest natural frequency √(k / J) and the shortest rise.
    private double? HalfPhase(bool expected)
    {
        if (Rise is not { } rise || Rotor is not { } rotor || Stiffness is not { } stiffness)
        {
            return null;
        }

        double t = expected ? rise.SiBand.Expected : rise.SiBand.Low;
        double k = expected ? stiffness.SiBand.Expected : stiffness.SiBand.Low;
        double j = expected ? rotor.SiBand.Expected : rotor.SiBand.High;
        double x = Math.Sqrt(k / j) * t / 2;
        return Guard.IsFinite(x) && x > 0 ? x : null;
    }

    private Band Times<S>(ref S log)
        where S : struct, ISteps
    {
        Band j = Rotor!.SiBand, capacity = Capacity, load = Load?.SiBand ?? NeverLess, rise = RiseDelay();
        double low = SlipKernel.TimeS(omega, capacity.High, DriveLow, j.Low, 0, load.Low, ref log);
        double loadExpected = Load is null ? 0 : load.Expected;
        double expected = capacity.HasExpected
            ? SlipKernel.TimeS(omega, capacity.Expected, double.PositiveInfinity, j.Expected, 0, loadExpected, ref log)
            : double.PositiveInfinity;
        double high = SlipKernel.TimeS(omega, capacity.Low, double.PositiveInfinity, j.High, 0, load.High, ref log);

        // Even the weakest load and the strongest clutch may never meet: the low end is then no assured time at all.
        low = Guard.IsFinite(low) ? low : 0;
        expected = Math.Max(low, expected + rise.Expected);
        return new Band(low, expected, Math.Max(expected, high + rise.High));
    }

    private Band Heats<S>(ref S log)
        where S : struct, ISteps
    {
        Band j = Rotor!.SiBand, load = Load?.SiBand ?? NeverLess, rise = RiseDelay();
        NoSteps none = default;
        Band t = Times(ref none);
        double loadExpected = Load is null ? 0 : load.Expected;
        double low = SlipKernel.SharedJ(DriveLow, j.Low, omega, load.Low, omega * t.Low / 2, ref log);
        double expected = SlipKernel.SharedJ(
            double.PositiveInfinity, j.Expected, omega, loadExpected, omega * (t.Expected + rise.Expected) / 2, ref log);
        double high = SlipKernel.SharedJ(
            double.PositiveInfinity, j.High, omega, load.High, omega * (t.High + rise.High) / 2, ref log);
        expected = Math.Max(low, expected);
        return new Band(low, expected, Math.Max(expected, high));
    }

    // A slowing engine only lowers the low end of time and heat.
    private double DriveLow => EngineInertia is { } engine ? engine.SiBand.Low : double.PositiveInfinity;

    private Band RiseDelay() => Rise is { } rise ? new Band(0, rise.SiBand.Expected, rise.SiBand.High) : NoLoad;

    private BandBasis PeakBasis()
    {
        BandBasis basis = Engagement.Capacity?.Basis ?? BandBasis.Of(UnknownCapacity);
        basis = Load is null ? basis : BandBasis.Combine(basis, Load.Basis);
        return Rise is null || Rotor is null ? basis : BandBasis.Combine(BandBasis.Combine(basis, Rise.Basis), Rotor.Basis);
    }

    private BandBasis HeatBasis() => BandBasis.Combine(PeakBasis(), Rotor!.Basis).With(Constant);
}
