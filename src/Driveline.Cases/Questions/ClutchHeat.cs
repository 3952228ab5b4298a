using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The heat of a clutch in its place: while the PTO is let in, and slip after slip in work.</summary>
/// <remarks>
/// A plate is rubbed on both sides, so half of it stands behind each face; an end plate, rubbed on one, is taken the same:
/// hotter than it gets.
/// What is not stated is taken at its hottest: plates of the cast iron that takes up least heat, and for linings of unknown thermal
/// properties the organic lining that leaves most of it to the plates. Cooling in still air is from memory: 20 W/(m²·K) over the
/// two end plates. Every slip begins at 30 °C.
/// </remarks>
internal static class ClutchHeat
{
    /// <summary>Air, and clutch before work: a warm day.</summary>
    public static readonly Temperature Air = Temperature.FromDegreesCelsius(30);

    // The heat of a slip can only be told from a start up to this.
    private static readonly Temperature Hottest = Temperature.FromDegreesCelsius(500);

    private const double StillAirWPerM2K = 20;

    /// <summary>Where the heat goes; null when faces or plates are not known.</summary>
    public static HeatPath? PathOf(CaseObject facts, DiscClutch? clutch) => clutch is not null
        && facts.Get(SlipClutchMembers.PlateThickness) is { } thickness
        ? HeatPath.Of(clutch.FaceArea, clutch.Faces, ThermalMaterials.HighCarbonCastIron, thickness / 2, clutch.Facing.Thermal
            ?? ThermalMaterials.OrganicLiningWorn)
        : null;

    /// <summary>The same with the cooling of still air over the two end plates; null when faces or plates are not known.</summary>
    public static HeatPath? CooledPathOf(CaseObject facts, DiscClutch? clutch) => PathOf(facts, clutch)?.WithCooling(
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(StillAirWPerM2K),
        Area.FromSquareMeters(2 * Math.PI * clutch!.OuterM * clutch.OuterM));

    /// <summary>The device with what its place tells of its heat.</summary>
    public static SlipClutchDevice Of(CaseClutch clutch, DrivelineChain chain, TorqueBand? work, RotationalSpeed? speed)
    {
        SlipClutchDevice device = Slips(clutch, speed);
        if (speed is not { } known || PathOf(clutch.Facts, clutch.Clutch) is not { } path
            || device.Running is not { IsBounded: true } running || work is not { HasExpected: true })
        {
            return device;
        }

        int index = chain.IndexOf(clutch.Device);
        Torque load = Torque.FromNewtonMeters(chain.Nodes[index].FromPto(work.SiBand).Expected);
        if (InertiaBehind(chain, index) is not { } inertia)
        {
            return device;
        }

        SlipHeat[] ends =
        [
            .. new[] { running.Low, running.Expected!.Value, running.High!.Value }
                .Select(torque => SlipHeat.Of(SlipEvent.StartUp(torque, inertia, known, load), path, clutch.Clutch!.Facing, Air)),
        ];
        return device.WithEngagementHeat(Worst(ends));
    }

    /// <summary>The device with how often it slips in work and how hot that makes it.</summary>
    public static SlipClutchDevice Slips(CaseClutch clutch, RotationalSpeed? speed)
    {
        SlipClutchDevice device = clutch.Device;
        if (clutch.Facts.Get(SlipClutchMembers.SlipsPerHour) is not { } perHour)
        {
            return device;
        }

        if (perHour <= 0)
        {
            return device.WithoutSlipsInWork();
        }

        if (clutch.Facts.Get(SlipClutchMembers.SlipTime) is not { } time || speed is not { } known
            || CooledPathOf(clutch.Facts, clutch.Clutch) is not { } path || device.Running?.High is not { } torque)
        {
            return device.WithSlipsInWork(perHour);
        }

        SlipEvent slip = SlipEvent.Blocked(torque, known, time);
        RepeatedSlips repeated = RepeatedSlips.Of(slip, path, Air, Duration.FromHours(1 / perHour));
        Temperature start = repeated.Lowest.Kelvins < Hottest.Kelvins ? repeated.Lowest : Hottest;
        return device.WithSlipsInWork(perHour, SlipHeat.Of(slip, path, clutch.Clutch!.Facing, start));
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

    private static SlipHeat Worst(SlipHeat[] heats) =>
        heats.OrderByDescending(h => h.PeakFaceTemperature?.Kelvins ?? double.PositiveInfinity).First();
}
