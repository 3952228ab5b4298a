using System.Collections.Concurrent;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Fleet.Silos;

/// <summary>The settings of the monitors of a silo; drivelines with the same registration share them.</summary>
internal sealed class CaseSettings
{
    private const int Most = 4096;

    private readonly ConcurrentDictionary<(string Case, double PeriodS, double OverloadNm, double Ratio), MonitorSettings> known = new();

    /// <summary>The settings of a registration; null, and what is wrong, when it has none.</summary>
    public MonitorSettings? Of(DrivelineRegistration registration, out IReadOnlyList<string> problems)
    {
        problems = [];
        var key = (registration.CaseJson, registration.PeriodS, registration.OverloadNm, registration.SpeedRatio);
        if (known.TryGetValue(key, out MonitorSettings? settings))
        {
            return settings;
        }

        settings = Make(registration, out problems);
        if (settings is not null)
        {
            if (known.Count >= Most)
            {
                known.Clear();
            }

            known[key] = settings;
        }

        return settings;
    }

    private static MonitorSettings? Make(DrivelineRegistration registration, out IReadOnlyList<string> problems)
    {
        CaseAssessment asked = CaseAssessment.Of(CaseReader.Read(registration.CaseJson));
        if (asked.File is not { } file)
        {
            problems = [.. asked.Errors.Select(e => e.ToString())];
            return null;
        }

        Torque? level = registration.Overload ?? asked.Verdict().Trip?.Low;
        if (level is not { NewtonMeters: > 0 and <= 1e6 } overload)
        {
            problems = ["At what torque the protection of the case acts is not known; state the overload level."];
            return null;
        }

        problems = [];
        MonitorSettings settings = MonitorSettings.Of(overload, registration.SamplePeriod).WithSpeedRatio(registration.SpeedRatio);
        return CaseWatch.Settings(settings, file);
    }
}
