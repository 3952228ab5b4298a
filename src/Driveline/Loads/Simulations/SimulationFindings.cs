namespace Driveline.Loads;

/// <summary>Codes of what a simulation of the driveline cannot do without, and of what it took in place of a fact.</summary>
public static class SimulationFindings
{
    /// <summary>The PTO speed is not known.</summary>
    public const string SpeedNotKnown = "simulation.speedNotKnown";

    /// <summary>The torsional stiffness of a shaft is not known.</summary>
    public const string StiffnessNotKnown = "simulation.stiffnessNotKnown";

    /// <summary>The inertia of a rotor or flywheel, or of what is struck, is not known.</summary>
    public const string InertiaNotKnown = "simulation.inertiaNotKnown";

    /// <summary>Two couplings have no inertia between them: that of what lies there is not known.</summary>
    public const string InertiaBetweenNotKnown = "simulation.inertiaBetweenNotKnown";

    /// <summary>The speed ratio of a gearbox is not known.</summary>
    public const string RatioNotKnown = "simulation.ratioNotKnown";

    /// <summary>How much torque the PTO clutch passes is not known, and it is to be engaged.</summary>
    public const string CapacityNotKnown = "simulation.capacityNotKnown";

    /// <summary>How long a gentle driver takes to let the PTO clutch in is not known.</summary>
    public const string RiseNotKnown = "simulation.riseNotKnown";

    /// <summary>The torque that the line carries when the strike comes is not known.</summary>
    public const string LoadNotKnown = "simulation.loadNotKnown";

    /// <summary>What the strike puts against the line is not known.</summary>
    public const string StrikeNotKnown = "simulation.strikeNotKnown";

    /// <summary>What the strike stopped is not known.</summary>
    public const string PlaceNotKnown = "simulation.placeNotKnown";

    /// <summary>The pan was hit: simulated as if it wedged, which it mostly does not.</summary>
    public const string PanAsWedged = "simulation.panAsWedged";

    /// <summary>When what gives way is through is not known: expected after an angle, in a severe run never.</summary>
    public const string ThicknessNotKnown = "simulation.thicknessNotKnown";

    /// <summary>The driveline branches.</summary>
    public const string BranchNotSupported = "simulation.branchNotSupported";

    /// <summary>A protective device is not identified.</summary>
    public const string DeviceNotKnown = "simulation.deviceNotKnown";

    /// <summary>Nothing with an inertia lies behind anything that twists or slips.</summary>
    public const string NothingTwists = "simulation.nothingTwists";

    /// <summary>The engine is taken as held at its speed, which errs high.</summary>
    public const string EngineHeld = "simulation.engineHeld";

    /// <summary>Nothing caps what the engine sends into the line.</summary>
    public const string NoClutchCap = "simulation.noClutchCap";

    /// <summary>The PTO clutch is taken to bite at once, which errs high.</summary>
    public const string SuddenBite = "simulation.suddenBite";

    /// <summary>The machine is taken to run up without load.</summary>
    public const string NoLoad = "simulation.noLoad";

    /// <summary>Nothing that twists is known between a device and what is stopped.</summary>
    public const string DeviceAtStop = "simulation.deviceAtStop";

    /// <summary>Parts whose inertia nobody stated are taken to have none.</summary>
    public const string PartsWithoutInertia = "simulation.partsWithoutInertia";

    /// <summary>A bound without an upper end was left out.</summary>
    public const string FactUnbounded = "simulation.factUnbounded";

    /// <summary>A usual stiffness stands in place of that of a shaft; the runs span it and decide nothing.</summary>
    public const string StiffnessSupposed = "simulation.stiffnessSupposed";

    /// <summary>A usual inertia stands in place of that of a part.</summary>
    public const string InertiaSupposed = "simulation.inertiaSupposed";

    /// <summary>No shaft is in the list: a usual one was put in.</summary>
    public const string ShaftSupposed = "simulation.shaftSupposed";

    /// <summary>No rotor is in the list: a usual one was put in.</summary>
    public const string RotorSupposed = "simulation.rotorSupposed";

    /// <summary>A usual speed ratio stands in place of that of a gearbox.</summary>
    public const string RatioSupposed = "simulation.ratioSupposed";

    /// <summary>A usual capacity stands in place of that of the PTO clutch.</summary>
    public const string CapacitySupposed = "simulation.capacitySupposed";

    /// <summary>A usual time of engagement stands in place of the driver's.</summary>
    public const string RiseSupposed = "simulation.riseSupposed";

    /// <summary>A usual torque of work stands in place of that before the strike.</summary>
    public const string LoadSupposed = "simulation.loadSupposed";

    /// <summary>The runs would take more work than their limit; what was cut off is not used.</summary>
    public const string TooMuchWork = "simulation.tooMuchWork";

    /// <summary>The PTO clutch was still slipping at the end of the run.</summary>
    public const string StillSlipping = "simulation.stillSlipping";
}
