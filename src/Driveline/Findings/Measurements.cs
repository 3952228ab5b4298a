namespace Driveline.Findings;

/// <summary>Codes of what can be measured or looked up, each with a text of how to do it safely.</summary>
public static class Measurements
{
    /// <summary>Read head marks, size and layout of the device.</summary>
    public const string IdentifyDevice = "measure.identifyDevice";

    /// <summary>Measure how far from the shaft's axis the bolt is cut, and in how many planes.</summary>
    public const string BoltLayout = "measure.boltLayout";

    /// <summary>Have the hardness of the bolt measured, or buy a lot with a test certificate.</summary>
    public const string BoltHardness = "measure.boltHardness";

    /// <summary>Turn the hub by hand with the bolt out.</summary>
    public const string HubTurn = "measure.hubTurn";

    /// <summary>Free and grease the seized hub before any work.</summary>
    public const string FreeHub = "measure.freeHub";

    /// <summary>See whether shank or thread lies in the shear plane.</summary>
    public const string PlaneThrough = "measure.planeThrough";

    /// <summary>Measure the thinnest place of a stepped, necked or tapered bolt.</summary>
    public const string NeckDiameter = "measure.neckDiameter";

    /// <summary>See how the bolt fits its holes and whether the faces touch.</summary>
    public const string HoleFit = "measure.holeFit";

    /// <summary>Find the steel of the shaft at its cross-hole.</summary>
    public const string ShaftSteelAtHole = "measure.shaftSteelAtHole";

    /// <summary>Log the highest torque of normal work, or the power and speed.</summary>
    public const string WorkPeak = "measure.workPeak";

    /// <summary>Count the hours of work, and how often the protection acted in them.</summary>
    public const string HoursWithoutBreak = "measure.hoursWithoutBreak";

    /// <summary>Find the torque that damages a part: from its maker, its rating, or its size and steel.</summary>
    public const string PartLimit = "measure.partLimit";

    /// <summary>Find how much the PTO clutch can pass.</summary>
    public const string PtoClutchCapacity = "measure.ptoClutchCapacity";

    /// <summary>Go through the driveline from tractor to rotor and list every part.</summary>
    public const string PartsList = "measure.partsList";

    /// <summary>Ask the maker for a bolt or clutch where none limits the torque.</summary>
    public const string FitLimiter = "measure.fitLimiter";

    /// <summary>Read the ratio and efficiency of the gearbox.</summary>
    public const string GearboxData = "measure.gearboxData";

    /// <summary>Slip the clutch after storage and measure the torque with a lever.</summary>
    public const string SlipTest = "measure.slipTest";

    /// <summary>Measure the length of every spring of a clutch, and see what springs and linings it has.</summary>
    public const string ClutchSprings = "measure.clutchSprings";

    /// <summary>See how often and how long a clutch slips in work.</summary>
    public const string SlipsInWork = "measure.slipsInWork";

    /// <summary>Compute or log what the flywheel puts on the parts behind it.</summary>
    public const string FlywheelTransient = "measure.flywheelTransient";

    /// <summary>Look up in the manual which bolt or setting the maker specifies.</summary>
    public const string ManualSpecification = "measure.manualSpecification";
}
