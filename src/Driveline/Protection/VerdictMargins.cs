using Driveline.Chains;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The weakest part, the first device, the smallest margins and the weakest basis of a verdict.</summary>
internal static class VerdictMargins
{
    /// <summary>The part with the lowest expected damage torque at the PTO, defaults and ratings left out.</summary>
    public static PartCheck? WeakestPart(DrivelineChain chain, PartCheck[] parts)
    {
        PartCheck? weakest = null;
        Band lowest = default;
        foreach (PartCheck part in parts)
        {
            if (part.Part.Limit is not { IsDefault: false, IsRating: false } limit || double.IsNaN(chain.Nodes[part.Index].Ratio))
            {
                continue;
            }

            Band atPto = chain.Nodes[part.Index].ToPto(limit.DamagedAt.SiBand);
            if (weakest is null || atPto.Expected < lowest.Expected
                || (atPto.Expected.Equals(lowest.Expected) && atPto.Low < lowest.Low))
            {
                weakest = part;
                lowest = atPto;
            }
        }

        return weakest;
    }

    /// <summary>The device with the lowest expected torque at the PTO.</summary>
    public static DeviceCheck? First(DrivelineChain chain, DeviceCheck[] devices)
    {
        DeviceCheck? first = null;
        double lowest = double.PositiveInfinity;
        foreach (DeviceCheck device in devices)
        {
            if (device.Device.Breakaway is { } trip && !double.IsNaN(chain.Nodes[device.Index].Ratio))
            {
                double expected = chain.Nodes[device.Index].ToPto(trip.SiBand).Expected;
                if (first is null || expected < lowest)
                {
                    first = device;
                    lowest = expected;
                }
            }
        }

        return first;
    }

    public static double? Work(DeviceCheck[] devices)
    {
        double? smallest = null;
        foreach (DeviceCheck device in devices)
        {
            smallest = Smaller(device.Margin, smallest);
        }

        return smallest;
    }

    public static double? Guard(PartCheck[] parts)
    {
        double? smallest = null;
        foreach (PartCheck part in parts)
        {
            smallest = Smaller(part.Margin, smallest);
        }

        return smallest;
    }

    public static Basis? WeakestBasis(DeviceCheck[] devices, PartCheck[] parts, TorqueBand? workPeak)
    {
        Basis? weakest = null;
        foreach (DeviceCheck device in devices)
        {
            weakest = Weaker(weakest, device.TripAtPto);
        }

        foreach (PartCheck part in parts)
        {
            weakest = Weaker(weakest, part.DamagedAtPto);
        }

        return Weaker(weakest, workPeak);
    }

    private static double? Smaller(double? margin, double? smallest) => margin is { } known && !(known >= smallest) ? known : smallest;

    private static Basis? Weaker(Basis? weakest, TorqueBand? torque) => torque is null ? weakest
        : weakest is null ? torque.WeakestBasis
        : Basis.Weakest(weakest, torque.WeakestBasis);
}
