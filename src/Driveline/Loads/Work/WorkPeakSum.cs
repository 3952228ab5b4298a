using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>How the peaks of work were worked out, line by line: mean power and speed, or mean torque; the factor.</summary>
internal sealed class WorkPeakSum(PowerBand? power, double radPerS, TorqueBand? mean, TorqueBand? stall, RatioBand factor)
{
    /// <summary>The lines, each end that is known apart.</summary>
    public IReadOnlyList<CalculationLine> Lines()
    {
        var log = StepList.New();
        Add(SheetEnd.Lowest, b => b.Low, ref log);
        Add(SheetEnd.MostLikely, b => b.Expected, ref log);
        Add(SheetEnd.Highest, b => b.High, ref log);
        return log.Lines;
    }

    /// <summary>Where the numbers that it begins with come from, by the code of their step.</summary>
    public IReadOnlyDictionary<string, BandBasis> Bases()
    {
        var bases = new Dictionary<string, BandBasis>(StringComparer.Ordinal) { [LoadsSteps.WorkFactor.Code] = factor.Basis };
        if (power is not null)
        {
            bases[LoadsSteps.MeanPower.Code] = power.Basis;
        }

        if (mean is not null)
        {
            bases[LoadsSteps.StatedMean.Code] = mean.Basis;
        }

        if (stall is not null)
        {
            bases[LoadsSteps.StallTorque.Code] = stall.Basis;
        }

        return bases;
    }

    private void Add(SheetEnd end, Func<Band, double> of, ref StepList log)
    {
        Band begins = power?.SiBand ?? mean!.SiBand;
        if (double.IsPositiveInfinity(of(begins)) || double.IsPositiveInfinity(of(factor.SiBand)))
        {
            return;
        }

        log.Begin(end);
        double meanNm = power is null ? of(begins) : MeanNm(of(begins), radPerS, ref log);
        if (power is null)
        {
            log.Add(LoadsSteps.StatedMean, meanNm);
        }
        else if (stall is { SiBand.High: var most } && most < meanNm)
        {
            log.Add(LoadsSteps.StallTorque, most);
            log.Add(LoadsSteps.CappedMean, most);
            meanNm = most;
        }

        PeakNm(meanNm, of(factor.SiBand), ref log);
    }

    private static double MeanNm<S>(double watts, double radPerS, ref S log)
        where S : struct, ISteps
    {
        log.Add(LoadsSteps.MeanPower, watts);
        log.Add(LoadsSteps.Speed, radPerS);
        double nm = watts / radPerS;
        log.Add(LoadsSteps.MeanTorque, nm);
        return nm;
    }

    private static void PeakNm<S>(double meanNm, double factor, ref S log)
        where S : struct, ISteps
    {
        log.Add(LoadsSteps.WorkFactor, factor);
        log.Add(LoadsSteps.WorkPeak, meanNm * factor);
    }
}
