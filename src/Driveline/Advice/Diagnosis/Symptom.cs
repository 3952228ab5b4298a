namespace Driveline.Advice;

/// <summary>What the owner complains of.</summary>
public enum Symptom
{
    /// <summary>Not known, or none of the others.</summary>
    NotKnown = 0,

    /// <summary>The shear bolt breaks often.</summary>
    BreaksOften,

    /// <summary>The shear bolt breaks as the PTO is engaged.</summary>
    BreaksWhenEngaging,

    /// <summary>The shear bolt breaks at one place in the field.</summary>
    BreaksAtOnePlace,

    /// <summary>It struck something and nothing gave.</summary>
    NothingGaveAtStrike,

    /// <summary>The clutch slips in normal work.</summary>
    ClutchSlipsInWork,

    /// <summary>The clutch smokes.</summary>
    ClutchSmokes,

    /// <summary>The clutch is never seen to slip.</summary>
    ClutchNeverSlips,

    /// <summary>The clutch's setting seems to drift on rough ground.</summary>
    ClutchSettingDrifts,

    /// <summary>The broken bolt cannot be driven out.</summary>
    BrokenBoltStuck,

    /// <summary>The bolt's holes are oval.</summary>
    HolesOval,

    /// <summary>The machine shakes.</summary>
    Vibration,
}
