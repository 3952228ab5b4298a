namespace Driveline.ShearBolts;

/// <summary>Names of what may be told of a bolt and its joint; a case file uses the same.</summary>
internal static class BoltFact
{
    public const string Thread = "thread";
    public const string PinDiameter = "pinDiameter";
    public const string SpringPin = "springPin";
    public const string Grade = "grade";
    public const string Hardness = "hardness";
    public const string HeadMarks = "headMarks";
    public const string PlaneThrough = "planeThrough";
    public const string NeckDiameter = "neckDiameter";
    public const string BoltLength = "boltLength";
    public const string ThreadLength = "threadLength";
    public const string GripLength = "gripLength";
    public const string ShankDiameter = "shankDiameter";
    public const string BodyStyle = "bodyStyle";
    public const string Hub = "hub";
    public const string HubSeen = "hubSeen";
    public const string LastTrip = "lastTrip";
    public const string HubFriction = "hubFriction";
    public const string HoleFit = "holeFit";
    public const string StandOff = "standOff";
    public const string Planes = "planes";
    public const string ShaftYieldStrength = "shaftYieldStrength";
    public const string YokeThickness = "yokeThickness";
    public const string YokeYieldStrength = "yokeYieldStrength";
    public const string Radius = "radius";
    public const string BoltCircleDiameter = "boltCircleDiameter";
    public const string ShaftDiameter = "shaftDiameter";
    public const string HoleDiameter = "holeDiameter";
    public const string HubDiameter = "hubDiameter";
    public const string YokeEdge = "yokeEdge";
}
