using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <content>What the devices themselves leave open, and what lies between them and the work.</content>
internal static partial class Doubts
{
    private static void OfDevices(ProtectionVerdict verdict, List<Doubt> found)
    {
        foreach (DeviceCheck check in verdict.AllDevices)
        {
            ProtectiveDevice device = check.Device;
            if (device.Breakaway is null)
            {
                bool isTold = IsTold(verdict.Question, device);
                Finding finding = Named(
                    isTold ? ProtectionFindings.BoltLayoutNotKnown : ProtectionFindings.DeviceNotKnown,
                    isTold ? Severity.Warning : Severity.Danger, device.Name).WithBecause(Because.At(device));
                found.Add(Both(finding, isTold ? Measurements.BoltLayout : Identifying(device), device.Name, double.PositiveInfinity));
            }

            Band? stated = verdict.Question.Work is { IsAssumed: false } ? check.Work : null;
            OfFindings(verdict, check, device.Findings, found);
            OfFindings(verdict, check, stated is { } under ? device.BarsUnder(under.High) : [], found);
            if (check.Quiet != Answer.Yes && device.Running is { } running && check.Work is { HasExpected: true } work
                && running.SiBand.Low <= work.High)
            {
                OfWorkMargin(check, running.SiBand, work, found);
            }
        }
    }

    private static void OfFindings(ProtectionVerdict verdict, DeviceCheck check, IReadOnlyList<Finding> findings, List<Doubt> found)
    {
        for (int k = 0; k < findings.Count; k++)
        {
            if (findings[k].IsBarring(Bars.Both))
            {
                Finding named = verdict.Question.Places.NameDevice(verdict.Question.Chain, check.Index, findings[k]);
                found.Add(new Doubt(named, check.Device.Name));
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
            .WithBecause(Because.At(check.Device))
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

    private static string Identifying(ProtectiveDevice device) =>
        device.Kind == DeviceKind.SlipClutch ? Measurements.ClutchSprings : Measurements.IdentifyDevice;

    private static string Narrowing(ProtectiveDevice device) => device.Kind switch
    {
        DeviceKind.ShearBolt => Measurements.BoltHardness,
        DeviceKind.SlipClutch or DeviceKind.CutOut => Measurements.SlipTest,
        _ => Measurements.IdentifyDevice,
    };
}
