namespace Driveline.Wording;

/// <summary>The units people read.</summary>
public enum DisplayUnits
{
    /// <summary>N·m, mm, MPa, kW, °C.</summary>
    Metric = 0,

    /// <summary>lb·ft, in, ksi, hp, °F.</summary>
    UsCustomary = 1,
}
