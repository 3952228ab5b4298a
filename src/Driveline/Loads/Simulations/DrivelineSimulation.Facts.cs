using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <content>Facts that are missing, and what is taken in place of facts.</content>
public sealed partial class DrivelineSimulation
{
    private List<Finding> AllMissing()
    {
        var missing = new List<Finding>();
        if (Strike is { MissesDriveline: true })
        {
            return missing;
        }

        if (Strike is not null && Drive.Load is not { HasExpected: true })
        {
            missing.Add(Finding.Of(SimulationFindings.LoadNotKnown, Severity.Warning));
        }

        if (Strike is null && Drive.Engagement.IsFeathered && Drive.Rise is not { HasExpected: true })
        {
            missing.Add(Finding.Of(SimulationFindings.RiseNotKnown, Severity.Warning));
        }

        expected = LineMapping.Of(Chain, Drive, Strike,
            SimulationEnds.Of(SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.Expected, Strike is not null), missing);
        return missing;
    }

    private List<Finding> AllAssumed()
    {
        var assumed = new List<Finding>();
        if (Strike is { MissesDriveline: true })
        {
            return assumed;
        }

        Add(assumed, !Drive.IsEngineFree(Strike is not null), SimulationFindings.EngineHeld);
        Add(assumed, Strike is not null && Drive.Engagement.Capacity is null, SimulationFindings.NoClutchCap);
        Add(assumed, Strike is { Place: StrikePlace.NotKnown }, SimulationFindings.PlaceNotKnown);
        Add(assumed, Strike is { Place: StrikePlace.Pan }, SimulationFindings.PanAsWedged);
        if (Strike is { IsEndKnown: false })
        {
            assumed.Add(Finding.Of(SimulationFindings.ThicknessNotKnown, Severity.Note)
                .With("angle", QuantityKind.Angle, SimulatedStrike.ThroughRad));
        }

        Add(assumed, Strike is null && Drive.Load is null, SimulationFindings.NoLoad);
        Add(assumed, Strike is null && Drive.Rise is null && Drive.Engagement.Manner != EngagementManner.Abrupt,
            SimulationFindings.SuddenBite);
        if (Strike is not null && DeviceAtStop() is { } device)
        {
            assumed.Add(Finding.Of(SimulationFindings.DeviceAtStop, Severity.Note).With("name", device));
        }

        Add(assumed, IsUnbounded(), SimulationFindings.FactUnbounded);
        string[] light = [.. Chain.Parts.Where(p => p.InertiaKgM2 == 0 && p.Kind is not (PartKind.PtoStub or PartKind.ShaftAtCrossHole))
            .Select(p => p.Name)];
        if (light.Length > 0)
        {
            assumed.Add(Finding.Of(SimulationFindings.PartsWithoutInertia, Severity.Note).With("names", string.Join(", ", light)));
        }

        return assumed;
    }

    private string? DeviceAtStop() =>
        LineMapping.Of(Chain, Drive, Strike, SimulationEnds.Of(SimulatedDevices.Fitted, BandPoint.Low, BandPoint.Expected, isStrike: true),
            [])?.DeviceAtStop;

    private bool IsUnbounded() => new QuantityBand?[] { Drive.Engagement.Capacity, Drive.Rise, Drive.Load, Drive.EngineInertia }
        .Concat(Chain.Parts.Select(p => p.Stiffness)).Any(band => band is { IsBounded: false });

    private static void Add(List<Finding> findings, bool holds, string code)
    {
        if (holds)
        {
            findings.Add(Finding.Of(code, Severity.Note));
        }
    }
}
