using Driveline.Chains;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>A usual value in place of a fact that nobody stated. Immutable.</summary>
public sealed class SupposedFact
{
    private readonly QuantityBand band;

    internal SupposedFact(SupposedQuantity quantity, Part? part, QuantityBand band, bool isPartSupposed)
    {
        Quantity = quantity;
        Part = part;
        this.band = band;
        IsPartSupposed = isPartSupposed;
    }

    /// <summary>What the value stands for.</summary>
    public SupposedQuantity Quantity { get; }

    /// <summary>Name of its part; null for what belongs to the tractor or the work.</summary>
    public string? Name => Part?.Name;

    /// <summary>True when nobody named the part itself.</summary>
    public bool IsPartSupposed { get; }

    /// <summary>Lowest usual value, in SI units.</summary>
    public double Low => band.SiBand.Low;

    /// <summary>Expected value, in SI units.</summary>
    public double Expected => band.SiBand.Expected;

    /// <summary>Highest usual value, in SI units.</summary>
    public double High => band.SiBand.High;

    /// <summary>SI unit of the three; empty for a ratio.</summary>
    public string Unit => Quantity switch
    {
        SupposedQuantity.Stiffness => "N·m/rad",
        SupposedQuantity.Inertia => "kg·m²",
        SupposedQuantity.SpeedRatio => string.Empty,
        SupposedQuantity.EngagementTime => "s",
        _ => "N·m",
    };

    /// <summary>Where the values come from.</summary>
    public Basis Basis => band.WeakestBasis;

    /// <summary>The value as a finding.</summary>
    public Finding Finding
    {
        get
        {
            (string code, QuantityKind kind) = Quantity switch
            {
                SupposedQuantity.Stiffness => (IsPartSupposed ? SimulationFindings.ShaftSupposed : SimulationFindings.StiffnessSupposed,
                    QuantityKind.Stiffness),
                SupposedQuantity.Inertia => (IsPartSupposed ? SimulationFindings.RotorSupposed : SimulationFindings.InertiaSupposed,
                    QuantityKind.Inertia),
                SupposedQuantity.SpeedRatio => (SimulationFindings.RatioSupposed, QuantityKind.Number),
                SupposedQuantity.PtoClutchCapacity => (SimulationFindings.CapacitySupposed, QuantityKind.Torque),
                SupposedQuantity.EngagementTime => (SimulationFindings.RiseSupposed, QuantityKind.Time),
                _ => (SimulationFindings.LoadSupposed, QuantityKind.Torque),
            };
            Finding finding = Finding.Of(code, Severity.Note)
                .With("low", kind, Low).With("expected", kind, Expected).With("high", kind, High);
            return Name is { } name ? finding.With("name", name) : finding;
        }
    }

    internal Part? Part { get; }

    internal Band SiBand => band.SiBand;

    /// <summary>Facts that are low or high together: of the tractor's, a mild engagement has a weak clutch and a slow driver.</summary>
    internal int Factor => Quantity switch
    {
        SupposedQuantity.Stiffness => 0,
        SupposedQuantity.Inertia => 1,
        SupposedQuantity.SpeedRatio => 2,
        _ => 3,
    };

    /// <inheritdoc/>
    public override string ToString() => (Name is null ? string.Empty : Name + ": ") + Quantity + " " + band;

    internal double At(BandPoint point) => band.SiBand.At(Quantity != SupposedQuantity.EngagementTime ? point : point switch
    {
        BandPoint.Low => BandPoint.High,
        BandPoint.High => BandPoint.Low,
        _ => point,
    });
}
