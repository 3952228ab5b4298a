namespace Driveline.Clutches;

/// <summary>Names of what may be told of a clutch; a case file uses the same.</summary>
internal static class ClutchFact
{
    public const string Facing = "facing";
    public const string SpringLength = "springLength";
    public const string NutTurns = "nutTurns";
    public const string Wear = "wear";
    public const string Surface = "surface";
    public const string RunIn = "runIn";
    public const string LastSlipTest = "lastSlipTest";
    public const string SlipTestResult = "slipTestResult";
    public const string LeverTorque = "leverTorque";
    public const string LeverForce = "leverForce";
    public const string LastStorage = "lastStorage";
    public const string StoredMonths = "storedMonths";
    public const string Climate = "climate";
    public const string PlateThickness = "plateThickness";
    public const string SlipsPerHour = "slipsPerHour";
    public const string SlipTime = "slipTime";
    public const string Kind = "kind";
    public const string Trip = "trip";
    public const string ReengagesBelow = "reengagesBelow";
    public const string LastTrip = "lastTrip";
}
