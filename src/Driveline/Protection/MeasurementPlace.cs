namespace Driveline.Protection;

/// <summary>Where something is measured or looked up.</summary>
public enum MeasurementPlace
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>At the machine, everything standing still and the key out.</summary>
    Machine,

    /// <summary>At the desk: the manual, the parts list, the owner's own notes.</summary>
    Desk,

    /// <summary>From the seat, in work.</summary>
    Seat,

    /// <summary>With instruments that a workshop or a dealer has.</summary>
    Workshop,

    /// <summary>Only the machine's maker can say it, and hardly any publishes it.</summary>
    Maker,
}
