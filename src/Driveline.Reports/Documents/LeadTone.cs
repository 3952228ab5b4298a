namespace Driveline.Reports.Documents;

/// <summary>Which colour stands beside the sentence that matters most; the sentence itself always says it in words.</summary>
internal enum LeadTone
{
    /// <summary>Neither good nor bad.</summary>
    Neutral = 0,

    /// <summary>All is well: green.</summary>
    Good,

    /// <summary>In doubt, not known, or a nuisance: amber.</summary>
    Careful,

    /// <summary>Something is expected to break: red.</summary>
    Bad,
}
