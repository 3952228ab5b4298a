using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>How the parts of a slip torque are found and judged.</summary>
internal static partial class SlipTorqueRules
{
    /// <summary>Strictest printed wear of one lining before it is replaced, 1/32 in.</summary>
    public const double StrictestWearM = 0.794e-3;

    /// <summary>Printed thickness of a new lining, 1/8 in: nothing more can wear off a face.</summary>
    public const double WholeLiningM = 3.175e-3;

    // Share of a measured torque that may be left of faces told as hot or damp, or not told.
    private const double CleanShare = 0.7;

    // A change of torque by this share for a reading error of 1/64 in is worth a note.
    private const double SensitiveShare = 0.05;
    private const double RuleErrorM = 0.4e-3;

    public static readonly Basis WearUnknown = Basis.CommonPractice("wear not known: up to a whole lining of 3.2 mm on every face");
    public static readonly Basis RadiusBasis = Basis.Given("clutch measures stated");
    private static readonly Basis NoMeasurement = Basis.FromMemory("spring length not known");
    private static readonly Basis LossInWork = Basis.FromMemory("loss of friction when hot or damp");
    private static readonly Basis NotBounded = Basis.CommonPractice(
        "no printed value bounds the breakaway of a clutch that was not slipped");

    /// <summary>The torque of a clutch of which no torque is known: anything at all.</summary>
    public static TorqueBand NothingKnown { get; } =
        TorqueBand.OfSi(
            new Band(0, double.PositiveInfinity, double.PositiveInfinity), BandBasis.Of(Basis.FromMemory("slip torque not known")));

    public static SlipTorqueSource SourceOf(DiscClutch clutch) =>
        clutch.SpringLength is null ? SlipTorqueSource.NotKnown : SlipTorqueSource.Calculated;

    public static Band RadiusM(DiscClutch clutch, RunInState runIn) => RadiusM(clutch.OuterM, clutch.InnerM, runIn);

    public static Band RadiusM(double outerM, double innerM, RunInState runIn)
    {
        var log = default(NoSteps);
        double wear = DiscClutchKernel.UniformWearRadiusM(outerM, innerM, ref log);
        double pressure = DiscClutchKernel.UniformPressureRadiusM(outerM, innerM, ref log);
        return runIn switch
        {
            RunInState.New => Band.Exactly(pressure),
            RunInState.RunIn => Band.Exactly(wear),
            _ => new Band(wear, wear, Math.Max(wear, pressure)),
        };
    }

    public static TorqueBand Torque(DiscClutch clutch, RatioBand friction, ForceBand clamp, Band radiusM) => TorqueBand.OfSi(
        TorqueNm(clutch.Faces, friction.SiBand, clamp.SiBand, radiusM),
        BandBasis.Combine(friction.Basis, clamp.Basis).With(RadiusBasis));

    public static Band TorqueNm(int faces, Band friction, Band clampN, Band radiusM)
    {
        var log = default(NoSteps);
        double low = DiscClutchKernel.SlipTorqueNm(faces, friction.Low, clampN.Low, radiusM.Low, ref log);
        double expected = Times(faces, friction.Expected, clampN.Expected, radiusM.Expected);
        double high = Times(faces, friction.High, clampN.High, radiusM.High);
        return new Band(low, Math.Max(low, expected), Math.Max(high, expected));
    }

    /// <summary>Deflection of the springs today: length as set, and wear that lets them out again.</summary>
    public static Band DeflectionM(DiscClutch clutch, ClutchCondition condition) =>
        DeflectionM(clutch.Springs, clutch.SpringLength!.SiBand, WearM(clutch.Faces, condition));

    public static Band DeflectionM(SpringPack springs, Band setM, Band wearM) => new(
        Math.Max(0, springs.FreeM - setM.High - wearM.High),
        Math.Max(0, springs.FreeM - setM.Expected - wearM.Expected),
        Math.Max(0, springs.FreeM - setM.Low - wearM.Low));

    /// <summary>Wear of all linings; up to a whole lining on every face when not known.</summary>
    public static Band WearM(int faces, ClutchCondition condition) => condition.Wear?.SiBand ?? new Band(0, 0, faces * WholeLiningM);

    public static ForceBand Clamp(DiscClutch clutch, ClutchCondition condition, List<Finding> findings)
    {
        if (clutch.SpringLength is null)
        {
            findings.Add(Finding.Of(ClutchFindings.SpringLengthNotKnown, Severity.Danger)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns).WithSettledBy(Measurements.ClutchSprings));
            return ForceBand.OfSi(new Band(0, double.PositiveInfinity, double.PositiveInfinity), BandBasis.Of(NoMeasurement));
        }

        SpringPack springs = clutch.Springs;
        Band deflection = DeflectionM(clutch, condition);
        Band set = clutch.SpringLength.SiBand;
        if (set.Expected < springs.SolidM)
        {
            findings.Add(At(ClutchFindings.ShorterThanSolid, Severity.Danger, set.Expected).Barring(Bars.Guards)
                .With("solid", QuantityKind.Length, springs.SolidM));
        }
        else if (deflection.Expected >= springs.TravelM)
        {
            findings.Add(At(ClutchFindings.SpringsSolid, Severity.Danger, set.Expected).Barring(Bars.Guards)
                .With("solid", QuantityKind.Length, springs.SolidM));
        }
        else if (deflection.High >= springs.TravelM)
        {
            findings.Add(At(ClutchFindings.SpringsMayBeSolid, Severity.Danger, set.Low).Barring(Bars.Guards)
                .With("solid", QuantityKind.Length, springs.SolidM));
        }

        if (deflection.Expected <= 0)
        {
            findings.Add(At(ClutchFindings.SpringsLoose, Severity.Warning, set.Expected).Barring(Bars.Quiet)
                .With("free", QuantityKind.Length, springs.FreeM));
        }

        Sensitivity(springs, deflection.Expected, findings);
        Wear(clutch, condition, findings);
        Basis lengthBasis = condition.Wear is null
            ? Basis.Weakest(clutch.SpringLength.WeakestBasis, WearUnknown)
            : Basis.Weakest(clutch.SpringLength.WeakestBasis, condition.Wear.WeakestBasis);
        return ForceBand.OfSi(springs.ForceN(deflection), springs.ForceBasis.With(lengthBasis));
    }

    /// <summary>Wear of one lining up to which a setting must hold.</summary>
    public static double WearLimitPerFaceM(DiscClutch clutch) => clutch.WearLimitPerFace?.SiBand.High ?? StrictestWearM;

    private static double Times(int faces, double friction, double clampN, double radiusM)
    {
        var log = default(NoSteps);
        return friction <= 0 || clampN <= 0 ? 0 : DiscClutchKernel.SlipTorqueNm(faces, friction, clampN, radiusM, ref log);
    }
}
