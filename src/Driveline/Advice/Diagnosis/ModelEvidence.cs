using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What the model's numbers say about causes: a computed margin is evidence beside what people see.</summary>
/// <remarks>
/// A ratio r of expected torques multiplies the chance of its causes by (r / r0)^4, kept between 1/20 and 20, with r0 where the
/// number says nothing: trip over damage 1.0; work over trip 0.7; engagement over trip 0.8; trip over PTO clutch 1.0. A strike whose
/// peak reaches the trip
/// with probability P, while nothing gave, multiplies "too soft" by (1 − P)/P, within the same bounds. The exponents and r0 are
/// from memory: they turn margins into plain speech, not into statistics. A number that is not known leaves every chance alone.
/// Immutable.
/// </remarks>
internal sealed class ModelEvidence
{
    private IReadOnlyList<Finding>? findings;

    /// <summary>Code: expected trip against expected damage of the part nearest to it.</summary>
    public const string TripAgainstDamage = "model.tripAgainstDamage";

    /// <summary>Code: expected work peak against expected trip.</summary>
    public const string WorkAgainstTrip = "model.workAgainstTrip";

    /// <summary>Code: expected engagement torque against expected trip.</summary>
    public const string EngagementAgainstTrip = "model.engagementAgainstTrip";

    /// <summary>Code: the fitted device against the specified one.</summary>
    public const string FittedAgainstSpecified = "model.fittedAgainstSpecified";

    /// <summary>Code: expected trip against what the tractor's PTO clutch passes.</summary>
    public const string TripAgainstPtoClutch = "model.tripAgainstPtoClutch";

    /// <summary>Code: the strike's peak against the trip.</summary>
    public const string StrikeAgainstTrip = "model.strikeAgainstTrip";

    /// <summary>No model at hand.</summary>
    public static readonly ModelEvidence None = new([], null, null, null);

    private const double Most = 20;
    private static readonly Basis FactorBasis = Basis.FromMemory("how strongly a computed margin speaks for a cause");

    private ModelEvidence(IReadOnlyList<ModelFactor> factors, ProtectionVerdict? verdict, TorqueBand? strike, SimulationCheck? simulated)
    {
        Factors = factors;
        Verdict = verdict;
        Strike = strike;
        SimulatedStrike = simulated;
    }

    /// <summary>The verdict it came from; null when there is none.</summary>
    public ProtectionVerdict? Verdict { get; }

    /// <summary>The peak of the strike at the PTO; null when it is not known.</summary>
    public TorqueBand? Strike { get; }

    /// <summary>The strike as it was simulated; null when it was not.</summary>
    public SimulationCheck? SimulatedStrike { get; }

    /// <summary>The numbers used, each with a text.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= [.. Factors.Select(f => f.Finding)];

    /// <summary>Basis of the factors, with the verdict's.</summary>
    public Basis Basis => Verdict?.WeakestBasis is { } basis ? Basis.Weakest(basis, FactorBasis) : FactorBasis;

    internal IReadOnlyList<ModelFactor> Factors { get; }

    /// <summary>The evidence of a verdict.</summary>
    public static ModelEvidence Of(ProtectionVerdict verdict)
    {
        Guard.NotNull(verdict, nameof(verdict));
        return new ModelEvidence(
            [.. Damage(verdict), .. Work(verdict), .. Engagement(verdict), .. Fitted(verdict), .. PtoClutch(verdict)], verdict, null, null);
    }

    /// <summary>The same evidence with the peak that a strike put on the driveline at the PTO, while nothing gave.</summary>
    /// <remarks>Changes no chance when the trip torque is not known; the peak still says what the parts carried.</remarks>
    /// <param name="peakAtPto">The strike's peak, computed, simulated or stated, at the PTO.</param>
    /// <exception cref="InvalidOperationException">There is no verdict to compare it with.</exception>
    public ModelEvidence WithStrike(TorqueBand peakAtPto)
    {
        Guard.NotNull(peakAtPto, nameof(peakAtPto));
        ProtectionVerdict verdict = Verdict
            ?? throw new InvalidOperationException("A strike needs a verdict whose trip torque it is compared with.");
        return new ModelEvidence([.. Factors, .. Against(peakAtPto, verdict.Trip)], verdict, peakAtPto, null);
    }

    /// <summary>
    /// The same evidence with a simulated strike, while nothing gave: the blow at the device nearest to its trip, against that device in
    /// good order.
    /// </summary>
    /// <remarks>Changes no chance when the simulation rests on more than stated facts, or the blow did not pass the driveline.</remarks>
    /// <param name="strike">The strike, with and without protection.</param>
    /// <exception cref="InvalidOperationException">There is no verdict beside it.</exception>
    public ModelEvidence WithStrike(SimulationCheck strike)
    {
        Guard.NotNull(strike, nameof(strike));
        ProtectionVerdict verdict = Verdict ?? throw new InvalidOperationException("A strike needs a verdict of the same machine.");
        return new ModelEvidence([.. Factors, .. strike.BlowAtDevice is { } blow ? Against(blow, strike.NearestDevice!.InGoodOrder) : []],
            verdict, null, strike);
    }

    /// <summary>The same evidence without one of its numbers, so that what is known as a fact already is not counted twice.</summary>
    /// <param name="code">Code of the number, e.g. <see cref="FittedAgainstSpecified"/>.</param>
    public ModelEvidence Without(string code)
    {
        Guard.NotNull(code, nameof(code));
        return new ModelEvidence([.. Factors.Where(f => f.Finding.Code != code)], Verdict, Strike, SimulatedStrike);
    }

