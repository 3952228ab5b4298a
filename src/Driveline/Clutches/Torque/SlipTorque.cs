using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>The torque at which a slip clutch lets go, and whether it may be trusted to.</summary>
/// <remarks>
/// T = N · μ · F · r. Run in (uniform wear) r = (Ro + Ri)/2; new (uniform pressure) r = 2/3 · (Ro³ - Ri³)/(Ro² - Ri²);
/// not known: low from the one, high from the other, expected run in.
/// Running is the torque while the faces slip, breakaway the torque that starts a slip. Without a slip test that counts, breakaway
/// has no high end, because nothing printed bounds what rust holds; of a clutch known to be stuck it has no expected value either.
/// A lever measurement beats any calculation. Whether a clutch guards is judged by the breakaway high end, whether it
/// stays quiet by the running low end.
/// </remarks>
public sealed class SlipTorque
{
    private SlipTorque(
        DiscClutch? clutch, ClutchCondition condition, SlipTorqueSource source, TorqueBand running, TorqueBand breakaway,
        ForceBand? clampForce, IReadOnlyList<Finding> findings)
    {
        Clutch = clutch;
        Condition = condition;
        Source = source;
        Running = running;
        Breakaway = breakaway;
        ClampForce = clampForce;
        Findings = findings;
    }

    /// <summary>The clutch with its springs and their length; null when only a torque is stated or measured.</summary>
    public DiscClutch? Clutch { get; }

    /// <summary>The condition it holds for.</summary>
    public ClutchCondition Condition { get; }

    /// <summary>How the torque was found.</summary>
    public SlipTorqueSource Source { get; }

    /// <summary>Torque carried while the faces slip.</summary>
    public TorqueBand Running { get; }

    /// <summary>Torque that starts a slip; no high end unless the clutch may be trusted to slip.</summary>
    public TorqueBand Breakaway { get; }

    /// <summary>Clamp force of the springs; null when no clutch was described.</summary>
    public ForceBand? ClampForce { get; }

    /// <summary>Which spread of pressure the torque assumes.</summary>
    public PressureAssumption Assumption => Condition.RunIn switch
    {
        RunInState.New => PressureAssumption.UniformPressure,
        RunInState.RunIn => PressureAssumption.UniformWear,
        _ => PressureAssumption.SpansBoth,
    };

    /// <summary>Mean pressure on a face, F / (π · (Ro² - Ri²)); null when no clutch was described.</summary>
    public StressBand? MeanPressure => ClampForce is null ? null
        : StressBand.OfSi(ClampForce.SiBand.Times(1 / DiscClutchKernel.AreaM2(Clutch!.OuterM, Clutch.InnerM)), ClampForce.Basis);

    /// <summary>Pressure at the inner radius of run-in faces, F / (2π · Ri · (Ro - Ri)); null when no clutch was described.</summary>
    public StressBand? PeakPressure => ClampForce is null ? null
        : StressBand.OfSi(ClampForce.SiBand.Times(1 / (2 * Math.PI * Clutch!.InnerM * (Clutch.OuterM - Clutch.InnerM))), ClampForce.Basis);

    /// <summary>Whether the clutch may be trusted to slip at all.</summary>
    /// <remarks>
    /// Springs pressed solid hold with more than anybody knows: such a clutch must not be trusted, whatever its last test was.
    /// </remarks>
    public SlipTrust Trust => Findings.Any(f => f.Code is ClutchFindings.SpringsSolid or ClutchFindings.ShorterThanSolid)
        ? SlipTrust.MustNotBeTrusted
        : Condition.Trust == SlipTrust.MayBeTrusted && Findings.Any(f => f.Code == ClutchFindings.SpringsMayBeSolid) ? SlipTrust.NotKnown
        : Condition.Trust;

