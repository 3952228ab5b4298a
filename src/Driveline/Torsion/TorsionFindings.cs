using Driveline.Findings;

namespace Driveline.Torsion;

/// <summary>Findings of a torsional run.</summary>
public static class TorsionFindings
{
    /// <summary>Links switch back and forth without time passing; the run stopped.</summary>
    public const string Chatter = "torsion.chatter";

    /// <summary>The run stopped at its limit of events.</summary>
    public const string TooManyEvents = "torsion.tooManyEvents";

    /// <summary>The run stopped at its limit of steps.</summary>
    public const string TooManySteps = "torsion.tooManySteps";

    /// <summary>The run stopped at its limit of work.</summary>
    public const string TooMuchWork = "torsion.tooMuchWork";

    /// <summary>A rigid obstacle was struck at speed: the torque of the blow has no bound.</summary>
    public const string RigidBlow = "torsion.rigidBlow";

    /// <summary>Energy is not accounted for to 1e-6: the numbers are poor.</summary>
    public const string EnergyImbalance = "torsion.energyImbalance";

    private const double WorstImbalance = 1e-6;

    internal static IReadOnlyList<Finding> Of(TransientResult result, TorsionModel model, RunLog log, double end)
    {
        double imbalance = Math.Abs(result.EnergyImbalance);
        if (imbalance <= WorstImbalance && !log.IsCutOff && Array.IndexOf(log.Struck, true) < 0)
        {
            return [];
        }

        var findings = new List<Finding>();
        if (log.Chattered)
        {
            findings.Add(Stopped(Chatter, result, end).With("part", log.Count == 0 ? string.Empty : result.Event(log.Count - 1).Part));
        }

        if (log.EventsExhausted)
        {
            findings.Add(Stopped(TooManyEvents, result, end).With("events", QuantityKind.Count, log.Count));
        }

        if (log.StepsExhausted)
        {
            findings.Add(Stopped(TooManySteps, result, end).With("steps", QuantityKind.Count, log.Steps));
        }

        if (log.WorkExhausted)
        {
            findings.Add(Stopped(TooMuchWork, result, end));
        }

        for (int l = 0; l < log.Struck.Length; l++)
        {
            if (log.Struck[l])
            {
                findings.Add(Finding.Of(RigidBlow, Severity.Note)
                    .With("obstacle", model.LinkName(l))
                    .With("energy", QuantityKind.Energy, result.ImpactEnergy(model.LinkName(l)).Joules));
            }
        }

        if (!(imbalance <= WorstImbalance))
        {
            findings.Add(Finding.Of(EnergyImbalance, Severity.Warning)
                .With("ratio", QuantityKind.Number, double.IsNaN(imbalance) ? double.PositiveInfinity : imbalance));
        }

        return findings.AsReadOnly();
    }

    private static Finding Stopped(string code, TransientResult result, double end) => Finding.Of(code, Severity.Warning)
        .With("time", QuantityKind.Time, result.Time.Seconds)
        .With("duration", QuantityKind.Time, end);
}
