using Driveline.Clutches;

namespace Driveline.Monitoring;

/// <summary>The face temperature of the watched clutch, and the times it was too hot.</summary>
internal sealed class ClutchThermometer
{
    private readonly PlateHeatStream? plates;
    private readonly double airK;
    private readonly LevelEpisode tooHot;
    private double faceK;
    private double highestK;

    public ClutchThermometer(MonitorSettings settings)
    {
        plates = settings.Path is { } path ? new PlateHeatStream(path) : null;
        airK = settings.AirK;
        tooHot = new LevelEpisode(double.IsNaN(settings.HottestK) ? double.PositiveInfinity : settings.HottestK, settings.HottestK - 10);
        faceK = airK;
        highestK = airK;
    }

    /// <summary>True while the faces are hotter than they may be.</summary>
    public bool IsTooHot => tooHot.IsOpen;

    public bool IsKnown => plates is not null;

    /// <summary>Temperature now; NaN without a heat path.</summary>
    public double FaceK => plates is null ? double.NaN : faceK;

    public double HighestK => plates is null ? double.NaN : highestK;

    public MonitorEvent Event(bool isCut) => new(
        MonitorEventKind.Overheat, tooHot.StartS, tooHot.DurationS, double.NaN, double.NaN, double.NaN, tooHot.Peak,
            atEngagement: false, isCut);

    /// <summary>Takes the heat of a step; true when the faces are no longer too hot.</summary>
    public bool Step(double timeS, double stepS, double heatJ, bool follows)
    {
        if (plates is null)
        {
            return false;
        }

        double before = faceK;
        if (stepS > 0)
        {
            faceK = airK + plates.Step(stepS, heatJ / stepS);
            if (faceK > highestK)
            {
                highestK = faceK;
            }
        }

        return tooHot.Step(timeS, stepS, before, faceK, follows);
    }

    /// <summary>A step without heat, in which nothing new can become too hot.</summary>
    public void Cool(double stepS)
    {
        if (plates is not null && stepS > 0)
        {
            faceK = airK + plates.Step(stepS, 0);
        }
    }

    /// <summary>Samples without heat, in which nothing new can become too hot.</summary>
    public void Cool(double beforeS, ReadOnlySpan<TorqueSample> samples)
    {
        if (plates is null)
        {
            return;
        }

        double riseK = plates.Cool(samples[0].TimeS - beforeS);
        for (int k = 1; k < samples.Length && !plates.IsCold; k++)
        {
            riseK = plates.Cool(samples[k].TimeS - samples[k - 1].TimeS);
        }

        faceK = airK + riseK;
    }

    /// <summary>Cools through a pause that begins at a time; true when the faces were too hot before it.</summary>
    public bool Cut(double timeS, double stepS)
    {
        bool was = tooHot.Cut(timeS);
        if (plates is not null && stepS > 0)
        {
            faceK = airK + plates.Step(stepS, 0);
        }

        return was;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Number(ref faceK);
        cursor.Number(ref highestK);
        tooHot.Exchange(ref cursor);
        if (plates is null)
        {
            return;
        }

        cursor.Number(ref plates.MeanRiseK);
        cursor.Number(ref plates.RestK);
        foreach (ref double mode in plates.ModesK)
        {
            cursor.Number(ref mode);
        }

        plates.Restored();
    }
}
