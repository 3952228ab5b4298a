using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>The torque at which a part is damaged, at the part's own input, and how it was found.</summary>
public sealed class PartLimit
{
    private PartLimit(TorqueBand damagedAt, LimitKind kind)
        : this(damagedAt, kind, null)
    {
    }

    private PartLimit(TorqueBand damagedAt, LimitKind kind, Torque? rated)
    {
        Rated = rated;
        DamagedAt = damagedAt;
        Kind = kind;
    }

    /// <summary>The torque that damages the part: the weakest specimen at low, the strongest at high.</summary>
    public TorqueBand DamagedAt { get; }

    /// <summary>How it was found.</summary>
    internal LimitKind Kind { get; }

    /// <summary>The rated torque it was found from; null when it was not found from one.</summary>
    public Torque? Rated { get; }

    /// <summary>True when only its rating is known: that may support a Yes, and never a No.</summary>
    public bool IsRating => Kind == LimitKind.Rating;

    /// <summary>True when the limit rests on a default that nobody stated: it gives at most a Maybe.</summary>
    public bool IsAssumed => Kind is LimitKind.UnsourcedOverloadFactor or LimitKind.ImpliedByPtoType;

    /// <summary>True when nobody stated anything of it but the type of PTO: it raises no alarm and gives no margin.</summary>
    public bool IsDefault => Kind == LimitKind.ImpliedByPtoType;

    /// <summary>A stated or measured damage torque.</summary>
    public static PartLimit DamageTorque(TorqueBand damagedAt) =>
        new(Guard.NotNull(damagedAt, nameof(damagedAt)), LimitKind.DamageTorque);

    /// <summary>A limit computed from geometry and a stated material.</summary>
    public static PartLimit Section(TorqueBand damagedAt) =>
        new(Guard.NotNull(damagedAt, nameof(damagedAt)), LimitKind.Section);

    /// <summary>A limit implied by the PTO type with a default steel.</summary>
    public static PartLimit ImpliedByPtoType(TorqueBand damagedAt) =>
        new(Guard.NotNull(damagedAt, nameof(damagedAt)), LimitKind.ImpliedByPtoType);

    /// <summary>Rated torque times an overload factor: T = T_rated · K. Without a source it gives at most a Maybe.</summary>
    /// <param name="rated">Rated torque; above 0.</param>
    /// <param name="factor">Overload factor K to damage; 1 or more.</param>
    /// <param name="isSourced">True when the factor comes from a document or the maker.</param>
    /// <exception cref="ArgumentException">The torque is not above 0, or the factor is missing or below 1.</exception>
    public static PartLimit RatedTimes(Torque rated, RatioBand factor, bool isSourced)
    {
        double nm = Guard.Positive(Si.NewtonMeters(rated), "Rated torque", "N·m", nameof(rated));
        Guard.NotNull(factor, nameof(factor));
        if (factor.Low < 1)
        {
            throw Guard.OutOfRange("Overload factor", "1 or more", factor.Low, string.Empty, nameof(factor));
        }

        return new PartLimit(
            TorqueBand.OfSi(factor.SiBand.Times(nm), factor.Basis.With(Basis.Given("rated torque as stated"))),
            isSourced ? LimitKind.OverloadFactor : LimitKind.UnsourcedOverloadFactor,
            rated);
    }

    /// <summary>Rated torque alone (factor 1): a part takes its rating; what it takes beyond that is not known.</summary>
    /// <param name="rated">Rated torque as stated; above 0.</param>
    /// <exception cref="ArgumentException">The torque is not above 0, or the basis is missing.</exception>
    public static PartLimit Rating(Torque rated) => Rating(rated, Basis.Given("rated torque as stated"));

    /// <summary>Rated torque alone, from a source of its own such as the table of a series of joints.</summary>
    /// <param name="rated">Rated torque; above 0.</param>
    /// <param name="basis">Where it comes from.</param>
    /// <exception cref="ArgumentException">The torque is not above 0, or the basis is missing.</exception>
    public static PartLimit Rating(Torque rated, Basis basis)
    {
        Guard.Positive(Si.NewtonMeters(rated), "Rated torque", "N·m", nameof(rated));
        return new PartLimit(TorqueBand.AtLeast(rated, Guard.NotNull(basis, nameof(basis))), LimitKind.Rating, rated);
    }

    /// <summary>The torque at which the part is damaged, with its unit.</summary>
    public override string ToString() => DamagedAt.ToString();
}
