namespace Driveline.Loads;

/// <summary>What a published power figure stands for; only the last is what the machine itself draws.</summary>
internal enum PowerMeaning
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Engine power of the tractor that is used or asked for.</summary>
    TractorInstalled,

    /// <summary>PTO power of the tractor that is advised: the machine draws less in light work.</summary>
    TractorPtoAdvised,

    /// <summary>Mean rotary power the machine draws in work.</summary>
    MachineDraws,
}
