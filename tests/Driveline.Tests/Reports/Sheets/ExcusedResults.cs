namespace Driveline.Tests.Reports;

/// <summary>Public types that hold a number and have no sheet of their own, each with the reason.</summary>
internal static class ExcusedResults
{
    public static IReadOnlyDictionary<string, string> All { get; } = new (string Reason, string Types)[]
    {
        ("a fact that is put in, or a row of a catalogue",
            "Branch BreakingCoupling CoilSpring ClutchCondition CutOutClutch DeckGeometry DeckReading Din2093Spring DiscClutch DrivingSide "
            + "Engagement EngineSide Facing FastenerMaterial FittedBolt FittedClutch FrictionBand FrictionCoupling GradeStrength "
            + "HeadMarkCandidate HeatPath JointSeries LineStiffness MetricThread UnifiedThread OwnershipOption OwnershipTerms Part "
            + "PartLimit PowerRow ProtectionQuestion PtoLimit PtoType RodMaterial SNCurve Shaft ShaftSection ShearBolt ShearBoltJoint "
            + "SimulationDrive SizeRange SlipTest SpringPin StatedBolt StatedDevice SteelGrade StockItem ThermalMaterial TorqueRange "
            + "TorqueSpeedLine UniversalJoint UsualMachine"),
        ("a band of one quantity",
            "EnergyBand ForceBand InertiaBand LengthBand PowerBand StiffnessBand StressBand TimeBand TorqueBand"),
        ("holds results that have sheets of their own",
            "BoltHoles ClutchChoice ClutchPoint ClutchReview ClutchWindow CutOutDevice FittedAgainstSpecified GuardedPart LadderRung "
            + "NeighbourGrade ProtectionVerdict RankedBolt Remedy ShearBoltDevice SlipClutchDevice"),
        ("a step of a sheet above it: the joint, the clutch, the bolt",
            "BoltStrength CoilPack DiscPack DiscSpring ShearPlane"),
        ("integrated or counted over time: no sum that a hand can follow",
            "ConsumedLife ModelEvidence MonitorHistory NaturalMode RepeatedSlips SimulatedLoad SimulatedPeak SimulatedSlip SimulationCheck "
            + "SimulationOutcome SlipTorqueTrend SpannedLoad TransientResult TripForecast"),
        ("a check beside the verdict, whose finding names its numbers",
            "BoltFatigue DeckAttitude DiscSpringStresses HoleTearOut WorkPeakEstimate"),
    }.SelectMany(r => r.Types.Split(' ').Select(t => (t, r.Reason))).ToDictionary(p => p.t, p => p.Reason, StringComparer.Ordinal);
}