    /// <summary>True only when a slip test since the last storage allows it; a guard may be certain only then.</summary>
    public bool MayBeTrustedToSlip => Trust == SlipTrust.MayBeTrusted;

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The slip torque of a described clutch; its lever measurement when there is one.</summary>
    /// <param name="clutch">The clutch, with its spring length.</param>
    /// <param name="condition">Its condition on the day judged on.</param>
    /// <example>250/175 mm, 2 faces, μ 0.35, 7200 N: 541.1 N·m new, 535.5 N·m run in.</example>
    public static SlipTorque Of(DiscClutch clutch, ClutchCondition condition)
    {
        Guard.NotNull(clutch, nameof(clutch));
        Guard.NotNull(condition, nameof(condition));
        var findings = new List<Finding>();
        ForceBand clamp = SlipTorqueRules.Clamp(clutch, condition, findings);
        SlipTorqueRules.Pressure(clutch, condition, clamp, findings);
        FrictionBand friction = clutch.Facing.Friction(condition.Surface);
        Band radius = SlipTorqueRules.RadiusM(clutch, condition.RunIn);
        TorqueBand running = SlipTorqueRules.Torque(clutch, friction.Running, clamp, radius);
        TorqueBand breakaway = SlipTorqueRules.Torque(clutch, friction.Breakaway, clamp, radius);
        SlipTorqueRules.Faces(condition, findings);
        return Judge(clutch, condition, SlipTorqueRules.SourceOf(clutch), running, breakaway, clamp, findings);
    }

    /// <summary>The slip torque of a clutch of which only the torque in the machine's documents is known.</summary>
    /// <param name="stated">Slip torque of a clutch set by the book, while slipping; bounded.</param>
    /// <param name="condition">Its condition on the day judged on.</param>
    /// <exception cref="ArgumentException">The torque is unbounded.</exception>
    public static SlipTorque OfStated(TorqueBand stated, ClutchCondition condition)
    {
        Guard.NotNull(condition, nameof(condition));
        if (!Guard.NotNull(stated, nameof(stated)).IsBounded)
        {
            throw new ArgumentException("A stated slip torque must have a high end; got " + stated + ".", nameof(stated));
        }

        var findings = new List<Finding>();
        SlipTorqueRules.Faces(condition, findings);
        TorqueBand running = SlipTorqueRules.Stated(stated, condition.Surface);
        return Judge(
            null, condition, SlipTorqueSource.Stated, running, SlipTorqueRules.BreakawayOf(running, condition.Surface), null, findings);
    }

    /// <summary>The slip torque of a clutch of which only a lever measurement is known.</summary>
    /// <param name="condition">Its condition, with a slip test that measured a torque.</param>
    /// <exception cref="ArgumentException">The condition has no slip test with a measured torque.</exception>
    public static SlipTorque OfMeasured(ClutchCondition condition)
    {
        TorqueBand running = Guard.NotNull(condition, nameof(condition)).LastSlipTest?.Running
            ?? throw new ArgumentException("The last slip test must have a measured torque; this condition has none.", nameof(condition));
        return Judge(
            null, condition, SlipTorqueSource.Measured, running, SlipTorqueRules.BreakawayOf(running, condition.Surface), null, []);
    }

    /// <summary>A clutch of whose torque nothing is known; its condition alone may still tell that it is stuck.</summary>
    public static SlipTorque NotKnown(ClutchCondition condition)
    {
        Guard.NotNull(condition, nameof(condition));
        TorqueBand nothing = SlipTorqueRules.NothingKnown;
        var findings = new List<Finding>();
        SlipTorqueRules.Faces(condition, findings);
        return Judge(null, condition, SlipTorqueSource.NotKnown, nothing, nothing, null, findings);
    }

    /// <summary>
    /// The calculation, line by line: of a lever test from force and arm, of a described clutch from the length of its springs, each end,
    /// last the torque that starts a slip where it is bounded. Empty when only a document or a reading states the torque.
    /// </summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        if (Source == SlipTorqueSource.Measured && Condition.LastSlipTest is { } test && !double.IsNaN(test.LeverForceN))
        {
            RecordLever(test, ref log);
        }
        else if (Source == SlipTorqueSource.Calculated)
        {
            RecordSprings(ref log);
        }

