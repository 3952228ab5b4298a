using Driveline.Chains;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>A protective device as a coupling of pure mechanics, at the PTO.</summary>
internal static class SimulatedDevice
{
    /// <summary>The coupling that acts at one value of the device's band; null when it cannot act there.</summary>
    /// <remarks>
    /// A bolt breaks once and leaves the drag of its hub, when measured; a clutch holds its running torque; a cut-out lets go. What is
    /// stuck as fitted, a seized hub among it, does not act.
    /// </remarks>
    public static Coupling? Coupling(ProtectiveDevice device, in SimulationEnds ends, double ratio)
    {
        if (ends.Devices is not (SimulatedDevices.Fitted or SimulatedDevices.Healthy))
        {
            return null;
        }

        bool isHealthy = ends.Devices == SimulatedDevices.Healthy;
        if (!isHealthy && IsStuck(device))
        {
            return null;
        }

        if (TripOf(device, isHealthy) is not { } trip || trip.SiBand.At(ends.Device) is not (> 0 and < double.PositiveInfinity and var nm))
        {
            return null;
        }

        double atPto = nm * ratio;
        if (device.AfterTrip != AfterTrip.TorqueHeld)
        {
            BreakingCoupling breaking = BreakingCoupling.At(Torque.FromNewtonMeters(atPto));
            double drag = isHealthy ? 0 : Math.Min(DragNm(device) * ratio, atPto);
            return drag > 0 ? breaking.WithResidual(Torque.FromNewtonMeters(drag)) : breaking;
        }

        double running = (isHealthy ? trip : device.Running ?? trip).SiBand.At(ends.Device) * ratio;
        return FrictionCoupling.Of(Torque.FromNewtonMeters(atPto), Torque.FromNewtonMeters(Math.Min(running, atPto)));
    }

    /// <summary>The torque at which it acts as fitted or in good order; null when nothing is known.</summary>
    public static TorqueBand? TripOf(ProtectiveDevice device, bool isHealthy) => isHealthy ? device.InGoodOrder : device.Breakaway;

    /// <summary>True when it is known to pass on what comes: a stuck clutch, a bolt in a seized hub.</summary>
    public static bool IsStuck(ProtectiveDevice device) => device.IsStuck
        || device is ShearBoltDevice { BreakTorque.Joint.Hub: HubState.Seized };

    /// <summary>True when nobody knows at which torque it acts as fitted, so that a run with it proves nothing.</summary>
    public static bool IsUnsure(ProtectiveDevice device) =>
        !IsStuck(device) && (device.Breakaway is not { SiBand.HasExpected: true } || !device.IsIdentified);

    private static double DragNm(ProtectiveDevice device) =>
        device is ShearBoltDevice { BreakTorque.Joint: { Hub: HubState.Stiff, HubFriction: { IsBounded: true } drag } }
            ? drag.SiBand.Expected : 0;
}
