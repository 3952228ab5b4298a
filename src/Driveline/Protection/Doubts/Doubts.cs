using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Collects every finding that keeps a question from a Yes.</summary>
internal static partial class Doubts
{
    public static List<Doubt> Of(ProtectionVerdict verdict)
    {
        var found = new List<Doubt>();
        OfParts(verdict, found);
        OfDevices(verdict, found);
        OfList(verdict, found);
        OfWork(verdict, found);
        ProtectionQuestion question = verdict.Question;
        for (int k = 0; k < question.Notes.Count; k++)
        {
            if (question.Notes[k].IsBarring(Bars.Both))
            {
                found.Add(new Doubt(question.Notes[k], question.Notes[k].Parameter("name")?.Text));
            }
        }

        if (question.History is not null)
        {
            found.AddRange(Experience.Doubts(verdict));
        }

        found = verdict.IsQuietByExperience ? WithoutQuiet(found, verdict) : found;
        for (int k = 0; k < found.Count; k++)
        {
            found[k] = found[k].With(question.Places.Name(question.Chain, found[k].Finding));
        }

        return found;
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
        foreach (PartCheck part in verdict.AllParts)
        {
            string name = part.Part.Name;
            if (part.Part.Limit is not { } limit)
            {
                if (!part.Part.StoresEnergy)
                {
                    Finding lacking = Named(ProtectionFindings.PartLimitNotKnown, Severity.Warning, name)
                        .WithBecause(Because.NoLimitOf(part.Part));
                    found.Add(Guards(lacking, Measurements.PartLimit, name, leavesUnknown: !verdict.HasKnownLimit));
                }

                continue;
            }

            if (limit.IsAssumed && part.Guards != Answer.Yes)
            {
                Finding assumed = Named(ProtectionFindings.PartLimitAssumed, Severity.Warning, name)
                    .WithBecause(Because.LimitOf(part.Part));
                found.Add(Guards(assumed, Measurements.PartLimit, name));
            }

            if (!hasDevice)
            {
                continue;
            }

            if (part.IsOpen)
            {
                Severity severity = limit.IsDefault ? Severity.Warning : Severity.Danger;
                Finding open = Named(ProtectionFindings.PartNotGuarded, severity, name).WithBecause(Because.At(part.Part));
                found.Add(verdict.Question.PartsComplete ? Guards(open, Measurements.FitLimiter, name)
                    : Guards(open, Measurements.PartsList, name));
                continue;
            }

            if (part.PassesInertia)
            {
                Severity severity = part.Guards == Answer.No ? Severity.Danger : Severity.Warning;
                Finding finding = Named(ProtectionFindings.PartBehindInertia, severity, name).With("inertia", part.InertiaBetween!.Name)
                    .WithBecause([.. Because.At(part.Part), .. Because.At(part.InertiaBetween)]);
                found.Add(Guards(finding, Measurements.FlywheelTransient, name));
            }

            if (part.RestsOnEfficiency)
            {
                Finding assumed = Named(ProtectionFindings.EfficiencyAssumed, Severity.Warning, name)
                    .WithBecause(Because.Efficiencies(verdict.Question.Chain));
                found.Add(Guards(assumed, Measurements.GearboxData, name));
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

        if (part.Part.Limit is { IsRating: true } && !double.IsPositiveInfinity(trip.Expected))
        {
            found.Add(Guards(
                Named(ProtectionFindings.TripAboveRating, Severity.Warning, part.Part.Name)
                    .With("device", device.Name)
                    .With("tripHigh", QuantityKind.Torque, trip.High)
                    .With("rated", QuantityKind.Torque, damaged.Low),
                Measurements.PartLimit, part.Part.Name));
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
            .WithBecause([.. Because.LimitOf(part.Part), .. Because.At(device)])
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

    // A bolt that is known by itself, or to be the manual's.
    private static bool IsTold(ProtectionQuestion question, ProtectiveDevice device) =>
        device is StatedDevice { AsIfLaidOut: { BreakTorque.Joint.Bolt.Material.IsIdentified: true } }
        || (question.SpecifiedFor(device) is { } specified && SpecifiedIdentity.IsTold(device, specified));

    private static double Width(Band band) => band.Low > 0 ? Math.Log(band.High / band.Low) : double.PositiveInfinity;

    private static Finding Named(string code, Severity severity, string name) => Finding.Named(code, severity, name);

    private static Doubt Guards(Finding finding, string measurement, string? subject, bool leavesUnknown = false, double width = 0) =>
        new(finding.Barring(Bars.Guards).WithSettledBy(measurement), subject, leavesUnknown, width);

    private static Doubt Quiet(Finding finding, string measurement, string? subject, bool leavesUnknown = false, double width = 0) =>
        new(finding.Barring(Bars.Quiet).WithSettledBy(measurement), subject, leavesUnknown, width);

    private static Doubt Both(Finding finding, string measurement) => new(finding.Barring(Bars.Both).WithSettledBy(measurement), null);

    private static Doubt Both(Finding finding, string measurement, string? subject, double width) =>
        new(finding.Barring(Bars.Both).WithSettledBy(measurement), subject, true, width);
}
