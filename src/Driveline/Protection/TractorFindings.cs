using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>
/// What the tractor's side says of a verdict: what gives there before the protection does, and facts that contradict each other.
/// </summary>
/// <remarks>The tractor's clutch and engine protect nothing: they neither give a Yes nor soften a No.</remarks>
internal static class TractorFindings
{
    public static void Add(ProtectionVerdict verdict, List<Finding> findings)
    {
        ProtectionQuestion question = verdict.Question;
        AddFirst(verdict, ProtectionFindings.PtoClutchFirst, question.Engagement.Capacity, findings);
        AddFirst(verdict, ProtectionFindings.EngineStallsFirst, question.EngineHighest, findings);
        AddContradiction(ProtectionFindings.WorkAboveClutch, question.Work?.Torque, question.Engagement.Capacity, findings);
        AddContradiction(ProtectionFindings.MeanAboveEngine, question.SteadyMean, question.EngineHighest, findings);
    }

    // Against the device that acts earliest when every one of them is as weak as it may be.
    private static void AddFirst(ProtectionVerdict verdict, string code, TorqueBand? most, List<Finding> findings)
    {
        if (most is not { HasExpected: true })
        {
            return;
        }

        DeviceCheck? weakest = null;
        foreach (DeviceCheck check in verdict.AllDevices)
        {
            if (check is { Device.NeverLetsGo: false, TripAtPto: { } trip } && !(trip.SiBand.Low >= weakest?.TripAtPto!.SiBand.Low))
            {
                weakest = check;
            }
        }

        if (weakest is not null && most.SiBand.Expected < weakest.TripAtPto!.SiBand.Low)
        {
            findings.Add(Finding.Of(code, Severity.Warning)
                .With("device", weakest.Device.Name)
                .With("most", QuantityKind.Torque, most.SiBand.Expected)
                .With("tripLow", QuantityKind.Torque, weakest.TripAtPto.SiBand.Low));
        }
    }

    private static void AddContradiction(string code, TorqueBand? work, TorqueBand? most, List<Finding> findings)
    {
        if (work is not null && most is { IsBounded: true } && work.SiBand.Low > most.SiBand.High)
        {
            findings.Add(Finding.Of(code, Severity.Warning)
                .With("workLow", QuantityKind.Torque, work.SiBand.Low)
                .With("most", QuantityKind.Torque, most.SiBand.High));
        }
    }
}
