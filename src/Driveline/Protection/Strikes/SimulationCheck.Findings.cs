using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <content>What a caller must notice: loads, and whether a device in good order had reason to act.</content>
public sealed partial class SimulationCheck
{
    private List<Finding> AllFindings()
    {
        var findings = new List<Finding>();
        if (Simulation.Strike is { MissesDriveline: true })
        {
            findings.Add(Finding.Of(StrikeFindings.DidNotPassDriveline, Severity.Note));
            return findings;
        }

        findings.AddRange(Simulation.Missing);
        findings.AddRange(Simulation.CanRun ? runs.MissingWith : []);
        findings.AddRange(Simulation.CanRun ? Simulation.Assumed : []);
        foreach (SimulatedLoad load in Loads)
        {
            AddLoad(load, findings);
        }

        if (Simulation.Strike is not null && Without is { IsComplete: true })
        {
            AddHealth(findings);
            AddTakenByRotor(findings);
        }

        findings.AddRange((With ?? Without)?.Findings ?? []);
        findings.AddRange(runs.Meter.Findings);
        return [.. findings.Distinct().OrderBy(f => f.Severity)];
    }

    private void AddLoad(SimulatedLoad load, List<Finding> findings)
    {
        if (load.DamagedAt is not { } damaged || load.WithoutNm is not { } without)
        {
            return;
        }

        bool hasDevice = Chain.Devices.Count > 0;
        (string Code, Severity Severity)? said = load.DamagedWith == Answer.Yes ? (StrikeFindings.Overloaded, Severity.Danger)
            : MayOverload(load, damaged) ? (StrikeFindings.MayOverload, Severity.Warning)
            : load.DamagedWith is Answer.No && load.DamagedWithout == Answer.Yes && hasDevice
                ? (StrikeFindings.SavedByDevice, Severity.Note)
            : null;
        if (said is { } finding)
        {
            findings.Add(Finding.Of(finding.Code, finding.Severity)
                .With("name", load.Element.Name)
                .With("peak", QuantityKind.Torque, load.WithNm ?? without)
                .With("without", QuantityKind.Torque, without)
                .With("damagedLow", QuantityKind.Torque, damaged.SiBand.Low)
                .With("damagedExpected", QuantityKind.Torque, damaged.SiBand.Expected));
        }
    }

    // A Maybe that rests on assumptions alone is said once, by the assumption; one that comes near the limit is said here too.
    private bool MayOverload(SimulatedLoad load, TorqueBand damaged) => load.DamagedWith switch
    {
        Answer.Maybe => load.WithNm is { } nm && (Simulation.RestsOnFacts || nm >= damaged.SiBand.Low),
        Answer.NotKnown => With is null && load.DamagedWithout != Answer.No && load.WithoutNm >= damaged.SiBand.Low,
        _ => false,
    };

    private void AddHealth(List<Finding> findings)
    {
        if (Chain.Devices.Count == 0)
        {
            return;
        }

        if (Chain.Devices.FirstOrDefault(d => d.InGoodOrder is null) is { } unknown)
        {
            findings.Add(Finding.Of(SimulationFindings.DeviceNotKnown, Severity.Warning).With("name", unknown.Name));
            return;
        }

        SimulationOutcome? weakest = runs.Run(SimulatedDevices.Healthy, BandPoint.Low, BandPoint.High, []);
        SimulationOutcome? expected = runs.Run(SimulatedDevices.Healthy, BandPoint.Expected, BandPoint.Expected, []);
        SimulationOutcome? strongest = runs.Run(SimulatedDevices.Healthy, BandPoint.High, BandPoint.Low, []);
        bool decides = Simulation.RestsOnFacts;
        ProtectiveDevice device = strongest?.TrippedDevice ?? expected?.TrippedDevice ?? weakest?.TrippedDevice ?? NearestToTrip();
        string code = decides && strongest is { Tripped: true } ? StrikeFindings.ShouldHaveTripped
            : decides && weakest is { Tripped: false, IsComplete: true } && !IsUnbounded(weakest) ? StrikeFindings.BelowTrip
            : StrikeFindings.MayHaveTripped;
        TorqueBand trip = device.InGoodOrder!;
        findings.Add(Finding.Of(code, Severity.Note)
            .With("device", device.Name)
            .With("peak", QuantityKind.Torque, Without!.PeakNm(Chain.IndexOf(device)))
            .With("tripLow", QuantityKind.Torque, trip.SiBand.Low)
            .With("tripExpected", QuantityKind.Torque, trip.SiBand.Expected)
            .With("tripHigh", QuantityKind.Torque, trip.SiBand.High));
        if (expected is { Tripped: true } && With is { Tripped: false, IsComplete: true })
        {
            findings.Add(Finding.Of(StrikeFindings.PassedOn, Severity.Danger).With("device", expected.TrippedDevice!.Name)
                .With("peak", QuantityKind.Torque, With.PeakNm(Chain.IndexOf(expected.TrippedDevice))));
        }
    }

    // The work it took, of what the rotor brought: ½ J ω² at its own speed.
    private void AddTakenByRotor(List<Finding> findings)
    {
        if (Simulation.Strike is { IsEndKnown: true, At: Part { InertiaKgM2: > 0 } rotor } strike && Without!.ThroughTime is { } through)
        {
            double radPerS = Without.RadPerS * Chain.Nodes[Chain.IndexOf(rotor)].Ratio;
            findings.Add(Finding.Of(StrikeFindings.TakenByRotor, Severity.Note)
                .With("name", rotor.Name)
                .With("time", QuantityKind.Time, through.Seconds - strike.StartS)
                .With("energy", QuantityKind.Energy, Without.StruckJ)
                .With("stored", QuantityKind.Energy, 0.5 * rotor.InertiaKgM2 * radPerS * radPerS));
        }
    }

    private ProtectiveDevice NearestToTrip() =>
        Chain.Devices.OrderByDescending(d => Without!.PeakNm(Chain.IndexOf(d)) / d.InGoodOrder!.SiBand.Low).First();
}
