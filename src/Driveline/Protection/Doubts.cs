using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Collects every finding that keeps a question from a Yes.</summary>
internal static class Doubts
{
    public static List<Doubt> Of(ProtectionVerdict verdict)
    {
        var found = new List<Doubt>();
        OfParts(verdict, found);
        OfDevices(verdict, found);
        OfList(verdict, found);
        OfWork(verdict, found);
        found.AddRange(verdict.Question.Notes.Where(f => f.IsBarring(Bars.Both)).Select(f => new Doubt(f, f.Parameter("name")?.Text)));
        found.AddRange(Experience.Doubts(verdict));
        return verdict.IsQuietByExperience ? WithoutQuiet(found, verdict) : found;
    }

    // Experience has settled whether it is quiet: what only the numbers lack for that is no doubt any more.
    private static List<Doubt> WithoutQuiet(List<Doubt> found, ProtectionVerdict verdict) =>
    [
        .. found.Where(d => d.OnGuards || !d.OnQuiet)
            .Select(d => new Doubt(Experience.Settled(d.Finding, verdict), d.Subject, d.LeavesUnknown, d.Width)),
    ];

    private static void OfParts(ProtectionVerdict verdict, List<Doubt> found)
    {
        bool hasDevice = verdict.Devices.Count > 0;
        foreach (PartCheck part in verdict.Parts)
        {
            string name = part.Part.Name;
            if (part.Part.Limit is not { } limit)
            {
                if (!part.Part.StoresEnergy)
                {
                    found.Add(Guards(Named(ProtectionFindings.PartLimitNotKnown, Severity.Warning, name), Measurements.PartLimit, name,
                        leavesUnknown: !verdict.HasKnownLimit));
                }

                continue;
            }

            if (limit.IsAssumed)
            {
                found.Add(Guards(Named(ProtectionFindings.PartLimitAssumed, Severity.Warning, name), Measurements.PartLimit, name));
            }

            if (!hasDevice)
            {
                continue;
            }

            if (part.IsOpen)
            {
                Severity severity = limit.IsDefault ? Severity.Warning : Severity.Danger;
                Finding open = Named(ProtectionFindings.PartNotGuarded, severity, name);
                found.Add(verdict.Question.PartsComplete ? Guards(open, Measurements.FitLimiter, null)
                    : Guards(open, Measurements.PartsList, null));
                continue;
            }

            if (part.PassesInertia)
            {
                Severity severity = part.Guards == Answer.No ? Severity.Danger : Severity.Warning;
                Finding finding = Named(ProtectionFindings.PartBehindInertia, severity, name).With("inertia", part.InertiaBetween!.Name);
                found.Add(Guards(finding, Measurements.FlywheelTransient, name));
            }

            if (part.RestsOnEfficiency)
            {
                found.Add(Guards(Named(ProtectionFindings.EfficiencyAssumed, Severity.Warning, name), Measurements.GearboxData, name));
            }

            OfMargin(part, limit.DamagedAt.SiBand, found);
        }
    }

    private static void OfMargin(PartCheck part, Band damaged, List<Doubt> found)
    {
        Band trip = part.Acts;
        if (part.Guards == Answer.Yes || part.Part.Limit is { IsDefault: true }
            || part.GuardedBy is not { Breakaway: not null, NeverLetsGo: false } device || damaged.Low > trip.High)
        {
            return;
        }

        bool isAbove = trip.Expected > damaged.Expected;
        if (!isAbove && !trip.IsBounded && part.IsBarredByDevice)
        {
            return;   // what leaves the device without a known maximum is a doubt of its own, and says what to look at
        }

        Finding finding = Named(
                double.IsPositiveInfinity(trip.Expected) ? ProtectionFindings.TripHasNoLimit : isAbove ? ProtectionFindings.TripAboveLimit
                    : ProtectionFindings.TripMayExceedLimit,
                isAbove ? Severity.Danger : Severity.Warning,
                part.Part.Name)
            .With("device", device.Name)
            .With("tripExpected", QuantityKind.Torque, trip.Expected)
            .With("tripHigh", QuantityKind.Torque, trip.High)
            .With("damagedLow", QuantityKind.Torque, damaged.Low)
            .With("damagedExpected", QuantityKind.Torque, damaged.Expected);
        double tripWidth = Width(trip);
        double limitWidth = Width(damaged);
        if (tripWidth >= limitWidth)
        {
            found.Add(Guards(finding, Narrowing(device), device.Name, width: tripWidth));
        }
        else
        {
            found.Add(Guards(finding, Measurements.PartLimit, part.Part.Name, width: limitWidth));
        }
    }

    private static void OfDevices(ProtectionVerdict verdict, List<Doubt> found)
    {
        foreach (DeviceCheck check in verdict.Devices)
        {
            ProtectiveDevice device = check.Device;
            if (device.Breakaway is null)
            {
                Finding finding = Named(ProtectionFindings.DeviceNotKnown, Severity.Danger, device.Name);
                found.Add(Both(finding, Identifying(device), device.Name, double.PositiveInfinity));
            }

            found.AddRange(device.Findings.Where(f => f.IsBarring(Bars.Both)).Select(f => new Doubt(f, device.Name)));
            found.AddRange((check.Work is { } under ? device.BarsUnder(under.High) : []).Select(f => new Doubt(f, device.Name)));

            if (check.Quiet != Answer.Yes && device.Running is { } running && check.Work is { HasExpected: true } work
                && running.SiBand.Low <= work.High)
            {
                OfWorkMargin(check, running.SiBand, work, found);
            }
        }
    }

