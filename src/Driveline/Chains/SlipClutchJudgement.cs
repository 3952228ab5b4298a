using Driveline.Clutches;
using Driveline.Findings;

namespace Driveline.Chains;

/// <summary>What a slip clutch reports in its place, and what of it bars a Yes.</summary>
/// <remarks>
/// Every fact whose lack could make the clutch look better bars a Yes while it is missing; so taking a fact away never helps.
/// </remarks>
internal static class SlipClutchJudgement
{
    public static IReadOnlyList<Finding> Of(string name, SlipTorque torque, double? perHour, SlipHeat? heat, bool isUndated)
    {
        var all = new List<Finding>();
        foreach (Finding finding in torque.Findings)
        {
            // Without the day, the reason is that no age can be told: nothing may be said of how old the test is.
            if (!(isUndated && finding.Code is ClutchFindings.StorageNotKnown or ClutchFindings.TestTooOld))
            {
                all.Add(finding);
            }
        }

        OfTorque(name, torque, isUndated, all);
        OfSlips(name, perHour, heat, all);
        return all;
    }

    /// <summary>True when the slip ends and stays below every temperature the linings stand for long; an unknown limit is none.</summary>
    public static bool IsWithinLimits(SlipHeat heat) => heat.PeakFaceTemperature is not null
        && !heat.Findings.Any(f => f.Code is ClutchFindings.AboveContinuousTemperature or ClutchFindings.AboveMaximumTemperature
            or ClutchFindings.TemperatureLimitNotKnown or ClutchFindings.SlipNeverEnds);

    private static void OfTorque(string name, SlipTorque torque, bool isUndated, List<Finding> all)
    {
        if (isUndated && torque.Condition is { LastSlipTest: not null, KnownStuck: false })
        {
            all.Add(Named(DeviceFindings.SlipTestUndated, Severity.Danger, name, ClutchFact.LastSlipTest)
                .Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest));
        }

        if (torque.Source is SlipTorqueSource.Calculated or SlipTorqueSource.Stated)
        {
            all.Add(Named(DeviceFindings.SlipTorqueNotMeasured, Severity.Warning, name, ClutchFact.LeverTorque, ClutchFact.LeverForce)
                .Barring(Bars.Both).WithSettledBy(Measurements.SlipTest));
        }
        else if (torque.Source == SlipTorqueSource.Measured
            && torque.Condition.Surface is SurfaceState.Damp or SurfaceState.Hot or SurfaceState.Oiled or SurfaceState.Glazed)
        {
            all.Add(Named(DeviceFindings.SlipMeasuredNotDry, Severity.Warning, name, ClutchFact.Surface).Barring(Bars.Guards)
                .WithSettledBy(Measurements.SlipTest));
        }

        if (torque.Clutch is null)
        {
            all.Add(Named(DeviceFindings.ClutchNotDescribed, Severity.Warning, name).Barring(Bars.Both)
                .WithSettledBy(Measurements.ClutchSprings));
        }
        else if (ReferenceEquals(torque.Clutch.Facing, Facings.NotKnown))
        {
            all.Add(Named(DeviceFindings.FacingNotKnown, Severity.Warning, name, ClutchFact.Facing)
                .WithSettledBy(Measurements.ClutchSprings));
        }
    }

    private static void OfSlips(string name, double? perHour, SlipHeat? heat, List<Finding> all)
    {
        if (perHour is not { } often)
        {
            all.Add(Named(DeviceFindings.SlipsPerHourNotKnown, Severity.Warning, name, ClutchFact.SlipsPerHour).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.SlipsInWork));
        }
        else if (often > 0 && heat is null)
        {
            all.Add(Named(DeviceFindings.SlipHeatNotKnown, Severity.Warning, name, ClutchFact.SlipsPerHour).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.SlipsInWork).With("perHour", QuantityKind.Number, often));
        }
        else if (often > 0 && !IsWithinLimits(heat!))
        {
            double peak = heat!.PeakFaceTemperature?.Kelvins ?? double.PositiveInfinity;
            string[] heats = [ClutchFact.SlipsPerHour, ClutchFact.SlipTime, ClutchFact.PlateThickness];
            all.Add(Named(DeviceFindings.SlipsTooHot, Severity.Danger, name, heats).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.SlipsInWork)
                .With("perHour", QuantityKind.Number, often)
                .With("temperature", QuantityKind.Temperature, peak));
        }
    }

    private static Finding Named(string code, Severity severity, string name, params string[] because) =>
        Finding.Of(code, severity).With("name", name).WithBecause(because);
}
