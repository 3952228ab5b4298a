namespace Driveline.Loads;

/// <summary>Codes of what a simulation of the driveline cannot do without, and of what it took in place of a fact.</summary>
public static class SimulationFindings
{
    /// <summary>The PTO speed is not known.</summary>
    public const string SpeedNotKnown = "simulationSpeedNotKnown";

    /// <summary>The torsional stiffness of a shaft is not known.</summary>
    public const string StiffnessNotKnown = "simulationStiffnessNotKnown";

    /// <summary>The inertia of a rotor or flywheel, or of what is struck, is not known.</summary>
    public const string InertiaNotKnown = "simulationInertiaNotKnown";

    /// <summary>Two couplings have no inertia between them: that of what lies there is not known.</summary>
    public const string InertiaBetweenNotKnown = "simulationInertiaBetweenNotKnown";

    /// <summary>The speed ratio of a gearbox is not known.</summary>
    public const string RatioNotKnown = "simulationRatioNotKnown";

    /// <summary>How much torque the PTO clutch passes is not known, and it is to be let in.</summary>
    public const string CapacityNotKnown = "simulationCapacityNotKnown";

    /// <summary>How long a gentle driver takes to let the PTO clutch in is not known.</summary>
    public const string RiseNotKnown = "simulationRiseNotKnown";

    /// <summary>The torque that the line carries when the strike comes is not known.</summary>
    public const string LoadNotKnown = "simulationLoadNotKnown";

    /// <summary>What the strike puts against the line is not known.</summary>
    public const string StrikeNotKnown = "simulationStrikeNotKnown";

    /// <summary>What the strike stopped is not known.</summary>
    public const string PlaceNotKnown = "simulationPlaceNotKnown";

    /// <summary>The driveline branches.</summary>
    public const string BranchNotSupported = "simulationBranchNotSupported";

    /// <summary>A protective device is not identified.</summary>
    public const string DeviceNotKnown = "simulationDeviceNotKnown";

    /// <summary>Nothing with an inertia lies behind anything that twists or slips.</summary>
    public const string NothingTwists = "simulationNothingTwists";

    /// <summary>The engine is taken as held at its speed, which errs high.</summary>
    public const string EngineHeld = "simulationEngineHeld";

    /// <summary>Nothing caps what the engine sends into the line.</summary>
    public const string NoClutchCap = "simulationNoClutchCap";

    /// <summary>The PTO clutch is taken to bite at once, which errs high.</summary>
    public const string SuddenBite = "simulationSuddenBite";

    /// <summary>The machine is taken to run up without load.</summary>
    public const string NoLoad = "simulationNoLoad";

    /// <summary>Nothing that twists is known between a device and what is stopped.</summary>
    public const string DeviceAtStop = "simulationDeviceAtStop";

    /// <summary>Parts whose inertia nobody stated are taken to have none.</summary>
    public const string PartsWithoutInertia = "simulationPartsWithoutInertia";

    /// <summary>A bound without an upper end was left out.</summary>
    public const string FactUnbounded = "simulationFactUnbounded";

    /// <summary>The PTO clutch was still slipping at the end of the run.</summary>
    public const string StillSlipping = "simulationStillSlipping";
}
