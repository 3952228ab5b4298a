namespace Driveline.Clutches;

/// <summary>Whether a clutch may be relied on to slip at all.</summary>
public enum SlipTrust
{
    /// <summary>Nobody has shown lately that it slips.</summary>
    NotKnown = 0,

    /// <summary>It is stuck, failed its slip test, or has stood in storage since the test.</summary>
    MustNotBeTrusted,

    /// <summary>A slip test since the last storage, and since the last change of the setting, showed that it slips.</summary>
    MayBeTrusted,
}
