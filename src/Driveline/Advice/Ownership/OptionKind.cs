namespace Driveline.Advice;

/// <summary>What an owner may do.</summary>
public enum OptionKind
{
    /// <summary>Not known, or none of the others.</summary>
    NotKnown = 0,

    /// <summary>Keep the bolt that is fitted.</summary>
    SameBolt,

    /// <summary>Another grade or size of bolt.</summary>
    OtherBolt,

    /// <summary>A bolt that is better placed or easier to reach.</summary>
    EasierBolt,

    /// <summary>Convert to a slip clutch.</summary>
    Clutch,

    /// <summary>Trade the machine in for one with a clutch.</summary>
    TradeIn,
}