    private static IEnumerable<ModelFactor> Damage(ProtectionVerdict verdict)
    {
        PartCheck? nearest = null;
        double ratio = 0;
        foreach (PartCheck part in verdict.Parts)
        {
            if (part.Part.Limit is { IsAssumed: false } limit && limit.DamagedAt.HasExpected && part.ActsAt is { HasExpected: true } acts)
            {
                double own = acts.SiBand.Expected / limit.DamagedAt.SiBand.Expected;
                nearest = own > ratio ? part : nearest;
                ratio = Math.Max(own, ratio);
            }
        }

        if (nearest is not null)
        {
            yield return new ModelFactor(
                Finding.Of(TripAgainstDamage, Severity.Note)
                    .With("name", nearest.Part.Name)
                    .With("tripExpected", QuantityKind.Torque, nearest.ActsAt!.SiBand.Expected)
                    .With("damagedExpected", QuantityKind.Torque, nearest.Part.Limit!.DamagedAt.SiBand.Expected)
                    .With("ratio", QuantityKind.Number, ratio),
                Power(ratio, 1.0),
                Cause.GradeTooStrong,
                Cause.DiameterTooLarge,
                Cause.ClutchOvertightened);
        }
    }

    private static IEnumerable<ModelFactor> Work(ProtectionVerdict verdict)
    {
        if (verdict.Question.Work is { IsAssumed: false } work && work.Torque.HasExpected && verdict.Trip is { HasExpected: true } trip
            && trip.SiBand.Expected > 0)
        {
            yield return new ModelFactor(
                Against(WorkAgainstTrip, work.Torque, trip),
                Power(work.Torque.SiBand.Expected / trip.SiBand.Expected, 0.7),
                Cause.GradeTooSoft,
                Cause.DiameterTooSmall,
                Cause.ThreadsInPlane,
                Cause.ClutchSetTooLoose,
                Cause.ClutchWorn,
                Cause.Overload,
                Cause.TractorTooStrong);
        }
    }

    private static IEnumerable<ModelFactor> Engagement(ProtectionVerdict verdict)
    {
        if (!verdict.Question.Engagement.IsFeathered && verdict.Question.Engagement.Highest is { HasExpected: true } highest
            && verdict.Trip is { HasExpected: true } trip && trip.SiBand.Expected > 0)
        {
            yield return new ModelFactor(
                Against(EngagementAgainstTrip, highest, trip),
                Power(highest.SiBand.Expected / trip.SiBand.Expected, 0.8),
                Cause.AbruptEngagement,
                Cause.EngagementSpeedTooHigh);
        }
    }

    private static IEnumerable<ModelFactor> Fitted(ProtectionVerdict verdict)
    {
        if (verdict.FittedAgainstSpecified.Ratio is { HasExpected: true } ratio)
        {
            Finding finding = Finding.Of(FittedAgainstSpecified, Severity.Note).With("ratio", QuantityKind.Number, ratio.SiBand.Expected);
            yield return new ModelFactor(finding, Power(ratio.SiBand.Expected, 1.0), Cause.GradeTooStrong, Cause.DiameterTooLarge);
            yield return new ModelFactor(
                finding, Power(1 / Math.Max(ratio.SiBand.Expected, 1e-6), 1.0), Cause.GradeTooSoft, Cause.DiameterTooSmall);
        }
    }

    private static IEnumerable<ModelFactor> PtoClutch(ProtectionVerdict verdict)
    {
        if (verdict.Question.Engagement.Capacity is { HasExpected: true } capacity && capacity.SiBand.Expected > 0
            && verdict.Trip is { HasExpected: true } trip && trip.SiBand.Expected > 0)
        {
            yield return new ModelFactor(
                Finding.Of(TripAgainstPtoClutch, Severity.Note)
                    .With("capacity", QuantityKind.Torque, capacity.SiBand.Expected)
                    .With("tripExpected", QuantityKind.Torque, trip.SiBand.Expected),
                Power(trip.SiBand.Expected / capacity.SiBand.Expected, 1.0),
                Cause.PtoClutchSlipsFirst);
        }
    }

    private static IEnumerable<ModelFactor> Against(TorqueBand peak, TorqueBand? trip)
    {
        if (trip is null || BandDistribution.TryOf(trip) is not { } strength || BandDistribution.TryOf(peak) is not { } load)
        {
            yield break;
        }

        double reached = Interference.Reached(load, strength);
        Finding finding = Finding.Of(StrikeAgainstTrip, Severity.Note)
            .With("peak", QuantityKind.Torque, peak.SiBand.Expected)
            .With("tripExpected", QuantityKind.Torque, trip.SiBand.Expected)
            .With("probability", QuantityKind.Probability, reached);
        yield return new ModelFactor(finding, Clamped((1 - reached) / Math.Max(reached, 1e-6)), Cause.StrikeTooSoft);
    }

    private static Finding Against(string code, TorqueBand torque, TorqueBand trip) => Finding.Of(code, Severity.Note)
        .With("torque", QuantityKind.Torque, torque.SiBand.Expected)
        .With("tripExpected", QuantityKind.Torque, trip.SiBand.Expected)
        .With("ratio", QuantityKind.Number, torque.SiBand.Expected / trip.SiBand.Expected);

    private static double Power(double ratio, double neutral) => Clamped(Math.Pow(ratio / neutral, 4));

    private static double Clamped(double factor) => Math.Min(Most, Math.Max(1 / Most, factor));
}
