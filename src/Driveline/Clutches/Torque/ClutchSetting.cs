using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>How to set the springs of a clutch for a wanted slip torque.</summary>
/// <remarks>
/// The expected running torque is set: F = T / (N · μ · r), then the spring length that gives F. A torque the springs do not
/// reach, or a setting without room for wear, is an answer with findings. The other way round, set the length with
/// <see cref="DiscClutch.WithSpringLength(LengthBand)"/> or <see cref="DiscClutch.WithNutTurns"/> and ask <see cref="SlipTorque"/>.
/// The machine's manual decides: its spring length comes before any computed one.
/// </remarks>
public sealed class ClutchSetting
{
    // Torque lost by wear up to the replacement limit that is worth a finding.
    private const double WearShare = 0.2;

    private readonly double wantedNm;
    private readonly double clampN;
    private readonly double deflectionM;
    private readonly double pitchM;
    private readonly double nmPerMeter;
    private readonly ClutchCondition condition;

    private ClutchSetting(DiscClutch clutch, ClutchCondition condition, double wantedNm, double clampN, double deflectionM, double pitchM,
        double nmPerMeter, IReadOnlyList<Finding> findings)
    {
        Clutch = clutch;
        this.wantedNm = wantedNm;
        this.clampN = clampN;
        this.deflectionM = deflectionM;
        this.pitchM = pitchM;
        this.nmPerMeter = nmPerMeter;
        this.condition = condition;
        Findings = findings;
        if (IsReached)
        {
            Clutch = clutch.WithSpringLength(
                LengthBand.OfSi(Band.Exactly(clutch.Springs.FreeM - deflectionM), BandBasis.Of(Basis.Given("setting computed"))));
            Predicted = SlipTorque.Of(Clutch, condition);
        }
    }

    /// <summary>The clutch, set when the torque is reached.</summary>
    public DiscClutch Clutch { get; }

    /// <summary>The slip torque wanted.</summary>
    public Torque Wanted => Torque.FromNewtonMeters(wantedNm);

    /// <summary>True when the springs give the torque before they are solid.</summary>
    public bool IsReached => !double.IsNaN(deflectionM);

    /// <summary>Clamp force needed.</summary>
    public Force ClampForce => Force.FromNewtons(clampN);

    /// <summary>Spring length that gives the torque; null when it is not reached.</summary>
    public Length? SpringLength => IsReached ? Length.FromMeters(Clutch.Springs.FreeM - deflectionM) : null;

    /// <summary>Spring deflection that gives the torque; null when it is not reached.</summary>
    public Length? Deflection => IsReached ? Length.FromMeters(deflectionM) : null;

    /// <summary>Travel left before the springs are solid or flat; null when the torque is not reached.</summary>
    public Length? TravelLeft => IsReached ? Length.FromMeters(Clutch.Springs.TravelM - deflectionM) : null;

    /// <summary>Turns of every nut from finger-tight; null when not reached or the pitch is not known.</summary>
    public double? NutTurns => IsReached && !double.IsNaN(pitchM) ? deflectionM / pitchM : null;

    /// <summary>
    /// Change of torque for one turn of every nut; null when not reached or the pitch is not known. Below zero where a disc spring's force
    /// falls.
    /// </summary>
    public Torque? TorquePerTurn => IsReached && !double.IsNaN(pitchM) ? Torque.FromNewtonMeters(nmPerMeter * pitchM) : null;

    /// <summary>Torque lost for one millimeter of wear of the whole pack; null when not reached.</summary>
    public Torque? TorqueLostPerMillimeterOfWear => IsReached ? Torque.FromNewtonMeters(nmPerMeter * 1e-3) : null;

