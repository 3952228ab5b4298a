using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The devices that engaging the PTO makes act, or may.</summary>
internal static class EngagementCheck
{
    /// <summary>True when engaging may reach the trip torque of a device for which that is a nuisance.</summary>
    public static bool MayTrip(ProtectionQuestion question, DeviceCheck[] devices)
    {
        // A peak that somebody measured or simulated counts, however gently the lever is moved.
        if (question.Engagement is { IsFeathered: true, Peak: null } || question.Engagement.Highest is not { } highest)
        {
            return false;
        }

        foreach (DeviceCheck device in devices)
        {
            Band atDevice = question.Chain.Nodes[device.Index].FromPto(highest.SiBand);
            if (!device.Device.StandsEngagement && device.Device.Running is { } trip && trip.SiBand.Low <= atDevice.High)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The device that the expected peak of engaging makes act; null when none.</summary>
    public static DeviceCheck? Tripped(ProtectionQuestion question, DeviceCheck[] devices)
    {
        if (question.Engagement.Peak is not { HasExpected: true } peak)
        {
            return null;
        }

        foreach (DeviceCheck check in devices)
        {
            if (!check.Device.StandsEngagement && check.Device.Running is { HasExpected: true } trip
                && question.Chain.Nodes[check.Index].FromPto(peak.SiBand) is { HasExpected: true } atDevice
                && atDevice.Expected > trip.SiBand.Expected)
            {
                return check;
            }
        }

        return null;
    }
}
