using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A friction facing against iron or steel: friction by surface state, and its limits.</summary>
/// <remarks>
/// Friction in work departs from the printed dry value: a wet, oiled or rusted face has its own band. A limit that is null is not known,
/// which never means that there is none.
/// </remarks>
public sealed partial class Facing
{
    private readonly RatioBand dry;
    private readonly RatioBand? breakaway;
    private readonly RatioBand? hot;
    private readonly RatioBand? oiled;

    private Facing(
        string name, RatioBand dry, RatioBand? breakaway, RatioBand? hot, RatioBand? oiled,
        FacingLimits limits, ThermalMaterial? thermal, Basis limitBasis)
    {
        Name = name;
        this.dry = dry;
        this.breakaway = breakaway;
        this.hot = hot;
        this.oiled = oiled;
        Limits = limits;
        Thermal = thermal;
        LimitBasis = limitBasis;
    }

    /// <summary>Name of the facing, e.g. "moulded organic lining".</summary>
    public string Name { get; }

    /// <summary>Where the pressure, temperature and power limits come from.</summary>
    public Basis LimitBasis { get; }

    /// <summary>Thermal properties of the facing; null when not known.</summary>
    internal ThermalMaterial? Thermal { get; }

    /// <summary>Lower end of the working pressures printed for it; null when not known.</summary>
    public Pressure? LowestWorkingPressure => Known(Limits.LowPressurePa) ? Pressure.FromPascals(Limits.LowPressurePa) : null;

    /// <summary>Highest pressure permitted on it; null when not known.</summary>
    public Pressure? PressureLimit => Known(Limits.HighPressurePa) ? Pressure.FromPascals(Limits.HighPressurePa) : null;

    /// <summary>Temperature it stands continuously; null when not known.</summary>
    public Temperature? ContinuousTemperature => Known(Limits.ContinuousK) ? Temperature.FromKelvins(Limits.ContinuousK) : null;

    /// <summary>Temperature it stands for a short time; above it friction may fall badly. Null when not known.</summary>
    public Temperature? MaximumTemperature => Known(Limits.MaximumK) ? Temperature.FromKelvins(Limits.MaximumK) : null;

    /// <summary>Lower end of the working slip power on its area; null when not known.</summary>
    public HeatFlux? LowPowerRating => Known(Limits.LowPowerWPerM2) ? HeatFlux.FromWattsPerSquareMeter(Limits.LowPowerWPerM2) : null;

    /// <summary>Upper end of the working slip power on its area; null when not known.</summary>
    public HeatFlux? HighPowerRating => Known(Limits.HighPowerWPerM2) ? HeatFlux.FromWattsPerSquareMeter(Limits.HighPowerWPerM2) : null;

    internal FacingLimits Limits { get; }

    /// <summary>A facing of which only the clean, dry running friction is known.</summary>
    /// <param name="name">Name of the facing; not empty.</param>
    /// <param name="dryRunning">Friction coefficient while slipping, clean and dry; bounded, high end at most 2.</param>
    /// <exception cref="ArgumentException">The band has no high end, or the name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The high end is above 2.</exception>
    public static Facing OfFriction(string name, RatioBand dryRunning) => new(
        Guard.NotBlank(name, "Facing name", nameof(name)),
        Coefficient(dryRunning, nameof(dryRunning)),
        null,
        null,
        null,
        FacingLimits.None,
        null,
        Basis.FromMemory("no limits stated"));

    internal static Facing Listed(
        string name, RatioBand dry, RatioBand? breakaway, RatioBand? oiled, FacingLimits limits, ThermalMaterial? thermal,
            Basis limitBasis) =>
        new(name, dry, breakaway, null, oiled, limits, thermal, limitBasis);

    /// <summary>The same facing with a stated breakaway friction, clean and dry.</summary>
    /// <exception cref="ArgumentException">The band is missing, has no high end, or is not from 0 to 2.</exception>
    public Facing WithBreakaway(RatioBand dryBreakaway) =>
        new(Name, dry, Coefficient(dryBreakaway, nameof(dryBreakaway)), hot, oiled, Limits, Thermal, LimitBasis);

    /// <summary>The same facing with a stated running friction when hot.</summary>
    /// <exception cref="ArgumentException">The band is missing, has no high end, or is not from 0 to 2.</exception>
    public Facing WithHotFriction(RatioBand hotRunning) =>
        new(Name, dry, breakaway, Coefficient(hotRunning, nameof(hotRunning)), oiled, Limits, Thermal, LimitBasis);

    /// <summary>The same facing with a stated running friction under oil.</summary>
    /// <exception cref="ArgumentException">The band is missing, has no high end, or is not from 0 to 2.</exception>
    public Facing WithOiledFriction(RatioBand oiledRunning) =>
        new(Name, dry, breakaway, hot, Coefficient(oiledRunning, nameof(oiledRunning)), Limits, Thermal, LimitBasis);

    /// <summary>The same facing with a stated highest pressure.</summary>
    /// <param name="limit">Highest pressure permitted; above 0.</param>
    /// <param name="basis">Where it comes from.</param>
    /// <exception cref="ArgumentException">The limit is not above 0, or the basis is missing.</exception>
    public Facing WithPressureLimit(Pressure limit, Basis basis) => new(
        Name, dry, breakaway, hot, oiled,
        Limits.Pressure(double.NaN, Guard.Positive(Si.Pascals(limit), "Facing pressure limit", "Pa", nameof(limit))),
        Thermal,
        Guard.NotNull(basis, nameof(basis)));

    /// <summary>The same facing with stated temperature limits.</summary>
    /// <param name="continuous">Stood continuously; above -60 °C.</param>
    /// <param name="maximum">Stood for a short time; not below the continuous limit.</param>
    /// <param name="basis">Where they come from.</param>
    /// <exception cref="ArgumentException">A temperature is outside its range up to 2000 °C, or the basis is missing.</exception>
    public Facing WithTemperatureLimits(Temperature continuous, Temperature maximum, Basis basis)
    {
        double low = Guard.Within(Si.Kelvins(continuous), 213.15, 2273.15, "Continuous facing temperature", "K", nameof(continuous));
        double high = Guard.Within(Si.Kelvins(maximum), low, 2273.15, "Maximum facing temperature", "K", nameof(maximum));
        return new Facing(Name, dry, breakaway, hot, oiled, Limits.Temperatures(low, high), Thermal, Guard.NotNull(basis, nameof(basis)));
    }

    /// <summary>The same facing with stated thermal properties.</summary>
    internal Facing WithThermal(ThermalMaterial thermal) =>
        new(Name, dry, breakaway, hot, oiled, Limits, Guard.NotNull(thermal, nameof(thermal)), LimitBasis);

    /// <inheritdoc/>
    public override string ToString() => Name + ", dry " + dry;

    private static bool Known(double si) => !double.IsNaN(si);

    private static RatioBand Coefficient(RatioBand band, string parameter)
    {
        Guard.NotNull(band, parameter);
        if (!band.IsBounded)
        {
            throw new ArgumentException("A friction coefficient needs a high end; got an unbounded one.", parameter);
        }

        Guard.Within(band.SiBand.High, 0, 2, "Friction coefficient", string.Empty, parameter);
        return band;
    }
}
