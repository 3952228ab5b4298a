using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>What a watched driveline did so far. What the samples cannot tell is null, never 0.</summary>
public sealed class MonitorHistory
{
    internal MonitorHistory(
        SampleGate gate, EngagementTracker engagement, TripTracker trips, SlipTracker slips, ClutchThermometer thermometer,
            long overloads, double highestNm)
    {
        bool seesSlip = gate.Taken > gate.WithoutSpeedOut;
        Turned = Duration.FromSeconds(engagement.TurnedS);
        Worked = Duration.FromSeconds(engagement.WorkedS);
        Engagements = engagement.Engagements;
        Overloads = overloads;
        HighestTorque = double.IsNaN(highestNm) ? null : Torque.FromNewtonMeters(highestNm);
        Trips = seesSlip ? trips.Trips : null;
        TripsInWork = seesSlip ? trips.InWork : null;
        Slips = seesSlip ? slips.Slips : null;
        SlipsInWork = seesSlip ? slips.InWork : null;
        SlipTime = seesSlip ? Duration.FromSeconds(slips.TotalS) : null;
        SlipAngle = seesSlip ? Angle.FromRadians(slips.TotalRad) : null;
        SlipEnergy = seesSlip ? Energy.FromJoules(slips.TotalJ) : null;
        FaceTemperature = seesSlip && thermometer.IsKnown ? Temperature.FromKelvins(thermometer.FaceK) : null;
        HighestFaceTemperature = seesSlip && thermometer.IsKnown ? Temperature.FromKelvins(thermometer.HighestK) : null;
    }

    /// <summary>How long the PTO has turned, pauses of the samples left out.</summary>
    public Duration Turned { get; }

    /// <summary>The same without engagements: the time in which peaks of work were looked for.</summary>
    public Duration Worked { get; }

    /// <summary>Engagements seen; one that began in a pause of the samples is not.</summary>
    public long Engagements { get; }

    /// <summary>Overloads that have ended.</summary>
    public long Overloads { get; }

    /// <summary>Highest torque taken; null before the first sample.</summary>
    public Torque? HighestTorque { get; }

    /// <summary>Trips; null when no speed behind the device was ever measured.</summary>
    public long? Trips { get; }

    /// <summary>Trips outside engagements.</summary>
    public long? TripsInWork { get; }

    /// <summary>Slips that have ended.</summary>
    public long? Slips { get; }

    /// <summary>Slips that began outside engagements.</summary>
    public long? SlipsInWork { get; }

    /// <summary>Time of slip.</summary>
    public Duration? SlipTime { get; }

    /// <summary>Angle of slip.</summary>
    public Angle? SlipAngle { get; }

    /// <summary>Heat of slip, torque times slip angle.</summary>
    public Energy? SlipEnergy { get; }

    /// <summary>Face temperature now; null without a heat path or a speed behind the device.</summary>
    public Temperature? FaceTemperature { get; }

    /// <summary>Highest face temperature so far.</summary>
    public Temperature? HighestFaceTemperature { get; }

    /// <summary>Hours turned and the highest torque.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Turned.Hours:0.##} h, highest torque {HighestTorque?.NewtonMeters ?? double.NaN:G4} N·m");
}
