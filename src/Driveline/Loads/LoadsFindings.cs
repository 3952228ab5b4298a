namespace Driveline.Loads;

/// <summary>Codes of what the loads report.</summary>
public static class LoadsFindings
{
    /// <summary>The power stands for the size of tractor used, not for what the machine draws.</summary>
    public const string PowerIsTractorSize = "powerIsTractorSize";

    /// <summary>The power rests on remembered parameters.</summary>
    public const string PowerFromMemory = "powerFromMemory";

    /// <summary>A power printed for one width was scaled to another.</summary>
    public const string PowerScaledByWidth = "powerScaledByWidth";

    /// <summary>Several sources for the machine give different powers.</summary>
    public const string PowerSourcesDiffer = "powerSourcesDiffer";

    /// <summary>Straw takes about a fifth more.</summary>
    public const string PowerMoreInStraw = "powerMoreInStraw";

    /// <summary>Pulling the machine comes on top of the rotary power.</summary>
    public const string PowerDraftOnTop = "powerDraftOnTop";

    /// <summary>The feed rate counts everything but grain.</summary>
    public const string PowerFeedIsNotGrain = "powerFeedIsNotGrain";

    /// <summary>The feed rate counts grain.</summary>
    public const string PowerFeedIsGrain = "powerFeedIsGrain";

    /// <summary>The feed rate counts dry matter.</summary>
    public const string PowerFeedIsDryMatter = "powerFeedIsDryMatter";

    /// <summary>A machine driven by the PTO takes 10 kW less than the self-propelled one of the parameters.</summary>
    public const string PowerLessWhenPtoDriven = "powerLessWhenPtoDriven";

    /// <summary>Half the length of cut, or a recutter screen, takes a quarter more.</summary>
    public const string PowerMoreForShortCut = "powerMoreForShortCut";

    /// <summary>The blade tip is faster than lawn mowers may have.</summary>
    public const string TipFasterThanLawnLimit = "tipFasterThanLawnLimit";

    /// <summary>The blade tip is too slow to cut well.</summary>
    public const string TipTooSlowToCut = "tipTooSlowToCut";

    /// <summary>How much the PTO clutch can pass is not known: the engagement peak has no bound.</summary>
    public const string EngagementCapacityNotKnown = "engagementCapacityNotKnown";

    /// <summary>The driver of such a PTO clutch cannot let it in gently.</summary>
    public const string EngagementNotFeatherable = "engagementNotFeatherable";

    /// <summary>The clutch may bite faster than the line can follow: the peak may overshoot its capacity.</summary>
    public const string EngagementMayOvershoot = "engagementMayOvershoot";

    /// <summary>The inertia to run up is not known, so time and heat are not known.</summary>
    public const string EngagementRotorNotKnown = "engagementRotorNotKnown";

    /// <summary>The torque the machine takes while it is run up is not known, so time and heat have no bound.</summary>
    public const string EngagementLoadNotKnown = "engagementLoadNotKnown";

    /// <summary>The clutch passes less than the machine takes: it slips until someone disengages.</summary>
    public const string EngagementNeverSynchronises = "engagementNeverSynchronises";

    /// <summary>A weak clutch may pass less than the machine takes.</summary>
    public const string EngagementMayNotSynchronise = "engagementMayNotSynchronise";

    /// <summary>What a clutch that does not slip at all would put on the line: an estimate, no bound.</summary>
    public const string EngagementRigidEstimate = "engagementRigidEstimate";

    /// <summary>The blow goes into deck or pan and never passes the driveline.</summary>
    public const string StrikeDoesNotPass = "strikeDoesNotPass";

    /// <summary>What was struck is not known: taken as if it had stopped the driveline.</summary>
    public const string StrikePlaceNotKnown = "strikePlaceNotKnown";

    /// <summary>How much the PTO clutch can pass is not known: nothing caps what engine and flywheel send.</summary>
    public const string StrikeCapacityNotKnown = "strikeCapacityNotKnown";

    /// <summary>The inertia between PTO clutch and stopped point is not known.</summary>
    public const string StrikeLineInertiaNotKnown = "strikeLineInertiaNotKnown";

    /// <summary>The stiffness of the line is not known.</summary>
    public const string StrikeStiffnessNotKnown = "strikeStiffnessNotKnown";

    /// <summary>The steady torque stated is above what the PTO clutch can pass.</summary>
    public const string StrikeSteadyAboveCapacity = "strikeSteadyAboveCapacity";

    /// <summary>The estimate holds for a dead stop; what gives way loads the line less.</summary>
    public const string StrikeAssumesDeadStop = "strikeAssumesDeadStop";

    /// <summary>A rotor stopped at its blades spends its own energy in what it strikes.</summary>
    public const string StrikeRotorSpendsItself = "strikeRotorSpendsItself";

    /// <summary>When something before the rotor stops, the rotor's inertia twists what lies between.</summary>
    public const string StrikeRotorLoadsLine = "strikeRotorLoadsLine";

    /// <summary>Whether an overrun clutch lies between the stopped point and the rotor is not known.</summary>
    public const string StrikeOverrunNotKnown = "strikeOverrunNotKnown";

    /// <summary>Whether there is an overrun clutch is not known: taken as none.</summary>
    public const string OverrunNotKnown = "overrunNotKnown";

    /// <summary>Without an overrun clutch the rotor pushes the tractor on.</summary>
    public const string OverrunPushesTractor = "overrunPushesTractor";

    /// <summary>With an overrun clutch the rotor turns on after the PTO has stopped.</summary>
    public const string OverrunRotorTurnsOn = "overrunRotorTurnsOn";

    /// <summary>An overrun clutch can halve the natural frequency of the line.</summary>
    public const string OverrunHalvesFrequency = "overrunHalvesFrequency";

    /// <summary>Sources disagree on PTO power over engine power.</summary>
    public const string PtoPowerRatiosDiffer = "ptoPowerRatiosDiffer";

    /// <summary>The torque an engine can hold above its rated torque is not stated.</summary>
    public const string TorqueReserveNotStated = "torqueReserveNotStated";
}
