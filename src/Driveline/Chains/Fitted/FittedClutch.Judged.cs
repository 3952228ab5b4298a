using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <content>What the facts of a fitted clutch come to: its condition, its slip torque, and it as a device.</content>
public sealed partial class FittedClutch
{
    // Any day will do: without a day nothing counts from it.
    private static readonly DateTime NoDay = new(1900, 1, 1);

    private SlipClutchDevice? device;
    private ClutchCondition? condition;

    /// <summary>Its condition on the day judged on; without a day, on one after everything told.</summary>
    public ClutchCondition Condition => condition ??= ConditionNow();

    /// <summary>
    /// Its slip torque: by its springs where their length is known; else as measured; else as the machine's documents state.
    /// </summary>
    public SlipTorque SlipTorque => Device.SlipTorque;

    /// <summary>It as a device of a driveline, always the same one; what its place tells of its heat is not known yet.</summary>
    public SlipClutchDevice Device =>
        device ?? Interlocked.CompareExchange(ref device, SlipClutchDevice.Of(this), null) ?? device;

    /// <summary>Where the heat of a slip goes; null when faces or plates are not known.</summary>
    /// <remarks>
    /// A plate is rubbed on both sides, so half of it stands behind each face; an end plate, rubbed on one, is taken the same: hotter
    /// than it gets. What is not told is taken at its hottest: plates of the cast iron that takes up least heat, and for linings of
    /// unknown thermal properties the organic lining that leaves most of it to the plates.
    /// </remarks>
    internal HeatPath? HeatPath => Clutch is { } clutch && plateM > 0
        ? HeatPath.Of(clutch.FaceArea, clutch.Faces, ThermalMaterials.HighCarbonCastIron, Length.FromMeters(plateM) / 2,
            clutch.Facing.Thermal ?? ThermalMaterials.OrganicLiningWorn)
        : null;

    /// <summary>
    /// The same with the cooling of <see cref="ClutchAir"/> over the two end plates; null when faces or plates are not known.
    /// </summary>
    internal HeatPath? CooledHeatPath => HeatPath?.WithCooling(
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(ClutchAir.Cooling.Value),
        Area.FromSquareMeters(2 * Math.PI * Clutch!.OuterM * Clutch.OuterM),
        ClutchAir.Cooling.Basis);

    /// <summary>The slip torque by what is told of it.</summary>
    internal SlipTorque Judged() => Clutch?.SpringLength is not null ? SlipTorque.Of(Clutch, Condition)
        : Condition.LastSlipTest?.Running is not null ? SlipTorque.OfMeasured(Condition)
        : StatedTorque is not null ? SlipTorque.OfStated(StatedTorque, Condition)
        : Clutch is not null ? SlipTorque.Of(Clutch, Condition)
        : SlipTorque.NotKnown(Condition);

    /// <summary>Torque at which it slips when clean and free: as measured, else by its springs; null when neither is known.</summary>
    internal TorqueBand? GoodOrder()
    {
        if (Condition.LastSlipTest?.Running is { } measured)
        {
            return measured;
        }

        if (Clutch?.SpringLength is null)
        {
            return null;
        }

        ClutchCondition clean = ClutchCondition.AsOf(Condition.Day).WithSurface(SurfaceState.Dry).WithRunIn(RunIn);
        return SlipTorque.Of(Clutch, Wear is { } wear ? clean.WithWear(wear) : clean).Running;
    }

    /// <summary>Its condition when the springs are set anew: a test before the nuts were turned is none of the clutch as set.</summary>
    internal ClutchCondition SetAnew() => ConditionOn(Later(), false, false);

    private ClutchCondition ConditionNow() => ConditionOn(day ?? Later(), day is not null, true);

    private ClutchCondition ConditionOn(DateTime on, bool isDated, bool withTest)
    {
        ClutchCondition seen = ClutchCondition.Open(on)
            .WithRunIn(RunIn)
            .WithSurface(Surface == SurfaceState.Dry ? SurfaceState.CleanInWork : Surface)
            .WithClimate(Climate);
        seen = Wear is { } wear ? seen.WithWear(wear) : seen;
        if (LastStorageEnded is { } ended && (isDated || ended > LastSlipTest?.Date))
        {
            seen = double.IsNaN(storedMonths) ? seen.WithStorage(ended) : seen.WithStorage(ended, storedMonths);
        }

        if (withTest)
        {
            seen = LastSlipTest is { } test ? seen.WithSlipTest(test) : seen;
            seen = IsStuck ? seen.Stuck() : seen;
        }

        return seen.Closed();
    }

    // A day after everything told, so that no test is of that day.
    private DateTime Later()
    {
        DateTime test = LastSlipTest?.Date ?? NoDay;
        DateTime last = LastStorageEnded > test ? LastStorageEnded.Value : test;
        return last < DateTime.MaxValue.Date ? last.AddDays(1) : last;
    }
}