    /// <summary>The slip torque at that setting with its whole band; null when not reached.</summary>
    public SlipTorque? Predicted { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The setting for a wanted slip torque, nut turns unknown.</summary>
    /// <param name="clutch">The clutch; its present spring length does not matter.</param>
    /// <param name="wanted">Wanted running slip torque; above 0.</param>
    /// <param name="condition">Condition of the faces; its wear is taken as zero, because the springs are set anew.</param>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public static ClutchSetting For(DiscClutch clutch, Torque wanted, ClutchCondition condition) =>
        Solve(clutch, wanted, condition, double.NaN);

    /// <summary>The setting for a wanted slip torque, with nut turns.</summary>
    /// <param name="clutch">The clutch; its present spring length does not matter.</param>
    /// <param name="wanted">Wanted running slip torque; above 0.</param>
    /// <param name="condition">Condition of the faces; its wear is taken as zero, because the springs are set anew.</param>
    /// <param name="pitch">Pitch of the bolt thread; above 0, at most 10 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The torque or the pitch is out of its range.</exception>
    /// <example>250/175 mm, 2 faces, μ 0.35, 9 springs of 160 N/mm, run in, 535.5 N·m: 7200 N, 5 mm, 107.1 N·m for a millimeter.</example>
    public static ClutchSetting For(DiscClutch clutch, Torque wanted, ClutchCondition condition, Length pitch)
    {
        double p = Guard.Positive(Si.Meters(pitch), "Pitch of the bolt thread", "m", nameof(pitch));
        return Solve(clutch, wanted, condition, Guard.Within(p, 0, 0.01, "Pitch of the bolt thread", "m", nameof(pitch)));
    }

    /// <summary>
    /// Turns of every nut from a present spring length; above zero tightens. Null when not reached or the pitch is not known.
    /// </summary>
    /// <param name="present">Present spring length; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public double? TurnsFrom(Length present)
    {
        double m = Guard.Positive(Si.Meters(present), "Present spring length", "m", nameof(present));
        return IsReached && !double.IsNaN(pitchM) ? (m - (Clutch.Springs.FreeM - deflectionM)) / pitchM : null;
    }

    /// <summary>
    /// The calculation, line by line: from the torque wanted to the length of the springs, then back from that length to the torque, which
    /// must come out again. Empty when the torque is not reached.
    /// </summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        if (!IsReached)
        {
            return log.Lines;
        }

        SpringPack springs = Clutch.Springs;
        double mu = Clutch.Facing.Friction(condition.Surface).Running.SiBand.Expected;
        double radius = SlipTorqueRules.RadiusM(Clutch, condition.RunIn).Expected;
        log.Add(ClutchInputs.Wanted, wantedNm);
        SlipTorqueRules.RecordFaces(Clutch, mu, radius, ref log);
        log.Add(ClutchInputs.ClampNeeded, clampN);
        NoSteps none = default;
        double back = springs.NominalN(deflectionM, ref none) * springs.Factor.Expected;
        log.Add(ClutchInputs.Count, springs.Count);
        log.Add(ClutchInputs.Factor, springs.Factor.Expected);
        if (springs is CoilPack coils)
        {
            log.Add(ClutchInputs.Rate, coils.Spring.RateNPerM.Expected);
        }

        log.Add(springs.NeededStep, deflectionM);
        log.Add(ClutchInputs.FreeLength, springs.FreeM);
        log.Add(ClutchInputs.LengthNeeded, springs.FreeM - deflectionM);
        SlipTorqueRules.RecordEnd(Clutch, springs.FreeM - deflectionM, 0, springs.Factor.Expected, back, mu, radius, ref log);
        return log.Lines;
    }

    /// <summary>The wanted torque, with its unit, and the spring length that gives it.</summary>
    public override string ToString() => SpringLength is { } length
        ? FormattableString.Invariant($"{Wanted.NewtonMeters:G4} N·m at {length.Millimeters:0.##} mm")
        : FormattableString.Invariant($"{Wanted.NewtonMeters:G4} N·m: not reached");

    private static ClutchSetting Solve(DiscClutch clutch, Torque wanted, ClutchCondition condition, double pitchM)
    {
        Guard.NotNull(clutch, nameof(clutch));
        double nm = Guard.Positive(Si.NewtonMeters(wanted), "Wanted slip torque", "N·m", nameof(wanted));
        ClutchCondition fresh = Guard.NotNull(condition, nameof(condition))
            .WithWear(LengthBand.OfSi(Band.Exactly(0), BandBasis.Of(Basis.Given("springs set anew"))));
        double mu = clutch.Facing.Friction(fresh.Surface).Running.SiBand.Expected;
        double nmPerNewton = clutch.Faces * mu * SlipTorqueRules.RadiusM(clutch, fresh.RunIn).Expected;
        double force = nmPerNewton > 0 ? nm / nmPerNewton : double.PositiveInfinity;
        double deflection = nmPerNewton > 0 ? clutch.Springs.DeflectionM(force) : double.NaN;
        var findings = new List<Finding>();
        if (double.IsNaN(deflection))
        {
            findings.Add(Finding.Of(ClutchFindings.SettingNotReached, Severity.Warning)
                .With("wanted", QuantityKind.Torque, nm)
                .With("most", QuantityKind.Torque, clutch.Springs.LargestN * nmPerNewton));
            return new ClutchSetting(
                clutch, fresh, nm, Math.Min(force, double.MaxValue), double.NaN, pitchM, double.NaN, findings.AsReadOnly());
        }

        double rate = clutch.Springs.RateNPerM(deflection) * clutch.Springs.Factor.Expected * nmPerNewton;
        Reserve(clutch, deflection, findings);
        SlipTorqueRules.Pressure(clutch, fresh, ForceBand.OfSi(Band.Exactly(force), clutch.Springs.ForceBasis), findings);
        return new ClutchSetting(clutch, fresh, nm, force, deflection, pitchM, rate, findings.AsReadOnly());
    }

    private static void Reserve(DiscClutch clutch, double deflectionM, List<Finding> findings)
    {
        SpringPack springs = clutch.Springs;
        double left = springs.TravelM - deflectionM;
        if (left < springs.ReserveShare * springs.TravelM)
        {
            findings.Add(Finding.Of(ClutchFindings.LittleTravelLeft, Severity.Warning).With("left", QuantityKind.Length, left));
        }

        double wear = clutch.Faces * SlipTorqueRules.WearLimitPerFaceM(clutch);
        if (wear >= deflectionM)
        {
            findings.Add(Finding.Of(ClutchFindings.NoWearTravel, Severity.Warning)
                .With("deflection", QuantityKind.Length, deflectionM)
                .With("wear", QuantityKind.Length, wear));
            return;
        }

        double lost = 1 - (springs.NominalN(deflectionM - wear) / springs.NominalN(deflectionM));
        if (lost > WearShare)
        {
            findings.Add(Finding.Of(ClutchFindings.WearTakesTorque, Severity.Warning)
                .With("wear", QuantityKind.Length, wear)
                .With("percent", QuantityKind.Number, lost * 100));
        }
    }
}
