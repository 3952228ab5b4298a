using Driveline.Provenance;

namespace Driveline.Protection;

/// <summary>The two comparisons of a verdict.</summary>
internal static class MarginKernel
{
    /// <summary>Weakest part over strongest device.</summary>
    public static double Guard<S>(double damagedNm, double actsNm, ref S log)
        where S : struct, ISteps
    {
        log.Add(MarginSteps.Part, damagedNm);
        log.Add(MarginSteps.High, actsNm);
        double margin = damagedNm / actsNm;
        log.Add(MarginSteps.Guard, margin);
        return margin;
    }

    /// <summary>Weakest device over highest work peak.</summary>
    public static double Work<S>(double actsNm, double peakNm, ref S log)
        where S : struct, ISteps
    {
        log.Add(MarginSteps.Low, actsNm);
        log.Add(MarginSteps.Peak, peakNm);
        double margin = actsNm / peakNm;
        log.Add(MarginSteps.Work, margin);
        return margin;
    }
}
