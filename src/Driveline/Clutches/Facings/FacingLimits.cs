namespace Driveline.Clutches;

/// <summary>Limits of a facing in SI; NaN where not known.</summary>
internal readonly struct FacingLimits
{
    public FacingLimits(
        double lowPressurePa, double highPressurePa, double continuousK, double maximumK, double lowPowerWPerM2, double highPowerWPerM2)
    {
        LowPressurePa = lowPressurePa;
        HighPressurePa = highPressurePa;
        ContinuousK = continuousK;
        MaximumK = maximumK;
        LowPowerWPerM2 = lowPowerWPerM2;
        HighPowerWPerM2 = highPowerWPerM2;
    }

    public static FacingLimits None => new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    public double LowPressurePa { get; }

    public double HighPressurePa { get; }

    public double ContinuousK { get; }

    public double MaximumK { get; }

    public double LowPowerWPerM2 { get; }

    public double HighPowerWPerM2 { get; }

    public FacingLimits Pressure(double lowPa, double highPa) => new(lowPa, highPa, ContinuousK, MaximumK, LowPowerWPerM2, HighPowerWPerM2);

    public FacingLimits Temperatures(double continuousK, double maximumK) =>
        new(LowPressurePa, HighPressurePa, continuousK, maximumK, LowPowerWPerM2, HighPowerWPerM2);
}
