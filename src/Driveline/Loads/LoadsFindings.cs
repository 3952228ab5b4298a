namespace Driveline.Loads;

/// <summary>Codes of what the loads report.</summary>
public static class LoadsFindings
{
    /// <summary>The power stands for the size of tractor used, not for what the machine draws.</summary>
    public const string PowerIsTractorSize = "power.isTractorSize";

    /// <summary>The power rests on remembered parameters.</summary>
    public const string PowerFromMemory = "power.fromMemory";

    /// <summary>A power printed for one width was scaled to another.</summary>
    public const string PowerScaledByWidth = "power.scaledByWidth";

    /// <summary>Several sources for the machine give different powers.</summary>
    public const string PowerSourcesDiffer = "power.sourcesDiffer";

    /// <summary>Straw takes about a fifth more.</summary>
    public const string PowerMoreInStraw = "power.moreInStraw";

    /// <summary>Pulling the machine comes on top of the rotary power.</summary>
    public const string PowerDraftOnTop = "power.draftOnTop";

    /// <summary>The feed rate counts everything but grain.</summary>
    public const string PowerFeedIsNotGrain = "power.feedIsNotGrain";

    /// <summary>The feed rate counts grain.</summary>
    public const string PowerFeedIsGrain = "power.feedIsGrain";

    /// <summary>The feed rate counts dry matter.</summary>
    public const string PowerFeedIsDryMatter = "power.feedIsDryMatter";

    /// <summary>A machine driven by the PTO takes 10 kW less than the self-propelled one of the parameters.</summary>
    public const string PowerLessWhenPtoDriven = "power.lessWhenPtoDriven";

    /// <summary>Half the length of cut, or a recutter screen, takes a quarter more.</summary>
    public const string PowerMoreForShortCut = "power.moreForShortCut";

    /// <summary>The blade tip is faster than lawn mowers may have.</summary>
    public const string TipFasterThanLawnLimit = "blade.tipFasterThanLawnLimit";

    /// <summary>The blade tip is too slow to cut well.</summary>
    public const string TipTooSlowToCut = "blade.tipTooSlowToCut";

    /// <summary>How much the PTO clutch can pass is not known: the engagement peak has no bound.</summary>
    public const string EngagementCapacityNotKnown = "engagement.capacityNotKnown";

    /// <summary>The driver of such a PTO clutch cannot engage it gently.</summary>
    public const string EngagementNotFeatherable = "engagement.notFeatherable";

    /// <summary>The clutch may bite faster than the line can follow: the peak may overshoot its capacity.</summary>
    public const string EngagementMayOvershoot = "engagement.mayOvershoot";

    /// <summary>The inertia to run up is not known, so time and heat are not known.</summary>
    public const string EngagementRotorNotKnown = "engagement.rotorNotKnown";

    /// <summary>The torque the machine takes while it is run up is not known, so time and heat have no bound.</summary>
    public const string EngagementLoadNotKnown = "engagement.loadNotKnown";

    /// <summary>The clutch passes less than the machine takes: it slips until someone disengages.</summary>
    public const string EngagementNeverSynchronises = "engagement.neverSynchronises";

    /// <summary>A weak clutch may pass less than the machine takes.</summary>
    public const string EngagementMayNotSynchronise = "engagement.mayNotSynchronise";

    /// <summary>What a clutch that does not slip at all would put on the line: an estimate, no bound.</summary>
    public const string EngagementRigidEstimate = "engagement.rigidEstimate";

    /// <summary>The pan was hit: taken as if it had wedged and stopped the rotor, which it mostly does not.</summary>
    public const string StrikePanMayWedge = "strike.panMayWedge";

    /// <summary>The blow goes into the deck and past the driveline.</summary>
    public const string StrikeDoesNotPass = "strike.doesNotPass";

    /// <summary>What was struck is not known: taken as if it had stopped the driveline.</summary>
    public const string StrikePlaceNotKnown = "strike.placeNotKnown";

    /// <summary>How much the PTO clutch can pass is not known: nothing caps what engine and flywheel send.</summary>
    public const string StrikeCapacityNotKnown = "strike.capacityNotKnown";

    /// <summary>The inertia between PTO clutch and stopped point is not known.</summary>
    public const string StrikeLineInertiaNotKnown = "strike.lineInertiaNotKnown";

    /// <summary>The stiffness of the line is not known.</summary>
    public const string StrikeStiffnessNotKnown = "strike.stiffnessNotKnown";

    /// <summary>The steady torque stated is above what the PTO clutch can pass.</summary>
    public const string StrikeSteadyAboveCapacity = "strike.steadyAboveCapacity";

    /// <summary>The estimate holds for a dead stop; what gives way loads the line less.</summary>
    public const string StrikeAssumesDeadStop = "strike.assumesDeadStop";

    /// <summary>A rotor stopped at its blades spends its own energy in what it strikes.</summary>
    public const string StrikeRotorSpendsItself = "strike.rotorSpendsItself";

    /// <summary>When something before the rotor stops, the rotor's inertia twists what lies between.</summary>
    public const string StrikeRotorLoadsLine = "strike.rotorLoadsLine";

    /// <summary>Whether an overrun clutch lies between the stopped point and the rotor is not known.</summary>
    public const string StrikeOverrunNotKnown = "strike.overrunNotKnown";

    /// <summary>Whether there is an overrun clutch is not known: taken as none.</summary>
    public const string OverrunNotKnown = "overrun.notKnown";

    /// <summary>Without an overrun clutch the rotor pushes the tractor on.</summary>
    public const string OverrunPushesTractor = "overrun.pushesTractor";

    /// <summary>With an overrun clutch the rotor turns on after the PTO has stopped.</summary>
    public const string OverrunRotorTurnsOn = "overrun.rotorTurnsOn";

    /// <summary>An overrun clutch can halve the natural frequency of the line.</summary>
    public const string OverrunHalvesFrequency = "overrun.halvesFrequency";

    /// <summary>Sources disagree on PTO power over engine power.</summary>
    public const string PtoPowerRatiosDiffer = "power.ptoRatiosDiffer";

    /// <summary>The torque an engine can hold above its rated torque is not stated.</summary>
    public const string TorqueReserveNotStated = "engine.torqueReserveNotStated";
}