        return log.Lines;
    }

    /// <summary>
    /// The torque as its springs would have it, line by line, where a measurement came before that calculation; else empty.
    /// </summary>
    public IReadOnlyList<CalculationLine> SpringSheet()
    {
        StepList log = StepList.New();
        if (Source == SlipTorqueSource.Measured && Clutch is { SpringLength: not null })
        {
            SlipTorqueRules.Record(Clutch, Condition, ClampForce!.SiBand, ref log);
        }

        return log.Lines;
    }

    /// <summary>Where the numbers that the sheets begin with come from, by the code of their step.</summary>
    public IReadOnlyDictionary<string, BandBasis> SheetBases() => SlipTorqueBases.Of(this);

    /// <summary>Where the doubt comes from, from the lowest running torque to the highest breakaway: the widest source first.</summary>
    public IReadOnlyList<TorqueDoubt> Doubts() => SlipTorqueDoubts.Of(this);

    /// <inheritdoc/>
    public override string ToString() => "running " + Running + "; breakaway " + Breakaway + "; " + Trust;

    private void RecordLever(SlipTest test, ref StepList log)
    {
        Band read = test.Running!.SiBand;
        log.Add(ClutchInputs.LeverForce, test.LeverForceN);
        log.Add(ClutchInputs.LeverArm, test.LeverArmM);
        log.Add(ClutchSteps.LeverTorque, read.Expected);
        log.Add(ClutchInputs.ReadingError, (read.High / read.Expected) - 1);
        log.Add(ClutchInputs.ReadLow, read.Low);
        log.Add(ClutchInputs.ReadHigh, read.High);
        Band running = Running.SiBand;
        if (running.Low < read.Low)
        {
            log.Add(ClutchInputs.Present, running.Low);
        }

        if (Breakaway.SiBand is { IsBounded: true } first)
        {
            double ratio = FrictionBand.BreakawayRatio.High;
            bool isOfRatio = Math.Abs((ratio * read.High) - first.High) <= 1e-9 * first.High;
            if (isOfRatio)
            {
                log.Add(ClutchInputs.BreakawayRatio, ratio);
            }

            log.Add(isOfRatio ? ClutchInputs.BreakawayOfReading : ClutchInputs.BreakawayStated, first.High);
        }
    }

    private void RecordSprings(ref StepList log)
    {
        Band force = ClampForce!.SiBand;
        SlipTorqueRules.Record(Clutch!, Condition, force, ref log);
        if (Breakaway.SiBand is { IsBounded: true } first)
        {
            SlipTorqueRules.RecordBreakaway(Clutch!, Condition, force, first.High, ref log);
        }
    }

    private static SlipTorque Judge(
        DiscClutch? clutch, ClutchCondition condition, SlipTorqueSource source, TorqueBand running, TorqueBand breakaway,
        ForceBand? clamp, List<Finding> findings)
    {
        if (condition.LastSlipTest is { Running: { } read } test)
        {
            SlipTorqueRules.Compare(read, running, source, findings);
            if (clutch is not null)
            {
                SlipTorqueRules.Tightened(clutch, clamp!, read, findings);
            }

            findings.Add(Finding.Of(ClutchFindings.Measured, Severity.Note)
                .With("date", test.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))
                .With("torque", QuantityKind.Torque, read.SiBand.Expected));
            source = SlipTorqueSource.Measured;
            running = SlipTorqueRules.Measured(read, condition.Surface, clutch?.Facing);
            breakaway = test.Breakaway is null
                ? SlipTorqueRules.BreakawayOf(read, running, condition.Surface)
                : SlipTorqueRules.FirstMovement(test.Breakaway, running, condition.Surface);
            if (SlipTorqueRules.IsClean(condition.Surface))
            {
                findings.Add(Finding.Of(ClutchFindings.FadeNotCounted, Severity.Note));
            }
        }

        SlipTorqueRules.Trust(condition, findings);
        return new SlipTorque(
            clutch, condition, source, running, SlipTorqueRules.Released(breakaway, condition), clamp, findings.AsReadOnly());
    }
}