    private static void OfWorkMargin(DeviceCheck check, Band trip, Band work, List<Doubt> found)
    {
        bool isBelow = trip.Expected < work.Expected;
        Finding finding = Named(
                isBelow ? ProtectionFindings.TripBelowWork : trip.Low > 0 ? ProtectionFindings.TripMayFallBelowWork
                    : ProtectionFindings.TripHasNoLowEnd,
                Severity.Warning,
                check.Device.Name)
            .With("tripLow", QuantityKind.Torque, trip.Low)
            .With("tripExpected", QuantityKind.Torque, trip.Expected)
            .With("workExpected", QuantityKind.Torque, work.Expected)
            .With("workHigh", QuantityKind.Torque, work.High);
        double tripWidth = Math.Log(trip.Low > 0 ? trip.Expected / trip.Low : double.PositiveInfinity);
        double workWidth = Width(work);
        found.Add(workWidth >= tripWidth
            ? Quiet(finding, Measurements.WorkPeak, null, width: workWidth)
            : Quiet(finding, Narrowing(check.Device), check.Device.Name, width: tripWidth));
    }

    private static void OfList(ProtectionVerdict verdict, List<Doubt> found)
    {
        ProtectionQuestion question = verdict.Question;
        if (verdict.Devices.Count == 0)
        {
            Finding finding = Finding.Of(ProtectionFindings.NoDevice, Severity.Danger);
            found.Add(Both(finding, Measurements.IdentifyDevice, null, double.PositiveInfinity));
        }

        foreach (Part gearbox in question.Chain.Parts.Where(p => p.Ratio is null))
        {
            Finding finding = Named(ProtectionFindings.GearboxRatioNotKnown, Severity.Warning, gearbox.Name);
            found.Add(Both(finding, Measurements.GearboxData, gearbox.Name, 0));
        }

        if (!question.PartsComplete)
        {
            found.Add(Both(Finding.Of(ProtectionFindings.PartsNotComplete, Severity.Warning), Measurements.PartsList));
        }

        if (question.Machine == Loads.MachineKind.NotKnown)
        {
            found.Add(Both(Finding.Of(ProtectionFindings.MachineNotKnown, Severity.Warning), Measurements.PartsList));
        }

        foreach (PartKind kind in verdict.MissingParts)
        {
            Finding finding = Finding.Of(ProtectionFindings.ExpectedPartMissing, Severity.Warning).With("kind", PartKindWords.CodeOf(kind));
            found.Add(Both(finding, Measurements.PartsList));
        }
    }

    private static void OfWork(ProtectionVerdict verdict, List<Doubt> found)
    {
        ProtectionQuestion question = verdict.Question;
        if (question.TripsInNormalWork == true)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.TripsSeenInWork, Severity.Warning), Measurements.WorkPeak, null));
        }

        if (question.Work is not { } work)
        {
            found.Add(Quiet(
                Finding.Of(ProtectionFindings.WorkNotKnown, Severity.Warning), Measurements.WorkPeak, null, leavesUnknown: true));
        }
        else if (work.IsAssumed)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.WorkAssumed, Severity.Warning), Measurements.WorkPeak, null));
        }
        else if (!work.Torque.IsBounded)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.WorkUnbounded, Severity.Warning), Measurements.WorkPeak, null,
                leavesUnknown: !work.Torque.HasExpected));
        }

        if (!question.Engagement.IsKnown)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.EngagementNotKnown, Severity.Warning), Measurements.PtoClutchCapacity, null));
        }
        else if (verdict.TrippedByEngagement is { } tripped)
        {
            Finding finding = Named(ProtectionFindings.EngagementTrips, Severity.Warning, tripped.Device.Name)
                .With("peak", QuantityKind.Torque, question.Chain.Nodes[tripped.Index].FromPto(question.Engagement.Peak!.SiBand).Expected)
                .With("trip", QuantityKind.Torque, tripped.Device.Running!.SiBand.Expected);
            found.Add(new Doubt(finding.Barring(Bars.Quiet), tripped.Device.Name));
        }
        else if (verdict.EngagementMayTrip)
        {
            Finding finding = Finding.Of(ProtectionFindings.EngagementMayTrip, Severity.Warning)
                .With("engagementHigh", QuantityKind.Torque, question.Engagement.Highest!.SiBand.High);
            found.Add(new Doubt(finding.Barring(Bars.Quiet), null));   // what it rests on is stated: habit cures it, not a measurement
        }
    }

    private static string Identifying(ProtectiveDevice device) =>
        device.Kind == DeviceKind.SlipClutch ? Measurements.ClutchSprings : Measurements.IdentifyDevice;

    private static string Narrowing(ProtectiveDevice device) => device.Kind switch
    {
        DeviceKind.ShearBolt => Measurements.BoltHardness,
        DeviceKind.SlipClutch or DeviceKind.CutOut => Measurements.SlipTest,
        _ => Measurements.IdentifyDevice,
    };

    private static double Width(Band band) => band.Low > 0 ? Math.Log(band.High / band.Low) : double.PositiveInfinity;

    private static Finding Named(string code, Severity severity, string name) => Finding.Of(code, severity).With("name", name);

    private static Doubt Guards(Finding finding, string measurement, string? subject, bool leavesUnknown = false, double width = 0) =>
        new(finding.Barring(Bars.Guards).WithSettledBy(measurement), subject, leavesUnknown, width);

    private static Doubt Quiet(Finding finding, string measurement, string? subject, bool leavesUnknown = false, double width = 0) =>
        new(finding.Barring(Bars.Quiet).WithSettledBy(measurement), subject, leavesUnknown, width);

    private static Doubt Both(Finding finding, string measurement) => new(finding.Barring(Bars.Both).WithSettledBy(measurement), null);

    private static Doubt Both(Finding finding, string measurement, string? subject, double width) =>
        new(finding.Barring(Bars.Both).WithSettledBy(measurement), subject, true, width);
}
