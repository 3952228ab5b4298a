using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>What each measurement takes, and its rank by value per effort.</summary>
/// <remarks>
/// Ranks and minutes are common practice. A seized hub comes first, since it undoes every number; then a limiter where none is; the hub,
/// which two hands tell; what says which device is fitted and where it is cut; what the manual names; the holes; the springs of a clutch,
/// and that it slips. Instruments come after all that an owner can do, and what only a maker can say comes last.
/// </remarks>
internal readonly struct MeasurementEffort
{
    private static readonly (string Code, int Minutes, MeasurementPlace Place)[] OfOwner =
    [
        (Measurements.FreeHub, 60, MeasurementPlace.Machine),
        (Measurements.FitLimiter, 30, MeasurementPlace.Desk),
        (Measurements.HubTurn, 5, MeasurementPlace.Machine),
        (Measurements.IdentifyDevice, 5, MeasurementPlace.Machine),
        (Measurements.BoltLayout, 5, MeasurementPlace.Machine),
        (Measurements.PlaneThrough, 5, MeasurementPlace.Machine),
        (Measurements.NeckDiameter, 10, MeasurementPlace.Machine),
        (Measurements.ManualSpecification, 10, MeasurementPlace.Desk),
        (Measurements.HoleFit, 5, MeasurementPlace.Machine),
        (Measurements.ClutchSprings, 20, MeasurementPlace.Machine),
        (Measurements.SlipTest, 30, MeasurementPlace.Machine),
        (Measurements.HoursWithoutBreak, 5, MeasurementPlace.Desk),
        (Measurements.PartsList, 15, MeasurementPlace.Machine),
        (Measurements.GearboxData, 10, MeasurementPlace.Machine),
        (Measurements.SlipsInWork, 60, MeasurementPlace.Seat),
    ];

    private static readonly (string Code, int Minutes)[] OfWorkshop = [(Measurements.BoltHardness, 60), (Measurements.WorkPeak, 240)];

    private MeasurementEffort(int rank, int? minutes, MeasurementPlace place)
    {
        Rank = rank;
        Minutes = minutes;
        Place = place;
    }

    /// <summary>Lower is sooner.</summary>
    public int Rank { get; }

    /// <summary>Minutes it takes about; null when it is not in the asker's hands.</summary>
    public int? Minutes { get; }

    public MeasurementPlace Place { get; }

    public static MeasurementEffort Of(string code)
    {
        int own = Array.FindIndex(OfOwner, m => m.Code == code);
        if (own >= 0)
        {
            return new MeasurementEffort(own, OfOwner[own].Minutes, OfOwner[own].Place);
        }

        int shop = Array.FindIndex(OfWorkshop, m => m.Code == code);
        return shop >= 0 ? new MeasurementEffort(OfOwner.Length, OfWorkshop[shop].Minutes, MeasurementPlace.Workshop)
            : new MeasurementEffort(OfOwner.Length + 1, null, MeasurementPlace.Maker);
    }
}
