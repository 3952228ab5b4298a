using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>What its place tells of a fitted clutch: its speed, the heat of a start-up, the heat of slips in work.</summary>
internal static class ClutchInPlace
{
    // The heat of a slip can only be told from a start up to this.
    private static readonly Temperature Hottest = Temperature.FromDegreesCelsius(500);

    public static SlipClutchDevice Of(SlipClutchDevice device, DrivelineChain chain, RotationalSpeed? ptoSpeed, TorqueBand? work)
    {
        int index = chain.IndexOf(device);
        double ratio = chain.Nodes[index].Ratio;
        RotationalSpeed? speed = ptoSpeed is { } pto && !double.IsNaN(ratio) ? pto * ratio : null;
        SlipClutchDevice placed = Slipping(device.WithSpeedInWork(speed));
        return StartUp(placed, chain, index, work) is { } heat ? placed.WithEngagementHeat(heat) : placed;
    }

    /// <summary>The device with how often it slips in work and, once its speed is known, how hot that makes it.</summary>
    public static SlipClutchDevice Slipping(SlipClutchDevice device)
    {
        FittedClutch fitted = device.Fitted!;
        if (fitted.SlipsPerHour is not { } perHour)
        {
            return device;
        }

        if (perHour <= 0)
        {
            return device.WithoutSlipsInWork();
        }

        if (fitted.SlipTime is not { } time || device.SpeedInWork is not { } speed || fitted.CooledHeatPath is not { } path
            || device.Running?.High is not { } torque)
        {
            return device.WithSlipsInWork(perHour);
        }

        SlipEvent slip = SlipEvent.Blocked(torque, speed, time);
        RepeatedSlips repeated = RepeatedSlips.Of(slip, path, ClutchAir.Temperature, Duration.FromHours(1 / perHour));
        Temperature start = repeated.Lowest.Kelvins < Hottest.Kelvins ? repeated.Lowest : Hottest;
        return device.WithSlipsInWork(perHour, SlipHeat.Of(slip, path, fitted.Clutch!.Facing, start));
    }

    // The hottest of the slips at the ends of the running torque, against all that work may ask: the weak clutch slips long, the strong
    // one hard.
    private static SlipHeat? StartUp(SlipClutchDevice device, DrivelineChain chain, int index, TorqueBand? work)
    {
        if (device.SpeedInWork is not { } speed || device.Fitted!.HeatPath is not { } path
            || device.Running is not { IsBounded: true } running || work is not { IsBounded: true }
            || InertiaBehind(chain, index) is not { } inertia)
        {
            return null;
        }

        Torque load = Torque.FromNewtonMeters(chain.Nodes[index].FromPto(work.SiBand).High);
        return new[] { running.Low, running.Expected!.Value, running.High!.Value }
            .Select(torque => SlipHeat.Of(
                SlipEvent.StartUp(torque, inertia, speed, load), path, device.Fitted.Clutch!.Facing, ClutchAir.Temperature))
            .OrderByDescending(heat => heat.PeakFaceTemperature?.Kelvins ?? double.PositiveInfinity)
            .First();
    }

    // Inertia of all that turns behind the clutch, referred to it; null when any of it is not known, or when nothing is.
    private static MassMomentOfInertia? InertiaBehind(DrivelineChain chain, int index)
    {
        bool[] isBehind = new bool[chain.Nodes.Length];
        double sum = 0;
        for (int k = index + 1; k < chain.Nodes.Length; k++)
        {
            ChainNode node = chain.Nodes[k];
            isBehind[k] = node.Parent == index || (node.Parent > index && isBehind[node.Parent]);
            if (!isBehind[k] || node.Part is not { } part)
            {
                continue;
            }

            double ratio = node.Ratio / chain.Nodes[index].Ratio;
            if (double.IsNaN(ratio) || (part.StoresEnergy && part.InertiaKgM2 <= 0))
            {
                return null;
            }

            sum += part.InertiaKgM2 * ratio * ratio;
        }

        return sum > 0 ? MassMomentOfInertia.FromKilogramSquareMeters(sum) : null;
    }
}
