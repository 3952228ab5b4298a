using Driveline.Tests.Clutches;
using Driveline.Tests.Fasteners;
using Driveline.Tests.Fatigue;
using Driveline.Tests.Loads;
using Driveline.Tests.Monitoring;
using Driveline.Tests.Protection;
using Driveline.Tests.Pto;
using Driveline.Tests.Quantities;
using Driveline.Tests.ShearBolts;
using Driveline.Tests.Torsion;

namespace Driveline.Tests.Consistency;

/// <summary>What each class of printed rows checks and how; a method is told apart by the beginning of its name.</summary>
internal sealed class ValidationTable
{
    private const ValidationKind Computed = ValidationKind.Computed;
    private const ValidationKind Second = ValidationKind.SecondMethod;
    private const ValidationKind Contained = ValidationKind.Contained;
    private const ValidationKind Copied = ValidationKind.Copied;
    private const ValidationKind Guard = ValidationKind.Guard;

    private readonly (string Beginning, ValidationKind Kind)[] others;

    private ValidationTable(Type type, string capability, ValidationKind kind, params (string Beginning, ValidationKind Kind)[] others)
    {
        Type = type;
        Capability = capability;
        Kind = kind;
        this.others = others;
    }

    public static IReadOnlyList<ValidationTable> All { get; } =
    [
        new(typeof(QuantityTextPublished), "units", Computed),
        new(typeof(ScrewThreadPublished), "threads: areas and diameters", Computed, ("BodyDiameter", Copied)),
        new(typeof(GradePublished), "grades and bolt materials", Copied),
        new(typeof(BoltStrengthPublished), "proof and tensile loads of bolts", Computed, ("SeenLoads", Guard)),
        new(typeof(NonFerrousLoadPublished), "proof and tensile loads of bolts", Computed),
        new(typeof(SocketScrewLoadPublished), "proof and tensile loads of bolts", Computed),
        new(typeof(HardnessPublished), "hardness and strength", Copied, ("TensileBand", Computed), ("Tables_", Guard)),
        new(typeof(ShearRatiosPublished), "ratio of shear to tensile strength", Contained, ("Expected_OfClass", Copied), ("High_", Copied),
            ("Low_", Copied), ("Ratios_", Guard), ("Of_", Guard)),
        new(typeof(ShearPlanePublished), "breaking load of a shear plane", Contained, ("PublishedRows", Guard)),
        new(typeof(ShearPinSizePublished), "shear pins: diameter for a torque", Computed),
        new(typeof(RainflowPublished), "rainflow counting", Computed),
        new(typeof(MonitoredRainflowPublished), "rainflow counting of a stream", Computed, ("Ranges_OfAnyHistory", Guard),
            ("ClosedHistory_BegunElsewhere", Guard), ("ClosedHistory_UpsideDown", Guard), ("ClosedHistory_SumOfRanges", Guard)),
        new(typeof(BandDistributionPublished), "distributions behind a probability", Second),
        new(typeof(InterferencePublished), "probability that one torque passes another", Computed, ("Lognormal", Second)),
        new(typeof(CoilSpringPublished), "coil springs", Computed),
        new(typeof(DiscSpringPublished), "disc springs", Computed, ("Din2093_Entry", Copied), ("Din2093_Has", Guard),
            ("Din2093_Series", Contained)),
        new(typeof(FacingsPublished), "friction materials", Copied),
        new(typeof(SlipTorquePublished), "slip torque of a clutch", Computed),
        new(typeof(SlipHeatPublished), "heat of a slip", Computed, ("ThermalMaterial_Held", Copied)),
        new(typeof(FactoryTorquesPublished), "clutch settings printed for machines", Copied, ("FactoryTorques_Have", Guard)),
        new(typeof(PtoTorquePublished), "torque from power and speed", Computed),
        new(typeof(PtoTypesPublished), "types of PTO", Copied),
        new(typeof(UniversalJointPublished), "universal joints", Computed, ("Table_", Guard)),
        new(typeof(RimSpeedPublished), "speed of a rim", Computed, ("Of_Stop", Guard)),
        new(typeof(RotorPublished), "rotors: speed of tips, energy", Computed),
        new(typeof(ImplementPowerPublished), "power that machines need", Computed, ("ImplementPower_", Copied)),
        new(typeof(LoadSpectrumPublished), "spectra of loads", Computed, ("LoadSpectrum_", Copied), ("PeakFactor_", Contained)),
        new(typeof(EnginePublished), "the tractor's engine", Computed, ("PtoPowerRatios", Copied), ("EngineSpeedRatio", Copied),
            ("PtoOverSpeed", Copied)),
        new(typeof(EngagementPublished), "engaging the PTO", Computed),
        new(typeof(ShaftStiffnessPublished), "twist of shafts", Computed),
        new(typeof(SectionModulusPublished), "stress of round shafts under torque", Computed),
        new(typeof(StrikePublished), "torque of a strike", Computed, ("ImpactNm_Zero", Guard)),
        new(typeof(ImpactPublished), "shafts and rotors in time", Computed, ("Transient_TorsionalImpactRow", Second),
            ("TorsionalImpactFile", Guard), ("Joint_", Contained)),
    ];

    public Type Type { get; }

    public string Capability { get; }

    public ValidationKind Kind { get; }

    public ValidationKind KindOf(string method)
    {
        foreach ((string beginning, ValidationKind kind) in others)
        {
            if (method.StartsWith(beginning, StringComparison.Ordinal))
            {
                return kind;
            }
        }

        return Kind;
    }
}
