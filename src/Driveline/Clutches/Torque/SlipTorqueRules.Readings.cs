using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <content>Torques that were read or stated: what is left of them today, and what they say of the springs.</content>
internal static partial class SlipTorqueRules
{
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
}
