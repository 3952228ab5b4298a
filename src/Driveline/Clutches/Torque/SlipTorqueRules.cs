using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>How the parts of a slip torque are found and judged.</summary>
internal static class SlipTorqueRules
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

    private static readonly Basis WearUnknown = Basis.CommonPractice("wear not known: up to a whole lining of 3.2 mm on every face");
    private static readonly Basis RadiusBasis = Basis.Given("clutch measures stated");
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

    public static Band RadiusM(DiscClutch clutch, RunInState runIn)
    {
        var log = default(NoSteps);
        double wear = DiscClutchKernel.UniformWearRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        double pressure = DiscClutchKernel.UniformPressureRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        return runIn switch
        {
            RunInState.New => Band.Exactly(pressure),
            RunInState.RunIn => Band.Exactly(wear),
            _ => new Band(wear, wear, Math.Max(wear, pressure)),
        };
    }

    public static TorqueBand Torque(DiscClutch clutch, RatioBand friction, ForceBand clamp, Band radiusM)
    {
        var log = default(NoSteps);
        Band f = friction.SiBand;
        Band c = clamp.SiBand;
        double low = DiscClutchKernel.SlipTorqueNm(clutch.Faces, f.Low, c.Low, radiusM.Low, ref log);
        double expected = Times(clutch.Faces, f.Expected, c.Expected, radiusM.Expected);
        double high = Times(clutch.Faces, f.High, c.High, radiusM.High);
        return TorqueBand.OfSi(new Band(low, Math.Max(low, expected), Math.Max(high, expected)),
            BandBasis.Combine(friction.Basis, clamp.Basis).With(RadiusBasis));
    }

    /// <summary>Deflection of the springs today: length as set, and wear that lets them out again.</summary>
    public static Band DeflectionM(DiscClutch clutch, ClutchCondition condition)
    {
        Band set = clutch.SpringLength!.SiBand;
        Band wear = condition.Wear?.SiBand ?? new Band(0, 0, clutch.Faces * WholeLiningM);
        double free = clutch.Springs.FreeM;
        return new Band(
            Math.Max(0, free - set.High - wear.High),
            Math.Max(0, free - set.Expected - wear.Expected),
            Math.Max(0, free - set.Low - wear.Low));
    }

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

    /// <summary>The facing against its limit: expected clamp, at the inner radius when run in.</summary>
    public static void Pressure(DiscClutch clutch, ClutchCondition condition, ForceBand clamp, List<Finding> findings)
    {
        double limit = clutch.Facing.Limits.HighPressurePa;
        if (double.IsNaN(limit))
        {
            findings.Add(Finding.Of(ClutchFindings.FacingLimitNotKnown, Severity.Note)
                .WithBecause(ClutchFact.Facing).BarringNothing().With("facing", clutch.Facing.Name));
            return;
        }

        if (!clamp.HasExpected)
        {
            return;
        }

        var log = default(NoSteps);
        double force = clamp.SiBand.Expected;
        double pressure = condition.RunIn == RunInState.New
            ? DiscClutchKernel.MeanPressurePa(force, clutch.OuterM, clutch.InnerM, ref log)
            : DiscClutchKernel.PeakPressurePa(force, clutch.OuterM, clutch.InnerM, ref log);
        if (pressure > limit)
        {
            findings.Add(Finding.Of(ClutchFindings.FacingPressureHigh, Severity.Warning)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns, ClutchFact.Facing)
                .With("pressure", QuantityKind.SurfacePressure, pressure)
                .With("limit", QuantityKind.SurfacePressure, limit)
                .With("facing", clutch.Facing.Name));
        }
    }

    public static void Faces(ClutchCondition condition, List<Finding> findings)
    {
        if (condition.RunIn == RunInState.NotKnown)
        {
            findings.Add(Finding.Of(ClutchFindings.RunInNotKnown, Severity.Note).WithBecause(ClutchFact.RunIn).BarringNothing());
        }
        else if (condition.RunIn == RunInState.New)
        {
            findings.Add(Finding.Of(ClutchFindings.NotRunIn, Severity.Warning).WithBecause(ClutchFact.RunIn));
        }

        string? code = condition.Surface switch
        {
            SurfaceState.NotKnown => ClutchFindings.SurfaceNotKnown,
            SurfaceState.Oiled => ClutchFindings.Oiled,
            SurfaceState.Glazed => ClutchFindings.Glazed,
            _ => null,
        };
        if (code is not null)
        {
            findings.Add(Finding.Of(code, Severity.Warning).WithSettledBy(Measurements.ClutchSprings).WithBecause(ClutchFact.Surface));
        }
    }

    public static void Trust(ClutchCondition condition, List<Finding> findings)
    {
        if (condition.KnownStuck)
        {
            findings.Add(Finding.Of(ClutchFindings.Stuck, Severity.Danger).WithBecause(ClutchFact.SlipTestResult)
                .Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest));
            return;
        }

        if (condition.MayBeTrustedToSlip)
        {
            return;
        }

        string code = condition.LastSlipTest is not { Outcome: SlipTestOutcome.Slipped } ? ClutchFindings.NoSlipTest
            : condition.TestIsBeforeStorage ? ClutchFindings.TestBeforeStorage
            : condition.LastStorageEnded is null ? ClutchFindings.StorageNotKnown
            : ClutchFindings.TestTooOld;
        findings.Add(Finding.Of(code, Severity.Danger).Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest).WithBecause(code switch
        {
            ClutchFindings.NoSlipTest => [ClutchFact.LastSlipTest, ClutchFact.SlipTestResult],
            ClutchFindings.TestBeforeStorage => [ClutchFact.LastSlipTest, ClutchFact.LastStorage],
            ClutchFindings.StorageNotKnown => [ClutchFact.LastStorage],
            _ => [ClutchFact.LastSlipTest],
        }));
        if (condition.LastStorageEnded is not null && condition.Climate != StorageClimate.Dry)
        {
            Finding moist = Finding.Of(ClutchFindings.StoodMoist, Severity.Danger)
                .WithBecause(ClutchFact.LastStorage, ClutchFact.StoredMonths, ClutchFact.Climate);
            findings.Add(condition.StorageMonths is { } months ? moist.With("months", QuantityKind.Number, months)
                : moist.With("months", "an unknown number of"));
        }
    }

    /// <summary>
    /// A measured torque in the present surface state. Clean faces: as read; that they fade when hot is a note, not a cut. Else less may be
    /// left
    /// in work, or with oil or glaze that came after; damp faces may also hold more.
    /// </summary>
    public static TorqueBand Measured(TorqueBand torque, SurfaceState surface, Facing? facing)
    {
        if (IsClean(surface))
        {
            return torque;
        }

        Band t = torque.SiBand;
        double share = facing?.CleanShare() ?? CleanShare;
        if (surface is SurfaceState.Oiled or SurfaceState.Glazed)
        {
            Facing faced = facing ?? Facings.MouldedLining;
            double dry = faced.Friction(SurfaceState.Dry).Running.SiBand.Low;
            share = dry > 0 ? Math.Min(share, faced.Friction(surface).Running.SiBand.Low / dry) : 0;
        }

        double rise = Facing.RiseOf(surface).Running;
        return TorqueBand.OfSi(
            new Band(t.Low * share, t.Expected, t.High * rise),
            new BandBasis(
                Basis.Weakest(torque.Basis.Low, LossInWork),
                torque.Basis.Expected,
                rise > 1 ? Basis.Weakest(torque.Basis.High, LossInWork) : torque.Basis.High,
                BandEnd.Interval95,
                torque.Basis.HighEnd));
    }

    public static bool IsClean(SurfaceState surface) => surface is SurfaceState.Dry or SurfaceState.CleanInWork;

    /// <summary>
    /// A torque set by the book on clean dry faces, in a surface state: scaled as a moulded lining, which loses most under oil.
    /// </summary>
    public static TorqueBand Stated(TorqueBand stated, SurfaceState surface)
    {
        if (surface == SurfaceState.Dry)
        {
            return stated;
        }

        RatioBand now = Facings.MouldedLining.Friction(surface).Running;
        Band f = now.SiBand;
        Band dry = Facings.MouldedLining.Friction(SurfaceState.Dry).Running.SiBand;
        Band t = stated.SiBand;
        double low = t.Low * f.Low / dry.Low;
        return TorqueBand.OfSi(
            new Band(low, Math.Max(low, t.Expected * (f.Expected / dry.Expected)), t.High * Facing.RiseOf(surface).Running),
            new BandBasis(
                Basis.Weakest(stated.Basis.Low, now.Basis.Low),
                f.Expected < dry.Expected ? Basis.Weakest(stated.Basis.Expected, now.Basis.Expected) : stated.Basis.Expected,
                Facing.RiseOf(surface).Running > 1 ? Basis.Weakest(stated.Basis.High, now.Basis.High) : stated.Basis.High,
                BandEnd.Interval95,
                stated.Basis.HighEnd));
    }

    /// <summary>Breakaway of a running torque in the present surface state.</summary>
    public static TorqueBand BreakawayOf(TorqueBand running, SurfaceState surface)
    {
        (double slipping, double still) = Facing.RiseOf(surface);
        Band b = running.SiBand.Times(FrictionBand.BreakawayRatio);
        return TorqueBand.OfSi(
            new Band(b.Low, b.Expected, b.High * still / slipping), BandBasis.Combine(running.Basis, FrictionBand.BreakawayRatioBasis));
    }

    /// <summary>Breakaway from a running torque read: low from the present running torque, the rest from the reading.</summary>
    public static TorqueBand BreakawayOf(TorqueBand read, TorqueBand running, SurfaceState surface) =>
        FirstMovement(
            TorqueBand.OfSi(read.SiBand.Times(FrictionBand.BreakawayRatio),
            BandBasis.Combine(read.Basis, FrictionBand.BreakawayRatioBasis)), running, surface);

    /// <summary>
    /// Breakaway read at the first movement; its low end not above the present running torque, its high end what damp faces may hold.
    /// </summary>
    public static TorqueBand FirstMovement(TorqueBand read, TorqueBand running, SurfaceState surface)
    {
        Band b = read.SiBand;
        double rise = Facing.RiseOf(surface).Breakaway;
        BandBasis basis = rise > 1
            ? new BandBasis(
                read.Basis.Low, read.Basis.Expected, Basis.Weakest(read.Basis.High, LossInWork), read.Basis.LowEnd, read.Basis.HighEnd)
            : read.Basis;
        return TorqueBand.OfSi(new Band(Math.Min(running.SiBand.Low, b.Low), b.Expected, b.High * rise), basis);
    }

    /// <summary>Breakaway with what the lack of a slip test does to it.</summary>
    public static TorqueBand Released(TorqueBand breakaway, ClutchCondition condition)
    {
        if (condition.MayBeTrustedToSlip)
        {
            return breakaway;
        }

        Band b = breakaway.SiBand;
        BandBasis basis = breakaway.Basis;
        if (!condition.KnownStuck)
        {
            return TorqueBand.OfSi(
                new Band(b.Low, b.Expected, double.PositiveInfinity),
                new BandBasis(basis.Low, basis.Expected, Basis.Weakest(basis.High, NotBounded), basis.LowEnd, BandEnd.Limit));
        }

        double withstood = condition.LastSlipTest is { Outcome: SlipTestOutcome.DidNotSlip, Breakaway: { } held } ? held.SiBand.Low : 0;
        return TorqueBand.OfSi(
            new Band(Math.Max(b.Low, withstood), double.PositiveInfinity, double.PositiveInfinity),
            new BandBasis(
                basis.Low, Basis.Weakest(basis.Expected, NotBounded), Basis.Weakest(basis.High, NotBounded), basis.LowEnd, BandEnd.Limit));
    }

    public static void Compare(TorqueBand read, TorqueBand calculated, SlipTorqueSource source, List<Finding> findings)
    {
        Band c = calculated.SiBand;
        Band r = read.SiBand;
        if (source == SlipTorqueSource.Calculated && (r.High < c.Low || r.Low > c.High))
        {
            findings.Add(Finding.Of(ClutchFindings.MeasuredDiffers, Severity.Warning)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns, ClutchFact.LeverTorque, ClutchFact.LeverForce)
                .With("measured", QuantityKind.Torque, r.Expected)
                .With("calculated", QuantityKind.Torque, c.Expected));
        }
    }

    /// <summary>
    /// Springs that give more than was measured even with the least dry friction were tightened after the measurement. What is not known
    /// (wear, spread of the springs, bedding in) is taken tight, so that leaving a fact out never hides it; an unknown facing bars on its
    /// own.
    /// </summary>
    public static void Tightened(DiscClutch clutch, ForceBand clamp, TorqueBand read, List<Finding> findings)
    {
        if (ReferenceEquals(clutch.Facing, Facings.NotKnown) || clutch.SpringLength is null)
        {
            return;
        }

        double friction = clutch.Facing.Friction(SurfaceState.Dry).Running.SiBand.Low;
        double least = Times(clutch.Faces, friction, clamp.SiBand.High, RadiusM(clutch, RunInState.NotKnown).High);
        if (least > read.SiBand.High && !double.IsInfinity(least))
        {
            findings.RemoveAll(f => f.Code == ClutchFindings.MeasuredDiffers);
            findings.Add(
                Finding.Of(ClutchFindings.TighterThanMeasured, Severity.Danger)
                    .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns, ClutchFact.LeverTorque, ClutchFact.LeverForce)
                    .Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest)
                .With("measured", QuantityKind.Torque, read.SiBand.Expected)
                .With("calculated", QuantityKind.Torque, least));
        }
    }

    /// <summary>
    /// Measured over calculated running torque at the stated spring length; null where the reading tells nothing of the friction.
    /// </summary>
    public static double? ScaleOf(DiscClutch clutch, ClutchCondition condition)
    {
        if (condition.LastSlipTest?.Running is not { } read || clutch.SpringLength is null
            || ReferenceEquals(clutch.Facing, Facings.NotKnown))
        {
            return null;
        }

        SpringPack springs = clutch.Springs;
        double deflection = springs.FreeM - clutch.SpringLength.SiBand.Expected;
        if (deflection <= 0 || deflection >= springs.TravelM || springs.RateNPerM(deflection) <= 0)
        {
            return null;
        }

        var later = new List<Finding>();
        Tightened(clutch, Clamp(clutch, condition, []), read, later);
        double force = springs.NominalN(deflection) * springs.Factor.Expected;
        double mu = clutch.Facing.Friction(condition.Surface).Running.SiBand.Expected;
        double calculated = Times(clutch.Faces, mu, force, RadiusM(clutch, condition.RunIn).Expected);
        return later.Count == 0 && calculated > 0 ? read.SiBand.Expected / calculated : null;
    }

    /// <summary>The expected running torque again, step by step.</summary>
    public static void Record<S>(DiscClutch clutch, ClutchCondition condition, ref S log)
        where S : struct, ISteps
    {
        double deflection = Math.Min(DeflectionM(clutch, condition).Expected, clutch.Springs.TravelM);
        double force = clutch.Springs.NominalN(deflection, ref log) * clutch.Springs.Factor.Expected;
        log.Add(ClutchSteps.Clamp, force);
        double mu = clutch.Facing.Friction(condition.Surface).Running.SiBand.Expected;
        log.Add(ClutchSteps.Friction, mu);
        double radius;
        if (condition.RunIn == RunInState.New)
        {
            DiscClutchKernel.MeanPressurePa(force, clutch.OuterM, clutch.InnerM, ref log);
            radius = DiscClutchKernel.UniformPressureRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        }
        else
        {
            DiscClutchKernel.PeakPressurePa(force, clutch.OuterM, clutch.InnerM, ref log);
            radius = DiscClutchKernel.UniformWearRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        }

        DiscClutchKernel.SlipTorqueNm(clutch.Faces, mu, force, radius, ref log);
    }

    /// <summary>Wear of one lining up to which a setting must hold.</summary>
    public static double WearLimitPerFaceM(DiscClutch clutch) => clutch.WearLimitPerFace?.SiBand.High ?? StrictestWearM;

    private static double Times(int faces, double friction, double clampN, double radiusM)
    {
        var log = default(NoSteps);
        return friction <= 0 || clampN <= 0 ? 0 : DiscClutchKernel.SlipTorqueNm(faces, friction, clampN, radiusM, ref log);
    }

    private static void Sensitivity(SpringPack springs, double deflectionM, List<Finding> findings)
    {
        double force = springs.NominalN(Math.Min(deflectionM, springs.TravelM));
        if (force <= 0 || deflectionM >= springs.TravelM)
        {
            return;
        }

        double share = Math.Abs(springs.RateNPerM(deflectionM)) * RuleErrorM / force;
        if (share > SensitiveShare)
        {
            findings.Add(Finding.Of(ClutchFindings.SensitiveSetting, Severity.Note)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns)
                .With("error", QuantityKind.Length, RuleErrorM)
                .With("percent", QuantityKind.Number, share * 100));
        }
    }

    private static void Wear(DiscClutch clutch, ClutchCondition condition, List<Finding> findings)
    {
        if (condition.Wear is null)
        {
            findings.Add(Finding.NotKnown(ClutchFindings.WearNotKnown).WithBecause(ClutchFact.Wear).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.ClutchSprings)
                .With("assumed", QuantityKind.Length, WholeLiningM));
            return;
        }

        double limit = clutch.Faces * (clutch.WearLimitPerFace?.SiBand.Low ?? StrictestWearM);
        if (condition.Wear.SiBand.Expected >= limit)
        {
            findings.Add(Finding.Of(ClutchFindings.WornOut, Severity.Warning).WithBecause(ClutchFact.Wear)
                .Barring(Bars.Quiet).WithSettledBy(Measurements.ClutchSprings)
                .With("wear", QuantityKind.Length, condition.Wear.SiBand.Expected)
                .With("limit", QuantityKind.Length, limit));
        }
    }

    private static Finding At(string code, Severity severity, double lengthM) =>
        Finding.Of(code, severity).WithSettledBy(Measurements.ClutchSprings).With("length", QuantityKind.Length, lengthM)
            .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns);
}
