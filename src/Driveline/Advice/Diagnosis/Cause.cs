namespace Driveline.Advice;

/// <summary>What may stand behind a complaint.</summary>
public enum Cause
{
    /// <summary>Something that is not in this list.</summary>
    NotKnown = 0,

    /// <summary>The bolt's grade is softer than the manual's.</summary>
    GradeTooSoft,

    /// <summary>The bolt's grade is stronger than the manual's.</summary>
    GradeTooStrong,

    /// <summary>The bolt has no marks: nobody knows its strength.</summary>
    BoltUnmarked,

    /// <summary>The bolt is thinner than the manual's.</summary>
    DiameterTooSmall,

    /// <summary>The bolt is thicker than the manual's.</summary>
    DiameterTooLarge,

    /// <summary>The thread lies where the bolt shears.</summary>
    ThreadsInPlane,

    /// <summary>Holes are worn, or the faces stand apart.</summary>
    LooseHoles,

    /// <summary>The hub is seized on its shaft.</summary>
    HubSeized,

    /// <summary>The bolt dies of fatigue.</summary>
    BoltFatigue,

    /// <summary>The PTO is engaged abruptly.</summary>
    AbruptEngagement,

    /// <summary>The PTO is engaged at too high an engine speed.</summary>
    EngagementSpeedTooHigh,

    /// <summary>The deck stands nose-down or scalps.</summary>
    DeckNoseDown,

    /// <summary>Too much at a time, too fast, or dull blades.</summary>
    Overload,

    /// <summary>Joint angle or phasing of the driveline.</summary>
    JointAngle,

    /// <summary>The tractor is too strong for the machine.</summary>
    TractorTooStrong,

    /// <summary>The clutch is stuck by rust.</summary>
    ClutchStuck,

    /// <summary>The clutch is overtightened.</summary>
    ClutchOvertightened,

    /// <summary>The clutch's springs are pressed solid.</summary>
    ClutchCoilBound,

    /// <summary>The clutch's facings are worn or glazed.</summary>
    ClutchWorn,

    /// <summary>Oil or grease on the facings.</summary>
    ClutchOiled,

    /// <summary>The clutch is set too loose.</summary>
    ClutchSetTooLoose,

    /// <summary>The strike was too soft to act on any protection, and that is fine.</summary>
    StrikeTooSoft,

    /// <summary>There is no protection.</summary>
    ProtectionMissing,

    /// <summary>Jams or obstacles of the work itself: the protection does its job.</summary>
    WorkJams,

    /// <summary>The rotor's blades or tools are bent, unequal or loose.</summary>
    RotorUnbalanced,

    /// <summary>The tractor stalls before the protection acts.</summary>
    TractorTooWeak,

    /// <summary>The tractor's PTO clutch slips before the protection acts.</summary>
    PtoClutchSlipsFirst,

    /// <summary>New linings have not been run in.</summary>
    LiningsNotRunIn,

    /// <summary>A seal leaks oil onto the linings.</summary>
    OilLeak,

    /// <summary>The bolt sits in another hole, or at another radius, than the manual's.</summary>
    WrongHole,
}
